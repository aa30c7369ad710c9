import fc from "fast-check";
import { planOfText } from "../../src/command/planOfText";
import type { Measurements } from "../../src/core/body/measurements";
import { mm } from "../../src/core/units";
import { fittingFileOf, type Person, person } from "../tools/people";
import type { PlanFile } from "../tools/planCheckerFile";

/**
 * What the laws share: made-up people by chance, and their plans, made through the same door as the command (text of a
 * fitting file in, plan file out). Every law draws from the same seed, so that a plan made for one serves the others.
 */
export const anybody: fc.Arbitrary<Person> = fc.integer({ min: 1, max: 1_000_000 }).map(person);

/** A law's chance: repeatable, and without shrinking, which means nothing between one seed's person and another's. */
export const chances = (numRuns: number) => ({ seed: 20_261_125, numRuns, endOnFailure: true });

const plans = new Map<string, PlanFile>();

/** The plan for a body on a form with a batting; refusing to plan one of these people breaks every law. */
export function planFor(people: Pick<Person, "body" | "form" | "batting">): PlanFile {
  const text = JSON.stringify(fittingFileOf(people));
  const known = plans.get(text);
  if (known !== undefined) return known;
  const made = planOfText(text);
  if (!made.ok) throw new Error(`refused to plan: ${made.problem.join(" ")}`);
  plans.set(text, made.value);
  return made.value;
}

/** The same measurements with some changed; undefined takes one away. */
export function changed(
  measurements: Measurements,
  changes: { readonly [name in keyof Measurements]?: number | undefined },
): Measurements {
  const entries = Object.entries({ ...measurements, ...changes });
  return Object.fromEntries(entries.flatMap(([name, value]) => (value === undefined ? [] : [[name, mm(value)]])));
}
