import { upperFirst } from "./upperFirst";
import { coverMatters } from "../core/cover/coverMatters";
import type { CoverPanelName } from "../core/cover/coverPanels";
import type { FittedCover } from "../core/cover/fittedCover";
import type { LengthStep } from "../core/lengthText";
import type { PatternTitles } from "../app/patterns/fittingPatterns";
import { armPartWords } from "./arm";
import { aboveLayerWords } from "./above";
import { pieceName, planWords } from "./plan";
import { pictureWords } from "./pictures";
import { featherWords } from "./pieces";

/** What is written on every part at its true size, in one unit. */
export const patternTitles = (step: LengthStep): PatternTitles => ({
  layer: (piece, layer, levels, batting) => ({
    title:
      piece.layers.length === 1 ? pieceName(piece) : pictureWords.layerOf(pieceName(piece), layer, piece.layers.length),
    says: [
      `Cut 1 from ${batting}.`,
      `${upperFirst(featherWords(piece.layers[layer - 1]?.feather ?? 0, step))}.`,
      `${upperFirst(planWords(step).piecePlace(piece, levels))}.`,
    ],
  }),
  panel: panelWords,
  armPart: armPartWords,
  above: (build, layer, batting) => aboveLayerWords(build, layer, batting, step),
});

/** Sides are the wearer's. */
export const panelNames: { readonly [name in CoverPanelName]: string } = {
  rightCenterBack: "right center back",
  rightSideBack: "right side back",
  rightSideFront: "right side front",
  rightSideFrontOuter: "right side front, outer",
  rightSideFrontInner: "right side front, inner",
  rightCenterFront: "right center front",
  leftCenterFront: "left center front",
  leftSideFrontInner: "left side front, inner",
  leftSideFrontOuter: "left side front, outer",
  leftSideFront: "left side front",
  leftSideBack: "left side back",
  leftCenterBack: "left center back",
};

/** What is written on a panel of the cover: which, from what cloth, what its lines mean, and what this body's shape asks for. */
function panelWords(
  name: CoverPanelName,
  cover: FittedCover,
): { readonly title: string; readonly says: readonly string[] } {
  const { cloth } = cover;
  const from =
    cloth.kind === "knit"
      ? `Cut 1 from knit. It is pulled by ${Math.round(100 * cloth.stretch)} % onto the form.`
      : "Cut 1 from woven fabric, the grain line along the lengthwise grain.";
  const isTied = coverMatters(cover).some(({ kind }) => kind === "tieUnderbust");
  return {
    title: `Cover, ${panelNames[name]}`,
    says: [
      from,
      "Cut along the solid line, sew along the dashed one. The top is the bust line: leave fabric above it, and trace the rest on the form.",
      ...(isTied ? ["Tie narrow elastic over the cover at the underbust line, then sew it on."] : []),
    ],
  };
}

/** The words of printed patterns. */
export const patternWords = {
  title: "Patterns at true size",
  measureFirst: ["Measure these", "before you cut."],
  inchSquare: "Solid square: 4 in each side.",
  metricSquare: "Dashed square: 100 mm each side.",
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

/** Where the patterns are offered on a screen. */
export const patternScreenWords = {
  title: "Patterns at true size",
  lead: (hasCover: boolean): string =>
    `Every layer of batting${hasCover ? ", the panels of a fitted cover" : ""} and, once the arm is measured, a soft arm, to cut around. Measure the two squares on the first page before you cut.`,
  cloth: (hasCover: boolean): string => (hasCover ? "The cover is cut from" : "The arm is cut from"),
  cloths: {
    knit: "knit, pulled onto the form",
    woven: "woven fabric",
  },
  knitNote:
    "Pull the knit as hard as the cover will pull: it must give at least twice what the cover is cut for, by a tenth unless you tried it.",
  files: {
    letter: "Pages to tape together, Letter",
    a4: "Pages to tape together, A4",
    sheet: "One sheet for a roll of 36 in",
    sheetA0: "One sheet for a roll of 841 mm (A0)",
    svg: "Drawing (SVG)",
    dxf: "Drawing for a cutter (DXF)",
  },
  what: "What is drawn",
  groups: { batting: "layers of batting", cover: "the cover", arm: "the arm" },
  coverLater: "Cut the cover once the padding is done: until then its panels still change.",
  made: (pages: number | null): string =>
    pages === null ? "The patterns are drawn." : `The patterns are drawn: ${pages} pages to tape together.`,
  making: "Drawing the patterns…",
  failed: "The patterns could not be drawn. The page may have been loaded in part: load it again, and try once more.",
} as const;

export const patternProblems = {
  noFolder: "Name the fitting file and the folder for the patterns, or try --help.",
  noOption: (name: string) => `“${name}” is not an option; try --help.`,
  noStretch: (read: string) =>
    `“${read}” is no stretch for a cover: give 0 for woven fabric, or 5 to 15 for the percent that a knit is pulled by.`,
  isFile: (folder: string) => `“${folder}” is a file; name a folder for the patterns.`,
  otherFiles: (folder: string, name: string) =>
    `The folder “${folder}” holds other files (“${name}”), so it was left alone; name a new or an empty folder.`,
  notWritten: (folder: string) =>
    `The patterns could not be written into “${folder}”; name a folder that can be written to.`,
} as const;
