import type { LengthUnit } from "../../core/lengthText";
import { onTargetAsRead } from "../../core/tolerances";
import { type Millimetres, mm } from "../../core/units";

/**
 * A measuring tape as keys: one row for each inch, of eighths, or for each centimeter, of millimeters. A key has the length and
 * the text that it types.
 */
export interface TapeKey {
  readonly length: Millimetres;
  readonly text: string;
  /** What stands on the key: the whole number at the head of a row, then the part. */
  readonly part: string;
}

const rowMm: { readonly [unit in LengthUnit]: number } = { in: 25.4, cm: 10, mm: 10 };

/** So many rows around a length, moved on by as many. */
export function tapeRows(
  around: Millimetres,
  unit: LengthUnit,
  count: number,
  moved = 0,
): readonly (readonly TapeKey[])[] {
  const row = rowMm[unit];
  const whole = Math.floor(around / row);
  // With an even count the row nearer to the length stands beside its own.
  const before = count % 2 === 1 ? (count - 1) / 2 : around / row - whole < 0.5 ? count / 2 : count / 2 - 1;
  const first = Math.max(0, whole - before + moved);
  return Array.from({ length: count }, (_, i) => keysOf(first + i, unit));
}

function keysOf(whole: number, unit: LengthUnit): readonly TapeKey[] {
  if (unit === "in") {
    return ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"].map((part, i) => ({
      length: mm((whole + i / 8) * 25.4),
      text: part === "" ? String(whole) : whole === 0 ? part : `${whole} ${part}`,
      part: part === "" ? String(whole) : part,
    }));
  }
  return Array.from({ length: 10 }, (_, i) => ({
    length: mm(whole * 10 + i),
    text: unit === "cm" ? `${whole}.${i}` : String(whole * 10 + i),
    part: i === 0 ? String(unit === "cm" ? whole : whole * 10) : String(i),
  }));
}

export type Band = "less" | "onTarget" | "more";

export const bandOf = (length: number, expected: number): Band =>
  length < expected - onTargetAsRead ? "less" : length > expected + onTargetAsRead ? "more" : "onTarget";

/** The lowest and the highest mark of the tape that are on target (mm), the ones its keys show so: an eighth of an inch apart, or a millimeter. */
export function targetMarks(expected: Millimetres, unit: LengthUnit): readonly [from: Millimetres, to: Millimetres] {
  const mark = unit === "in" ? rowMm.in / 8 : 1;
  return [
    mm(Math.ceil((expected - onTargetAsRead) / mark) * mark),
    mm(Math.floor((expected + onTargetAsRead) / mark) * mark),
  ];
}
