import { isStructure, type Piece } from "../../core/padding/piece";
import { type Fitting, pieceFromWork } from "../../document/fitting";
import type { CurrentStep } from "./currentStep";

/** One stop of the way: a piece that is on, at hand or still to come. */
export interface RouteStop {
  readonly piece: Piece;
  readonly standing: "on" | "now" | "toCome";
}

/** The pieces on the form in the order they went on, then what the plan in force and the tuning still ask for. */
export function route({ step, plan, replan }: CurrentStep, { work }: Pick<Fitting, "work">): readonly RouteStop[] {
  const on = pinnedPieces(work);
  const now = step.piece ?? step.act?.piece ?? null;
  const toCome = new Map(
    [
      ...plan.pieces.filter(isStructure),
      ...replan.plan.pieces.filter((piece) => !isStructure(piece)),
      ...(step.piece === null ? [] : [step.piece]),
    ]
      .filter(({ id }) => !on.has(id))
      .map((piece) => [piece.id, piece] as const),
  );
  return [
    ...[...on.values()].map((piece) => ({ piece, standing: piece.id === now?.id ? "now" : "on" }) as const),
    ...[...toCome.values()].map((piece) => ({ piece, standing: piece.id === now?.id ? "now" : "toCome" }) as const),
  ];
}

/** What lies on the form, as it was pinned last, by id. */
export function pinnedPieces(work: Fitting["work"]): ReadonlyMap<string, Piece> {
  const on = new Map<string, Piece>();
  for (const entry of work) {
    if (entry.did === "pinned") on.set(entry.piece.id, pieceFromWork(entry.piece));
    if (entry.did === "unpinned") on.delete(entry.pieceId);
  }
  return on;
}
