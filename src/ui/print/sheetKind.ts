/** The sheets that can be printed, in the order they come out. */
export const sheetKinds = ["padding", "measuring", "cutting"] as const;
export type SheetKind = (typeof sheetKinds)[number];
