import { type LevelName, levelNames, type MeasurementName } from "../../core/body/vocabulary";
import type { Millimetres } from "../../core/units";
import { entryLength, type Fitting } from "../../document/fitting";
import { readingName, type TapePart, tapeParts } from "./padProgress";

/** One reading that was taken, by its place and its length. */
interface TakenReading {
  readonly name: MeasurementName;
  readonly length: Millimetres;
}

/**
 * The readings taken with a piece as the last one pinned, by the piece's id: of a place read twice only the last. A piece
 * that came off again, and what was read over it, is left out.
 */
export function readingsAfter({
  work,
  unit,
}: Pick<Fitting, "work" | "unit">): ReadonlyMap<string, readonly TakenReading[]> {
  const taken = new Map<string, readonly TakenReading[]>();
  let last: string | null = null;
  for (const entry of work) {
    if (entry.did === "pinned") last = entry.piece.id;
    if (entry.did === "unpinned") {
      taken.delete(entry.pieceId);
      if (last === entry.pieceId) last = null;
    }
    if (entry.did !== "measured" || entry.over === "cover" || last === null) continue;
    const read = Object.entries(entry.readings).flatMap(([name, typed]): readonly TakenReading[] => {
      const length = entryLength(typed, unit);
      return length.ok ? [{ name: name as MeasurementName, length: length.value }] : [];
    });
    const before = (taken.get(last) ?? []).filter(({ name }) => !read.some((one) => one.name === name));
    taken.set(last, [...before, ...read]);
  }
  return taken;
}

/** The same readings level by level, all round before front and back. */
interface LevelTaken {
  readonly level: LevelName;
  readonly parts: readonly { readonly part: TapePart; readonly length: Millimetres }[];
}

export const takenByLevel = (readings: readonly TakenReading[]): readonly LevelTaken[] =>
  levelNames.flatMap((level) => {
    const parts = tapeParts.flatMap((part) => {
      const read = readings.find(({ name }) => name === readingName(level, part));
      return read === undefined ? [] : [{ part, length: read.length }];
    });
    return parts.length === 0 ? [] : [{ level, parts }];
  });
