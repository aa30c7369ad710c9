import {
  type LengthProblem,
  type LengthStep,
  type LengthUnit,
  lengthFromNumber,
  parseLength,
  tapeStep,
} from "../core/lengthText";
import type { MeasurementName } from "../core/body/vocabulary";
import type { Piece } from "../core/padding/piece";
import type { Result } from "../core/result";
import type { Millimetres } from "../core/units";
import { mostEntries, mostPinned, usualSettings } from "./fittingLimits";
import type { AnyPieceFile, BattingEntry, Entries, Entry, FormEntries, KnownFitting, WorkEntry } from "./fittingSchema";
import { pieceFromFile } from "./pieceFile";
import { pieceFromFileV1 } from "./pieceFileV1";

export {
  type CoverCloth,
  type FormKind,
  type Making,
  mostEntries,
  mostPinned,
  newestVersion,
  preparations,
} from "./fittingLimits";
export type {
  AnyPieceFile,
  ArmEntry,
  BattingEntry,
  Drafts,
  Entries,
  Entry,
  FittingSettings,
  FormEntries,
  WorkEntry,
} from "./fittingSchema";

/**
 * The fitting: one body, one form, one batting and the work done so far, as a person may write it by hand and as the
 * app saves it. In memory it keeps what was typed (a number in `unit`, or text that may carry its own unit), so that
 * nothing changes by being opened; `fittingMeasurements` turns it into millimetres.
 */

export interface Fitting extends KnownFitting {
  /** Top-level keys this tool does not know, as they were read. */
  readonly extra: { readonly [key: string]: unknown };
}

/** A fitting without the texts that are still being typed. */
export type SettledFitting = Omit<Fitting, "drafts">;

/** Whether nothing more can be noted in a log; a piece is long, so there is room for fewer of them. */
export const isLogFull = (work: readonly { readonly did: WorkEntry["did"] }[]): boolean =>
  work.length >= mostEntries || work.reduce((count, { did }) => count + (did === "pinned" ? 1 : 0), 0) >= mostPinned;

/** The JSON value of a fitting: what it holds, and nothing that only repeats a default. */
export function writeFitting(fitting: Fitting): { readonly [key: string]: unknown } {
  const { extra, title, notes, drafts, settings, work, ...rest } = fitting;
  const draftKinds = Object.entries(drafts).filter(([, texts]) => Object.keys(texts).length > 0);
  return {
    ...extra,
    ...rest,
    ...(title === "" ? {} : { title }),
    ...(notes === "" ? {} : { notes }),
    ...(draftKinds.length === 0 ? {} : { drafts: Object.fromEntries(draftKinds) }),
    ...(settings.roundInches === usualSettings.roundInches ? {} : { settings }),
    ...(work.length === 0 ? {} : { work }),
  };
}

/** How finely the fitting's lengths are written. */
export const fittingStep = ({ unit, settings }: Pick<Fitting, "unit" | "settings">): LengthStep =>
  unit === "in" ? `${settings.roundInches} in` : tapeStep[unit];

/** The length an entry means in a fitting of that unit. */
export const entryLength = (entry: Entry, unit: LengthUnit): Result<Millimetres, LengthProblem> =>
  typeof entry === "number" ? lengthFromNumber(entry, unit) : parseLength(entry, unit);

