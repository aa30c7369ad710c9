export const savedWords = {
  saving: "Wird gespeichert…",
  saved: (time: string): string => `Gespeichert ${time}`,
  notSaved: "Nicht gespeichert",
  notSavedYet: "Noch nicht gespeichert.",
  elsewhere: "In einem anderen Tab offen",
  newer: "Nur ansehen",
  toFittings: "Anproben",
} as const;
