import type { LengthUnit } from "../../core/lengthText";
import type { PlannedPiece } from "../../core/plan/plan";

/**
 * For which shortages of a half (mm) the table of a tuning layer gives a width: from what a tape just tells to a little more than one
 * layer adds to a half. Where the columns stand for several battings as well, none is finer than the tape.
 */
export function tuningColumns(
  { layers }: PlannedPiece,
  unit: LengthUnit,
  isForEveryBatting: boolean,
): readonly number[] {
  const most = Math.PI * (layers[0]?.thickness ?? 0);
  const steps = isForEveryBatting ? columnSteps[unit].slice(1) : columnSteps[unit];
  const step = steps.find((one) => mostColumns * one >= 0.95 * most) ?? (steps.at(-1) as number);
  const count = Math.min(mostColumns, Math.ceil((1.2 * most) / step));
  return Array.from({ length: Math.max(2, count) }, (_, i) => (i + 1) * step);
}

/** As many as stand beside the names of the lines on half a page. */
const mostColumns = 6;

const inch = 25.4;
const columnSteps: { readonly [unit in LengthUnit]: readonly [number, ...number[]] } = {
  in: [inch / 16, inch / 8, inch / 4],
  cm: [1, 3, 5, 10],
  mm: [1, 3, 5, 10],
};
