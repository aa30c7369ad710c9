import { z } from "zod/mini";
import type { Measurements } from "../core/body/measurements";
import type { Reading } from "../core/body/reading";
import type { Section } from "../core/body/section";
import { levelNames, measurementNames } from "../core/body/vocabulary";
import { chartKinds, type ChartSource } from "../core/form/formTable";
import { lengthUnits, type LengthUnit } from "../core/lengthText";
import { reachOf, supportsOf } from "../core/geometry/support";
import type { Piece, PieceName } from "../core/padding/piece";
import type { FormMatter } from "../core/plan/formMatters";
import type { KnownReadings, Plan, PlannedLevel, SeamShift, Shortfall } from "../core/plan/plan";
import type { Millimetres } from "../core/units";
import type { Frozen } from "./frozen";
import { pieceFileSchema, tapeReadingSchema } from "./pieceFileSchema";
import { pieceToFile, readingToFile, tenth } from "./pieceFile";

/**
 * The plan as an open file that any program can check: millimeters under keys that end in `Mm`, rounded to a tenth,
 * with the names, places and advice a person reads beside them.
 */
const lengthMm = z.number().check(z.minimum(0));
const sourceSchema = z.enum(["measured", "estimated"]).check(
  z.meta({
    description:
      "Measured with a tape, or estimated from other measurements or from a size chart that the form follows.",
  }),
);
const readingsSourceSchema = z.strictObject({
  girthMm: sourceSchema,
  frontArcMm: sourceSchema,
  backArcMm: sourceSchema,
});
const spreadSchema = z
  .strictObject({
    girthMm: z.exactOptional(lengthMm),
    frontArcMm: z.exactOptional(lengthMm),
    backArcMm: z.exactOptional(lengthMm),
  })
  .check(z.meta({ description: "One standard deviation of each estimate, where it is known." }));

const supportDirections = 72;
const exponentSchema = z.number().check(
  z.minimum(1),
  z.meta({
    description: "Of the superellipses that make the outline: `exponent` of both halves, or one each. 2 is an ellipse.",
  }),
);

const levelSchema = z.strictObject({
  name: z.enum(levelNames),
  depthBelowNapeMm: z
    .number()
    .check(z.meta({ description: "How far below the nape the person's level line lies, straight down." })),
  depthSource: sourceSchema,
  body: z.strictObject({ ...tapeReadingSchema.shape, source: readingsSourceSchema, spreadMm: spreadSchema }),
  form: z
    .strictObject({
      ...tapeReadingSchema.shape,
      source: readingsSourceSchema,
      spreadMm: spreadSchema,
      halfBreadthMm: lengthMm.check(
        z.meta({
          description: "Half the width straight across; the mean of left and right where they differ.",
        }),
      ),
      leftHalfBreadthMm: z.exactOptional(lengthMm),
      rightHalfBreadthMm: z.exactOptional(lengthMm),
      frontDepthMm: lengthMm,
      backDepthMm: lengthMm,
      exponent: z.exactOptional(exponentSchema),
      frontExponent: z.exactOptional(exponentSchema),
      backExponent: z.exactOptional(exponentSchema),
      supportMm: z.exactOptional(z.array(z.number()).check(z.length(supportDirections))).check(
        z.meta({
          description:
            "Of a curve that is no pair of superellipses: how far it reaches from the middle of the width straight across, on the line of the side seams, in 72 directions: the first to the wearer's left, the 19th to the front, the 37th to the right, the 55th to the back.",
        }),
      ),
      known: z.enum(["line", "between", "beyond", "off"]).check(
        z.meta({
          description:
            "line: measured on this line; between: estimated from what was measured around it; beyond: above or below all that was measured; off: below the form's lower edge.",
        }),
      ),
    })
    .check(z.meta({ description: "The bare form at that height." })),
  predicted: tapeReadingSchema.check(
    z.meta({
      description: "What the tape reads after the last piece, with the side seam where seamShifts puts it.",
    }),
  ),
});

export const shortfallSchema = z.strictObject({
  level: z.enum(levelNames),
  what: z.enum(["girth", "frontArc", "backArc", "length"]),
  amountMm: lengthMm,
  sense: z
    .enum(["tooLarge", "staysShort"])
    .check(z.meta({ description: "Whether the tape reads more or less over the padded form than on the person." })),
  length: z
    .exactOptional(z.string())
    .check(z.meta({ description: 'Which fixed length of the form, where "what" is "length".' })),
  advice: z.string(),
});

