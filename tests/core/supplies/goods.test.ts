import { expect, test } from "vitest";
import { battingGood, battingGoodIds, boughtLength } from "../../../src/core/supplies/goods";

/** Broken on purpose: a packet taken for a roll, inches for centimeters. Seen to fail. */
test("what batting is sold as stands in its name, inches and centimeters alike", () => {
  expect(battingGood("roll-45-in")).toEqual({ kind: "roll", id: "roll-45-in", soldIn: "in", width: 45 * 25.4 });
  expect(battingGood("roll-150-cm")).toEqual({ kind: "roll", id: "roll-150-cm", soldIn: "cm", width: 1500 });
  expect(battingGood("packet-81x96-in")).toEqual({
    kind: "packet",
    id: "packet-81x96-in",
    width: 81 * 25.4,
    length: 96 * 25.4,
  });
  for (const id of battingGoodIds) expect(battingGood(id).kind).toBe(id.split("-")[0]);
});

test("a shop cuts the next step upwards, and nothing more for a length that is one already", () => {
  expect(boughtLength(1230, "cm")).toBe(1300);
  expect(boughtLength(1300, "cm")).toBe(1300);
  expect(boughtLength(0.1 + 0.2, "mm")).toBe(100);
  expect(boughtLength(36 * 25.4, "in")).toBeCloseTo(36 * 25.4, 9);
  expect(boughtLength(36 * 25.4 + 1, "in")).toBeCloseTo((36 * 25.4 * 9) / 8, 9);
});
