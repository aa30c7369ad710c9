import { measurementNames, requiredMeasurementNames } from "../core/body/vocabulary";
import { err, ok, type Result } from "../core/result";
import { entryLength, type Entry, type Fitting, measurementEntries, trialEntries, noLengths } from "./fitting";
import { mostAtOnce, newestVersion, noDrafts, usualSettings } from "./fittingLimits";
import { type FilePath, type FittingProblem, fittingProblems } from "./fittingProblem";
import { battingSchema, fittingSchema, knownShape, workSchema } from "./fittingSchema";
import { brokenJsonLimit, jsonLimits } from "./jsonLimits";
import { isSlip, nearestName } from "./nearestName";
import { withKeysOfToday } from "./olderKeys";
import { pieceFileSchema } from "./pieceFileSchema";
import { startingBatting } from "./startingBatting";
import type { z } from "zod/mini";

/** Reads a fitting from the text of a file, which may be anyone's. */
export function readFittingText(text: string): Result<Fitting, readonly FittingProblem[]> {
  const what = brokenJsonLimit(text);
  if (what) return err([{ path: [], code: "tooLarge", what, most: jsonLimits[what] }]);
  const file = parsed(text);
  return file === undefined ? err([{ path: [], code: "notJson" }]) : readFitting(file);
}

/** Some browsers give up on deep nesting with an error of their own, which means the same here. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

/**
 * Reads a fitting from a JSON value, whose text has been held against the limits; every length in it can be read, or the
 * problems say which cannot and why.
 */
export function readFitting(given: unknown): Result<Fitting, readonly FittingProblem[]> {
  const file = withKeysOfToday(given);
  const version = typeof file === "object" && file !== null && "version" in file ? file.version : undefined;
  if (typeof version === "number" && version > newestVersion) {
    return err([{ path: ["version"], code: "newerVersion", got: version, newest: newestVersion }]);
  }
  const read = fittingSchema.safeParse(withStartingBatting(file));
  const slips = typeof file === "object" && file !== null ? misspeltKeys(Object.keys(file)) : [];
  if (!read.success) return err([...slips, ...fittingProblems(read.error, file, knownKeysAt)]);

  const fitting = fittingOf(read.data);
  const problems = [...slips, ...unreadableEntries(fitting), ...piecesAtOnce(fitting)];
  return problems.length > 0 ? err(problems) : ok(fitting);
}

/** A file that names no batting starts with the usual one, in its own unit. */
function withStartingBatting(file: unknown): unknown {
  if (typeof file !== "object" || file === null || Array.isArray(file) || "batting" in file) return file;
  return { ...file, batting: startingBatting("unit" in file && file.unit === "in" ? "in" : "cm") };
}

function fittingOf(file: z.infer<typeof fittingSchema>): Fitting {
  const isKnown = (key: string): boolean => Object.hasOwn(knownShape, key);
  const entries = Object.entries(file);
  const known = Object.fromEntries(entries.filter(([key]) => isKnown(key))) as z.infer<
    z.ZodMiniObject<typeof knownShape>
  >;
  return { ...known, extra: Object.fromEntries(entries.filter(([key]) => !isKnown(key))) };
}

const knownKeysAt = (path: FilePath): readonly string[] => {
  const last = path.at(-1);
  if (last === "form") return [...noLengths, ...preferredNames];
  if (last === "body" || last === "readings") return preferredNames;
  if (last === "batting" || last === "finishingBatting") return Object.keys(battingSchema.shape);
  if (last === "drafts") return Object.keys(noDrafts);
  if (last === "settings") return Object.keys(usualSettings);
  return path[0] === "work" && path.length === 2
    ? workKeys
    : last === "piece"
      ? Object.keys(pieceFileSchema.shape)
      : [];
};
/** Of two equally near names the required one is meant more often. */
const preferredNames: readonly string[] = [...new Set([...requiredMeasurementNames, ...measurementNames])];
const workKeys = [...new Set(workSchema.def.options.flatMap((option) => Object.keys(option.shape)))];

/** A foreign key of at least four letters that is one or two slips away from ours is not foreign. */
const misspeltKeys = (keys: readonly string[]): readonly FittingProblem[] =>
  keys.slice(0, mostKeysCompared).flatMap((key): readonly FittingProblem[] => {
    const nearest = Object.hasOwn(knownShape, key) ? null : nearestName(key, Object.keys(knownShape));
    return nearest !== null && isSlip(key, nearest) ? [{ path: [], code: "unknownKey", key, nearest }] : [];
  });

/** Nobody writes more by hand, and each key costs a comparison with all of ours. */
const mostKeysCompared = 1_000;

/** Everything in the fitting that should be a length, with its place in the file. */
const fittingEntries = (fitting: Fitting): readonly PlacedEntry[] => [
  ...placed(["body"], fitting.body),
  ...placed(["form"], measurementEntries(fitting.form)),
  ...placed(["batting"], { layerThickness: fitting.batting.layerThickness }),
  ...(fitting.finishingBatting
    ? placed(["finishingBatting"], { layerThickness: fitting.finishingBatting.layerThickness })
    : []),
  ...(fitting.readingError === undefined ? [] : placed([], { readingError: fitting.readingError })),
  ...fitting.work.flatMap((entry, i) => {
    if (entry.did === "measured") return placed(["work", i, "readings"], entry.readings);
    return entry.did === "trial" ? placed(["work", i], trialEntries(entry)) : [];
  }),
];
interface PlacedEntry {
  readonly path: FilePath;
  readonly entry: Entry;
}

/** A log that has more pieces on the form at once than anybody pins: each is looked at for every reading. */
function piecesAtOnce({ work }: Fitting): readonly FittingProblem[] {
  const on = new Set<string>();
  for (const [i, entry] of work.entries()) {
    if (entry.did === "unpinned") on.delete(entry.pieceId);
    if (entry.did === "pinned") on.add(entry.piece.id);
    if (on.size > mostAtOnce) return [{ path: ["work", i], code: "piecesAtOnce", most: mostAtOnce }];
  }
  return [];
}

const placed = (path: FilePath, entries: { readonly [key: string]: Entry }): readonly PlacedEntry[] =>
  Object.entries(entries).map(([key, entry]) => ({ path: [...path, key], entry }));

/** Every length in the fitting that cannot be read. */
const unreadableEntries = (fitting: Fitting): readonly FittingProblem[] =>
  fittingEntries(fitting).flatMap(({ path, entry }): readonly FittingProblem[] => {
    const length = entryLength(entry, fitting.unit);
    return length.ok ? [] : [{ path, code: "unreadableLength", problem: length.problem }];
  });
