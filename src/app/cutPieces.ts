import type { PlanInput } from "../core/plan/basis";
import { type CutUse, useOfCut } from "../core/plan/cutUse";
import type { Plan, PlannedPiece } from "../core/plan/plan";
import type { Millimetres } from "../core/units";
import { planInForce } from "./learning";
import { replay, type Work } from "./replay";

/** A piece of the plan in force, and the piece cut before that it can be made of: null asks for a new one. */
export interface MadeOf {
  readonly piece: PlannedPiece;
  readonly cut: { readonly piece: PlannedPiece; readonly fit: CutUse["fit"] } | null;
}

/**
 * What the pieces of a plan that was made anew can be made of: whatever the plan before it had left to pin is taken to be cut.
 * Empty as long as the first plan is in force, for then each piece is cut for itself.
 */
export function madeOf(
  first: Plan,
  inForce: Plan,
  input: PlanInput,
  fitting: Work,
  readingError: Millimetres,
): readonly MadeOf[] {
  const at = fitting.work.findLastIndex((entry) => entry.did === "replanned");
  if (at === -1) return [];
  const before = { ...fitting, work: fitting.work.slice(0, at) };
  const pinned = new Set(replay(input, before, readingError).now.pinned.map(({ id }) => id));
  const left = planInForce(first, input, before, readingError).pieces.filter(({ id }) => !pinned.has(id));
  const wanted = inForce.pieces.slice(pinned.size);
  return usesOf(wanted, left, useOfCut(wanted, left));
}

/** Each piece beside the cut one that a use names. */
export const usesOf = (
  wanted: readonly PlannedPiece[],
  left: readonly PlannedPiece[],
  uses: readonly (CutUse | null)[],
): readonly MadeOf[] =>
  wanted.map((piece, i) => {
    const use = uses[i] ?? null;
    const cut = use === null ? undefined : left.find(({ id }) => id === use.pieceId);
    return { piece, cut: use === null || cut === undefined ? null : { piece: cut, fit: use.fit } };
  });
