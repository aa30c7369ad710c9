/** Words where a padding sheet that was filled in on paper is taken in. */
export const filledSheetWords = {
  fold: "Ein ausgefülltes Arbeitsblatt übernehmen",
  lead: "Sie haben nur mit Papier gearbeitet? Haken Sie an, was aufgesteckt ist, und tippen Sie ein, was Sie aufgeschrieben haben. Es wird festgehalten, als wäre jeder Schritt gleich eingetragen worden, und lässt sich zurücknehmen.",
  pieces: "Aufgesteckt, in der Reihenfolge des Blattes",
  layersUnit: "Lagen",
  layers: (piece: string): string => `Lagen: ${piece}`,
  moments: { structure: "Über dem Aufbau", end: "Am Ende" },
  basted: "Alles ist geheftet, und die Nadeln sind gezählt",
  take: "Übernehmen",
  taken: (pieces: number, readings: number): string =>
    `Übernommen: ${pieces === 1 ? "ein Polster" : `${pieces} Polster`}, ${readings === 1 ? "ein Maß" : `${readings} Maße`}.`,
  unclear:
    "Eine der Angaben ist nicht als Länge zu lesen. Sie bleibt in ihrem Feld stehen: Tippen Sie sie noch einmal.",
} as const;
