/** The few words about saving that stand on every screen; the rest is loaded with the shelf. */
export const savedWords = {
  saving: "Saving…",
  saved: (time: string): string => `Saved ${time}`,
  notSaved: "Not saved",
  /** Said after what was done, to whoever does not see the mark. */
  notSavedYet: "Not saved yet.",
  elsewhere: "Open in another tab",
  newer: "To look at only",
  toFittings: "Your fittings",
} as const;
