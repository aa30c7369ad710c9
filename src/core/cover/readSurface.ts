import { exponentEstimates } from "../body/estimates";
import { type SectionFrame, sectionOfLengths } from "../body/sectionOfLengths";
import { type TorsoLine, torsoCurve } from "../body/torsoCurve";
import { levelNames } from "../body/vocabulary";
import { heightCurve } from "../geometry/heightCurve";
import { type PaddedSurface, paddedSurface } from "../surface/paddedSurface";
import { type TautSection, tautSection } from "../surface/tautSection";
import { tapePoints } from "../tape/tape";
import { mm, ratio } from "../units";
import type { CoverLine } from "./coverRows";

/** What the tape read over the padding on one of a cover's lines (mm): all around, and in front from side seam to side seam. */
export interface ReadOver extends CoverLine {
  readonly girth: number;
  readonly front: number;
}

/**
 * The surface as it was read over the padding, which is what a cover is cut for: its girth and its front run through the
 * readings and between them without overshoot, from bust to underbust as a breast does. How wide it is straight across is
 * taken from the surface that was foretold; panels' widths do not hang on that. Readings run from the top down, with one on
 * every level line; below the last the surface stays as it is there.
 */
export function readSurface(foretold: PaddedSurface, readings: readonly ReadOver[]): PaddedSurface {
  const exponents = exponentCurves(readings);
  const frameAt = (tape: TautSection): SectionFrame => ({
    leftBreadth: mm(tape.x.reduce((most, x) => Math.max(most, x), 0)),
    rightBreadth: mm(-tape.x.reduce((most, x) => Math.min(most, x), 0)),
    frontExponent: ratio(exponents.front(tape.depthBelowNape)),
    backExponent: ratio(exponents.back(tape.depthBelowNape)),
  });
  const tapeAt = (depth: number): TautSection => tautSection(foretold.at(depth));
  const lines = readings.map(({ name, depthBelowNape, girth, front }): TorsoLine => {
    const frame = frameAt(tapeAt(depthBelowNape));
    return { name, depthBelowNape, section: sectionOfLengths(frame, front, girth - front) };
  });
  return paddedSurface(torsoCurve(lines), [], tapePoints);
}

/** How square the halves are taken to be at any depth, from what is assumed at the level lines. */
function exponentCurves(readings: readonly ReadOver[]) {
  const levels = readings.flatMap(({ name, depthBelowNape }) => {
    const level = levelNames.find((one) => one === name);
    return level === undefined ? [] : [{ depthBelowNape, ...exponentEstimates[level] }];
  });
  const depths = levels.map(({ depthBelowNape }) => depthBelowNape);
  return {
    front: heightCurve(
      depths,
      levels.map(({ front }) => front),
    ),
    back: heightCurve(
      depths,
      levels.map(({ back }) => back),
    ),
  };
}
