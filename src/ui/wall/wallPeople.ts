import first from "../../../shared/demo/first.json";
import longBack from "../../../shared/demo/long-back.json";
import threeGirths from "../../../shared/demo/three-girths.json";
import twoSides from "../../../shared/demo/two-sides.json";
import { derivation } from "../../app/derived";
import type { PadProgress } from "../../app/padProgress";
import { assert } from "../../core/result";
import type { Plan } from "../../core/plan/plan";
import type { Fitting } from "../../document/fitting";
import { readFitting } from "../../document/readFitting";

/** The made-up people who can stand on the wall in place of anyone in the room. Nobody was measured for them. */
const madeUpFiles: readonly { readonly title: string }[] = [first, twoSides, longBack, threeGirths];

export const madeUpPeople = madeUpFiles.length;

export interface WallPerson {
  readonly name: string;
  readonly plan: Plan;
  readonly progress: PadProgress;
  /** What a class may take home; null for the person's own fitting, which goes nowhere from the wall. */
  readonly takeHome: Fitting | null;
}

/** A made-up person with her plan, worked out apart from any store. */
export function madeUpPerson(place: number): WallPerson {
  const file = madeUpFiles[place % madeUpPeople] ?? first;
  const fitting = readFitting(file);
  assert(fitting.ok, "a sample fitting can be read");
  const { planning, progress } = derivation()(fitting.value);
  assert(planning.kind === "planned" && progress !== null, "a sample person has a plan");
  return { name: file.title, plan: planning.plan, progress, takeHome: fitting.value };
}