export const seamShiftSchema = z.strictObject({
  level: z.enum(levelNames),
  perSideMm: lengthMm,
  towards: z.enum(["front", "back"]),
  frontArcChangeMm: z.number(),
  say: z.string(),
});

export const planFileSchema = z
  .strictObject({
    version: z.literal(2),
    unit: z.enum(lengthUnits).check(z.meta({ description: "The unit of the sentences." })),
    form: z.strictObject({
      table: z.nullable(z.string()),
      tableSource: z
        .exactOptional(z.strictObject({ kind: z.enum(chartKinds), title: z.string(), year: z.int() }))
        .check(z.meta({ description: "Where the figures of that size chart were published, and what it is." })),
      size: z.nullable(z.string()),
      measured: z
        .array(z.enum(measurementNames))
        .check(z.meta({ description: "What was measured on the form itself; the rest is from the size chart." })),
      ranking: z.array(z.strictObject({ size: z.string(), shortfallMm: lengthMm, paddingMm: lengthMm })).check(
        z.meta({
          description:
            "Where the tool chose the size: every size, best first, with how much the form is larger and how much is to be added, all around and all level lines together.",
        }),
      ),
    }),
    basis: z.enum(["draft", "lines"]).check(
      z.meta({
        description:
          "lines: the bare form was measured on every one of the person's lines. draft: what the tape reads there is estimated.",
      }),
    ),
    mayMissMm: lengthMm.check(
      z.meta({
        description: "What the first measurements over the padding may miss by: nine in ten lie within it.",
      }),
    ),
    say: z
      .exactOptional(z.string())
      .check(z.meta({ description: "Of a draft, in words: what it may miss by, and what makes it firm." })),
    matters: z.array(
      z.strictObject({
        level: z.enum(levelNames),
        what: z.enum(["belowForm", "aboveReadings", "belowReadings"]),
        amountMm: lengthMm.check(z.meta({ description: "How far the person's line lies beyond." })),
        say: z.string(),
      }),
    ),
    levels: z.array(levelSchema).check(z.meta({ description: "From the top down; find them by name." })),
    shortfalls: z.array(shortfallSchema),
    seamShifts: z.array(seamShiftSchema),
    shapesToCut: z
      .int()
      .check(z.minimum(0), z.meta({ description: "Layers of all pieces together, each cut in its own shape." })),
    pieces: z.array(pieceFileSchema),
    battingAreaMm2: z.number().check(z.minimum(0)),
    pleaseCheck: z.array(z.string()).check(z.meta({ description: "Measurements that are possible and unusual." })),
  })
  .check(
    z.meta({
      title: "Plan",
      description: "The batting that makes one dress form stand in for one body. All lengths in millimeters.",
    }),
  );
export type PlanFile = Frozen<z.infer<typeof planFileSchema>>;

/** The sentences of a plan, in one language and one unit. */
export interface PlanWords {
  readonly pieceName: (piece: PieceName) => string;
  readonly piecePlace: (piece: Piece, levels: readonly PlannedLevel[]) => string;
  /** That the plan is a draft, and what it may miss by. */
  readonly draft: (mayMiss: Millimetres) => string;
  readonly formMatter: (matter: FormMatter) => string;
  /** Told by what makes the tape read too much there: the form itself, or the padding on it. */
  readonly shortfallAdvice: (shortfall: Shortfall, cause: "form" | "padding") => string;
  readonly seamShift: (shift: SeamShift) => string;
}

/** What the plan was made from, as far as the file tells it. */
export interface PlanOrigin {
  readonly unit: LengthUnit;
  readonly table: string | null;
  /** Where the figures of the size chart were published; undefined without one. */
  readonly tableSource: ChartSource | undefined;
  readonly size: string | null;
  /** What was read off the form itself. */
  readonly measured: Measurements;
  readonly ranking: PlanFile["form"]["ranking"];
  readonly pleaseCheck: readonly string[];
}

