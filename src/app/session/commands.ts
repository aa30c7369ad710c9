import type { LengthUnit } from "../../core/lengthText";
import { assertNever } from "../../core/result";
import { type LevelName, type MeasurementName, measurementNames } from "../../core/body/vocabulary";
import { type AskedAbove, askedAbove } from "../../core/above/buildAbove";
import { type BetweenReadingName, betweenReadingNames } from "../../core/cover/betweenLines";
import type { BattingRole } from "../../core/material";
import type { Millimetres } from "../../core/units";
import {
  entryLength,
  isLogFull,
  withUnit,
  type ArmEntry,
  type BattingEntry,
  type Drafts,
  type Entries,
  type Entry,
  type Fitting,
  type FittingSettings,
  type FormKind,
  type FormEntries,
  type WorkEntry,
} from "../../document/fitting";
import type { SuppliesEntry } from "../../document/suppliesSchema";
import { rereadAs, type SlippedReadings } from "./rereadAs";
import { restPlannedAnew } from "../progress/restPlannedAnew";

/**
 * Everything a person can do to a fitting. A length arrives as it was typed: one that can be read becomes an entry, an
 * empty one takes the entry away, and one that cannot be read is kept as a draft, so that nothing typed is ever lost.
 * Moments come in from outside, as ISO 8601 text; `apply` reads no clock.
 */
export type Command =
  | { readonly does: "measure"; readonly whose: "body" | "form"; readonly name: MeasurementName; readonly text: string }
  | {
      readonly does: "read";
      readonly name: MeasurementName;
      readonly text: string;
      /** Read of the bare form at one of the person's level lines: how far below the nape that line lies (mm). */
      readonly line?: { readonly level: LevelName; readonly depth: Millimetres };
      readonly at: string;
    }
  | { readonly does: "markLine"; readonly level: LevelName; readonly depth: Millimetres; readonly at: string }
  | { readonly does: "reread"; readonly slipped: SlippedReadings }
  | { readonly does: "draft"; readonly of: DraftOwner; readonly key: string; readonly text: string | null }
  | { readonly does: "chooseForm"; readonly table: string | null; readonly size: string | null }
  /** What the form is made of, and whether it must come off the padding as it was. */
  | {
      readonly does: "describeForm";
      readonly kind: FormKind | null;
      readonly isShared: boolean;
      readonly hasLegs: boolean;
    }
  | { readonly does: "changeUnit"; readonly unit: LengthUnit }
  | { readonly does: "changeSettings"; readonly settings: FittingSettings }
  | { readonly does: "rename"; readonly title: string }
  | { readonly does: "note"; readonly notes: string }
  /** Writes to a step of the work, by its key; an empty text takes the note away. */
  | { readonly does: "noteStep"; readonly key: string; readonly text: string }
  | { readonly does: "changeBatting"; readonly batting: BattingEntry }
  | { readonly does: "nameBatting"; readonly role: BattingRole; readonly name: string }
  | { readonly does: "setLayer"; readonly role: BattingRole; readonly text: string }
  | { readonly does: "changeFinishingBatting"; readonly batting: BattingEntry | null }
  /** A step that was done, as the log tells it; texts that were still being typed for it are its own now. */
  | { readonly does: "record"; readonly entry: WorkEntry }
  /** Several at once, as of a sheet that was filled in on paper; their drafts go with them. */
  | { readonly does: "recordAll"; readonly entries: readonly WorkEntry[] }
  | { readonly does: "setReadingError"; readonly text: string }
  | { readonly does: "changeSupplies"; readonly supplies: SuppliesEntry }
  | { readonly does: "chooseArm"; readonly arm: ArmEntry }
  | { readonly does: "leaveOut"; readonly entry: number }
  | { readonly does: "ignore"; readonly readings: readonly UnusedReading[] };

/** A reading that is used for nothing, by its place in the log. */
export interface UnusedReading {
  readonly entry: number;
  readonly name: MeasurementName;
}

