import { type Cloth, stretchOffered, untriedKnit, wovenWithoutEase } from "../core/cover/cloth";
import { ratio } from "../core/units";
import { patternProblems } from "../text/patterns";
import { plainText } from "./plainText";

/** What is asked of the command: patterns of a file into a folder, for a cover of this cloth, or of the one that the file chooses. */
export type PatternWish =
  | { readonly kind: "write"; readonly name: string; readonly folder: string; readonly cloth: Cloth | null }
  | { readonly kind: "help" }
  | { readonly kind: "refused"; readonly sentence: string };

export function patternWish(names: readonly string[]): PatternWish {
  if (names.includes("--help") || names.includes("-h")) return { kind: "help" };
  const at = names.indexOf("--stretch");
  const cloth = at === -1 ? null : clothOf(names[at + 1]);
  if (at !== -1 && cloth === null)
    return { kind: "refused", sentence: patternProblems.noStretch(plainText(names[at + 1] ?? "")) };
  const rest = at === -1 ? names : [...names.slice(0, at), ...names.slice(at + 2)];
  const unknown = rest.find((name) => name.startsWith("-") && name !== "-");
  if (unknown !== undefined) return { kind: "refused", sentence: patternProblems.noOption(plainText(unknown)) };
  const [name, folder, ...others] = rest;
  if (name === undefined || folder === undefined || others.length > 0) {
    return { kind: "refused", sentence: patternProblems.noFolder };
  }
  return { kind: "write", name, folder, cloth };
}

/** Whole or broken percents; none is woven cloth. */
function clothOf(percent: string | undefined): Cloth | null {
  if (percent === undefined || !/^\d+(\.\d+)?$/.test(percent)) return null;
  const stretch = Number(percent) / 100;
  if (stretch === 0) return wovenWithoutEase;
  return stretch >= stretchOffered.least && stretch <= stretchOffered.most ? untriedKnit(ratio(stretch)) : null;
}
