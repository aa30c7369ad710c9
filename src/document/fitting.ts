import { z } from "./strictZod";
import {
  type LevelName,
  levelNames,
  measurementNames,
  requiredMeasurementNames,
  type MeasurementName,
} from "../core/body/vocabulary";
import {
  type LengthProblem,
  type LengthStep,
  type LengthUnit,
  lengthFromNumber,
  lengthUnits,
  parseLength,
  tapeStep,
} from "../core/lengthText";
import { err, ok, type Result } from "../core/result";
import type { Millimetres } from "../core/units";
import { fittingProblems, type FilePath, type FittingProblem } from "./fittingProblem";
import type { Frozen } from "./frozen";
import { brokenJsonLimit, jsonLimits } from "./jsonLimits";
import { isSlip, nearestName } from "./nearestName";
import type { Piece } from "../core/padding/piece";
import { pieceFileSchema, pieceFromFile } from "./pieceFile";
import { pieceFileV1Schema, pieceFromFileV1 } from "./pieceFileV1";
import { withKeysOfToday } from "./olderKeys";

/**
 * The fitting: one body, one form, one batting and the work done so far, as a person may write it by hand and as the
 * app saves it. In memory it keeps what was typed (a number in `unit`, or text that may carry its own unit), so that
 * nothing changes by being opened; `fittingMeasurements` turns it into millimetres.
 */
export const newestVersion = 1;

const entrySchema = z.union([z.number(), z.string().check(z.maxLength(60))]).register(z.globalRegistry, {
  id: "length",
  description: 'A length: a number in the fitting\'s unit, or text such as "34 3/4", "34¾ in", "88,5 cm" or "885 mm".',
});
export type Entry = z.infer<typeof entrySchema>;

const entryShape = Object.fromEntries(measurementNames.map((name) => [name, z.exactOptional(entrySchema)])) as {
  readonly [name in MeasurementName]: z.ZodMiniExactOptional<typeof entrySchema>;
};
const entriesSchema = z.strictObject(entryShape);
export type Entries = Frozen<z.infer<typeof entriesSchema>>;

const formSchema = z
  .strictObject({
    table: z
      .exactOptional(z.string().check(z.maxLength(60)))
      .check(z.meta({ description: "The id of a size chart that the form follows." })),
    size: z.exactOptional(z.union([z.string().check(z.maxLength(20)), z.number()])).check(
      z.meta({
        description:
          "The size in that chart; left out, the tool chooses. What is typed below always wins over the chart.",
      }),
    ),
    readAtBodyLines: z.exactOptional(z.boolean()).check(
      z.meta({
        description:
          "Whether what is typed here was measured on the bare form at the person's level lines, marked on it. Then the form's own heights are ignored and a size chart fills nothing.",
      }),
    ),
    ...entryShape,
  })
  .check(z.meta({ description: "The form, under the same keys as the person, or a size chart it follows, or both." }));
export type FormEntries = Frozen<z.infer<typeof formSchema>>;

const battingSchema = z.strictObject({
  name: z.string().check(z.maxLength(100)),
  layerThickness: entrySchema.check(
    z.meta({
      description: 'One layer under a snug tape: a number in the fitting\'s unit, or text such as "6 mm".',
    }),
  ),
  spread: z.exactOptional(z.number().check(z.minimum(0.01), z.maximum(2))).check(
    z.meta({
      description: "One standard deviation of that thickness, as a share of it. 0.5 if left out.",
    }),
  ),
});
export type BattingEntry = Frozen<z.infer<typeof battingSchema>>;

/** What is made ready before the first piece: the form stands firm, with whatever it will wear under the padding. */
export const preparations = ["form"] as const;

const moment = z
  .exactOptional(z.string().check(z.maxLength(40)))
  .check(z.meta({ description: "A moment, as ISO 8601 text." }));
/** Pieces of both versions of the plan file are read; only the newer one is written. */
const anyPieceSchema = z.union([pieceFileSchema, pieceFileV1Schema]);
export type AnyPieceFile = Frozen<z.infer<typeof anyPieceSchema>>;

const pieceIdSchema = z.string().check(z.minLength(1), z.maxLength(100));

/** Three times the pieces of the largest plan that was seen. */
const mostAtOnce = 200;

const placeBelowNape = z.exactOptional(z.number().check(z.minimum(1), z.maximum(3000)));
const linePlacesSchema = z
  .strictObject(
    Object.fromEntries(levelNames.map((level) => [level, placeBelowNape])) as {
      readonly [level in LevelName]: typeof placeBelowNape;
    },
  )
  .check(
    z.meta({
      description:
        "Of a measurement while nothing is pinned: how far below the nape each line was marked on the form (mm). Left out, it is the person's line as it is known now.",
    }),
  );
