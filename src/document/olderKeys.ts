import type { MeasurementName } from "../core/body/vocabulary";

/**
 * Measurements that had another key in earlier releases. Files and tables with the older key are read as the one of
 * today and written back under it; nothing else of them changes.
 */
export const olderMeasurementKeys: { readonly [older: string]: MeasurementName } = {
  acrossBack: "acrossShoulders",
  backWaistLength: "sideNeckToWaistBack",
};

/** A fitting file with the keys of today, wherever measurements are kept in it. A value that is no fitting stays as it is. */
export function withKeysOfToday(file: unknown): unknown {
  if (!isRecord(file)) return file;
  return mapped(file, {
    body: renamed,
    form: (form) => renamed(legsApart(form)),
    drafts: (drafts) => (isRecord(drafts) ? mapped(drafts, { body: renamed, form: renamed }) : drafts),
    work: (work) =>
      Array.isArray(work)
        ? work.map((entry: unknown) => (isRecord(entry) ? mapped(entry, { readings: renamed }) : entry))
        : work,
  });
}

/** Legs were a kind of form once; they are said beside what the form is made of, which was not said then. */
function legsApart(form: unknown): unknown {
  if (!isRecord(form) || form.kind !== "legs") return form;
  const { kind: _, ...rest } = form;
  return { ...rest, legs: true };
}

interface Entries {
  readonly [key: string]: unknown;
}

const isRecord = (value: unknown): value is Entries =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const mapped = (entries: Entries, at: { readonly [key: string]: (value: unknown) => unknown }): Entries =>
  Object.fromEntries(
    Object.entries(entries).map(([key, value]) => [key, Object.hasOwn(at, key) ? at[key]?.(value) : value]),
  );

/** Where both keys stand the older one is left, so that it is named as unknown and neither figure is dropped. */
const renamed = (value: unknown): unknown =>
  isRecord(value)
    ? Object.fromEntries(Object.entries(value).map(([key, entry]) => [keyOfToday(key, value), entry]))
    : value;

function keyOfToday(key: string, beside: Entries): string {
  const today = Object.hasOwn(olderMeasurementKeys, key) ? olderMeasurementKeys[key] : undefined;
  return today === undefined || Object.hasOwn(beside, today) ? key : today;
}
