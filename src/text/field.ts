/** Words of the length field and of the pad beside it. */
export const fieldWords = {
  /** What was typed, as it stands in a field nobody is typing in. */
  shown: (typed: string): string => typed,
  /** The key of the pad for half a centimeter. */
  half: ".5" as ".5" | ",5",
  means: (length: string): string => `that is ${length}`,
  pad: "Number pad",
  back: "Delete the last one",
  useKeyboard: "Type with the keyboard",
  usePad: "Use the number pad",
  examples: { in: "for example 34 3/4", cm: "for example 88.5", mm: "for example 885" },
} as const;
