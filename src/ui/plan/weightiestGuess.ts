import type { Reading } from "../../core/body/reading";
import { mapLevels, type MeasurementName } from "../../core/body/vocabulary";
import type { Plan, PlannedLevel } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";

/**
 * The guess that moves the plan most: of everything a tape could still read, the estimate with the widest spread in what
 * the tape reads. A height moves a reading by as much as the form's girth changes over its spread.
 */
export interface WeightyGuess {
  readonly whose: "body" | "form";
  readonly name: MeasurementName;
  /** One standard deviation of the guess itself (mm). */
  readonly spread: Millimetres;
}

/** What was typed already is asked for no more; a form that is only supposed is not asked for at all. */
export interface AlreadyRead {
  readonly body: { readonly [name in MeasurementName]?: unknown };
  readonly form: { readonly [name in MeasurementName]?: unknown };
  readonly isFormKnown: boolean;
}

export function weightiestGuess({ levels }: Pick<Plan, "levels">, read: AlreadyRead): WeightyGuess | null {
  const guesses = levels.flatMap((level, i): readonly (WeightyGuess & { readonly inEffect: number })[] => [
    ...guess("body", `${level.name}Girth`, level.body.girth),
    ...guess("body", `${level.name}FrontArc`, level.body.frontArc),
    ...guess("body", heightNames[level.name], level.drop, formSlope(levels, i)),
    ...(read.isFormKnown
      ? [
          ...guess("form", `${level.name}Girth`, level.form.girth),
          ...guess("form", `${level.name}FrontArc`, level.form.frontArc),
        ]
      : []),
  ]);
  const open = guesses.filter(({ whose, name }) => read[whose][name] === undefined);
  const most = open.reduce<(typeof open)[number] | null>(
    (best, one) => (best === null || one.inEffect > best.inEffect ? one : best),
    null,
  );
  return most === null ? null : { whose: most.whose, name: most.name, spread: most.spread };
}

/** What tells where a level's line lies: its height above the floor; a tape over the body is off by more. */
const heightNames = mapLevels((level) => `${level}Height` as const);

function guess(
  whose: "body" | "form",
  name: MeasurementName,
  reading: Reading,
  perMm = 1,
): readonly (WeightyGuess & { readonly inEffect: number })[] {
  if (reading.kind === "measured") return [];
  return [{ whose, name, spread: mm(reading.spread), inEffect: reading.spread * Math.abs(perMm) }];
}

/** How fast the form's girth grows with the drop around a level (mm for each mm). */
function formSlope(levels: readonly PlannedLevel[], at: number): number {
  const [above, below] = [levels[Math.max(0, at - 1)], levels[Math.min(levels.length - 1, at + 1)]];
  if (above === undefined || below === undefined || above === below) return 0;
  return (below.form.girth.value - above.form.girth.value) / (below.drop.value - above.drop.value);
}
