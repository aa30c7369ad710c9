import type { LengthStep } from "../core/lengthText";
import type { Piece } from "../core/padding/piece";
import type { PlannedLevel } from "../core/plan/plan";
import { pieceName, planWords } from "./plan";
import { pictureWords } from "./pictures";
import { featherWords, upperFirst } from "./pieces";

/** What is written on a layer at its true size: what it is, which layer, from what, how its edge is treated, where it goes. */
export const layerWords = (
  piece: Piece,
  layer: number,
  {
    levels,
    step,
    batting,
  }: { readonly levels: readonly PlannedLevel[]; readonly step: LengthStep; readonly batting: string },
): { readonly title: string; readonly says: readonly string[] } => ({
  title:
    piece.layers.length === 1 ? pieceName(piece) : pictureWords.layerOf(pieceName(piece), layer, piece.layers.length),
  says: [
    `Cut 1 from ${batting}.`,
    `${upperFirst(featherWords(piece.layers[layer - 1]?.feather ?? 0, step))}.`,
    `${upperFirst(planWords(step).piecePlace(piece, levels))}.`,
  ],
});

/** The words of printed patterns. */
export const patternWords = {
  title: "Patterns at true size",
  measureFirst: ["Measure these", "before you cut."],
  inchSquare: "Solid square: 4 in each side.",
  metricSquare: "Broken square: 100 mm each side.",
  howTo: [
    "Print at 100 %, not fitted to the page.",
    "Each part has pages of its own, A1 at its",
    "upper left. Trim the left and top edge of",
    "the next page and lay it on the strip of",
    "the one before: the circles a to d meet.",
  ],
  pagesOf: (title: string, pages: number) => `${title}: ${pages === 1 ? "1 page" : `${pages} pages`}`,
  layOn: (page: string) => `lay page ${page} on this strip`,
  pageOf: (title: string, tile: string, page: number, pages: number) =>
    `${title}, page ${tile} (${page} of ${pages} pages)`,
} as const;

export const patternProblems = {
  noFolder: "Name the fitting file and the folder for the patterns, or try --help.",
  isFile: (folder: string) => `“${folder}” is a file; name a folder for the patterns.`,
  otherFiles: (folder: string, name: string) =>
    `The folder “${folder}” holds other files (“${name}”), so it was left alone; name a new or an empty folder.`,
  nothing: "This fitting has nothing to cut yet.",
  notWritten: (folder: string) =>
    `The patterns could not be written into “${folder}”; name a folder that can be written to.`,
} as const;
