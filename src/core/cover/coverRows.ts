import { lengthPrecision } from "../body/sectionOfLengths";
import type { LevelName } from "../body/vocabulary";
import { root } from "../numerics/root";
import { closeDepths, type PaddedSurface } from "../surface/paddedSurface";
import { type CoverSeamName, seamsAround } from "./coverPanels";
import { tautPointAt, type TautSection, tautSection } from "../surface/tautSection";

/** A line of the form that a cover carries as one of its rows: a level line, or a height where something was read between them. */
export interface CoverLine {
  readonly name: LevelName | "between";
  readonly depthBelowNape: number;
}

/** Where the front princess seams lie: at this share of the way from center front to the side, on each side of the wearer. */
export interface PrincessShares {
  readonly left: number;
  readonly right: number;
}

/** Of what a cover is cut: a surface from the bust line, its top line, to below the hem. */
export interface CoverGround {
  readonly surface: PaddedSurface;
  /** From the top down, the first of them the bust line. */
  readonly lines: readonly CoverLine[];
  /** Depth below the nape of the form's lower edge (mm). */
  readonly hem: number;
  /** How much longer than the form the cover is cut, to turn under and fasten (mm). */
  readonly turnUnder: number;
  readonly princess: PrincessShares;
  /** Whether one more seam divides each side front, where woven cloth could not be eased in. */
  readonly hasSideFrontSeams: boolean;
}

/** What is turned under the form's lower edge and fastened there. Common practice, no source. */
export const usualTurnUnder = 50;

/**
 * One height of a cover: taut cloth around the surface there, with the arc lengths of all seams in their order around and
 * center back once more, from center back over the right side to center back (mm, from center front, positive to the wearer's left).
 */
export interface CoverRow {
  readonly depthBelowNape: number;
  readonly line: CoverLine["name"] | null;
  readonly tape: TautSection;
  readonly seams: readonly number[];
}

/** Rows stand this close (mm), with one on each line. */
const rowStep = 10;

/** The rows of a cover from the top line down. Beneath the form's lower edge cloth hangs straight down. */
export function coverRows(ground: CoverGround): readonly CoverRow[] {
  const { surface, lines, hem, turnUnder } = ground;
  const [top, bottom] = [(lines[0] as CoverLine).depthBelowNape, hem + turnUnder];
  const stops = [...lines.map(({ depthBelowNape }) => depthBelowNape), hem];
  return closeDepths(top, bottom, rowStep, apart(stops, top, bottom)).map((depth) => {
    const tape = tautSection(surface.at(Math.min(depth, hem)));
    const line = lines.find(({ depthBelowNape }) => depthBelowNape === depth);
    return {
      depthBelowNape: depth,
      line: line?.name ?? null,
      tape,
      seams: [
        ...seamsAround(ground.hasSideFrontSeams).map((seam) => seamPlace(seam, tape, ground.princess)),
        leftEnd(tape),
      ],
    };
  });
}

/** Two rows closer than this (mm) would make steps so low that their slant means nothing; the upper one is kept. */
const leastStep = 5;

const apart = (stops: readonly number[], top: number, bottom: number): readonly number[] =>
  stops
    .toSorted((one, other) => one - other)
    .filter((stop, i, all) => stop - (all[i - 1] ?? top) >= leastStep && bottom - stop >= leastStep);

/** Half of the back quarter: where fashion puts the seam over the shoulder blade. Common practice, no source. */
const backPrincessShare = 0.5;

function seamPlace(seam: CoverSeamName, { quarters }: TautSection, { left, right }: PrincessShares): number {
  const { leftFront, leftBack, rightFront, rightBack } = quarters;
  switch (seam) {
    case "centerBack":
      return -rightFront - rightBack;
    case "rightBackPrincess":
      return -rightFront - (1 - backPrincessShare) * rightBack;
    case "rightSide":
      return -rightFront;
    case "rightSideFrontSeam":
      return -(right + sideFrontShare * (1 - right)) * rightFront;
    case "rightFrontPrincess":
      return -right * rightFront;
    case "centerFront":
      return 0;
    case "leftFrontPrincess":
      return left * leftFront;
    case "leftSideFrontSeam":
      return (left + sideFrontShare * (1 - left)) * leftFront;
    case "leftSide":
      return leftFront;
    case "leftBackPrincess":
      return leftFront + (1 - backPrincessShare) * leftBack;
  }
}

/** Where one more seam in the side front takes up most: at this share of its width from the princess seam. Tried on true surfaces of made-up women. */
const sideFrontShare = 0.42;

/** Center back once more, at the other end of the tape. */
const leftEnd = ({ quarters: { leftFront, leftBack } }: TautSection): number => leftFront + leftBack;

/**
 * The shares at which the front princess seams pass over the apexes: on the top line, where the tape bridges from one to
 * the other, the points that stand half their distance from the middle (mm, straight). Kept away from both ends of the
 * quarter, so that no panel is narrower than a quarter of it.
 */
export function princessShares(
  { surface, lines }: Pick<CoverGround, "surface" | "lines">,
  apart: number,
): PrincessShares {
  const tape = tautSection(surface.at((lines[0] as CoverLine).depthBelowNape));
  const share = (side: 1 | -1, quarter: number) => {
    const beyond = (at: number) => Math.abs(tautPointAt(tape, side * at * quarter).x) - apart / 2;
    const found = root(beyond, { from: 0, to: 1, precision: lengthPrecision });
    return Math.min(mostShare, Math.max(leastShare, found.kind === "converged" ? found.value : found.nearest));
  };
  return { left: share(1, tape.quarters.leftFront), right: share(-1, tape.quarters.rightFront) };
}

const [leastShare, mostShare] = [0.25, 0.75];
