export const refusedTexts = {
  noRoom:
    "Nichts wurde geändert: Auf diesem Gerät oder in dem, was der Browser erlaubt, ist kein Platz mehr. Schaffen Sie Platz, und versuchen Sie es noch einmal.",
  blocked:
    "Nichts wurde geändert: Dieser Browser speichert für diese Seite nichts, etwa in einem privaten Fenster oder wenn Websitedaten abgeschaltet sind.",
  newerApp:
    "Nichts wurde geändert: Eine neuere Fassung ist in einem anderen Tab offen und hat übernommen. Laden Sie diese Seite neu, und versuchen Sie es noch einmal.",
  lost: "Nichts wurde geändert: Der Browser hat seine Datenbank kurz verloren. Versuchen Sie es noch einmal.",
  slow: "Das Gerät braucht sehr lange. Warten Sie einen Augenblick, sehen Sie nach, ob es geschehen ist, und versuchen Sie es sonst noch einmal.",
  failed:
    "Es hat nicht geklappt: Was hier gespeichert ist, ist nicht das, was gespeichert werden sollte. Laden Sie diese Seite neu, und versuchen Sie es noch einmal.",
  changedElsewhere: "Nichts wurde geändert: Diese Anprobe ist in einem anderen Tab offen. Tun Sie es dort.",
  newerRecord:
    "Nichts wurde geändert: Was hier gespeichert ist, stammt von einer neueren Fassung. Laden Sie die Seite neu, um diese Fassung zu bekommen.",
  missing: "Nichts wurde geändert: Sie ist nicht mehr hier.",
  unwritable:
    "Nichts wurde geändert: Die Anprobe ließe sich so, wie sie gespeichert würde, nicht wieder lesen. Vielleicht sind Name oder Notizen zu lang.",
} as const;

export const notListedTexts = {
  noRoom:
    "Die Liste ließ sich nicht lesen: Das Gerät hat keinen Platz mehr. Schaffen Sie Platz, und laden Sie diese Seite neu.",
  blocked:
    "Dieser Browser speichert für diese Seite nichts, etwa in einem privaten Fenster oder wenn Websitedaten abgeschaltet sind. Es gibt keine Liste zu zeigen.",
  newerApp:
    "Eine neuere Fassung ist in einem anderen Tab offen und hat übernommen. Laden Sie diese Seite neu, um diese Fassung zu bekommen.",
  lost: "Die Liste ließ sich nicht lesen: Der Browser hat seine Datenbank verloren. Laden Sie diese Seite neu.",
  slow: "Die Liste ließ sich noch nicht lesen: Das Gerät braucht sehr lange. Laden Sie diese Seite gleich noch einmal.",
  failed: "Die Liste ließ sich nicht lesen. Laden Sie diese Seite neu.",
} as const;

export const backupWords = {
  reading: "Die Datei wird zusammengestellt…",
  saveNext: (number: number, all: number): string => `Datei ${number} von ${all} speichern`,
  divided: (all: number): string =>
    `Für eine Datei ist es zu viel. Drücken Sie für jede der ${all} Dateien einmal; Sie brauchen alle, um alles wiederzubekommen.`,
  part: (number: number, all: number): string => `${number} von ${all}`,
} as const;

export const intakeWords = {
  more: (count: number): string => `Und ${count} weitere.`,
  reading: "Die Datei wird geöffnet…",
  readingMany: (at: number, all: number): string => `Datei ${at} von ${all} wird geöffnet…`,
  notFrom: (file: string): string => `Aus „${file}“ wurde nichts übernommen:`,
  links: "Links zu Anproben, hier eingefügt: so viele Sie wollen, dazwischen darf alles Mögliche stehen",
  addLinks: (count: number): string =>
    count === 0
      ? "Aus Links hinzufügen"
      : count === 1
        ? "Die Anprobe aus 1 Link hinzufügen"
        : `Die Anproben aus ${count} Links hinzufügen`,
  noLinkTaken: "Aus den Links wurde nichts übernommen.",
  fromLink: (number: number, sentence: string): string => `Link ${number}: ${sentence}`,
  undo: "Zurück",
  openAdded: "Öffnen",
  undone: "Zurückgenommen: Was dazukam, liegt unter „Gelöscht“.",
  addAnyway: (count: number): string =>
    count === 1 ? "Trotzdem eine Kopie hinzufügen" : `Trotzdem ${count} Kopien hinzufügen`,
} as const;
