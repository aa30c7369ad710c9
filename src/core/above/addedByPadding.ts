import { type Piece, pieceExtent } from "../padding/piece";
import type { PlannedLevel } from "../plan/plan";
import { formCurveOf } from "../plan/torsosOfPlan";
import { tautQuarters } from "../surface/paddedSection";
import { paddedSurface } from "../surface/paddedSurface";
import { tapePoints } from "../tape/tape";
import type { AddedByPadding } from "./aboveInput";

/**
 * What a plan's pieces add above the bust: the same surface with and without them. Above the bust line the bare form is unknown, and
 * the surface runs on as it is there; a difference of two readings hardly feels it.
 */
export function addedByPadding(levels: readonly PlannedLevel[], pieces: readonly Piece[]): AddedByPadding {
  const inOrder = pieces.toSorted((one, other) => one.order - other.order);
  const bare = formCurveOf(levels);
  const [padded, plain] = [paddedSurface(bare, inOrder, tapePoints), paddedSurface(bare, [], tapePoints)];
  const reach = inOrder.map(pieceExtent);
  const more = (depth: number, half: (quarters: ReturnType<typeof tautQuarters>) => number) =>
    reach.some(({ top, bottom }) => depth > top && depth < bottom)
      ? half(tautQuarters(padded.at(depth))) - half(tautQuarters(plain.at(depth)))
      : 0;
  return {
    front: (depth) => more(depth, ({ leftFront, rightFront }) => leftFront + rightFront),
    back: (depth) => more(depth, ({ leftBack, rightBack }) => leftBack + rightBack),
  };
}
