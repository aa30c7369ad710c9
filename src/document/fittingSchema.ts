import { startingBatting } from "./startingBatting";
import { z } from "zod/mini";
import { type LevelName, levelNames, measurementNames, type MeasurementName } from "../core/body/vocabulary";
import { type AskedAbove, askedAbove, type StackPart, stackParts } from "../core/above/buildAbove";
import { type BetweenReadingName, betweenReadingNames, type LevelAbove, levelsAbove } from "../core/cover/betweenLines";
import { lengthUnits } from "../core/lengthText";
import {
  armCaps,
  armCuts,
  coverCloths,
  formKinds,
  makings,
  mostAtOnce,
  mostEntriesRead,
  mostLayersAbove,
  newestVersion,
  noDrafts,
  preparations,
  usualSettings,
} from "./fittingLimits";
import type { Frozen } from "./frozen";
import { pieceFileSchema } from "./pieceFileSchema";
import { pieceFileV1Schema } from "./pieceFileV1Schema";
import { stepNotesSchema } from "./stepNotesSchema";
import { suppliesSchema } from "./suppliesSchema";

/**
 * The schema of a fitting's file. It is loaded when a file is read; whoever only works with a fitting takes its types from `fitting`.
 */
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
    kind: z
      .exactOptional(z.enum(formKinds))
      .check(z.meta({ description: "What the form is made of, by what it does to a pin." })),
    shared: z
      .exactOptional(z.boolean())
      .check(z.meta({ description: "Whether it goes back or is shared, so that the padding must come off it whole." })),
    legs: z
      .exactOptional(z.boolean())
      .check(z.meta({ description: "Whether it has legs, whose thighs are not padded." })),
    ...entryShape,
  })
  .check(z.meta({ description: "The form, under the same keys as the person, or a size chart it follows, or both." }));
export type FormEntries = Frozen<z.infer<typeof formSchema>>;

