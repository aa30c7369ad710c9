import { expect, test } from "vitest";
import { compressedThickness } from "../../../src/core/calibration/compressedLayers";
import { mm, ratio } from "../../../src/core/units";

const batting = { layer: mm(6), stackCompression: ratio(0.2) };
const thin = { layer: mm(2), stackCompression: ratio(0.1) };
const counted = (building: readonly number[], finishing: readonly number[]) => ({
  building: Float64Array.from(building),
  finishing: Float64Array.from(finishing),
});

/** Broken on purpose: the first layer pressed too, the other batting taken off the stack. Seen to fail. */
test("a stack's first layer keeps its thickness, and every further one loses its share", () => {
  const stacks = [0, 0.4, 1, 2, 3, 7.5];
  const none = stacks.map(() => 0);
  const thickness = compressedThickness(counted(stacks, none), { building: batting, finishing: thin });
  for (const [i, layers] of stacks.entries())
    expect(thickness[i]).toBeCloseTo(layers <= 1 ? 6 * layers : 6 + 6 * 0.8 * (layers - 1), 9);
});

test("two battings that are alike are as thick as one, however the layers are shared between them", () => {
  const alike = { building: batting, finishing: batting };
  const together = compressedThickness(counted([4, 4, 4], [0, 0, 0]), alike);
  const shared = compressedThickness(counted([3, 1, 0], [1, 3, 4]), alike);
  for (const [i, thickness] of shared.entries()) expect(thickness).toBeCloseTo(together[i] as number, 9);
});

test("each batting of a mixed stack loses its own share of all but one layer's part", () => {
  const [thickness] = compressedThickness(counted([3], [1]), { building: batting, finishing: thin });
  expect(thickness).toBeCloseTo(3 * 6 * (1 - 0.2 * 0.75) + 2 * (1 - 0.1 * 0.75), 9);
});
