/** Words of the length field and of the pad beside it. */
export const fieldWords = {
  means: (length: string): string => `that is ${length}`,
  pad: "Number pad",
  back: "Delete the last one",
  useKeyboard: "Type with the keyboard",
  usePad: "Use the number pad",
  examples: { in: "for example 34 3/4", cm: "for example 88.5", mm: "for example 885" },
} as const;
