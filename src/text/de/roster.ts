export { rosterNames } from "../roster";

/** `person` and `again` are those of English too, from where the names are taken: they say the same in both. */
export const rosterWords = {
  title: "Ein Kurs",
  lead: "Die Blätter für alle auf einem Stapel, alle in einer Datei, und was sie zusammen noch brauchen: Polster aus demselben Vlies werden miteinander ausgelegt, so bleibt weniger übrig, als wenn jede Person für sich kauft.",
  who: "Wer teilnimmt",
  everyone: "Alle",
  nobody: "Niemand",
  nameless:
    "Ohne Namen: Alle heißen Person und eine Nummer, auf Papier und in der Datei, und behalten sie, wenn andere kommen oder gehen. Notizen kommen nicht in die Datei.",
  person: (number: number): string => `Person ${number}`,
  again: (name: string, number: number): string => `${name} (${number})`,
  calledThere: (title: string, name: string): string => `${title}, auf Papier ${name}`,
  print: {
    padding: (count: number): string =>
      count === 1 ? "Die Polsterblätter für 1 Person drucken" : `Die Polsterblätter für ${count} Personen drucken`,
    session: (count: number): string =>
      count === 1 ? "Den Kursplan für 1 Person drucken" : `Die Kurspläne für ${count} Personen drucken`,
    measuring: (count: number): string =>
      count === 1 ? "1 leeres Messblatt drucken" : `${count} leere Messblätter drucken`,
  },
  ready: {
    padding: (names: readonly string[]): string =>
      `Die Polsterblätter gehen zum Drucker, für ${names.join(", ")}: für jede Person auf eigenen Seiten, mit dem Namen unten.`,
    session: (names: readonly string[]): string =>
      `Die Kurspläne gehen zum Drucker, für ${names.join(", ")}: für jede Person auf einer eigenen Seite.`,
    measuring: (names: readonly string[]): string => `Je ein leeres Messblatt für ${names.join(", ")}.`,
  },
  failed: (name: string): string =>
    `Die Blätter für ${name} ließen sich nicht zu Papier bringen: Dabei passiert ein Fehler im Programm. Öffnen Sie diese Anprobe, und drucken Sie sie dort.`,
  printAgain: "Noch einmal drucken",
  putAway: "Fertig gedruckt",
  saveFile: (count: number): string =>
    count === 1 ? "1 in eine Kursdatei speichern" : `${count} in eine Kursdatei speichern`,
  file: "kurs",
} as const;

export const shortMeasuringWords = {
  title: "Messblatt",
  lines: "Auf den Linien",
  whose: { body: "Person", form: "Büste" },
  heads: {
    level: "Linie",
    Girth: "rundum",
    FrontArc: "vorn, von Naht zu Naht",
    BackArc: "hinten, von Naht zu Naht",
    place: "über dem Boden; Büste: unter dem Nacken",
    Breadth: "Breite gerade hindurch",
    Depth: "Tiefe von vorn nach hinten",
  },
  lengths: "Alles andere",
  sides:
    "Wo links und rechts verschieden sind, beides aufschreiben: links / rechts. Im langen Messblatt ist jedes Maß gezeichnet.",
} as const;
