export const fieldWords = {
  /** Wer einen Punkt getippt hat, liest ein Komma; beides wird verstanden. */
  shown: (typed: string): string => typed.replace(/(\d)\.(\d)/, "$1,$2"),
  half: ",5" as ".5" | ",5",
  means: (length: string): string => `das sind ${length}`,
  pad: "Ziffernblock",
  back: "Letztes Zeichen löschen",
  useKeyboard: "Mit der Tastatur tippen",
  usePad: "Den Ziffernblock benutzen",
  examples: { in: "zum Beispiel 34 3/4", cm: "zum Beispiel 88,5", mm: "zum Beispiel 885" },
} as const;