export type DraftOwner = "body" | "form" | "other";

/** The fitting after a command. A command that changes nothing gives back the very same fitting. */
export function apply(fitting: Fitting, command: Command): Fitting {
  const after = applied(fitting, command);
  return changesPlan.has(command.does) ? restPlannedAnew(fitting, after) : after;
}

/** What may change the first plan; another unit or name for the same does not. */
const changesPlan: ReadonlySet<Command["does"]> = new Set([
  "measure",
  "reread",
  "chooseForm",
  "changeBatting",
  "setLayer",
  "changeFinishingBatting",
]);

function applied(fitting: Fitting, command: Command): Fitting {
  switch (command.does) {
    case "measure":
      return measure(fitting, command.whose, command.name, command.text);
    case "read":
      return read(fitting, command);
    case "markLine":
      return withWork(fitting, { did: "marked", belowNapeMm: depthOfLine(command), at: command.at });
    case "reread":
      return rereadAs(fitting, command.slipped);
    case "draft":
      return withDraft(fitting, command.of, command.key, command.text);
    case "chooseForm":
      return { ...fitting, form: formChoice(fitting.form, command.table, command.size) };
    case "describeForm":
      return { ...fitting, form: formDescription(fitting.form, command) };
    case "changeUnit":
      return command.unit === fitting.unit ? fitting : withUnit(fitting, command.unit);
    case "changeSettings":
      return { ...fitting, settings: command.settings };
    case "rename":
      return command.title === fitting.title ? fitting : { ...fitting, title: command.title };
    case "note":
      return command.notes === fitting.notes ? fitting : { ...fitting, notes: command.notes };
    case "noteStep":
      return noteStep(fitting, command.key, command.text);
    case "changeBatting":
      return { ...withDraft(fitting, "other", layerDraftKeys.building, null), batting: command.batting };
    case "nameBatting":
      return withBatting(fitting, command.role, { name: command.name });
    case "setLayer":
      return setLayer(fitting, command.role, command.text);
    case "changeFinishingBatting":
      return changeFinishingBatting(fitting, command.batting);
    case "record":
      return isLogFull(fitting.work) ? fitting : withWork(withoutDraftsOf(fitting, command.entry), command.entry);
    case "recordAll":
      return withoutSheetDrafts(
        command.entries.reduce((rest, entry) => apply(rest, { does: "record", entry }), fitting),
      );
    case "setReadingError":
      return entryLength(command.text, fitting.unit).ok ? { ...fitting, readingError: command.text } : fitting;
    case "changeSupplies":
      return { ...fitting, supplies: command.supplies };
    case "chooseArm":
      return { ...fitting, arm: { ...fitting.arm, ...command.arm } };
    case "leaveOut":
      return leaveOut(fitting, command.entry);
    case "ignore":
      return ignore(fitting, command.readings);
    default:
      return assertNever(command);
  }
}

/** Whether a command is a step that undo goes back over; letters of a text still being typed are not. */
export const isStep = (command: Command): boolean => command.does !== "draft";

function noteStep(fitting: Fitting, key: string, text: string): Fitting {
  const { stepNotes = {}, ...rest } = fitting;
  if ((stepNotes[key] ?? "") === text) return fitting;
  const { [key]: _, ...others } = stepNotes;
  const notes = text === "" ? others : { ...others, [key]: text };
  return Object.keys(notes).length === 0 ? rest : { ...rest, stepNotes: notes };
}

function measure(fitting: Fitting, whose: "body" | "form", name: MeasurementName, text: string): Fitting {
  const typed = text.trim();
  const without = withDraft(fitting, whose, name, null);
  if (typed === "") return setEntry(without, whose, name, undefined);
  if (!entryLength(typed, fitting.unit).ok) return withDraft(fitting, whose, name, text);
  return setEntry(without, whose, name, typed);
}

