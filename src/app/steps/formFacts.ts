import type { Measurements } from "../../core/body/measurements";
import type { LevelName } from "../../core/body/vocabulary";
import type { Plan } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import type { FormKind } from "../../document/fitting";

/** What a form is, and what follows for every instruction. */
export interface FormFacts {
  readonly kind: FormKind | null;
  readonly isShared: boolean;
  readonly hasLegs: boolean;
  /** Whether everything is pinned and basted to an under-cover, because nothing else holds it or it must come off whole. */
  readonly hasUnderCover: boolean;
  /** Of a form with dials: at most so much around at each level that has one (mm), a layer below the person. */
  readonly dials: readonly { readonly level: LevelName; readonly most: Millimetres }[];
}

/** Shells that hold no pin. */
const pinless: ReadonlySet<FormKind> = new Set(["hard", "dials", "stretch"]);
const dialed = ["bust", "waist", "fullHip"] as const satisfies readonly LevelName[];

interface FormDescribed {
  readonly kind?: FormKind | undefined;
  readonly shared?: boolean | undefined;
  readonly legs?: boolean | undefined;
}

/** What is known before there is a plan: the person as far as measured, and what a layer adds. One layer all around stays free under the smallest setting that is still below the person. */
export const formFacts = (
  { kind, shared = false, legs = false }: FormDescribed,
  body: Measurements,
  layer: number,
): FormFacts => ({
  kind: kind ?? null,
  isShared: shared,
  hasLegs: legs,
  hasUnderCover: shared || (kind !== undefined && pinless.has(kind)),
  dials:
    kind !== "dials"
      ? []
      : dialed.flatMap((level) => {
          const girth = body[`${level}Girth`];
          return girth === undefined ? [] : [{ level, most: mm(girth - 2 * Math.PI * layer) }];
        }),
});

/** The same with the person and the layer that a plan counts on. */
export const formFactsOfPlan = ({ pieces, levels }: Plan, form: FormDescribed): FormFacts =>
  formFacts(
    form,
    Object.fromEntries(levels.map(({ name, body }) => [`${name}Girth`, body.girth.value])),
    pieces[0]?.layers[0]?.thickness ?? usualLayer,
  );

/** One layer of a usual batting under the tape (mm), where no piece says which. A judgement. */
export const usualLayer = 6;
