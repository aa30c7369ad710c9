/** The sheets that can be printed, in the order they come out. */
export const sheetKinds = ["padding", "smallCutting", "measuring", "cutting"] as const;
export type SheetKind = (typeof sheetKinds)[number];

/** What is printed unless somebody chooses: the padding sheet, and the small drawings where both are three pages at most. */
export const usualSheets = (paddingPages: number, smallPages: number): readonly SheetKind[] =>
  smallPages > 0 && paddingPages + smallPages <= 3 ? ["padding", "smallCutting"] : ["padding"];
