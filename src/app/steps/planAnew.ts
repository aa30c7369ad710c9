import type { PlannedPiece } from "../../core/plan/plan";
import type { Fitting } from "../../document/fitting";
import type { CurrentStep } from "./currentStep";
import { pinnedPieces } from "./route";

/** What an update of the remaining pieces would make of each of them; what is pinned stays as it is. */
export interface PlannedChange {
  readonly piece: PlannedPiece;
  readonly fate: "stays" | "changes" | "isNew" | "isGone";
}

export function plannedChanges(
  { plan, replan }: Pick<CurrentStep, "plan" | "replan">,
  { work }: Pick<Fitting, "work">,
): readonly PlannedChange[] {
  const on = pinnedPieces(work);
  const left = plan.pieces.filter(({ id }) => !on.has(id));
  const next = replan.plan.pieces;
  return [
    ...next.map((piece): PlannedChange => {
      const before = left.find(({ id }) => id === piece.id);
      return { piece, fate: before === undefined ? "isNew" : isSameCut(before, piece) ? "stays" : "changes" };
    }),
    ...left
      .filter(({ id }) => !next.some((piece) => piece.id === id))
      .map((piece): PlannedChange => ({ piece, fate: "isGone" })),
  ];
}

/** Cut alike: as many layers, each as wide and as tall within what scissors can tell (mm). */
function isSameCut(one: PlannedPiece, other: PlannedPiece): boolean {
  const sizes = ({ cut }: PlannedPiece) => cut.map((layer) => JSON.stringify(layer, rounded));
  const [a, b] = [sizes(one), sizes(other)];
  return a.length === b.length && a.every((size, i) => size === b[i]);
}

const rounded = (_key: string, value: unknown): unknown => (typeof value === "number" ? Math.round(value / 2) : value);
