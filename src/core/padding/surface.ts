import type { SectionAt } from "../body/torsoCurve";
import { heightCurve } from "../geometry/heightCurve";
import { quarterLengths } from "../geometry/outline";

/**
 * The bare form's surface at the heights where pieces have rows: how long a front and a back quarter is at each drop
 * below the nape. Rows stand on every level and between them close enough to draw a curve (at most `rowGap` apart).
 */
export interface Surface {
  readonly drops: readonly number[];
  readonly frontQuarter: readonly number[];
  readonly backQuarter: readonly number[];
  /** The row that stands on each level, from the top level down. */
  readonly levelRows: readonly number[];
  readonly sectionAt: SectionAt;
}

/** Rows of a piece lie at most this far apart (mm): the plan file promises 20. */
const rowGap = 16;

/** How far the padding may reach above the bust and below the full hip level (mm): to the armhole, and near the form's edge. */
export const reach = { aboveBust: 70, belowFullHip: 80 } as const;

export function formSurface(drops: readonly number[], sectionAt: SectionAt): Surface {
  const top = (drops[0] as number) - reach.aboveBust;
  const bottom = (drops[drops.length - 1] as number) + reach.belowFullHip;
  const stops = [top, ...drops, bottom];
  const rows: number[] = [top];
  const levelRows: number[] = [];
  for (let i = 1; i < stops.length; i++) {
    const [from, to] = [stops[i - 1] as number, stops[i] as number];
    const steps = Math.max(1, Math.ceil((to - from) / rowGap));
    for (let step = 1; step < steps; step++) rows.push(from + ((to - from) * step) / steps);
    rows.push(to);
    if (i <= drops.length) levelRows.push(rows.length - 1);
  }
  const quarters = rows.map((drop) => quarterLengths(sectionAt(drop)));
  return {
    drops: rows,
    frontQuarter: quarters.map(({ leftFront }) => leftFront),
    backQuarter: quarters.map(({ leftBack }) => leftBack),
    levelRows,
    sectionAt,
  };
}

/**
 * A number known at each level drawn smoothly over the height: with ends that are the same it stays as it is above the bust and
 * below the full hip; else it runs out to nothing where the padding's reach ends.
 */
export function levelCurve(
  drops: readonly number[],
  values: readonly number[],
  ends: "zero" | "same",
): (drop: number) => number {
  const [first, last] = [drops[0] as number, drops[drops.length - 1] as number];
  if (ends === "same") return heightCurve(drops, values);
  return heightCurve([first - reach.aboveBust, ...drops, last + reach.belowFullHip], [0, ...values, 0]);
}
