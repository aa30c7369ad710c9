import { onLine } from "../tolerances";
import { lowerBreastPlace } from "../body/torsoCurve";
import { reachBeyond } from "../padding/levelGaps";
import type { Piece } from "../padding/piece";
import type { PlannedLevel } from "../plan/plan";
import { formCurveOf } from "../plan/torsosOfPlan";
import { tautQuarters } from "../surface/paddedSection";
import { type PaddedSurface, paddedSurface } from "../surface/paddedSurface";
import { tapePoints } from "../tape/tape";
import { type BetweenHeights, type BetweenLine, betweenLines } from "./betweenLines";
import { type CoverGround, type CoverLine, princessShares, usualTurnUnder } from "./coverRows";
import { type ReadOver, readSurface } from "./readSurface";

/** What a cover needs to know of the form and the person besides the plan. */
export interface CoverNeeds {
  /** From apex to apex, straight (mm). */
  readonly apexToApex: number;
  /** The form's lower edge, as a depth below the nape (mm); null if nobody read it, when padding's own end stands for it. */
  readonly lowerEdge: number | null;
  /** What the tape read over the padding, from the top down, on some of the cover's lines or on all. */
  readonly read: readonly ReadOver[];
  /** At what heights it was read between the lines, where that is known; else where it is best read. */
  readonly betweenAt?: BetweenHeights;
}

/**
 * The ground of a plan's cover: the surface through what was read over the padding on the cover's lines, and through what the plan
 * foretells on those that nobody read. Cloth bridges the steps where layers end, so between the lines it runs smoothly.
 */
export function coverGround(
  levels: readonly PlannedLevel[],
  pieces: readonly Piece[],
  { apexToApex, lowerEdge, read, betweenAt }: CoverNeeds,
): CoverGround {
  const inOrder = pieces.toSorted((one, other) => one.order - other.order);
  const foretold = paddedSurface(formCurveOf(levels), inOrder, tapePoints);
  const lowest = Math.max(...levels.map(({ depthBelowNape }) => depthBelowNape.value));
  const hem = Math.max(lowest, lowerEdge ?? lowest + reachBeyond.below);
  const lines = coverLines(levels, hem, betweenAt);
  const readings = lines.map(
    (line) =>
      read.find(({ depthBelowNape }) => depthBelowNape === line.depthBelowNape) ?? foretoldReading(foretold, line),
  );
  const surface = readSurface(foretold, readings);
  const princess = princessShares({ surface, lines }, apexToApex);
  return { surface, lines, hem, turnUnder: usualTurnUnder, princess, hasSideFrontSeams: false };
}

/**
 * Where a cover is best read over the padding: on the level lines and between them, three quarters of the way from bust to
 * underbust and halfway between the rest, and around the form's lower edge. Where it was read between the same two lines at
 * another height, that is the line.
 */
export function coverLines(
  levels: readonly PlannedLevel[],
  hem: number,
  readAt: BetweenHeights = {},
): readonly CoverLine[] {
  const lines = levels.map(({ name, depthBelowNape }) => ({ name, depthBelowNape: depthBelowNape.value }));
  return lines.flatMap((line, i): readonly CoverLine[] => {
    const next = lines[i + 1]?.depthBelowNape;
    if (next === undefined)
      return hem > line.depthBelowNape ? [line, { name: "between", depthBelowNape: hem }] : [line];
    const share = line.name === "bust" ? lowerBreastPlace : 0.5;
    const best = line.depthBelowNape + share * (next - line.depthBelowNape);
    const read = line.name === "fullHip" ? undefined : readAt[line.name];
    const isBetween = read !== undefined && read - line.depthBelowNape > onLine && next - read > onLine;
    return [line, { name: "between", depthBelowNape: isBetween ? read : best }];
  });
}

/** Where the padding is best read between two level lines. */
export const linesBetween = (levels: readonly PlannedLevel[]): readonly BetweenLine[] =>
  betweenLines(coverLines(levels, Math.max(...levels.map(({ depthBelowNape }) => depthBelowNape.value))));

/** On a level line as the plan has it; between, the mean of some heights, since layers end there in steps that cloth bridges. */
function foretoldReading(foretold: PaddedSurface, { name, depthBelowNape }: CoverLine): ReadOver {
  const away = name === "between" ? bridged : [0];
  const halves = away.map((by) => {
    const { leftFront, rightFront, leftBack, rightBack } = tautQuarters(foretold.at(depthBelowNape + by));
    return { front: leftFront + rightFront, back: leftBack + rightBack };
  });
  const mean = (half: "front" | "back") => halves.reduce((sum, one) => sum + one[half], 0) / halves.length;
  return { name, depthBelowNape, girth: mean("front") + mean("back"), front: mean("front") };
}

const bridged = [-10, -5, 0, 5, 10];
