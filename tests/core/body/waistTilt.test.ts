import { expect, test } from "vitest";
import { hipLean, leftMore, tiltAdds, waistTilt } from "../../../src/core/body/waistTilt";
import { mm } from "../../../src/core/units";
import { people } from "../../tools/people";
import { tiltedReads } from "../../tools/tiltedWaist";

/** Broken on purpose: left and right exchanged, a lean of which one side gets all. Seen to fail. */
test("a lean is how much longer the left side reads, held to what a standing body does, and nothing while one is unread", () => {
  expect(hipLean({ waistToFloorLeft: mm(1030), waistToFloorRight: mm(1010) })).toBe(20);
  expect(hipLean({ waistToFloorLeft: mm(900), waistToFloorRight: mm(1010) })).toBe(-60);
  expect(hipLean({ waistToFloorLeft: mm(1030) })).toBe(0);
  expect(hipLean({ waistToFloorRight: mm(1030) })).toBe(0);
  expect(waistTilt({ waistToFloorFront: mm(1000), waistToFloorBack: mm(1018) })).toBe(18);
  expect(waistTilt({ waistToFloorFront: mm(1000), waistToFloorBack: mm(1200) })).toBe(60);
  expect(waistTilt({ waistToFloorFront: mm(1000) })).toBe(0);
  expect(waistTilt({ waistToFloorBack: mm(1000) })).toBe(0);
});

test("the left half reads more by what the girth grows over half the lean, and by nothing where it shrinks", () => {
  // 10 mm further down a hip that grows by half a millimeter a millimeter: 5 mm of 1000.
  expect(leftMore(20, 1000, 0.5)).toBeCloseTo(0.005, 12);
  expect(leftMore(-20, 1000, 0.5)).toBeCloseTo(-0.005, 12);
  expect(leftMore(20, 1000, -0.5)).toBeCloseTo(0, 12);
});

const crowd = people(30).map(({ body }) => tiltedReads(body));

/** Broken on purpose: the square of the tilt left out, half of it taken. Seen to fail. */
test.each([10, 20, 30, 40])(
  "a waist that tilts %i mm reads as much more as people do in the middle, within 1 mm",
  (tilt) => {
    const more = crowd.flatMap((reads) => [reads(tilt), reads(-tilt)]).toSorted((one, other) => one - other);
    expect(Math.abs((more[more.length / 2] as number) - tiltAdds(tilt))).toBeLessThan(1);
    expect(tiltAdds(-tilt)).toBe(tiltAdds(tilt));
  },
);
