export const languageTag: string = "de";

export const pageHead: { readonly noScript: string; readonly description: string } = {
  noScript: "Padwright rechnet den Plan in diesem Browser aus und braucht dafür JavaScript. Nichts verlässt das Gerät.",
  description:
    "Rechnet aus, mit welchen Lagen Vlies eine gekaufte Schneiderbüste die Maße einer Person bekommt. Arbeitet ohne Netz; nichts verlässt das Gerät.",
};

export const languageWords = {
  title: "Sprache",
  other: { tag: "en", name: "English", address: "../" },
} as const;

export const draftTranslation: { readonly title: string; readonly sentence: string } | null = {
  title: "Diese Übersetzung ist ein Entwurf",
  sentence:
    "Noch hat keine Schneiderin sie durchgesehen. Wenn ein Wort nicht stimmt oder ein Satz unklar ist, sagen Sie es bitte der Person oder Stelle, von der Sie Padwright haben. Gilt im Zweifel: Der englische Text geht vor.",
};
