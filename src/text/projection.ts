import { type LengthStep, parseLength } from "../core/lengthText";
import type { Millimetres } from "../core/units";
import { shownLength } from "./shownLength";

/** Words of the picture that a projector throws onto the cutting table. */
export const projectionWords = {
  open: "Project onto the table",
  openNote:
    "For a projector above the table: white lines on black at true size, one part at a time, measured against your tape.",
  title: "Projection at true size",
  partOf: (at: number, all: number): string => `Part ${at} of ${all}.`,
  linesOf: { cut: "Solid: cut. Dashed: sew.", sewn: "Solid: cut. Dashed: level lines." },
  seams: "Edges with the same letter are sewn to each other.",
  mirrored: "Mirrored.",
  tooLarge: "It is larger than the picture: drag it to see the rest, and mark where it goes on.",
  grain: "grain",
  lay: (length: string): string => `Lay your tape on the bar: ${length}, end to end.`,
  layHow: "Press Smaller or Larger, drag the right end of the bar, or type what the tape reads.",
  measures: (width: string, height: string): string =>
    `Lay the tape across this part, and up and down: it should read ${width} and ${height}. If only one of them agrees, the projector hangs askew: straighten it, and set the bar again.`,
  reads: "The bar reads",
  setReading: "Set",
  notLength: (read: string, length: string): string =>
    `“${read}” cannot be what the bar reads: expected a length near ${length}. Measure it again and type that.`,
  smaller: "Smaller",
  larger: "Larger",
  mirror: "Mirror",
  turn: "Turn",
  previous: "Previous",
  next: "Cut: next part",
  hideBar: "Hide the bar",
  showBar: "Show the bar",
  close: "Close",
} as const;

export const barWords = (length: Millimetres, step: LengthStep): string => shownLength(length, step);

/** What a person reads off the bar: any length that a tape gives. */
export const barReading = (text: string, unit: Parameters<typeof parseLength>[1]): Millimetres | null => {
  const read = parseLength(text.trim(), unit);
  return read.ok && read.value > 0 ? read.value : null;
};
