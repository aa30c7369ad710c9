import { upperFirst } from "../upperFirst";
import type { StepName } from "../../app/steps/step";
import type { LengthUnit } from "../../core/lengthText";
import type { TapePartName } from "../padding";
import type { LevelName } from "../../core/body/vocabulary";
import { durationText } from "../classView";
import { levelWords } from "./pictures";
import { sampleTitle } from "./workroom";

export { clockText, durationText } from "../classView";

export const classWords = {
  title: "Kursansicht",
  wearersSide: "Links und rechts gelten von der Person aus.",
  step: (place: number, all: number): string => `Schritt ${place} von ${all}`,
  facts: {
    layers: "Lagen",
    edge: "Kante",
    darts: "Abnäher",
    dartCount: (count: number): string => `${String(count)} an jeder Linie oder Kante, die welche hat`,
    dartSize: (wide: string, deep: string): string => `${wide} × ${deep}`,
    dartsAt: (
      count: number | null,
      places: readonly { readonly from: LevelName | "top" | "bottom"; readonly count: number; readonly size: string }[],
    ): string =>
      `${count === null ? "Abnäher" : `${String(count)} Abnäher`}: ${places
        .map((place) => {
          const isEnd = place.from === "top" || place.from === "bottom";
          const where =
            place.from === "top"
              ? "Oberkante"
              : place.from === "bottom"
                ? "Unterkante"
                : upperFirst(levelWords[place.from]);
          return `${where} ${count === null ? `${String(place.count)} zu ` : ""}${place.size}${isEnd ? "" : " nach oben und unten"}`;
        })
        .join("; ")}.`,
    featherCovered: "die Kanten auszupfen",
    onlyLayer: "Die eine Lage",
    layer: (number: number, isOutermost: boolean): string =>
      isOutermost ? `Lage ${String(number)}, die äußerste` : `Lage ${String(number)}`,
  },
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
  overCover: "über dem Bezug",
  checkCovered: "Noch einmal messen.",
  tuneCovered: "Das Polster ausgleichen.",
  whose: (name: string, isCovered: boolean): string =>
    [name, isCovered ? "die Zahlen verdeckt" : ""].filter((words) => words !== "").join(", "),
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
  own: "Die geöffnete Anprobe",
  coverPerson: "Die Person verdecken",
  coverForm: "Die Büste verdecken",
  keysHint: "alle Tasten",
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
  { keys: "C, B oder Punkt", does: "jede Zahl und den Umriss verdecken oder zeigen (am Klicker: dunkel)" },
  { keys: "X / Z", does: "nur die Person samt Umriss verdecken oder zeigen / nur die Zahlen der Büste" },
  { keys: "Eingabe", does: "eintippen, was der Kurs abliest, bei einem Schritt mit Messen" },
  { keys: "M", does: "eine Beispielperson beim selben Schritt; noch einmal: eine andere" },
  { keys: "O", does: "zurück zur geöffneten Anprobe; eine gemessene Person kommt verdeckt" },
  { keys: "1 bis 5", does: "bei einer Linie bleiben, von der Brust abwärts" },
  { keys: "0", does: "die Linie, die das Polster am meisten ändert" },
  { keys: "U", does: "Zoll oder Zentimeter" },
  { keys: "F", does: "Vollbild" },
  { keys: "S", does: "der Kursplan: was an diesem Kurstag zu schaffen ist, und die Minuten jedes Schrittes" },
  { keys: "N", does: "die Notiz zum Schritt, mit dem Weg dorthin, wo Notizen getippt werden" },
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
  length: (minutes: number): string =>
    minutes >= 720 ? "Zwei Tage" : minutes >= 360 ? "Ein Tag von 6 h" : durationText(minutes),
  day: (day: number, duration: string): string => `Tag ${String(day)}, etwa ${duration}`,
  sum: (duration: string): string =>
    `Etwa ${duration} für ein Paar Hände. Dann hält keine Nadel mehr ein Polster: Hören Sie dort auf.`,
  next: (duration: string): string =>
    `Bis zur nächsten Stelle zum Aufhören sind es noch etwa ${duration}: zu weit für diesen Kurstag.`,
  total: (duration: string): string =>
    `Alles, was noch zu tun ist, dauert etwa ${duration}; das Messen der Person ist nicht dabei.`,
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

export const typedWords = {
  title: "Tippen Sie, was der Kurs abliest:",
  key: "Eingabe",
  kept: "Nur hier zu sehen; es kommt in keine Anprobe.",
  covered: "Die Zahlen sind verdeckt: Zeigen Sie sie (C), und tippen Sie dann, was der Kurs abliest.",
  layer: (length: string): string => `Eine Lage trägt etwa ${length} auf.`,
  planCounts: (length: string): string => `Der Plan rechnet mit ${length}.`,
  doubts: {
    lessThanBare: "Das ist weniger, als die nackte Büste misst, und Polstern trägt nur auf. Noch einmal messen.",
    frontIsMore: "Vorn ist nicht weniger als rundum. Beides noch einmal messen.",
    wrappedIsLess: "Nach diesen beiden trägt der Streifen nichts auf. Beides noch einmal messen.",
  },
} as const;

export function typedLabel(name: string): string {
  if (name === "trialBare") return "ohne den Streifen";
  if (name === "trialWrapped") return "über dem Streifen";
  if (name.endsWith("FrontArc")) return "vorn";
  if (name.endsWith("BackArc")) return "hinten";
  return name.endsWith("Breadth") ? "Breite" : "rundum";
}

export const classPicture = {
  wearers: "PERSON",
  title: (level: string, where: string): string => `${upperFirst(level)} von oben gesehen, ${where}`,
  bare: "die nackte Büste",
  after: (order: number): string => `nach Polster ${order}`,
  descriptionCovered: (count: number): string =>
    `Die Büste in der Mitte, ringsum ${count === 0 ? "kein Vlies" : count === 1 ? "eine Lage Vlies" : `${count} Lagen Vlies`}.`,
  description: (count: number): string =>
    `Die Büste in der Mitte, ringsum ${count === 0 ? "kein Vlies" : count === 1 ? "eine Lage Vlies" : `${count} Lagen Vlies`}, und der Umriss der Person als Kreidelinie; die getönte Fläche dazwischen ist noch zu füllen.`,
} as const;
