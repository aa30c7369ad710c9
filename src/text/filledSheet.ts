/** Words where a padding sheet that was filled in on paper is taken in. */
export const filledSheetWords = {
  fold: "Enter a filled-in padding sheet",
  lead: "You worked with paper alone? Tick what is pinned and type what you wrote down. The steps are marked done as if you had tapped each one. You can undo it.",
  trial: "The trial",
  ofTrial: { bare: "Waist before", strip: "Waist over the strip" },
  pieces: "Pinned, in the order of the sheet",
  layersUnit: "layers",
  layers: (piece: string): string => `Layers of ${piece}`,
  moments: { structure: "Over the structure", end: "At the end", cover: "Over the cover" },
  basted: "Everything is basted; as many pins came out as went in",
  take: "Enter all this",
  taken: (pieces: number, readings: number): string =>
    `Entered: ${pieces === 1 ? "one piece" : `${pieces} pieces`}, ${readings === 1 ? "one measurement" : `${readings} measurements`}.`,
  unclear:
    "One of the figures cannot be read as a length, or one of the trial’s two is missing. What you typed is kept in its field.",
} as const;
