import { describe, expect, test } from "vitest";
import { cutFactors, knitOfTest, usualStretch } from "../../../src/core/cover/cloth";
import { type CoverMatter, coverMatters } from "../../../src/core/cover/coverMatters";
import type { FittedCover } from "../../../src/core/cover/fittedCover";
import { mm, ratio } from "../../../src/core/units";
import { knit, woven } from "./covers";

/** Broken on purpose: all of the stretch that was read; shortening as in the test, whatever the stretch in use. Seen to fail. */
describe("knit as it was tested", () => {
  test("is used at one in ten, and loses along the grain in proportion", () => {
    expect(knitOfTest({ marked: 100, across: 140, along: 92 })).toEqual({
      kind: "knit",
      stretch: usualStretch,
      shortening: expect.closeTo(0.02, 9),
    });
  });

  test("never at more than half of what was read, in whatever unit", () => {
    expect(knitOfTest({ marked: 100, across: 112, along: 100 })).toMatchObject({
      stretch: expect.closeTo(0.06, 9),
      shortening: 0,
    });
    expect(knitOfTest({ marked: 4, across: 4.48, along: 4 })).toMatchObject({ stretch: expect.closeTo(0.06, 9) });
    expect(knitOfTest({ marked: 100, across: 160, along: 95 }, 0.15)).toMatchObject({
      stretch: 0.15,
      shortening: expect.closeTo(0.0125, 9),
    });
  });

  test("cloth that does not give is cut as woven cloth is", () => {
    const stiff = knitOfTest({ marked: 100, across: 99, along: 101 });
    expect(stiff).toEqual({ kind: "knit", stretch: 0, shortening: 0 });
    expect(cutFactors(stiff)).toEqual({ across: 1, along: 1 });
  });

  test("pulled onto the form it has the surface's lengths again", () => {
    const { across, along } = cutFactors(knit);
    expect([across * 1.1, along * 0.97]).toEqual([expect.closeTo(1, 9), expect.closeTo(1, 9)]);
    expect(cutFactors({ kind: "woven", ease: ratio(0.02) })).toEqual({ across: 1.02, along: 1 });
  });
});

describe("what a cover asks for between bust and underbust", () => {
  const girths = (front: number): FittedCover["girths"] => ({
    bust: { girth: mm(1000), frontArc: mm(400 + front), backArc: mm(600 - front) },
    underbust: { girth: mm(800), frontArc: mm(400), backArc: mm(400) },
  });
  const kinds = (cloth: FittedCover["cloth"], front: number): readonly CoverMatter["kind"][] =>
    coverMatters({ cloth, girths: girths(front) }).map(({ kind }) => kind);

  /** Broken on purpose: both thresholds changed for each other. Seen to fail. */
  test("a tie over 90 mm of front loss, one more seam in woven cloth over 140 mm, nothing without the readings", () => {
    expect([kinds(woven, 80), kinds(woven, 100), kinds(woven, 150)]).toEqual([
      [],
      ["tieUnderbust"],
      ["sideFrontSeam", "tieUnderbust"],
    ]);
    expect([kinds(knit, 90), kinds(woven, 140)]).toEqual([[], ["tieUnderbust"]]);
    expect([kinds(knit, 80), kinds(knit, 150)]).toEqual([[], ["tieUnderbust"]]);
    expect(
      coverMatters({ cloth: woven, girths: { bust: girths(200).bust as NonNullable<FittedCover["girths"]["bust"]> } }),
    ).toEqual([]);
  });
});
