import type { FittingPatterns } from "./fittingPatterns";
import { dxfOfParts } from "./patternDxf";
import { pageCount, type PatternPdfWords, rollWidths, sheetPdf, tiledPdf } from "./patternPdf";
import { svgOfParts } from "./patternSvg";

/** What can be asked for of all parts together. */
export type WrittenKind = "letter" | "a4" | "sheet" | "sheetA0" | "svg" | "dxf";

export interface WrittenPatterns {
  readonly type: "pdf" | "svg" | "dxf";
  readonly content: string | Uint8Array<ArrayBuffer>;
  /** How many pages there are to print and tape together; null where there is no such thing. */
  readonly pages: number | null;
}

/** All parts of a fitting as one file. */
export async function writePatterns(
  { parts }: FittingPatterns,
  kind: WrittenKind,
  words: PatternPdfWords,
): Promise<WrittenPatterns> {
  switch (kind) {
    case "letter":
    case "a4":
      return tiled(new Uint8Array(await tiledPdf(parts, kind, words)));
    case "sheet":
    case "sheetA0":
      return { type: "pdf", content: new Uint8Array(await sheetPdf(parts, kind, words)), pages: null };
    case "svg":
      return { type: "svg", content: svgOfParts(parts, rollWidths.sheet), pages: null };
    case "dxf":
      return { type: "dxf", content: dxfOfParts(parts, rollWidths.sheet), pages: null };
  }
}

const tiled = async (content: Uint8Array<ArrayBuffer>): Promise<WrittenPatterns> => ({
  type: "pdf",
  content,
  pages: await pageCount(content),
});
