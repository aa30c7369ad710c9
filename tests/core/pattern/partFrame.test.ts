import { expect, test } from "vitest";
import { flat, lineLength, partFrame, partOutline } from "../../../src/core/pattern/patternPart";

/** Broken on purpose: smallest for largest, a sum for the difference, the lines inside left out. Seen to fail. */
test("the frame holds the outline and all that is drawn in it, wherever it lies", () => {
  const corners = [flat(-30, 12), flat(50, 12), flat(50, 90), flat(-30, 90)];
  const edges = corners.map((corner, i) => ({
    id: `edge-${i}`,
    points: [corner, corners[(i + 1) % 4] as typeof corner],
    sewnTo: null,
  }));
  expect(partOutline({ edges })).toEqual(corners);
  expect(partFrame({ edges, lines: [] })).toEqual({ left: -30, bottom: 12, width: 80, height: 78 });
  const grain = { kind: "grain", name: "grain", points: [flat(0, -8), flat(70, 100)] } as const;
  expect(partFrame({ edges, lines: [grain] })).toEqual({ left: -30, bottom: -8, width: 100, height: 108 });
});

test("a drawn line is as long as its pieces together", () => {
  expect(lineLength([flat(1, 1)])).toBe(0);
  expect(lineLength([flat(1, 1), flat(4, 5), flat(4, 17), flat(-1, 5)])).toBe(5 + 12 + 13);
});
