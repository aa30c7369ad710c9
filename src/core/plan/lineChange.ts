import type { LevelName } from "../body/vocabulary";
import type { LinePart } from "../form/linePart";
import { type Millimetres, mm } from "../units";
import type { Plan } from "./plan";

/** What one reading of the bare form changed in the plan, for the line that was read: everything before and after it. */
export interface LineChange {
  readonly level: LevelName;
  /** Where the padding at that line is counted: all around, or in front alone if the front was read. */
  readonly counted: "girth" | "frontArc";
  /** What the padding adds there (mm). */
  readonly toAdd: Both<Millimetres>;
  readonly pieces: Both<number>;
  /** What nine in ten first readings lie within (mm). */
  readonly mayMiss: Both<Millimetres>;
  /** The plan has just ceased to be a draft. */
  readonly isFirmNow: boolean;
}
interface Both<Value> {
  readonly before: Value;
  readonly after: Value;
}

export function lineChange(before: Plan, after: Plan, level: LevelName, part: LinePart): LineChange {
  const counted = part === "frontArc" ? part : "girth";
  const both = <Value>(of: (plan: Plan) => Value): Both<Value> => ({ before: of(before), after: of(after) });
  return {
    level,
    counted,
    toAdd: both((plan) => padding(plan, level, counted)),
    pieces: both(({ pieces }) => pieces.length),
    mayMiss: both(({ mayMiss }) => mayMiss),
    isFirmNow: before.basis === "draft" && after.basis === "lines",
  };
}

function padding({ levels, bareForm }: Plan, level: LevelName, counted: LineChange["counted"]): Millimetres {
  const predicted = levels.find(({ name }) => name === level)?.predicted[counted] ?? bareForm[level][counted];
  return mm(Math.max(0, predicted - bareForm[level][counted]));
}
