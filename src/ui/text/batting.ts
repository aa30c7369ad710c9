/** Words about batting: what it is called, and the guesses a person may start from. */
export const battingWords = {
  title: "The batting",
  workedOutFor: "Worked out for",
  usual: "bonded wadding",
  name: "What it is called",
  layer: "One layer, under a snug tape",
  layerNote:
    "A packet cannot say: published figures for one weight differ more than twofold. Start from a guess; the tape corrects it.",
  layerShort: (name: string, layer: string): string => `${name}, one layer about ${layer}`,
  change: "Change the batting",
  guesses: "Guesses to start from",
  finishing: "A second, thinner batting for the last pieces",
  finishingAdd: "Add a thinner batting to finish with",
  finishingRemove: "Finish with the same batting",
} as const;

/**
 * Starting guesses for one layer under a snug tape. Trade and hobby statements, none from a laboratory: needled cotton
 * about 2.5 mm (a trade poster), bonded polyester about 5 mm at 68 g/m² (the same), and 4 to 8 mm for 140 to 170 g/m²
 * under a cover, which is our own inference.
 */
export const battingGuesses = [
  { name: "needled cotton", layer: "2.5 mm" },
  { name: "thin bonded wadding", layer: "4 mm" },
  { name: "bonded wadding", layer: "6 mm" },
  { name: "high-loft wadding", layer: "10 mm" },
] as const;
