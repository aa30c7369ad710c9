import type { QuarterReadings } from "../body/levelReadings";
import { mm } from "../units";
import type { LaidPiece } from "./laidPiece";
import { type LaidShape, layPieces, leastLaidCost, wrapRows } from "./layPieces";
import { levelGaps, nearestEdge } from "./levelGaps";
import { searchShape } from "./searchShape";
import type { ShapingLevel, ShapingProblem } from "./shapingProblem";
import { tapeQuarters } from "../tape/tape";

/**
 * The pieces that take the tape from where it stands to its targets, pinned ones left out, in the order of pinning. Of the few
 * cheapest shapes the one is taken that, drawn out and tuned, is the cheapest with what it misses in truth. A thinner finishing
 * batting makes one outer wrap over everything, wherever every quarter has that much to gain.
 */
export function shapePieces(problem: ShapingProblem, finishing: number | null): readonly LaidPiece[] {
  const skin = finishing !== null && hasRoomFor(finishing, problem) ? finishing : 0;
  const beneath = skin === 0 ? problem : { ...problem, levels: problem.levels.map((level) => lowered(level, skin)) };
  const { pieces } = searchShape(beneath).reduce((best: LaidShape, shape) => {
    if (leastLaidCost(shape) >= best.cost) return best;
    const laid = layPieces(beneath, shape);
    return laid.cost < best.cost ? laid : best;
  }, nothingLaid);
  return skin === 0 ? pieces : [...pieces, outerWrap(problem, skin)];
}

const nothingLaid: LaidShape = { pieces: [], cost: Number.POSITIVE_INFINITY };

/** A quarter of the tape turns through a right angle, and what goes all around adds its thickness times that. */
const quarterTurn = Math.PI / 2;

/** A wrap may take a quarter over its reading by this much (mm). */
const mayBeOver = 1;

const quarters = ["leftFront", "rightFront", "leftBack", "rightBack"] as const;

function hasRoomFor(thickness: number, { levels }: ShapingProblem): boolean {
  return levels.every(({ outline, pinned, target, offset }) => {
    const read = tapeQuarters(outline, pinned);
    return quarters.every((name) => target[name] - offset[name] - read[name] >= quarterTurn * thickness - mayBeOver);
  });
}

function lowered(level: ShapingLevel, thickness: number): ShapingLevel {
  const less = (name: keyof QuarterReadings) => mm(level.target[name] - quarterTurn * thickness);
  return {
    ...level,
    target: {
      leftFront: less("leftFront"),
      rightFront: less("rightFront"),
      leftBack: less("leftBack"),
      rightBack: less("rightBack"),
    },
  };
}

function outerWrap({ levels, sectionAt }: ShapingProblem, thickness: number): LaidPiece {
  const depths = levels.map(({ depth }) => depth);
  const gaps = levelGaps(depths);
  const [above, below] = [gaps[0], gaps[gaps.length - 1]].map((gap) =>
    gap === undefined ? 0 : nearestEdge(gap) + gap.room,
  ) as [number, number];
  const [top, bottom] = [(depths[0] as number) - above, (depths[depths.length - 1] as number) + below];
  const feather = mm(gaps[0]?.feather ?? 0);
  return {
    kind: "outerWrap",
    zone: "around",
    anchor: "centerFront",
    layers: [
      {
        batting: "finishing",
        thickness: mm(thickness),
        feather,
        wrap: true,
        rows: wrapRows(top, bottom, depths, sectionAt),
      },
    ],
  };
}
