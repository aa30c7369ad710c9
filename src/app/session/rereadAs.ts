import type { MeasurementName } from "../../core/body/vocabulary";
import type { Millimetres } from "../../core/units";
import {
  type Entries,
  type Entry,
  entryLength,
  type Fitting,
  measurementEntries,
  withUnit,
} from "../../document/fitting";

/** Readings that were taken in one unit and typed as the other: the figures stay, the unit is put right. */
export interface SlippedReadings {
  readonly whose: "body" | "form";
  readonly names: readonly MeasurementName[];
  readonly unit: "cm" | "in";
}

/**
 * The figures as they were typed, in the unit they were read in. Where every reading of the body or the form slipped, the
 * unit of the fitting was the slip, and it follows: the next reading will be typed in it as well.
 */
export function rereadAs(fitting: Fitting, { whose, names, unit }: SlippedReadings): Fitting {
  const entries = measurementEntries(fitting[whose]);
  const reread = Object.fromEntries(
    names.flatMap((name): readonly (readonly [string, Entry])[] => {
      const entry = entries[name];
      const length = entry === undefined ? null : entryLength(entry, fitting.unit);
      return length?.ok ? [[name, `${figureOf(length.value, unit)} ${unit}`]] : [];
    }),
  ) as Entries;
  if (Object.keys(reread).length === 0) return fitting;
  const after = { ...fitting, [whose]: { ...fitting[whose], ...reread } };
  const isEvery = Object.keys(entries).every((name) => reread[name as MeasurementName] !== undefined);
  return isEvery && unit !== fitting.unit ? withUnit(after, unit) : after;
}

/** The figure a length was typed with, in the unit it was not read in, to a thousandth. */
const figureOf = (typed: Millimetres, unit: SlippedReadings["unit"]): number =>
  Math.round((typed / (unit === "cm" ? 25.4 : 10)) * 1000) / 1000;
