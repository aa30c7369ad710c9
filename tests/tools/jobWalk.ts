import { derivation } from "../../src/app/session/derived";
import { nextOfFitting } from "../../src/command/nextOfText";
import type { Section } from "../../src/core/body/section";
import { sectionOfLengths } from "../../src/core/body/sectionOfLengths";
import { sectionReading } from "../../src/core/body/sectionReading";
import { type LevelName, levelNames } from "../../src/core/body/vocabulary";
import { formCurve } from "../../src/core/form/formLines";
import { type Outline, sectionOutline } from "../../src/core/geometry/outline";
import type { Layer } from "../../src/core/padding/layer";
import { addLayer, type Laid, type LevelOutline } from "../../src/core/padding/layerThickness";
import { tapeQuarters } from "../../src/core/tape/tape";
import { tapeAgreement } from "../../src/core/tolerances";
import { mm, ratio } from "../../src/core/units";
import { type Fitting, pieceFromWork, type WorkEntry } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import type { StepFile } from "../../src/document/stepFile";
import { fittingFileOf, type Person } from "./people";
import type { Chance } from "./peopleChance";

/**
 * A whole job walked with nothing but the next step: from a bare fitting to done. The room is as it truly is and nobody there
 * knows it: what a layer adds, what stacks lose, the form's true shape, how hands cut, place and feather, and a tape
 * that errs. Drawn otherwise and wider than what the tool takes for likely.
 */
export interface Room {
  /** One layer alone over what the packet says, and the share that each further layer loses. */
  readonly layer: number;
  readonly loss: number;
  readonly exponent: readonly number[];
  readonly lnBreadth: readonly number[];
  /** Times the usual errors of hands. */
  readonly clumsy: number;
  readonly reading: number;
  readonly chance: Chance;
}

export function drawRoom(chance: Chance, clumsy = 1): Room {
  return {
    layer: Math.exp(chance.normal(0, 0.3)),
    loss: Math.max(0, chance.normal(0.1, 0.05)),
    exponent: levelNames.map(() => chance.normal(0, 0.15)),
    lnBreadth: levelNames.map(() => chance.normal(0, 0.02)),
    clumsy,
    reading: 3 * clumsy,
    chance,
  };
}

export interface JobWalk {
  readonly steps: readonly StepFile["step"]["do"][];
  /** Readings over the padding, and of the bare form with the trial's two. */
  readonly readings: number;
  readonly bareReadings: number;
  readonly pieces: number;
  readonly misses: readonly { readonly level: LevelName; readonly what: TapePart; readonly miss: number }[];
  /** Readings that the plan says it cannot meet, and of all readings those that the true form does not allow. */
  readonly excused: number;
  readonly impossible: number;
  /** Whether each nine-in-ten interval at the end held what the tape truly reads. */
  readonly held: readonly boolean[];
  readonly heldLayer: boolean;
  readonly last: StepFile;
}

const tapeParts = ["girth", "frontArc", "backArc"] as const;
type TapePart = (typeof tapeParts)[number];

/** What a job may leave out: a trial, readings of the bare form on the lines. */
export interface Shortcuts {
  readonly trial?: boolean;
  readonly lines?: boolean;
  /** So many readings are taken over the padding, no more. */
  readonly mostReadings?: number;
  /** Goes on after the padding, over which nothing changes it any more, to the end of the whole job. */
  readonly isWhole?: boolean;
}

/** The form as it truly is at a depth below the nape. */
export type TrueForm = (depthBelowNape: number) => Section;

export const mostSteps = 400;

type Next = (fitting: Fitting) => ReturnType<typeof nextOfFitting>;

/** One derivation for a whole job, as a screen has it: what did not change is not worked out again. */
function steadily(): Next {
  const derive = derivation();
  return (fitting) => nextOfFitting(fitting, derive);
}

/** Who is padded for: as a fitting file tells, and the form where it is truly another than the file lets think. */
export type Padded = Pick<Person, "body" | "form" | "batting"> & { readonly trueForm?: TrueForm };

export function walkJob(person: Padded, room: Room, shortcuts: Shortcuts = {}, nextOf: Next = steadily()): JobWalk {
  const read = readFitting(fittingFileOf(person));
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  let fitting: Fitting = read.value;
  const hands = new Hands(person, room);
  const steps: StepFile["step"]["do"][] = [];
  let [readings, bareReadings] = [0, 0];
  for (;;) {
    const next = nextOf(fitting);
    if (!next.ok) throw new Error(next.problem.join(" "));
    const { step } = next.value;
    steps.push(step.do);
    const isOver = step.do === "done" || (step.part !== "padding" && shortcuts.isWhole !== true);
    if (isOver) return { ...hands.judged(next.value, steps), readings, bareReadings };
    if (steps.length > mostSteps) throw new Error(`no end of steps: ${steps.slice(-12).join(", ")}`);
    const entry = hands.carryOut(step, shortcuts, (shortcuts.mostReadings ?? Number.POSITIVE_INFINITY) - readings);
    if (entry.did === "measured" && step.do !== "read-lines") readings += Object.keys(entry.readings).length;
    if (entry.did === "measured" && step.do === "read-lines") bareReadings += Object.keys(entry.readings).length;
    if (entry.did === "trial" && entry.before !== undefined) bareReadings += 2;
    fitting = { ...fitting, work: [...fitting.work, entry] };
  }
}

