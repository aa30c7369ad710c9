import type { StepName } from "../../app/steps/step";
import type { LengthUnit } from "../../core/lengthText";
import type { TapePartName } from "../padding";
import { upperFirst } from "./grammar/listed";
import { sampleTitle } from "./workroom";

export { capital, clockText, durationText } from "../classView";

export const classWords = {
  title: "Kursansicht",
  wearersSide: "Links und rechts gelten von der Person aus.",
  step: (place: number, all: number): string => `Schritt ${place} von ${all}`,
  facts: { layers: "Lagen", cut: "Die äußerste Lage", place: "Stelle", edge: "Kante" },
  form: "Die Büste",
  /** Every level is feminine. */
  shouldRead: (level: string, isNow: boolean): string =>
    isNow ? `Die ${level} soll messen` : `Danach soll die ${level} messen`,
  tolerance: (length: string): string => `Auf ${length} genau ist am Ziel.`,
  comesNext: "Als Nächstes:",
  wanted: "Person",
  afterBare: "nackte Büste",
  after: (order: number): string => `nach Polster ${order}`,
  left: "bis zum Ziel",
  inUnit: { in: "in Zoll", cm: "in Zentimetern", mm: "in Millimetern" } satisfies {
    readonly [unit in LengthUnit]: string;
  },
  there: "am Ziel",
  shouldBeThere: "müsste am Ziel sein",
  over: "zu viel",
  guessed: "geschätzt",
  covered: "verdeckt",
  figuresCovered: "Die Zahlen sind verdeckt.",
  figuresShown: "Die Zahlen sind zu sehen.",
  parts: { girth: "rundum", frontArc: "vorn", backArc: "hinten" } satisfies {
    readonly [part in TapePartName]: string;
  },
  own: "Ihre eigene Anprobe",
  ownCovered: "Ihre eigene Anprobe, die Zahlen verdeckt",
  madeUp: (name: string): string =>
    sampleTitle(name).endsWith("(Beispielperson)") ? sampleTitle(name) : `${name} (Beispielperson)`,
  picture: "Der Querschnitt",
  linesPicture: "Die Linien auf der Büste",
  figures: "Was das Maßband zeigt",
  controls: "Bedienung",
} as const;

export const classControls = {
  back: "Voriger Schritt",
  forward: "Nächster Schritt",
  cover: "Zahlen verdecken",
  uncover: "Zahlen zeigen",
  madeUp: "Beispielperson",
  nextMadeUp: "Andere Person",
  own: "Eigene Anprobe",
  unit: { in: "In cm", cm: "In Zoll", mm: "In Zoll" } satisfies { readonly [unit in LengthUnit]: string },
  fullScreen: "Vollbild",
  leaveFullScreen: "Vollbild beenden",
  session: "Kursplan",
  note: "Notiz",
  keys: "Alle Tasten",
  closeKeys: "Schließen",
  leave: "Verlassen",
  levels: "Gezeigte Linie",
  follow: "Nach dem Polster",
} as const;

export const keyHelp: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: "→ ↓ Leertaste Bild ab", does: "nächster Schritt (am Klicker: vor)" },
  { keys: "← ↑ Umschalt+Leertaste Bild auf", does: "voriger Schritt (am Klicker: zurück)" },
  { keys: "Pos1 / Ende", does: "der erste Schritt / der letzte Schritt" },
  { keys: "C, B oder Punkt", does: "jede Zahl der Person verdecken oder zeigen (am Klicker: dunkel)" },
  { keys: "M", does: "eine Beispielperson; noch einmal: eine andere" },
  { keys: "O", does: "Ihre eigene Anprobe, verdeckt" },
  { keys: "1 bis 5", does: "bei einer Linie bleiben, von der Brust abwärts" },
  { keys: "0", does: "die Linie, die das Polster am meisten ändert" },
  { keys: "U", does: "Zoll oder Zentimeter" },
  { keys: "F", does: "Vollbild" },
  { keys: "S", does: "der Kursplan: was an diesem Kurstag zu schaffen ist, und die Minuten jedes Schrittes" },
  { keys: "N", does: "Ihre eigene Notiz zum Schritt, eingetippt unter „Drucken“" },
  { keys: "P", does: "die Uhr des Schrittes starten oder anhalten" },
  { keys: "R", does: "ein Handy als Fernbedienung, wenn Padwright mit --share gestartet wurde" },
  { keys: "K", does: "diese Liste" },
];

export const keyHelpWords = {
  title: "Tasten und Klicker",
  letters: "Tasten mit Buchstaben und Ziffern wirken",
  private: "Nichts, was Sie hier tun, ändert eine Anprobe.",
} as const;

export const sessionWords = {
  title: "An diesem Kurstag",
  lasts: "Wie lange der Kurstag dauert",
  sum: (duration: string): string =>
    `Etwa ${duration} für ein Paar Hände. Dann steckt keine Nadel mehr in der Büste: Hören Sie dort auf.`,
  longer: (duration: string): string =>
    `Bis zur nächsten Stelle zum Aufhören dauert es etwa ${duration}: So lange bleiben Nadeln in der Büste. Niemand darf sich darauf stützen; hinterlassen Sie einen Zettel.`,
  nothing: "Es ist nichts mehr zu tun.",
  start: "Die Uhr starten",
  pause: "Die Uhr anhalten",
  timer: (clock: string, duration: string): string => `${clock} von etwa ${duration}`,
} as const;

export const sessionActs: { readonly [name in StepName]?: string } = {
  cut: "zuschneiden",
  stack: "stapeln",
  pin: "stecken",
  tune: "ausgleichen",
  "carry-lines": "Linien übertragen",
};

export const classPicture = {
  wearers: "PERSON",
  title: (level: string, where: string): string => `${upperFirst(level)} von oben gesehen, ${where}`,
  bare: "die nackte Büste",
  after: (order: number): string => `nach Polster ${order}`,
  description: (count: number): string =>
    `Die Büste in der Mitte, ringsum ${count === 0 ? "kein Vlies" : count === 1 ? "eine Lage Vlies" : `${count} Lagen Vlies`}, und der Umriss der Person als Kreidelinie; die getönte Fläche dazwischen ist noch zu füllen.`,
} as const;
