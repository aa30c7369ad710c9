/** The sheets that can be printed, in the order they come out. */
export const sheetKinds = ["lines", "padding", "smallCutting", "measuring", "cutting"] as const;
export type SheetKind = (typeof sheetKinds)[number];

/**
 * What is printed unless somebody chooses: first the lines, as long as the bare form was not measured on them; the padding
 * sheet; and the small drawings where both are three pages at most.
 */
export const usualSheets = (paddingPages: number, smallPages: number, areLinesOpen: boolean): readonly SheetKind[] => [
  ...(areLinesOpen ? (["lines"] as const) : []),
  "padding",
  ...(smallPages > 0 && paddingPages + smallPages <= 3 ? (["smallCutting"] as const) : []),
];
