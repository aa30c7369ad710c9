import type { FormFacts } from "../app/steps/formFacts";
import type { FormKind } from "../document/fittingLimits";
import type { LengthStep } from "../core/lengthText";
import { levelWords } from "./pictures";
import { shownLength } from "./shownLength";

/** What kind of form it is, and what follows for the hands. Common practice, no source. */
export const formKindWords = {
  title: "What kind of form it is",
  lead: "The kind of form decides whether a pin holds, and so how every piece goes on.",
  ask: "Say what kind of form it is",
  unknown: "Not said yet",
  kinds: {
    cloth: "Fabric over papier-mâché or cork: a pin goes in",
    foam: "Foam: a pin holds straight in",
    hard: "Hard, of plastic, fiberglass or wire: no pin holds",
    dials: "Hard, with dials that make it larger",
    stretch: "Stretch fabric over a hard form, or shoulders that fold in",
  } satisfies { readonly [kind in FormKind]: string },
  shared: "It is shared, or must go back as it was",
  legs: "It has legs",
} as const;

/** What is made ready on this kind of form, after its base and the bra; nothing of it where nobody said which it is. */
export function readyWords(
  { kind, isShared, hasLegs, hasUnderCover, dials }: FormFacts,
  lengths: LengthStep,
): readonly string[] {
  return [
    ...(kind === "dials"
      ? [
          `Set every dial smaller than the person, ${dials.length === 0 ? "by a layer of batting all around" : `at most: ${dials.map(({ level, most }) => `${levelWords[level]} ${shownLength(most, lengths)}`).join(", ")}`}. Tape the dials and never turn them again; do not lean on the form.`,
        ]
      : []),
    ...(hasUnderCover
      ? [
          `Pull a snug under-cover over it, a cut-off tee or tube sewn tight${kind === "dials" ? ", which bridges the gaps" : ""}. Everything is pinned and basted to that${isShared ? "; with an opening at center back it comes off whole" : ""}.`,
        ]
      : []),
    ...(hasUnderCover
      ? ["Only then measure the form. If it was measured before that, measure it again: the tape reads otherwise now."]
      : []),
    ...(kind === "foam" ? ["No spray glue without a test on a hidden spot: solvents eat foam."] : []),
    ...(kind === "stretch" ? ["Weight the base, and keep it from turning while you measure."] : []),
    ...(hasLegs ? ["Its thighs are not padded here: the level lines end at the full hip."] : []),
    ...(isShared
      ? ["Taking it all off again takes an evening, and the under-cover is not used for another person."]
      : []),
  ];
}

/** How pins go in. */
export function pinningWords({ kind, hasUnderCover }: Pick<FormFacts, "kind" | "hasUnderCover">): string {
  if (hasUnderCover) return "Slanted, into the under-cover alone.";
  if (kind === "cloth") return "Slanted, through the fabric and a little into the core.";
  if (kind === "foam") return "Straight in: foam holds them.";
  return "Slanted. Into foam straight in.";
}

/** What basting catches. */
export const bastedTo = ({ kind, hasUnderCover }: FormFacts): string =>
  hasUnderCover
    ? "Catch the under-cover, never the form or bra elastic."
    : kind === "foam"
      ? "Catch the fabric over the foam, and never bra elastic."
      : "Catch the form’s fabric or the under-cover, never a hard form or bra elastic.";

/** What thread holds to where it goes through the padding. */
export const heldBy = ({ kind, hasUnderCover }: Pick<FormFacts, "kind" | "hasUnderCover">): string =>
  hasUnderCover ? "the under-cover" : kind === "foam" ? "the fabric over the foam" : "the form’s fabric";

export const unsaidForm: FormFacts = { kind: null, isShared: false, hasLegs: false, hasUnderCover: false, dials: [] };