function setEntry(fitting: Fitting, whose: "body" | "form", name: MeasurementName, entry: Entry | undefined): Fitting {
  if (fitting[whose][name] === entry) return fitting;
  if (whose === "body") return { ...fitting, body: withEntry<Entries>(fitting.body, name, entry) };
  return { ...fitting, form: withEntry<FormEntries>(fitting.form, name, entry) };
}

function withEntry<Kind extends Entries>(entries: Kind, name: MeasurementName, entry: Entry | undefined): Kind {
  const { [name]: _, ...others } = entries;
  return (entry === undefined ? others : { ...others, [name]: entry }) as Kind;
}

/** A reading of the padded form: the last one of each place counts, and an empty text says nothing. */
function read(fitting: Fitting, { name, text, line, at }: Extract<Command, { readonly does: "read" }>): Fitting {
  const typed = text.trim();
  const key = readingDraftKey(name);
  if (typed === "") return withDraft(fitting, "other", key, null);
  if (!entryLength(typed, fitting.unit).ok || isLogFull(fitting.work)) return withDraft(fitting, "other", key, text);
  return withWork(withDraft(fitting, "other", key, null), {
    did: "measured",
    readings: { [name]: typed },
    ...(line === undefined ? {} : { belowNapeMm: depthOfLine(line) }),
    at,
  });
}

/** Where a line lies, to the tenth of a millimeter that files are written to. */
const depthOfLine = ({ level, depth }: { readonly level: LevelName; readonly depth: Millimetres }) => ({
  [level]: Math.round(depth * 10) / 10,
});

/** Where the text of a reading still being typed is kept: of the bare form, and of the padding or its cover. */
export const readingDraftKey = (name: MeasurementName): string => `reading.${name}`;
export const paddedDraftKey = (name: MeasurementName): string => `padded.${name}`;
/** Where the text of the next reading is kept while it is worked out which one that is. */
export const aheadDraftKey = "padded.ahead";

function withDraft(fitting: Fitting, of: DraftOwner, key: string, text: string | null): Fitting {
  const texts = fitting.drafts[of];
  if ((texts[key] ?? null) === text) return fitting;
  const { [key]: _, ...others } = texts;
  const drafts: Drafts = { ...fitting.drafts, [of]: text === null ? others : { ...others, [key]: text } };
  return { ...fitting, drafts };
}

function formChoice(form: FormEntries, table: string | null, size: string | null): FormEntries {
  const { table: _, size: __, ...typed } = form;
  return { ...typed, ...(table === null ? {} : { table }), ...(table === null || size === null ? {} : { size }) };
}

function formDescription(
  form: FormEntries,
  { kind, isShared, hasLegs }: Omit<Extract<Command, { readonly does: "describeForm" }>, "does">,
): FormEntries {
  const { kind: _, shared: __, legs: ___, ...rest } = form;
  return {
    ...rest,
    ...(kind === null ? {} : { kind }),
    ...(isShared ? { shared: true } : {}),
    ...(hasLegs ? { legs: true } : {}),
  };
}

/** The thickness of one layer, as typed; an empty field keeps the thickness there was. */
function setLayer(fitting: Fitting, role: BattingRole, text: string): Fitting {
  const typed = text.trim();
  const key = layerDraftKeys[role];
  const without = withDraft(fitting, "other", key, null);
  if (typed === "") return without;
  if (!entryLength(typed, fitting.unit).ok) return withDraft(fitting, "other", key, text);
  return withBatting(without, role, { layerThickness: typed });
}

/** Where the thickness of a layer is kept while it cannot be read yet. */
export const layerDraftKeys: { readonly [role in BattingRole]: string } = {
  building: "layerThickness",
  finishing: "finishingLayerThickness",
};

/** A change to one of the battings; to a second one that is not there it does nothing. */
function withBatting(fitting: Fitting, role: BattingRole, change: Partial<BattingEntry>): Fitting {
  if (role === "building") return { ...fitting, batting: { ...fitting.batting, ...change } };
  const { finishingBatting } = fitting;
  return finishingBatting === undefined
    ? fitting
    : { ...fitting, finishingBatting: { ...finishingBatting, ...change } };
}