export const planFile = (plan: Plan, words: PlanWords, origin: PlanOrigin): PlanFile => ({
  version: 2,
  unit: origin.unit,
  form: {
    table: origin.table,
    ...(origin.tableSource === undefined ? {} : { tableSource: origin.tableSource }),
    size: origin.size,
    measured: measurementNames.filter((name) => origin.measured[name] !== undefined),
    ranking: origin.ranking,
  },
  basis: plan.basis,
  mayMissMm: plan.mayMiss,
  ...(plan.basis === "draft" ? { say: words.draft(plan.mayMiss) } : {}),
  matters: plan.matters.map((matter) => ({
    level: matter.level,
    what: matter.what,
    amountMm: tenth(matter.amount),
    say: words.formMatter(matter),
  })),
  levels: plan.levels.map((level) => levelToFile(level, origin)),
  shortfalls: plan.shortfalls.map((shortfall) => shortfallToFile(shortfall, words.shortfallAdvice(shortfall, "form"))),
  seamShifts: plan.seamShifts.map((shift) => seamShiftToFile(shift, words.seamShift(shift))),
  shapesToCut: plan.shapesToCut,
  pieces: plan.pieces.map((piece) => pieceToFile(piece, words.pieceName(piece), words.piecePlace(piece, plan.levels))),
  battingAreaMm2: Math.round(plan.battingArea),
  pleaseCheck: origin.pleaseCheck,
});

function levelToFile(level: PlannedLevel, { table, measured }: PlanOrigin): PlanFile["levels"][number] {
  const isRead = table === null || level.known === "line" || measured[`${level.name}Girth`] !== undefined;
  return {
    name: level.name,
    depthBelowNapeMm: tenth(level.depthBelowNape.value),
    depthSource: level.depthBelowNape.kind,
    body: readingsToFile(level.body, true),
    form: {
      ...readingsToFile(level.form, isRead),
      ...sectionToFile(level.formSection),
      known: level.known,
    },
    predicted: readingToFile(level.predicted),
  };
}

/** A section in the fewest words that draw it: two superellipses, or its support. */
function sectionToFile(section: Section) {
  const { left, right, front, back } = reachOf(section);
  return {
    halfBreadthMm: hundredth((left + right) / 2),
    ...(left === right ? {} : { leftHalfBreadthMm: hundredth(left), rightHalfBreadthMm: hundredth(right) }),
    frontDepthMm: hundredth(front),
    backDepthMm: hundredth(back),
    ...shapeToFile(section),
  };
}

function shapeToFile(section: Section) {
  if ("support" in section) return { supportMm: supportsOf(section, supportDirections).map(hundredth) };
  const [frontExponent, backExponent] = [tenThousandth(section.frontExponent), tenThousandth(section.backExponent)];
  return frontExponent === backExponent ? { exponent: frontExponent } : { frontExponent, backExponent };
}

const tenThousandth = (value: number): number => Math.round(value * 1e4) / 1e4;

const hundredth = (length: number): number => Math.round(length * 100) / 100;

/** What a table says of a form is nobody's reading of this form. */
function readingsToFile({ girth, frontArc, backArc }: KnownReadings, isRead: boolean) {
  const source = (reading: Reading) => (isRead ? reading.kind : "estimated");
  const deviation = <Key extends string>(key: Key, reading: Reading) =>
    reading.kind === "estimated" ? { [key]: tenth(reading.standardDeviation) } : {};
  return {
    ...readingToFile({ girth: girth.value, frontArc: frontArc.value, backArc: backArc.value }),
    source: { girthMm: source(girth), frontArcMm: source(frontArc), backArcMm: source(backArc) },
    spreadMm: {
      ...deviation("girthMm", girth),
      ...deviation("frontArcMm", frontArc),
      ...deviation("backArcMm", backArc),
    },
  };
}

export const shortfallToFile = (shortfall: Shortfall, advice: string): PlanFile["shortfalls"][number] => ({
  level: shortfall.level,
  what: shortfall.what,
  amountMm: tenth(shortfall.amount),
  sense: shortfall.sense,
  ...(shortfall.what === "length" ? { length: shortfall.length } : {}),
  advice,
});

export const seamShiftToFile = (
  { level, perSide, towards }: SeamShift,
  say: string,
): PlanFile["seamShifts"][number] => ({
  level,
  perSideMm: tenth(perSide),
  towards,
  frontArcChangeMm: (towards === "back" ? 2 : -2) * tenth(perSide),
  say,
});
