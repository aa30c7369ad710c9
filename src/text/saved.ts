/** The few words about saving that stand on every screen; the rest is loaded with the list of fittings. */
export const savedWords = {
  saving: "Saving…",
  saved: (time: string): string => `Saved ${time}`,
  notSaved: "Not saved",
  /** Said after what was done, to whoever does not see the mark. */
  notSavedYet: "Not saved yet.",
  elsewhere: "Open in another tab",
  newer: "View only",
  toFittings: "Fittings",
} as const;
