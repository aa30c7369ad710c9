/** Words around what comes over the padding, and what the whole job takes. */
export const finishingWords = {
  title: "Finishing",
  lead: (hasCover: boolean): string =>
    `Then ${hasCover ? "cover it, measure over the cover, " : ""}sew the waist tape on, and add an arm.`,
  paddingFirst: "First the padding.",
  notDone: "The padding has a step left: finish it before anything goes over it.",
  routeTitle: "What comes over the padding",
  leftOutStage: { leftOut: "left out", partlyLeftOut: "partly left out" },
  stages: {
    noCover: "Cover",
    cut: "Cover, cut and sewn",
    fit: "Cover on, sides pinned",
    read: "Measured over the cover",
    hem: "Hem",
    lines: "Waist tape and lines",
    arm: "Arm",
    after: "Dust bag",
  },
  toPatterns: "Patterns at true size",
  leaveOut: "Leave this out",
  leftOut: "Left out.",
  allDone: (hasCover: boolean): string =>
    `It stands in for the person now. When a garment disagrees, measure again: begin a new fitting of the same person, and ${hasCover ? "open the cover at center back" : "add or take off layers"}.`,
  noCover: "No cover was chosen.",
  coverAfterAll: "Choose a cover after all",
  coverAfterAllHow:
    "It goes over the padding. Take off first what is sewn or hung outermost, the waist tape, the style tape and the arm: they go onto the cover again.",
  keepNone: "Stay without a cover",
  notAllOn: (count: number): string =>
    count === 1
      ? "One piece is still to be pinned; it goes on before anything else."
      : `${count} pieces are still to be pinned; they go on before anything else.`,
  toPadding: "Back to the padding",
  supplyBra: "If a bra is worn under the clothes: one that can stay on the form.",
  count: "Count the pins back into the dish. Run a magnet over the padding for any that are missing.",
} as const;
