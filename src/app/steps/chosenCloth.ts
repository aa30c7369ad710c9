import {
  type Cloth,
  knitOfTest,
  type StretchTest,
  untriedKnit,
  usualStretch,
  wovenWithoutEase,
} from "../../core/cover/cloth";
import { entryLength, type CoverCloth, type Fitting, stretchEntries, type WorkEntry } from "../../document/fitting";
import { usualCover } from "./stepRecord";
import { endsCover } from "./workState";

/**
 * What the cover of a fitting is made of, as it was chosen last for the work, before that for what is bought, and how that is cut.
 * Left out since, there is none, and an arm is still cut from what was chosen.
 */
export interface ChosenCloth {
  readonly kind: CoverCloth;
  readonly cloth: Cloth;
  /** Whether the knit was tried. */
  readonly isTried: boolean;
}

export function chosenCloth({ work, unit, supplies }: Pick<Fitting, "work" | "unit" | "supplies">): ChosenCloth {
  const chosen = work.findLast((entry) => entry.did === "coverChosen");
  const wanted = chosen?.cloth ?? supplies?.cover?.cloth ?? usualCover;
  const kind = isLeftOut(work) ? "none" : wanted;
  const test = chosen === undefined ? null : stretchTest(chosen, unit);
  if (wanted === "woven") return { kind, cloth: wovenWithoutEase, isTried: false };
  return { kind, cloth: test === null ? untriedKnit(usualStretch) : knitOfTest(test), isTried: test !== null };
}

const isLeftOut = (work: Fitting["work"]): boolean =>
  work
    .slice(1 + work.findLastIndex(({ did }) => did === "coverChosen"))
    .some((entry) => entry.did === "made" && entry.passedOver === true && endsCover.has(entry.what));

type Chosen = Extract<WorkEntry, { readonly did: "coverChosen" }>;

/** Only all three lengths together tell of a cloth, and marks that came together tell of a slip. */
function stretchTest(chosen: Chosen, unit: Fitting["unit"]): StretchTest | null {
  const { marked, across, along } = stretchEntries(chosen);
  const lengths = [marked, across, along].flatMap((entry) => {
    const length = entry === undefined ? null : entryLength(entry, unit);
    return length?.ok && length.value > 0 ? [length.value] : [];
  });
  const [atRest, pulled, meanwhile] = lengths;
  if (atRest === undefined || pulled === undefined || meanwhile === undefined) return null;
  return isCloth({ marked: atRest, across: pulled, along: meanwhile })
    ? { marked: atRest, across: pulled, along: meanwhile }
    : null;
}

/** Cloth that is pulled becomes longer across, at most four times as long, and loses at most half along the grain. */
export const isCloth = ({ marked, across, along }: StretchTest): boolean =>
  across >= marked && across <= 4 * marked && along >= marked / 2 && along <= marked * 1.05;