class Hands {
  private readonly pinned = new Map<string, Laid & { readonly factor: number }>();
  private levels: readonly LevelOutline[] | null = null;

  constructor(
    private readonly person: Padded,
    private readonly room: Room,
  ) {}

  /** The record of a step with what this room's tape reads. */
  carryOut({ record, do: name }: StepFile["step"], { trial = true, lines = true }: Shortcuts, left: number): WorkEntry {
    const entry = JSON.parse(JSON.stringify(record)) as WorkEntry & { readings?: object };
    if (entry.did === "pinned") this.pin(entry);
    if (entry.did === "unpinned") this.pinned.delete(entry.pieceId);
    if (entry.did === "marked") this.see(entry.belowNapeMm ?? {});
    if (entry.did === "trial") {
      const { before: _, after: __, ...passedOver } = entry;
      return trial ? { ...entry, ...this.trial(entry.layers ?? 1) } : passedOver;
    }
    if (entry.did !== "measured") return entry;
    const names =
      name === "read-lines" ? (lines ? Object.keys(entry.readings) : []) : few(Object.keys(entry.readings), left);
    return { ...entry, readings: Object.fromEntries(names.map((asked) => [asked, this.read(asked)])) };
  }

  judged(last: StepFile, steps: JobWalk["steps"]): Omit<JobWalk, "readings" | "bareReadings"> {
    const { shortfalls, seamShifts, predicted } = last.rest;
    const truth = levelNames.map((_, level) => this.truly(level));
    const told = levelNames.flatMap((level, i) => {
      const shift = seamShifts.find((one) => one.level === level);
      const moved = shift?.frontArcChangeMm ?? 0;
      const { girth, frontArc, backArc } = truth[i] as Readings;
      const marked = { girth, frontArc: frontArc + moved, backArc: backArc - moved };
      return tapeParts.map((what) => ({ level, what, value: marked[what] }));
    });
    const body = this.body();
    const judged = told.map((one) => ({
      ...one,
      miss: one.value - (body(one.level)[one.what] as number),
      isExcused: shortfalls.some(({ level, what }) => level === one.level && what === one.what),
    }));
    const layer = this.room.layer * this.person.batting.layerThickness;
    return {
      steps,
      pieces: this.pinned.size,
      misses: judged.filter(({ isExcused }) => !isExcused).map(({ level, what, miss }) => ({ level, what, miss })),
      excused: judged.filter(({ isExcused }) => isExcused).length,
      impossible: this.impossible(),
      held: told.map(({ level, what, value }) => {
        const { lowMm, highMm } = predicted[level][`${what}Mm`];
        return lowMm <= value && value <= highMm;
      }),
      heldLayer: last.layer.lowMm <= layer && layer <= last.layer.highMm,
      last,
    };
  }

  /** What the person's tape reads, as far as it was typed; the rest of a girth is the other half. */
  private body(): (level: LevelName) => { readonly [part in TapePart]: number } {
    return (level) => {
      const of = (name: "Girth" | "FrontArc" | "BackArc") => this.person.body[`${level}${name}`] as number | undefined;
      const half = (one: number | undefined, left?: number, right?: number) =>
        one ?? (left === undefined || right === undefined ? undefined : left + right);
      const { body } = this.person;
      const girth = of("Girth") ?? Number.NaN;
      const front = half(of("FrontArc"), body[`${level}LeftFrontArc`], body[`${level}RightFrontArc`]);
      const back = half(of("BackArc"), body[`${level}LeftBackArc`], body[`${level}RightBackArc`]);
      const f = front ?? girth - (back ?? Number.NaN);
      const b = back ?? girth - f;
      // Both were read and miss the girth by a little, which is shared.
      const over = (girth - f - b) / 2;
      return { girth, frontArc: f + over, backArc: b + over };
    };
  }

  /** How many girths, fronts and backs the bare form already has too large. */
  private impossible(): number {
    const body = this.body();
    return levelNames.reduce((sum, level, i) => {
      const { outline } = (this.levels as readonly LevelOutline[])[i] as LevelOutline;
      const bare = readingsOver(outline, new Float64Array(outline.count));
      const over = (what: TapePart) => bare[what] > body(level)[what] + tapeAgreement;
      const halves = over("frontArc") || over("backArc") ? 2 : 0;
      return sum + halves + (over("girth") ? 1 : 0);
    }, 0);
  }