const workSchema = z.discriminatedUnion("did", [
  z.strictObject({ did: z.literal("pinned"), piece: anyPieceSchema, at: moment }),
  z.strictObject({ did: z.literal("unpinned"), pieceId: pieceIdSchema, at: moment }),
  z.strictObject({
    did: z.literal("measured"),
    readings: entriesSchema,
    over: z.exactOptional(z.literal("cover")).check(
      z.meta({
        description: "Measured over the finished cover; left out, over the padding itself.",
      }),
    ),
    belowNapeMm: z.exactOptional(linePlacesSchema),
    at: moment,
  }),
  z.strictObject({
    did: z.literal("trial"),
    batting: z.string().check(z.maxLength(100)),
    level: z.enum(levelNames),
    layers: z.exactOptional(z.int().check(z.minimum(1), z.maximum(20))),
    plies: z
      .exactOptional(z.int().check(z.minimum(1), z.maximum(20)))
      .check(z.meta({ description: "What older files call layers." })),
    before: z
      .exactOptional(entrySchema)
      .check(z.meta({ description: "The waist before; without it no trial was made." })),
    after: z.exactOptional(entrySchema),
    at: moment,
  }),
  z
    .strictObject({ did: z.literal("prepared"), what: z.enum(preparations), at: moment })
    .check(z.meta({ description: "Something was made ready before the first piece." })),
  z
    .strictObject({
      did: z.literal("marked"),
      belowNapeMm: z.exactOptional(linePlacesSchema).check(
        z.meta({
          description:
            "How far below the nape each line was marked; left out, every line of the plan where it lies now.",
        }),
      ),
      at: moment,
    })
    .check(z.meta({ description: "The person's level lines were marked on the bare form." })),
  z
    .strictObject({ did: z.literal("cut"), pieceId: pieceIdSchema, at: moment })
    .check(z.meta({ description: "Every layer of a piece of the plan was cut." })),
  z
    .strictObject({ did: z.literal("stacked"), pieceId: pieceIdSchema, at: moment })
    .check(z.meta({ description: "The layers of a piece were laid on each other and basted, lying flat." })),
  z
    .strictObject({
      did: z.literal("basted"),
      pieceIds: z.array(pieceIdSchema).check(z.maxLength(mostAtOnce)),
      pins: z
        .exactOptional(z.int().check(z.minimum(0), z.maximum(10_000)))
        .check(z.meta({ description: "How many pins were taken out." })),
      at: moment,
    })
    .check(z.meta({ description: "Pinned pieces were sewn down with long stitches and their pins taken out." })),
  z
    .strictObject({ did: z.literal("linesCarried"), at: moment })
    .check(z.meta({ description: "The level lines, center lines and sides were marked again over what is pinned." })),
  z
    .strictObject({ did: z.literal("looked"), at: moment })
    .check(z.meta({ description: "The padded form was looked at from the front and the side, beside the person." })),
  z
    .strictObject({ did: z.literal("replanned"), at: moment })
    .check(z.meta({ description: "The remaining pieces were updated from the measurements up to here." })),
  z
    .strictObject({
      did: z.literal("trimmed"),
      pieceId: pieceIdSchema,
      level: z.enum(levelNames),
      eachSideMm: z.number().check(z.minimum(0), z.maximum(1000)),
      at: moment,
    })
    .check(z.meta({ description: "A pinned piece was narrowed around a level line by this much on each side." })),
]);
export type WorkEntry = Frozen<z.infer<typeof workSchema>>;

const draftTextsSchema = z.record(z.string().check(z.maxLength(60)), z.string().check(z.maxLength(200)));
const noDrafts = { body: {}, form: {}, other: {} };
const draftsSchema = z
  ._default(
    z.strictObject({
      body: z._default(draftTextsSchema, {}),
      form: z._default(draftTextsSchema, {}),
      other: z._default(draftTextsSchema, {}),
    }),
    noDrafts,
  )
  .check(z.meta({ description: "Text that is typed and not readable yet: kept, and not used by the plan." }));
export type Drafts = Frozen<z.infer<typeof draftsSchema>>;

const usualSettings = { roundInches: "1/8" } as const;
const settingsSchema = z._default(
  z.strictObject({
    roundInches: z
      ._default(z.enum(["1/8", "1/16"]), usualSettings.roundInches)
      .check(z.meta({ description: "How finely inches are written." })),
  }),
  usualSettings,
);
export type FittingSettings = Frozen<z.infer<typeof settingsSchema>>;

