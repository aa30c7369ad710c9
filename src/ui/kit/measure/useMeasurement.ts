import { useEffect, useRef } from "react";
import type { Reading } from "../../../core/body/reading";
import { type LevelName, levelNames, type MeasurementName } from "../../../core/body/vocabulary";
import type { Millimetres } from "../../../core/units";
import { entryLength } from "../../../document/fitting";
import { lengthFieldState } from "../../../app/session/lengthFieldState";
import { useDerived } from "../useDerived";
import { useDispatch, useDrafts, useFitting, useLengths, useStoreItself } from "../useStore";

/** What is known of one measurement now: read by a person, guessed by the tool or a table, half typed, or nothing. */
type KnownMeasurement =
  | { readonly kind: "measured"; readonly value: Millimetres }
  | { readonly kind: "guessed"; readonly value: Millimetres; readonly standardDeviation: Millimetres }
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
    ? { kind: "guessed", value: guess.value, standardDeviation: guess.standardDeviation }
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

/** The field of the measurement at hand: it takes the caret when somebody came for it, and is finished when she leaves. */
export function useBenchField(whose: "body" | "form", name: MeasurementName, focusTurn: number) {
  const input = useRef<HTMLInputElement>(null);
  const fitting = useFitting();
  const drafts = useDrafts();
  const store = useStoreItself();
  const dispatch = useDispatch();
  const { unit, step } = useLengths();

  useEffect(() => {
    if (focusTurn > 0) input.current?.focus();
  }, [focusTurn]);

  // Whoever leaves the bench in any way has finished typing.
  useEffect(
    () => () => {
      const text = store.getState().fitting.drafts[whose][name];
      if (text !== undefined) store.dispatch({ does: "measure", whose, name, text });
    },
    [store, whose, name],
  );

  const field = lengthFieldState({
    entry: fitting[whose][name],
    draft: drafts[whose][name],
    unit,
    step,
    onDraft: (text) => dispatch({ does: "draft", of: whose, key: name, text }),
    onCommit: (text) => dispatch({ does: "measure", whose, name, text }),
  });
  return { field, input };
}
