/** Words where a padding sheet that was filled in on paper is taken in. */
export const filledSheetWords = {
  fold: "Ein ausgefülltes Arbeitsblatt übernehmen",
  lead: "Sie haben nur mit Papier gearbeitet? Haken Sie an, was aufgesteckt ist, und tippen Sie ein, was Sie aufgeschrieben haben. Es wird festgehalten, als wäre jeder Schritt gleich eingetragen worden, und lässt sich zurücknehmen.",
  trial: "Die Probe",
  ofTrial: { bare: "Taille vorher", strip: "Taille über dem Streifen" },
  pieces: "Aufgesteckt, in der Reihenfolge des Blattes",
  layersUnit: "Lagen",
  layers: (piece: string): string => `Lagen: ${piece}`,
  moments: { structure: "Über dem Aufbau", end: "Am Ende", cover: "Über dem Bezug" },
  basted: "Alles ist geheftet, und die Nadeln sind gezählt",
  take: "Übernehmen",
  taken: (pieces: number, readings: number): string =>
    `Übernommen: ${pieces === 1 ? "ein Polster" : `${pieces} Polster`}, ${readings === 1 ? "ein Maß" : `${readings} Maße`}.`,
  unclear:
    "Eine der Angaben ist nicht als Länge zu lesen, oder eine der beiden der Probe fehlt. Was Sie getippt haben, bleibt in seinem Feld stehen.",
} as const;
