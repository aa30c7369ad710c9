export const stepNoteWords = {
  title: "Notizen zu den Schritten",
  lead: "Für einen Kurs: was Sie bei einem Schritt sagen wollen. Drücken Sie in der Kursansicht N, dann kann es lesen, wer den Bildschirm sieht; der Kursplan druckt es, außer er wird ohne den Namen gedruckt. Schreiben Sie hier nichts über eine Person oder einen Körper. Notizen werden mit dieser Anprobe gespeichert, auch in ihrer Datei; ein Link und eine Kursdatei ohne Namen lassen sie weg.",
  count: (notes: number): string => (notes === 0 ? "noch keine" : notes === 1 ? "1 Notiz" : `${notes} Notizen`),
  noteTo: (act: string): string => `Notiz: ${act}`,
  gone: "Notizen zu Schritten, die dieser Plan nicht mehr hat",
  goneNote: (number: number): string => `Notiz ${number}, zu einem Schritt, den es nicht mehr gibt`,
  onPaper: (act: string, note: string): string => `${act}: ${note}`,
  here: "Notiz",
  mark: "mit Notiz",
  none: "Zu diesem Schritt gibt es keine Notiz. Notizen tippen Sie unter „Drucken“ ein, beim Kursplan.",
  madeUpNone: "Beispielpersonen haben keine Notizen: Die gehören zu Ihrer eigenen Anprobe.",
  covered: "In dieser Notiz steht eine Zahl; darum ist sie verdeckt, solange die Zahlen verdeckt sind.",
} as const;
