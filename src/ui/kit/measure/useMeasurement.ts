import type { Reading } from "../../../core/body/reading";
import { type LevelName, levelNames, type MeasurementName } from "../../../core/body/vocabulary";
import type { Millimetres } from "../../../core/units";
import { entryLength } from "../../../document/fitting";
import { useDerived } from "../useDerived";
import { useDrafts, useFitting } from "../useStore";

/** What is known of one measurement now: read by a person, guessed by the tool or a table, half typed, or nothing. */
export type KnownMeasurement =
  | { readonly kind: "measured"; readonly value: Millimetres }
  | { readonly kind: "guessed"; readonly value: Millimetres; readonly spread: Millimetres }
  | { readonly kind: "table"; readonly value: Millimetres }
  | { readonly kind: "draft"; readonly text: string }
  | { readonly kind: "nothing" };

export function useMeasurement(whose: "body" | "form", name: MeasurementName): KnownMeasurement {
  const fitting = useFitting();
  const { planning } = useDerived();
  const draft = useDrafts()[whose][name];
  if (draft !== undefined) return { kind: "draft", text: draft };
  const entry = fitting[whose][name];
  const length = entry === undefined ? undefined : entryLength(entry, fitting.unit);
  if (length?.ok) return { kind: "measured", value: length.value };
  if (planning.kind === "waiting") return { kind: "nothing" };
  if (whose === "form") {
    const value = planning.form[name];
    return value === undefined ? { kind: "nothing" } : { kind: "table", value };
  }
  const guess = levelReading(planning.plan.levels, name);
  return guess?.kind === "estimated"
    ? { kind: "guessed", value: guess.value, spread: guess.spread }
    : { kind: "nothing" };
}

type Levels = Extract<ReturnType<typeof useDerived>["planning"], { readonly kind: "planned" }>["plan"]["levels"];

/** The plan's own idea of a girth, front arc or back arc of the body. */
function levelReading(levels: Levels, name: MeasurementName): Reading | undefined {
  const level = levelNames.find((start) => levelParts(start).some((part) => part.name === name));
  const part = level === undefined ? undefined : levelParts(level).find((item) => item.name === name)?.part;
  const planned = levels.find((item) => item.name === level);
  return part === undefined ? undefined : planned?.body[part];
}

const levelParts = (level: LevelName) =>
  [
    { name: `${level}Girth`, part: "girth" },
    { name: `${level}FrontArc`, part: "frontArc" },
    { name: `${level}BackArc`, part: "backArc" },
  ] as const;
