import type { LengthUnit } from "../core/lengthText";

/** Words of the finishing: the bra, the cover, measuring again, the waist tape, and what to buy. */
export const finishingWords = {
  title: "Finishing",
  lead: "Cover the padding, measure again over the cover, and sew the waist tape on.",
  secureTitle: "Before the cover",
  secure: (unit: LengthUnit): readonly string[] => [
    `Baste each piece ${unit === "in" ? "3/4 in" : "2 cm"} inside its edge, through the form’s fabric, and knot both ends.`,
    "Take the pins out and count them: the same number as went in. One missing: stop, and cover nothing until it is found.",
  ],
  coverTitle: "The cover",
  bra: "A bra that is on the form stays on, under the cover: without it the bust would no longer read as on the person.",
  cover: (unit: LengthUnit): readonly string[] => [
    "Tie a narrow elastic at the waist and under the bust. Pin stretch knit over the padding, wrong side out, with its seams at the sides and at center back: waist, bust, hips and shoulders first, then between, then once more around, tighter. Where the sides differ, fit it right side out.",
    "It is tight enough when hardly any fabric can be pinched up at center front or center back. It presses the batting in a little.",
    "Mark along the pins, take them out and count them. Take the cover off and sew it, center back left open.",
    unit === "in"
      ? "Trim to 1 in at the sides and at center back, 2 in at the hem and 3/8 in elsewhere. Turn it, pull it on and close center back by hand."
      : "Trim to 2.5 cm at the sides and at center back, 5 cm at the hem and 1 cm elsewhere. Turn it, pull it on and close center back by hand.",
    "Measure again over it, correct it at the sides, and hem it last.",
  ],
  notAllOn: (count: number): string =>
    count === 1
      ? "One piece is still to be pinned; it goes on before the cover."
      : `${count} pieces are still to be pinned; they go on before the cover.`,
  toPadding: "Back to the padding",
  againTitle: "Measure again, over the cover",
  again:
    "Measure every level line once more, all around and in front. Where the tape now reads short, lay a thin piece beneath the cover.",
  tapeTitle: "The waist tape",
  tapeHeight: (height: string): string => `At center back, ${height} below the nape, measured along the padding.`,
  tapeGuessed: (height: string): string =>
    `At center back, about ${height} straight down from the nape; that height is estimated. Measure the back waist length to be sure.`,
  tapeLength: (length: string, unit: LengthUnit): string =>
    `Cut it ${length} long: the waist, and ${unit === "in" ? "1 in" : "2.5 cm"} to overlap at center back.`,
  tapeLevel:
    "Pin it level all around, then check whether the person’s own waist runs lower in front; measure waist to floor four times to know.",
  tapeTilt: (front: string, back: string): string =>
    `Waist to floor is ${front} in front and ${back} in back: tilt the tape by the difference.`,
  supplyBra: "If a bra is worn under the clothes: one that can stay on the form.",
  countTitle: "Before you put it all away",
  count: "Count the pins back into the dish. Run a magnet over the padding for any that are missing.",
} as const;
