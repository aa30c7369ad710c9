import { describe, expect, test } from "vitest";
import { torsoReadings, type LevelReadings } from "../../../src/core/body/levelReadings";
import { sectionOfLengths } from "../../../src/core/body/sectionOfLengths";
import { solveSection } from "../../../src/core/body/solveSection";
import { levelNames } from "../../../src/core/body/vocabulary";
import { quarterLengths } from "../../../src/core/geometry/outline";
import { straightDeviation } from "../../../src/core/tolerances";
import { mm, ratio } from "../../../src/core/units";
import { people } from "../../tools/people";

/** A made-up body whose depth front to back was read so much off what is taken without it, at every level. */
const levelsRead = (off: number): readonly LevelReadings[] =>
  people(6).flatMap(({ body }) => {
    const plain = torsoReadings(body).levels;
    const deep = levelNames.map((name) => {
      const { frontDepth, backDepth } = solveSection({ ...plain[name], depth: null });
      return [`${name}Depth`, mm(Math.round(frontDepth + backDepth + off))] as const;
    });
    const { levels } = torsoReadings({ ...body, ...Object.fromEntries(deep) });
    return levelNames.map((name) => levels[name]);
  });

const deviationOf = ({ breadth }: LevelReadings) =>
  breadth.kind === "estimated" ? breadth.standardDeviation : straightDeviation;

/** How improbable a breadth and exponents are that many deviations off, with the depth that the lengths then leave. */
function improbable(level: LevelReadings, breadth: number, exponent: number): number {
  const { frontArc, backArc, exponents, depth } = level;
  const half = mm((level.breadth.value + breadth * deviationOf(level)) / 2);
  const square = exponent * exponents.standardDeviation;
  const { frontDepth, backDepth } = sectionOfLengths(
    {
      leftBreadth: half,
      rightBreadth: half,
      frontExponent: ratio(exponents.front + square),
      backExponent: ratio(exponents.back + square),
    },
    frontArc.value,
    backArc.value,
  );
  const miss = (frontDepth + backDepth - (depth?.value ?? 0)) / straightDeviation;
  return breadth ** 2 + exponent ** 2 + miss ** 2;
}

/** Broken on purpose: one round instead of five, the difference of two depths for their sum, a probe's sign. Seen to fail. */
describe("a section whose depth was read", () => {
  test.each([-12, 5, 14])("%i mm off is the most probable of all around it", (off) => {
    for (const level of levelsRead(off)) {
      const { leftBreadth, rightBreadth, frontExponent } = solveSection({ ...level, quarters: null });
      const breadth = (leftBreadth + rightBreadth - level.breadth.value) / deviationOf(level);
      const exponent = (frontExponent - level.exponents.front) / level.exponents.standardDeviation;
      const least = improbable(level, breadth, exponent);
      for (const [wider, squarer] of [
        [0.2, 0],
        [-0.2, 0],
        [0, 0.2],
        [0, -0.2],
        [0.15, 0.15],
        [-0.15, -0.15],
      ] as const)
        expect(improbable(level, breadth + wider, exponent + squarer)).toBeGreaterThan(least - 0.003);
      expect(least).toBeLessThan(improbable(level, 0, 0));
    }
  });

  test("still reads its lengths front and back", () => {
    for (const level of levelsRead(9)) {
      const read = quarterLengths(solveSection({ ...level, quarters: null }));
      expect(read.leftFront + read.rightFront).toBeCloseTo(level.frontArc.value, 1);
      expect(read.leftBack + read.rightBack).toBeCloseTo(level.backArc.value, 1);
    }
  });

  test("runs deeper where more was read, and shallower where less", () => {
    const depths = ([off]: readonly number[]) =>
      levelsRead(off ?? 0).map((level) => {
        const { frontDepth, backDepth } = solveSection(level);
        return frontDepth + backDepth;
      });
    const [less, same, more] = [depths([-10]), depths([0]), depths([10])];
    for (const [i, depth] of same.entries()) {
      expect(less[i]).toBeLessThan(depth);
      expect(more[i]).toBeGreaterThan(depth);
    }
  });
});