export const battingSchema = z.strictObject({
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

const moment = z
  .exactOptional(z.string().check(z.maxLength(40)))
  .check(z.meta({ description: "A moment, as ISO 8601 text." }));
/** Pieces of both versions of the plan file are read; only the newer one is written. */
const anyPieceSchema = z.union([pieceFileSchema, pieceFileV1Schema]);
export type AnyPieceFile = Frozen<z.infer<typeof anyPieceSchema>>;

const pieceIdSchema = z.string().check(z.minLength(1), z.maxLength(100));

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
const betweenSchema = z.strictObject(
  Object.fromEntries(betweenReadingNames.map((name) => [name, z.exactOptional(entrySchema)])) as {
    readonly [name in BetweenReadingName]: z.ZodMiniExactOptional<typeof entrySchema>;
  },
);

const betweenHeightsSchema = z
  .strictObject(
    Object.fromEntries(levelsAbove.map((level) => [level, placeBelowNape])) as {
      readonly [level in LevelAbove]: typeof placeBelowNape;
    },
  )
  .check(
    z.meta({
      description:
        "How far below the nape it was measured beneath each of these level lines (mm). Left out, where a cover is best measured.",
    }),
  );
const layersOfStack = z.exactOptional(z.int().check(z.minimum(0), z.maximum(mostLayersAbove)));
const layersAboveSchema = z
  .strictObject(
    Object.fromEntries(stackParts.map((part) => [part, layersOfStack])) as {
      readonly [part in StackPart]: typeof layersOfStack;
    },
  )
  .check(z.meta({ description: "How many layers lie there now; what is left out, as many as were planned." }));
const readingsAboveSchema = z
  .strictObject(
    Object.fromEntries(askedAbove.map((name) => [name, z.exactOptional(entrySchema)])) as {
      readonly [name in AskedAbove]: z.ZodMiniExactOptional<typeof entrySchema>;
    },
  )
  .check(
    z.meta({ description: "What the tape read over it as it lies there now; what was not measured is left out." }),
  );

export const workSchema = z.discriminatedUnion("did", [
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
    .strictObject({
      did: z.literal("builtAbove"),
      build: pieceIdSchema,
      layers: z.exactOptional(layersAboveSchema),
      readings: z.exactOptional(readingsAboveSchema),
      at: moment,
    })
    .check(
      z.meta({
        description: "Something above the bust line was built and basted, or marked, or had a layer more or less.",
      }),
    ),
  z
    .strictObject({ did: z.literal("replanned"), at: moment })
    .check(z.meta({ description: "The remaining pieces were updated from the measurements up to here." })),
  z
    .strictObject({
      did: z.literal("measuredBetween"),
      readings: betweenSchema,
      belowNapeMm: z.exactOptional(betweenHeightsSchema),
      at: moment,
    })
    .check(
      z.meta({
        description:
          "The padding was measured between the level lines, for the cover; empty where that was passed over.",
      }),
    ),
  z
    .strictObject({
      did: z.literal("coverChosen"),
      cloth: z.enum(coverCloths),
      marked: z
        .exactOptional(entrySchema)
        .check(z.meta({ description: "Of the stretch test: how far apart the marks are on the fabric at rest." })),
      across: z.exactOptional(entrySchema).check(z.meta({ description: "How far apart across while it is pulled." })),
      along: z.exactOptional(entrySchema).check(z.meta({ description: "How far apart along the grain meanwhile." })),
      at: moment,
    })
    .check(z.meta({ description: "What the cover is made of; knit may have been tried." })),
  z
    .strictObject({
      did: z.literal("made"),
      what: z.enum(makings),
      passedOver: z.exactOptional(z.literal(true)).check(z.meta({ description: "It was left out." })),
      pins: z
        .exactOptional(z.int().check(z.minimum(0), z.maximum(10_000)))
        .check(z.meta({ description: "How many pins were taken out." })),
      sewnIn: z.exactOptional(z.literal(true)).check(
        z.meta({
          description:
            "Of the waist tape: it was sewn through the cover into the padding, so that the cover follows the back there.",
        }),
      ),
      at: moment,
    })
    .check(z.meta({ description: "Something was made over the finished padding." })),
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

const armSchema = z
  .strictObject({
    cut: z
      .exactOptional(z.enum(armCuts))
      .check(z.meta({ description: "From two pieces, or from one with a dart on each front edge; two if left out." })),
    cap: z.exactOptional(z.enum(armCaps)).check(
      z.meta({
        description:
          "Whether the cap ends in an oval of the arm's own, or is gathered onto one as large as the form's armhole; its own if left out.",
      }),
    ),
  })
  .check(z.meta({ description: "How the soft arm is made." }));
export type ArmEntry = Frozen<z.infer<typeof armSchema>>;

const draftTextsSchema = z.record(z.string().check(z.maxLength(60)), z.string().check(z.maxLength(200)));
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

const settingsSchema = z._default(
  z.strictObject({
    roundInches: z
      ._default(z.enum(["1/8", "1/16"]), usualSettings.roundInches)
      .check(z.meta({ description: "How finely inches are written." })),
  }),
  usualSettings,
);
export type FittingSettings = Frozen<z.infer<typeof settingsSchema>>;

export const knownShape = {
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
  batting: z._default(battingSchema, startingBatting("cm")).check(
    z.meta({
      description: "The batting it is built with. Left out, the plan is for a usual one, of which little is known.",
    }),
  ),
  finishingBatting: z
    .exactOptional(battingSchema)
    .check(z.meta({ description: "A second, thinner batting to finish with." })),
  readingError: z
    .exactOptional(entrySchema)
    .check(z.meta({ description: "The error that nine in ten measurements stay within; 5 mm if left out." })),
  supplies: z.exactOptional(suppliesSchema),
  arm: z.exactOptional(armSchema),
  stepNotes: z.exactOptional(stepNotesSchema),
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
export type KnownFitting = Frozen<z.infer<z.ZodMiniObject<typeof knownShape>>>;
