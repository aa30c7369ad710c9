import type { MeasurementName } from "../../core/body/vocabulary";
import type { Millimetres } from "../../core/units";
import { entryLength, type Fitting, type WorkEntry } from "../../document/fitting";

export interface PlaceReading {
  /** The entry of the log. */
  readonly at: number;
  readonly length: Millimetres;
}

/** What was read of one place over the padding, or over its cover, since the form changed. */
export const readingsOfPlace = (
  fitting: Pick<Fitting, "work" | "unit">,
  name: MeasurementName,
  over: "padding" | "cover" = "padding",
): readonly PlaceReading[] =>
  readingsSinceChange(fitting, over).flatMap(({ entry, at }): readonly PlaceReading[] => {
    const typed = entry.readings[name];
    const length = typed === undefined ? null : entryLength(typed, fitting.unit);
    return length?.ok ? [{ at, length: length.value }] : [];
  });

/** The entries of readings since the form changed, with their places in the log. */
export function readingsSinceChange(
  { work }: Pick<Fitting, "work">,
  over: "padding" | "cover" = "padding",
): readonly {
  readonly entry: Extract<WorkEntry, { readonly did: "measured" }>;
  readonly at: number;
}[] {
  const changed = work.findLastIndex(({ did }) => did === "pinned" || did === "unpinned");
  return work.flatMap((entry, at) =>
    at > changed && entry.did === "measured" && (entry.over ?? "padding") === over ? [{ entry, at }] : [],
  );
}
