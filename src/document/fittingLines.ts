import type { Measurements } from "../core/body/measurements";
import {
  type LevelName,
  levelNames,
  levelPlaceNames,
  levelReadingNames,
  type MeasurementName,
} from "../core/body/vocabulary";
import { type FormLines, type LineReading, lineReadingNames } from "../core/form/formLines";
import { onLine } from "../core/tolerances";
import { type Millimetres, mm } from "../core/units";
import { readLengths, type Fitting, type WorkEntry } from "./fitting";

/**
 * The bare form on the person's lines, as a fitting tells it: typed for the form where `readAtBodyLines` says so, or
 * measured in the work while no piece was pinned. What was measured later counts.
 */
export type MeasuredEntry = Extract<WorkEntry, { readonly did: "measured" }>;

/** The readings of the work that were taken over the bare form. */
export function bareEntries(work: Fitting["work"]): readonly MeasuredEntry[] {
  const pinned = new Set<string>();
  return work.flatMap((entry): readonly MeasuredEntry[] => {
    if (entry.did === "pinned") pinned.add(entry.piece.id);
    if (entry.did === "unpinned") pinned.delete(entry.pieceId);
    return entry.did === "measured" && entry.over === undefined && pinned.size === 0 ? [entry] : [];
  });
}

export function measuredLines(entries: readonly MeasuredEntry[], unit: Fitting["unit"]): FormLines {
  const lines = new Map<LevelName, LineReading>();
  for (const { readings, belowNapeMm } of entries) {
    const lengths = readLengths(readings, unit);
    for (const level of levelNames) {
      const place = belowNapeMm?.[level];
      const line = lineOf(level, lengths, place === undefined ? null : mm(place));
      if (line !== null) lines.set(level, together(lines.get(level), line));
    }
  }
  return Object.fromEntries(lines);
}

/** Typed readings of the form that were all taken on the person's lines. */
export const typedLines = (typed: Measurements): FormLines =>
  Object.fromEntries(
    levelNames.flatMap((level) => {
      const line = lineOf(level, typed, null);
      return line === null ? [] : [[level, line] as const];
    }),
  );

/** What was typed of a form besides its levels, whose heights and readings count as those of the person's lines. */
export const withoutLevels = (typed: Measurements): Measurements =>
  Object.fromEntries(Object.entries(typed).filter(([name]) => !ofLevels.has(name)));

const ofLevels: ReadonlySet<string> = new Set<MeasurementName>([
  ...levelNames.flatMap((level) => levelReadingNames.map((reading) => `${level}${reading}` as const)),
  ...levelNames.flatMap((level) => levelPlaceNames.map((place) => `${level}${place}` as const)),
  "napeHeight",
  "napeToWaist",
  "waistToHighHip",
  "waistToFullHip",
  "shoulderToApex",
  "leftShoulderToApex",
  "rightShoulderToApex",
  "apexToUnderbust",
]);

function lineOf(level: LevelName, typed: Measurements, depthBelowNape: Millimetres | null): LineReading | null {
  const readings = lineReadingNames.flatMap((name) => {
    const length = typed[`${level}${name}`];
    return length === undefined ? [] : [[name, length] as const];
  });
  return readings.length === 0 ? null : { depthBelowNape, readings: Object.fromEntries(readings) };
}

/** A line read again at its place adds to what was read there; marked anew elsewhere, it starts anew. */
function together(before: LineReading | undefined, now: LineReading): LineReading {
  if (before === undefined) return now;
  const [was, is] = [before.depthBelowNape, now.depthBelowNape];
  const isMoved = was !== null && is !== null && Math.abs(was - is) > onLine;
  return isMoved ? now : { depthBelowNape: is ?? was, readings: { ...before.readings, ...now.readings } };
}
