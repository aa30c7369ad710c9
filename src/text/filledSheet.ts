/** Words where a padding sheet that was filled in on paper is taken in. */
export const filledSheetWords = {
  fold: "Take in a filled padding sheet",
  lead: "You worked with paper alone? Tick what is pinned and type what you wrote down. It is noted as if every step had been noted when it was done, and can be undone.",
  pieces: "Pinned, in the order of the sheet",
  layers: (piece: string): string => `Layers of ${piece}`,
  moments: { structure: "Over the structure", end: "In the end" },
  basted: "Everything is basted, and the pins are counted out",
  take: "Take these in",
  taken: (pieces: number, readings: number): string =>
    `Taken in: ${pieces === 1 ? "one piece" : `${pieces} pieces`}, ${readings === 1 ? "one measurement" : `${readings} measurements`}.`,
  unclear: "One of the figures cannot be read as a length. It is kept in its field: type it again.",
} as const;
