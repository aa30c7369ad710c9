import type { LevelName } from "../../core/body/vocabulary";
import type { LengthUnit } from "../../core/lengthText";
import type { DoneKind, LayerSpan } from "../learning";
import { battingName } from "./grammar/battingName";
import { theLevel } from "./grammar/levels";
import { listed } from "./grammar/listed";
import { thinText } from "./thinText";

export { type DoneKind, doneKinds, type LayerSpan, type ReadingCare } from "../learning";

export const learningWords = {
  title: "Von Ihrem Maßband",
  mayBe: "Was eine Lage unter dem Maßband ausmachen kann",
  is: "Was eine Lage unter dem Maßband ausmacht",
  working: "Wird berechnet…",
  replanned: "Die übrigen Polster sind neu berechnet. „Zurück“ holt den vorigen Plan wieder.",
  started: (amount: string): string => `Anfangswert: ${amount}.`,
  inStack: (amount: string): string =>
    `Im Stapel macht jede Lage etwa ${amount} aus, weil die unteren zusammengedrückt werden.`,
  nothingRead:
    "Über der Büste ist noch nichts gemessen. Bis dahin rechnet der Plan mit dem Anfangswert, der um die Hälfte danebenliegen kann.",
  readings: (count: number): string => (count === 1 ? "Aus einem Maß." : `Aus ${count} Maßen.`),
  readingsTitle: "Die Maße dahinter",
  read: (what: string, length: string): string => `${what} ${length}`,
  trialRead: (batting: string, before: string, after: string): string =>
    `Probe mit ${battingName(batting)}: ${before}, dann ${after}`,
  leaveOut: "Dieses Maß nicht beachten",
  leaveOutOf: (reading: string): string => `Dieses Maß nicht beachten: ${reading}`,
  leftOut: "Wird nicht beachtet. „Zurück“ macht es rückgängig.",
  settled: "im neuen Plan berücksichtigt",
  building: "das Vlies zum Aufbauen",
  finishing: "das Vlies für außen",
} as const;

export const impossibleWords = {
  why: (what: string, read: string, least: string, most: string): string =>
    `${what}: ${read} ist nicht möglich: Mit diesen Polstern kann das Maßband ${least} bis ${most} zeigen.`,
  field: (least: string, most: string): string =>
    `Hier nicht möglich, darum nicht benutzt: Das Maßband kann ${least} bis ${most} zeigen. Messen Sie noch einmal.`,
  behind: "nicht möglich, nicht benutzt",
} as const;

export const errorWords = {
  title: "Wie genau messen Sie?",
  explain: (amount: string): string =>
    `Angenommen wird: Neun von zehn Ihrer Maße liegen höchstens ${amount} daneben. Je ruhiger die Hand, desto mehr zählt jedes.`,
  choice: { careful: "sehr genau", usual: "wie zu Hause üblich", hasty: "in Eile" },
} as const;

export const layerSentence = (
  { layer, least, most }: LayerSpan,
  unit: LengthUnit,
  standing: "read" | "guessed",
): string => {
  const span = `${thinText(least, unit).replace(/ (in|mm)$/, "")} bis ${thinText(most, unit)}`;
  return standing === "read"
    ? `Eine Lage macht unter dem Maßband etwa ${thinText(layer, unit)} aus, am ehesten ${span}.`
    : `Eine Lage kann unter dem Maßband etwa ${thinText(layer, unit)} ausmachen, am ehesten ${span}.`;
};

export function levelList(levels: readonly LevelName[], all: number): string {
  return levels.length === all ? "jede Linie" : listed(levels.map((level) => theLevel[level]));
}

export const doneWords = {
  title: "Ist es fertig?",
  why: (home: string, aim: string): string =>
    `Am Ziel heißt: rundum, vorn und hinten auf ${home} genau. Genauer lässt es sich mit einem Maßband zu Hause nicht sagen. Der Plan selbst zielt auf ${aim}.`,
  again: (hasCover: boolean): string =>
    `Messen Sie nach jedem Schritt jede Linie noch einmal${hasCover ? ", und einmal mehr über dem Bezug" : ""}.`,
  unread: (what: "none" | "girthOnly", hasCover: boolean): string =>
    `${what === "none" ? "" : "vorn und hinten "}${hasCover ? "über dem Bezug " : ""}noch nicht gemessen`,
  overall: {
    done: "Fertig: Jede Linie ist am Ziel.",
    doneShort: "Fertig, soweit Polstern reicht.",
    stopHere:
      "Jede Linie ist schon am Ziel: Sie können hier aufhören. Die übrigen Polster würden es nur noch verfeinern.",
    unread: (levels: string, hasCover: boolean): string =>
      `Das kann nur das Maßband sagen${hasCover ? ", auch über dem Bezug" : ""}: Messen Sie ${levels}, rundum und vorn.`,
    pinning: (count: number): string =>
      count === 1
        ? "Noch nicht: Ein Polster ist noch aufzustecken."
        : `Noch nicht: ${count} Polster sind noch aufzustecken.`,
    off: (levels: string): string => `Noch nicht: Sehen Sie nach, was hier fehlt: ${levels}.`,
  },
} as const;

const partWords = { girth: "rundum", frontArc: "vorn", backArc: "hinten" } as const;

const doneSentences: { readonly [kind in DoneKind]: (amount: string, part: string) => string } = {
  there: () => "am Ziel",
  notYet: (amount, part) => `noch nicht: ${part} fehlen ${amount}`,
  over: (amount, part) => `${part} ${amount} zu viel`,
  asNearAsItGets: (amount, part) => `so nah, wie Polstern reicht: ${part} ${amount} daneben`,
};

const expectedSentences: { readonly [kind in DoneKind]: (amount: string, part: string) => string } = {
  there: () => "müsste am Ziel sein",
  notYet: (amount, part) => `${part} fehlen ${amount}`,
  over: (amount, part) => `vielleicht ${part} ${amount} zu viel`,
  asNearAsItGets: (amount, part) => `müsste so nah sein, wie Polstern reicht: ${part} ${amount} daneben`,
};

export const doneSentence = (
  kind: DoneKind,
  amount: string,
  part: keyof typeof partWords,
  standing: "read" | "expected",
): string => (standing === "read" ? doneSentences : expectedSentences)[kind](amount, partWords[part]);

export const trialName = "Probe";