/**
 * How long a log may be. A log that is added to here ends sooner, so that the file of it can be opened by every release
 * and in no more time than a person waits; earlier releases let it grow, and what they saved opens.
 */
export const mostEntries = 1990;
export const mostPinned = 600;
const mostEntriesRead = 10_000;

/** Whether nothing more can be noted in a log; a piece is long, so there is room for fewer of them. */
export const isLogFull = (work: readonly { readonly did: WorkEntry["did"] }[]): boolean =>
  work.length >= mostEntries || work.reduce((count, { did }) => count + (did === "pinned" ? 1 : 0), 0) >= mostPinned;

const knownShape = {
  version: z.literal(newestVersion),
  unit: z.enum(lengthUnits).check(z.meta({ description: "What a bare number means." })),
  id: z.exactOptional(z.string().check(z.maxLength(100))),
  title: z
    ._default(z.string().check(z.maxLength(200)), "")
    .check(z.meta({ description: "The person's name, or a label." })),
  notes: z._default(z.string().check(z.maxLength(20_000)), ""),
  createdAt: moment,
  changedAt: moment,
  body: entriesSchema.check(z.meta({ description: "The person." })),
  form: formSchema,
  batting: battingSchema,
  finishingBatting: z
    .exactOptional(battingSchema)
    .check(z.meta({ description: "A second, thinner batting to finish with." })),
  readingError: z
    .exactOptional(entrySchema)
    .check(z.meta({ description: "The error that nine in ten measurements stay within; 5 mm if left out." })),
  drafts: draftsSchema,
  settings: settingsSchema,
  work: z
    ._default(z.array(workSchema).check(z.maxLength(mostEntriesRead)), [])
    .check(z.meta({ description: "What was done, in order." })),
};
/** Keys of other programs are kept and written back; one that looks like a slip for ours is a problem. */
export const fittingSchema = z.looseObject(knownShape).check(
  z.meta({
    title: "Fitting",
    description: "Measurements of one person and one dress form, the batting, and the work done so far.",
  }),
);
type KnownFitting = Frozen<z.infer<z.ZodMiniObject<typeof knownShape>>>;
export interface Fitting extends KnownFitting {
  /** Top-level keys this tool does not know, as they were read. */
  readonly extra: { readonly [key: string]: unknown };
}

/** A fitting without the texts that are still being typed. */
export type SettledFitting = Omit<Fitting, "drafts">;

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
  const read = fittingSchema.safeParse(file);
  const slips = typeof file === "object" && file !== null ? misspeltKeys(Object.keys(file)) : [];
  if (!read.success) return err([...slips, ...fittingProblems(read.error, file, knownKeysAt)]);

  const fitting = fittingOf(read.data);
  const problems = [...slips, ...unreadableEntries(fitting), ...piecesAtOnce(fitting)];
  return problems.length > 0 ? err(problems) : ok(fitting);
}

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
      if (entry.did === "trial") return { ...entry, ...keepAll(trialEntries(entry)) };
      return entry;
    }),
  };
}

/** Keys of a form that hold no length. */
const noLengths: readonly string[] = ["table", "size", "readAtBodyLines"];

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

/** What was typed about the form itself, without the table it follows and how it was read. */
export const measurementEntries = ({
  table: _table,
  size: _size,
  readAtBodyLines: _readAtBodyLines,
  ...entries
}: FormEntries): Entries => entries;

/** Every length in the fitting that cannot be read. */
const unreadableEntries = (fitting: Fitting): readonly FittingProblem[] =>
  fittingEntries(fitting).flatMap(({ path, entry }): readonly FittingProblem[] => {
    const length = entryLength(entry, fitting.unit);
    return length.ok ? [] : [{ path, code: "unreadableLength", problem: length.problem }];
  });

/** The piece that a log entry describes, whichever version wrote it. */
export const pieceFromWork = (file: AnyPieceFile): Piece =>
  "kind" in file ? pieceFromFile(file) : pieceFromFileV1(file);

type TrialEntry = Extract<WorkEntry, { readonly did: "trial" }>;

/** The two readings of a trial, or none where it was passed over. */
const trialEntries = ({ before, after }: TrialEntry): { readonly before?: Entry; readonly after?: Entry } => ({
  ...(before === undefined ? {} : { before }),
  ...(after === undefined ? {} : { after }),
});

/** How many layers a trial has. */
export const trialLayers = ({ layers, plies }: TrialEntry): number => layers ?? plies ?? 1;
