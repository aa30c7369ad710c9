import type { LevelName, MeasurementName } from "../../core/body/vocabulary";
import type { LengthUnit } from "../../core/lengthText";
import type { TapeReading } from "../../core/plan/plan";
import { tapeAgreement } from "../../core/tolerances";
import { type Millimetres, mm } from "../../core/units";
import { type LevelNow, levelWithReadings, type NowReading, readingName, tapeParts } from "../progress/padProgress";
import type { Step } from "../steps/step";

/**
 * What a class reads off the form and somebody types in the class view. It is shown there until the class view is left, and never goes
 * into a fitting.
 */
export interface TypedReading {
  /** As it was typed, in the unit of that moment. */
  readonly text: string;
  readonly unit: LengthUnit;
  readonly length: Millimetres;
}

/** A measurement, or one of the two that the trial takes at the waist: without the strip, and over its turns. */
export type TypedName = MeasurementName | "trialBare" | "trialWrapped";
export type TypedReadings = { readonly [name in TypedName]?: TypedReading };

/** Of one person's job, by the places of its steps from 0. */
export type ClassTyped = { readonly [step: number]: TypedReadings };

/** What is asked for at a step and a level, in the order of typing; nothing where the step reads nothing that the class view shows. */
export function askedAt(step: Step, level: LevelName): readonly TypedName[] {
  switch (step.do) {
    case "trial":
      return ["trialBare", "trialWrapped"];
    case "read-lines":
      return [`${level}Girth`, `${level}FrontArc`, `${level}Breadth`];
    case "read":
    case "read-all":
    case "check":
    case "read-cover": {
      const own = tapeParts.map((part) => readingName(level, part)).filter((name) => step.names.includes(name));
      return own.length > 0 ? own : [readingName(level, "girth"), readingName(level, "frontArc")];
    }
    default:
      return [];
  }
}

/** With one reading typed, or taken back where there is none. */
export function withTyped(typed: ClassTyped, step: number, name: TypedName, reading: TypedReading | null): ClassTyped {
  const { [name]: _, ...others } = typed[step] ?? {};
  return { ...typed, [step]: reading === null ? others : { ...others, [name]: reading } };
}

/**
 * What the tape reads at a level at step `at`: what was typed at it or before it, and since then what the plan adds; null where
 * nothing was typed of that level. `planned` is what the plan expects at each step.
 */
export function typedNow(
  typed: ClassTyped,
  level: LevelName,
  at: number,
  planned: (step: number) => TapeReading,
): LevelNow | null {
  const places = Object.keys(typed)
    .map(Number)
    .filter((place) => place <= at && tapeParts.some((part) => lengthOf(typed, place, level, part) !== undefined))
    .toSorted((one, other) => one - other);
  const [first] = places;
  if (first === undefined) return null;
  let [now, from] = [expected(planned(first)), first];
  for (const place of places) {
    now = movedOn(now, planned(from), planned(place));
    const part = (name: keyof TapeReading) => lengthOf(typed, place, level, name);
    now = levelWithReadings(now, { girth: part("girth"), frontArc: part("frontArc"), backArc: part("backArc") });
    from = place;
  }
  return movedOn(now, planned(from), planned(at));
}

const lengthOf = (typed: ClassTyped, place: number, level: LevelName, part: keyof TapeReading) =>
  typed[place]?.[readingName(level, part)]?.length;

const expected = ({ girth, frontArc, backArc }: TapeReading): LevelNow => ({
  girth: { kind: "expected", value: girth },
  frontArc: { kind: "expected", value: frontArc },
  backArc: { kind: "expected", value: backArc },
});

/** A reading stands until the plan expects another one there. */
function movedOn(now: LevelNow, before: TapeReading, after: TapeReading): LevelNow {
  const moved = (part: keyof TapeReading): NowReading => {
    const by = after[part] - before[part];
    return Math.abs(by) < tapeAgreement / 6 ? now[part] : { kind: "expected", value: mm(now[part].value + by) };
  };
  return { girth: moved("girth"), frontArc: moved("frontArc"), backArc: moved("backArc") };
}

/** Why a typed reading cannot be right, whatever the batting: padding only adds, the front is a part of the whole, and the trial's strip adds as well. */
export type TypedDoubt = "lessThanBare" | "frontIsMore" | "wrappedIsLess";

/** `bare` is what the bare form reads at the level; null where that is what is being read. */
export function typedDoubt(typed: TypedReadings, level: LevelName, bare: TapeReading | null): TypedDoubt | null {
  const [girth, front] = [typed[`${level}Girth`]?.length, typed[`${level}FrontArc`]?.length];
  const { trialBare, trialWrapped } = typed;
  if (trialBare !== undefined && trialWrapped !== undefined && trialWrapped.length <= trialBare.length)
    return "wrappedIsLess";
  if (girth !== undefined && front !== undefined && front >= girth) return "frontIsMore";
  if (bare === null) return null;
  const isLess = (length: Millimetres | undefined, least: number) =>
    length !== undefined && length < least - 3 * tapeAgreement;
  return isLess(girth, bare.girth) || isLess(front, bare.frontArc) ? "lessThanBare" : null;
}
