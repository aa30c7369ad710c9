export const rescueWords = {
  failedTitle: "Diese Seite lässt sich nicht zeigen",
  failed: (title: string): string =>
    title === ""
      ? "Beim Berechnen dieser Seite ist ein Fehler passiert. Die offene Anprobe ist, wie Sie sie verlassen haben."
      : `Beim Berechnen dieser Seite ist ein Fehler passiert. Die Anprobe „${title}“ ist, wie Sie sie verlassen haben.`,
  detail: (what: string): string => `Was schiefging, in den Worten des Programms: ${what}`,
  failedAdvice:
    "Nehmen Sie die letzte Änderung zurück, öffnen Sie eine andere Anprobe, oder speichern Sie diese in eine Datei.",
  missingTitle: "Diese Seite ist nicht angekommen",
  missing:
    "Ein Teil des Programms ließ sich nicht laden. Das kommt ohne Netz vor, oder kurz nach einer neuen Fassung. Ihre Anproben sind, wie Sie sie verlassen haben.",
  missingParts:
    "Teile des Programms ließen sich nicht laden. Das kommt ohne Netz vor, oder kurz nach einer neuen Fassung.",
  missingSheet:
    "Das Blatt ließ sich nicht laden. Öffnen Sie „Drucken“ einmal mit Netz, und drucken Sie dann noch einmal.",
  again: "Noch einmal versuchen",
  loadAnew: "Die Seite neu laden",
  saveRaw: "Diese Anprobe in eine Datei speichern",
  home: "Start",
  fittings: "Anproben",
  others: "Eine andere Anprobe öffnen",
  othersUnread: "Die Liste der Anproben lässt sich gerade nicht lesen.",
  noOthers: "Auf diesem Gerät gibt es keine andere Anprobe.",
  moreOthers: (count: number): string =>
    count === 1 ? "Eine weitere steht in der Liste." : `${count} weitere stehen in der Liste.`,
  saveRawOf: (title: string): string => `Den Rohtext von ${title} speichern`,
  saveRawShort: "Den Rohtext speichern",
  openNamed: (title: string): string => `${title} öffnen`,
  tagFailed: (title: string): string =>
    `${title} lässt sich in der Liste nicht zeigen. Es ist, wie Sie es verlassen haben.`,
} as const;
