/** The sheets that can be printed, in the order they come out. */
export const sheetKinds = ["lines", "padding", "smallCutting", "supplies", "session", "measuring", "cutting"] as const;
export type SheetKind = (typeof sheetKinds)[number];

/** What is printed unless somebody chooses: first the lines, as long as the bare form was not measured on them; every step; and the cut drawings. */
export const usualSheets = (hasPieces: boolean, areLinesOpen: boolean): readonly SheetKind[] => [
  ...(areLinesOpen ? (["lines"] as const) : []),
  "padding",
  ...(hasPieces ? (["smallCutting"] as const) : []),
];
