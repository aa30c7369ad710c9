/** Words of the finishing: the bra, the cover, measuring again, the waist tape, and what to buy. */
export const finishingWords = {
  title: "Finishing",
  lead: "Cover the padding, measure again over the cover, and sew the waist tape on.",
  coverTitle: "The cover",
  bra: "The bra stays on the form, under the cover: without it the bust would no longer read as the body does.",
  cover: [
    "Pin stretch knit over the padding, wrong side out: waist, bust, hips and shoulders first, then between, then once more round, tighter.",
    "It is tight enough when hardly any cloth can be pinched up at centre front or back. It will press the batting in a little.",
    "Trim two centimetres (three quarters of an inch) outside the pins, chalk the line, sew, turn and draw it on.",
  ],
  /** Usual cautions of the trade; what the can and local rules say goes before them. */
  coverCare: [
    "Never spray glue near a flame, a pilot light or a hot iron: the mist burns, and polyester batting burns and melts with it. Open a window, let it dry, and do what the can and your local rules say.",
    "Never iron on the form: polyester melts. Press the cover before it goes on.",
  ],
  notAllOn: (count: number): string =>
    count === 1
      ? "One piece is still to be pinned; it goes on before the cover."
      : `${count} pieces are still to be pinned; they go on before the cover.`,
  toPadding: "Back to the padding",
  againTitle: "Measure again, over the cover",
  again:
    "Every level once more, all round and in front. Where the cover has pressed the tape under the mark, slip a thin piece beneath it.",
  tapeTitle: "The waist tape",
  tapeHeight: (height: string): string => `At centre back, ${height} below the nape, measured along the padding.`,
  tapeGuessed: (height: string): string =>
    `At centre back, about ${height} straight down from the nape; that height is guessed. Measure nape to waist to be sure.`,
  tapeLength: (length: string): string => `Cut it ${length} long: the waist and an inch to overlap.`,
  tapeLengthCm: (length: string): string => `Cut it ${length} long: the waist and 2.5 cm to overlap.`,
  tapeLevel:
    "Pin it level all round, then look whether the wearer’s own waist runs lower in front; measure waist to floor four times to know.",
  tapeTilt: (front: string, back: string): string =>
    `Waist to floor is ${front} in front and ${back} behind: tilt the tape by the difference.`,
  suppliesTitle: "What it takes",
  supplyBra: "A bra in the person’s own size that can stay on the form.",
  supplyCover: "Stretch knit for the cover: about one metre (a yard and a bit), washed hot first.",
  supplyTape: (length: string): string => `Twill tape: ${length}, and the same again for each further line you mark.`,
  supplyPins: (count: number): string => `Pins: about ${count}, counted into the dish and counted back.`,
  countTitle: "Before you put it all away",
  care: [
    "Count the pins back into the dish. Run a magnet over the padding for any that are missing.",
    "Needles and blades out before anything is pressed.",
    "The form is top-heavy now: weight or widen its stand, above all where children or pets live.",
  ],
} as const;