/** Where the two readings of a trial are kept while they are typed. */
export const trialDraftKeys = { before: "trial.before", after: "trial.after" } as const;

/** Where a reading is kept while a filled sheet is typed in. */
export type SheetMoment = "bare" | "strip" | "structure" | "end" | "cover";
export const sheetDraftKey = (moment: SheetMoment, name: MeasurementName): string => `sheet.${moment}.${name}`;

function withoutSheetDrafts(fitting: Fitting): Fitting {
  const keys = Object.keys(fitting.drafts.other).filter((key) => key.startsWith("sheet."));
  return keys.reduce((rest, key) => withDraft(rest, "other", key, null), fitting);
}

function withoutDraftsOf(fitting: Fitting, entry: WorkEntry): Fitting {
  return draftKeysOf(entry).reduce((rest, key) => withDraft(rest, "other", key, null), fitting);
}

/** Where the texts of an entry were kept while they were typed. */
function draftKeysOf(entry: WorkEntry): readonly string[] {
  switch (entry.did) {
    case "trial":
      return Object.values(trialDraftKeys);
    case "measured":
      return measurementNames.filter((name) => name in entry.readings).map(paddedDraftKey);
    case "measuredBetween":
      return betweenReadingNames.map(betweenDraftKey);
    case "builtAbove":
      return askedAbove.map(aboveDraftKey);
    case "coverChosen":
      return Object.values(stretchDraftKeys);
    default:
      return [];
  }
}

export const betweenDraftKey = (name: BetweenReadingName): string => `between.${name}`;
/** Where a reading over what is built above the bust is kept while it is typed. */
export const aboveDraftKey = (name: AskedAbove): string => `above.${name}`;
export const stretchDraftKeys = { marked: "stretch.marked", across: "stretch.across", along: "stretch.along" } as const;

/**
 * A reading that was a slip is taken out of the log. What was read before the rest was last planned anew stays: pieces were
 * pinned by that plan, and it must remain the plan it was.
 */
function leaveOut(fitting: Fitting, at: number): Fitting {
  return isLeftOutable(fitting, at) ? { ...fitting, work: fitting.work.filter((_, i) => i !== at) } : fitting;
}

/** Readings that are used for nothing go wherever they stand, because no plan was made of them; a trial goes whole. */
function ignore(fitting: Fitting, readings: readonly UnusedReading[]): Fitting {
  const work = fitting.work.flatMap((entry, at): readonly WorkEntry[] => {
    const names = readings.flatMap((reading) => (reading.entry === at ? [reading.name] : []));
    if (names.length === 0 || (entry.did !== "measured" && entry.did !== "trial")) return [entry];
    if (entry.did === "trial") return [];
    const left = Object.entries(entry.readings).filter(([name]) => !names.some((one) => one === name));
    return left.length === 0 ? [] : [{ ...entry, readings: Object.fromEntries(left) }];
  });
  const isSame = work.length === fitting.work.length && work.every((entry, at) => entry === fitting.work[at]);
  return isSame ? fitting : { ...fitting, work };
}

export function isLeftOutable({ work }: Pick<Fitting, "work">, at: number): boolean {
  const did = work[at]?.did;
  return (did === "measured" || did === "trial") && at > work.findLastIndex((entry) => entry.did === "replanned");
}

function changeFinishingBatting(fitting: Fitting, batting: BattingEntry | null): Fitting {
  const { finishingBatting: _, ...others } = withDraft(fitting, "other", layerDraftKeys.finishing, null);
  return batting === null ? others : { ...others, finishingBatting: batting };
}

/** A log that is full takes nothing more; what was typed stays where it was typed. */
const withWork = (fitting: Fitting, entry: WorkEntry): Fitting =>
  isLogFull(fitting.work) ? fitting : { ...fitting, work: [...fitting.work, entry] };
