/** Words for when a page fails, or a part of the tool does not arrive: what happened, and what can be done now. */
export const rescueWords = {
  failedTitle: "This page cannot be shown",
  failed: (title: string): string =>
    title === ""
      ? "The tool made a mistake while it worked out this page. The fitting that is open is as you left it."
      : `The tool made a mistake while it worked out this page. The fitting “${title}” is as you left it.`,
  /** For a report to whoever puts the tool up. */
  detail: (what: string): string => `What went wrong, in the tool’s own words: ${what}`,
  failedAdvice: "Undo the last change, open another fitting, or save this one to a file.",
  missingTitle: "This page did not arrive",
  missing:
    "A part of the tool could not be loaded, as happens without a network or just after a new release. Your fittings are as you left them.",
  missingParts: "Parts of the tool could not be loaded, as happens without a network or just after a new release.",
  missingSheet: "The sheet could not be loaded. Open Print once with a network, then print again.",
  again: "Try again",
  loadAnew: "Load the page again",
  saveRaw: "Save this fitting to a file",
  home: "Home",
  fittings: "Fittings",
  others: "Open another fitting",
  othersUnread: "The list of fittings cannot be read just now.",
  noOthers: "There is no other fitting on this device.",
  moreOthers: (count: number): string => (count === 1 ? "One more is in the list." : `${count} more are in the list.`),
  saveRawOf: (title: string): string => `Save the raw text of ${title}`,
  saveRawShort: "Save the raw text",
  openNamed: (title: string): string => `Open ${title}`,
  tagFailed: (title: string): string => `${title} cannot be shown in the list. It is as you left it.`,
} as const;