  /** The form's true outlines at the person's lines. */
  private see(depths: { readonly [level in LevelName]?: number }): void {
    const trueDepths = Object.fromEntries(levelNames.map((name) => [name, depths[name] ?? 0])) as {
      readonly [level in LevelName]: number;
    };
    const { trueForm, form } = this.person;
    const { sectionAt } = formCurve(form, {}, trueDepths);
    this.levels = levelNames.map((name, i): LevelOutline => {
      if (trueForm !== undefined)
        return { depth: trueDepths[name], outline: sectionOutline(trueForm(trueDepths[name]), 24) };
      const section = sectionAt(trueDepths[name]);
      if (!("frontDepth" in section)) throw new Error("a made-up form is no scan");
      const { frontArc, backArc } = sectionReading(section);
      const scale = Math.exp(this.room.lnBreadth[i] ?? 0);
      const [front, back] = [section.frontExponent, section.backExponent].map((own) =>
        ratio(own + (this.room.exponent[i] ?? 0)),
      ) as [ReturnType<typeof ratio>, ReturnType<typeof ratio>];
      const truly = sectionOfLengths(
        {
          leftBreadth: mm(scale * section.leftBreadth),
          rightBreadth: mm(scale * section.rightBreadth),
          frontExponent: front,
          backExponent: back,
        },
        frontArc,
        backArc,
      );
      return { depth: trueDepths[name], outline: sectionOutline(truly, 24) };
    });
  }

  private pin({ piece }: Extract<WorkEntry, { readonly did: "pinned" }>): void {
    const { chance, clumsy } = this.room;
    const { id, anchor, layers } = pieceFromWork(piece);
    const [down, left] = [chance.between(-6, 6) * clumsy, chance.between(-6, 6) * clumsy];
    const byHand = (layer: Layer): Layer => {
      const edge = () => chance.normal(0, 3) * clumsy;
      const [start, end, top, bottom] = [edge(), edge(), edge(), edge()];
      const last = layer.rows.length - 1;
      const rows = layer.rows.map((row, i) => ({
        depthBelowNape: mm(row.depthBelowNape + down + (i === 0 ? top : i === last ? bottom : 0)),
        start: mm(row.start + left + (layer.wrap ? 0 : start)),
        end: mm(row.end + left + (layer.wrap ? 0 : end)),
      }));
      return { ...layer, feather: mm(layer.feather * Math.exp(chance.normal(0, 0.4 * clumsy))), rows };
    };
    this.pinned.set(id, { anchor, layers: layers.map(byHand), factor: 1 + chance.normal(0, 0.05) });
  }

  /** What an unerring tape reads at a level. */
  private truly(level: number): Readings {
    const { depth, outline } = (this.levels as readonly LevelOutline[])[level] as LevelOutline;
    const counts = new Float64Array(outline.count);
    for (const { anchor, layers, factor } of this.pinned.values()) {
      for (const layer of layers) addLayer(counts, layer, anchor, { depth, outline }, factor);
    }
    const alone = this.room.layer * this.person.batting.layerThickness;
    const thickness = counts.map((count) => alone * (count - this.room.loss * Math.max(0, count - 1)));
    return readingsOver(outline, thickness);
  }

  private tape(value: number): number {
    const sixteenth = 25.4 / 16;
    return Math.round(this.room.chance.normal(value, this.room.reading) / sixteenth) * sixteenth;
  }

  private read(name: string): number {
    const level = levelNames.findIndex((one) => name.startsWith(one));
    if (name.endsWith("Breadth")) {
      const { x } = ((this.levels as readonly LevelOutline[])[level] as LevelOutline).outline;
      return this.tape(Math.max(...x) - Math.min(...x));
    }
    const { girth, frontArc, backArc } = this.truly(level);
    return this.tape(name.endsWith("Girth") ? girth : name.endsWith("FrontArc") ? frontArc : backArc);
  }

  private trial(turns: number): { readonly before: number; readonly after: number } {
    const waist = levelNames.indexOf("waist");
    const { outline } = (this.levels as readonly LevelOutline[])[waist] as LevelOutline;
    const alone = this.room.layer * this.person.batting.layerThickness;
    const stack = new Float64Array(outline.count).fill(alone * (turns - this.room.loss * (turns - 1)));
    const twice = (value: number) => (this.tape(value) + this.tape(value)) / 2;
    return { before: twice(this.truly(waist).girth), after: twice(readingsOver(outline, stack).girth) };
  }
}

/** So many names, evenly spread over all that are asked. */
const few = (names: readonly string[], most: number): readonly string[] =>
  names.length <= most
    ? names
    : names.filter((_, i) => Math.floor(((i + 1) * most) / names.length) > Math.floor((i * most) / names.length));

interface Readings {
  readonly girth: number;
  readonly frontArc: number;
  readonly backArc: number;
}

function readingsOver(outline: Outline, thickness: Float64Array): Readings {
  const { leftFront, rightFront, leftBack, rightBack } = tapeQuarters(outline, thickness);
  const [frontArc, backArc] = [leftFront + rightFront, leftBack + rightBack];
  return { girth: frontArc + backArc, frontArc, backArc };
}