/** The same fitting with another unit for what is typed from now on: bare numbers get their own unit, no length changes. */
export function withUnit(fitting: Fitting, unit: LengthUnit): Fitting {
  const keep = (entry: Entry): Entry => entryWithUnit(entry, fitting.unit);
  const keepAll = <Kind extends object>(entries: Kind): Kind =>
    Object.fromEntries(
      Object.entries(entries).map(([key, entry]) => [key, noLengths.includes(key) ? entry : keep(entry)]),
    ) as Kind;
  const keepBatting = (batting: BattingEntry): BattingEntry => ({
    ...batting,
    layerThickness: keep(batting.layerThickness),
  });
  const { finishingBatting, readingError } = fitting;
  return {
    ...fitting,
    unit,
    body: keepAll(fitting.body),
    form: keepAll(fitting.form),
    batting: keepBatting(fitting.batting),
    ...(finishingBatting === undefined ? {} : { finishingBatting: keepBatting(finishingBatting) }),
    ...(readingError === undefined ? {} : { readingError: keep(readingError) }),
    work: fitting.work.map((entry) => {
      if (entry.did === "measured") return { ...entry, readings: keepAll(entry.readings) };
      if (entry.did === "measuredBetween") return { ...entry, readings: keepAll(entry.readings) };
      if (entry.did === "builtAbove" && entry.readings !== undefined)
        return { ...entry, readings: keepAll(entry.readings) };
      if (entry.did === "trial") return { ...entry, ...keepAll(trialEntries(entry)) };
      if (entry.did === "coverChosen") return { ...entry, ...keepAll(stretchEntries(entry)) };
      return entry;
    }),
  };
}

/** A bare number with its unit written behind it; anything else as it is. */
function entryWithUnit(entry: Entry, unit: LengthUnit): Entry {
  if (typeof entry === "string")
    return meaning(entry, "cm") === meaning(entry, "mm") ? entry : `${entry.trim()} ${unit}`;
  // A number never groups its digits, but `1.005 mm` could; a further nought settles it.
  return meaning(`${entry}`, unit) === "ambiguous" ? `${entry}0 ${unit}` : `${entry} ${unit}`;
}

const meaning = (text: string, unit: LengthUnit): number | string => {
  const length = parseLength(text, unit);
  return length.ok ? length.value : length.problem.code;
};

/** Keys of a form that hold no length: the compiler asks for a new one here. */
const saysNoLength: { readonly [key in Exclude<keyof FormEntries, MeasurementName>]-?: true } = {
  table: true,
  size: true,
  readAtBodyLines: true,
  kind: true,
  shared: true,
  legs: true,
};
export const noLengths: readonly string[] = Object.keys(saysNoLength);

/** What was typed about the form itself, without the table it follows, how it was read and what it is. */
export const measurementEntries = (form: FormEntries): Entries =>
  Object.fromEntries(Object.entries(form).filter(([key]) => !noLengths.includes(key)));

/** What can be read of entries, each under its name (mm). */
export const readLengths = <Name extends string>(
  entries: { readonly [name in Name]?: Entry },
  unit: LengthUnit,
): { readonly [name in Name]?: Millimetres } =>
  Object.fromEntries(
    (Object.entries(entries) as [Name, Entry][]).flatMap(([name, entry]) => {
      const length = entryLength(entry, unit);
      return length.ok ? [[name, length.value] as const] : [];
    }),
  ) as { readonly [name in Name]?: Millimetres };

/** The piece that a log entry describes, whichever version wrote it. */
export const pieceFromWork = (file: AnyPieceFile): Piece =>
  "kind" in file ? pieceFromFile(file) : pieceFromFileV1(file);

type TrialEntry = Extract<WorkEntry, { readonly did: "trial" }>;

/** The two readings of a trial, or none where it was passed over. */
export const trialEntries = ({ before, after }: TrialEntry): { readonly before?: Entry; readonly after?: Entry } => ({
  ...(before === undefined ? {} : { before }),
  ...(after === undefined ? {} : { after }),
});

type CoverChosenEntry = Extract<WorkEntry, { readonly did: "coverChosen" }>;

/** The readings of a stretch test, as far as it was made. */
export const stretchEntries = ({
  marked,
  across,
  along,
}: CoverChosenEntry): { readonly marked?: Entry; readonly across?: Entry; readonly along?: Entry } => ({
  ...(marked === undefined ? {} : { marked }),
  ...(across === undefined ? {} : { across }),
  ...(along === undefined ? {} : { along }),
});

/** How many layers a trial has. */
export const trialLayers = ({ layers, plies }: TrialEntry): number => layers ?? plies ?? 1;
