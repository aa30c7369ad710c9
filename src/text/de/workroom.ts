import type { LengthUnit } from "../../core/lengthText";

export { toolName } from "../workroom";

export const pageNames = {
  home: "Start",
  body: "Person",
  form: "Büste",
  plan: "Plan",
  padding: "Polstern",
  finishing: "Abschluss",
  print: "Drucken",
  class: "Kurs",
  remote: "Fernbedienung",
  view3d: "3D-Ansicht",
  fittings: "Anproben",
} as const;

export const workroomWords = {
  places: "Seiten",
  skip: "Gleich zur Arbeit",
  unit: "Längen in",
  undo: "Zurück",
  redo: "Wieder",
  undone: "Zurückgenommen.",
  redone: "Wiederhergestellt.",
  print: "Drucken",
} as const;

export const unitNames: { readonly [unit in LengthUnit]: string } = {
  in: "Zoll",
  cm: "Zentimeter",
  mm: "Millimeter",
};
export const unitMarks: { readonly [unit in LengthUnit]: string } = { in: "in", cm: "cm", mm: "mm" };

export const pageStates = {
  girthsMissing: (known: number, all: number): string => `${known} von den ersten ${all}`,
  readings: (count: number): string => `${count} gemessen`,
  formUnknown: "noch unbekannt",
  formMeasured: "gemessen",
  formSize: (size: string): string => `Größe ${size}`,
  formSupposed: (size: string): string => `Größe ${size}, geschätzt`,
  planWaiting: "wartet noch",
  planPieces: (count: number, isDraft: boolean): string => {
    const pieces = count === 0 ? "nichts nötig" : count === 1 ? "1 Polster" : `${count} Polster`;
    return isDraft ? `${pieces}, Entwurf` : pieces;
  },
  pinned: (done: number, all: number): string => `${done} von ${all} aufgesteckt`,
  allPinned: (read: number, levels: number): string =>
    read === levels
      ? "alles aufgesteckt, jede Linie gemessen"
      : `alles aufgesteckt, ${read} von ${levels} Linien gemessen`,
} as const;

/** Her file says it in English. */
export const sampleTitle = (title: string): string => title.replace(/\(sample person\)$/, "(Beispielperson)");

export const homeWords = {
  title: "Aus einer Schneiderbüste wird das Ebenbild einer Person",
  lead: "Messen Sie die Person und die Büste. Sie erfahren, welche Polster aus Vlies Sie zuschneiden, wohin jedes gesteckt wird und was das Maßband nach jedem zeigen soll.",
  ownStart: "Mit Brust, Taille und Hüfte beginnen",
  ownStartNote: "Brustumfang, Taille und Hüfte genügen für einen ersten Plan: etwa fünf Minuten mit dem Maßband.",
  continueWith: (title: string): string => (title === "" ? "Mit Ihrer Anprobe weitermachen" : `Weiter mit ${title}`),
  demo: "Den Plan einer Beispielperson ansehen",
  demoNote: "Einmal tippen. Die Person ist erfunden.",
  demoReplaces: "Ihre eigene Anprobe wird vorher so gespeichert, wie sie ist.",
  privacyTitle: "Nichts verlässt dieses Gerät",
  privacy:
    "Die Maße bleiben in diesem Browser. Es gibt kein Konto, nichts wird verschickt, und alles geht auch ohne Netz. Ein Browser kann verlieren, was er behält: Sichern Sie Ihre Maße ab und zu in einer Datei.",
  needTitle: "Was Sie brauchen",
  needs: [
    "Eine Schneiderbüste, die kleiner ist als die Person. Polstern macht nur größer.",
    "Ein Maßband und, wenn es geht, jemanden, der hilft.",
    "Vlies, abgezählte Stecknadeln in einer Schale, einen BH in der Größe der Person, eine Staubmaske.",
  ],
} as const;
