/** The language of this build, and the way to the other one. A language is built into a folder of its own, with its own page. */
export const languageTag: string = "en";

/** What stands in the page itself and in its manifest, outside every script. */
export const pageHead: { readonly noScript: string; readonly description: string } = {
  noScript: "Padwright works out the plan in this browser and needs JavaScript for it. Nothing leaves the device.",
  description:
    "Works out the batting that makes a stock dress form stand in for one body. Works without a network; nothing leaves the device.",
};

export const languageWords = {
  title: "Language",
  /** What the other language calls itself, and where its page lies, seen from this one. */
  other: { tag: "de", name: "Deutsch (Entwurf)", address: "./de/" },
} as const;

/** What is said on Home of a translation that is still a draft. */
export const draftTranslation: { readonly title: string; readonly sentence: string } | null = null;
