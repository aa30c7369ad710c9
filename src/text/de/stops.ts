import type { FormFacts } from "../../app/steps/formFacts";
import { partOfStep } from "../../app/steps/jobPart";
import type { PlannedChange } from "../../app/steps/planAnew";
import type { Step } from "../../app/steps/step";
import type { StepFacts } from "../../app/steps/stepFacts";
import type { Piece } from "../../core/padding/piece";
import type { HandStep } from "../stops";
import { type AfterPaddingName, makingDone, makingHands } from "./makingSteps";
import { bastedTo, pinningWords, unsaidForm } from "./formKinds";
import { layerCount, thePiece } from "./pieces";

export type { HandStep } from "../stops";

export const stopWords = {
  region: "Der nächste Schritt",
  route: "Polster, in der Reihenfolge des Aufsteckens",
  preparations: "Vor dem ersten Polster",
  prepared: { prepare: "die Büste vorbereitet", lines: "die Linien", trial: "die Probe" },
  stands: { on: "aufgesteckt", now: "jetzt", toCome: "noch nicht aufgesteckt" },
  isDone: "fertig",
  padded: "Das Polstern ist fertig.",
  paddedNext: (next: string): string => `Als Nächstes: ${next}`,
  toFinishing: "Weiter zum Abschluss",
  coverPinned: "Der Bezug ist noch gesteckt: Bewegen Sie die Büste nicht, bevor seine Nadeln heraus und gezählt sind.",
  safeStop:
    "Eine gute Stelle, um für heute aufzuhören: Alles ist geheftet, und die Nadeln sind heraus. Die Büste lässt sich am Ständer bewegen.",
  minutes: (minutes: number): string => `etwa ${minutes} min`,
  working: "Wird berechnet…",
  more: "Alle Maße, und was sie zeigen",
  afterwards: (level: string, length: string): string => `Danach sollte das Maßband etwa ${length} zeigen (${level}).`,
  lookedAt: "Sie sehen ein anderes Polster an. Der nächste Schritt wartet.",
  back: "Zurück zum nächsten Schritt",
  takeOff: "Dieses Polster wieder abnehmen",
  takenOff: "Wieder abgenommen.",
  stack: { outermost: "ganz außen", inmost: "auf der Büste" },
  layers: "Lagen, von der Büste nach außen",
  layer: (number: number, count: number): string =>
    number === count ? `${number}, ganz außen` : number === 1 ? "1, auf der Büste" : String(number),
} as const;

export const pieceTrail = { cut: "Zuschneiden", stack: "Stapeln", pin: "Stecken", "carry-lines": "Linien" } as const;
export const tapeTrail = { read: "Messen", tune: "Ausgleich", baste: "Heften", look: "Ansehen" } as const;
export const planTrail = { read: "Messen", "plan-anew": "Berechnen", cut: "Zuschneiden" } as const;
export const firstTrail = {
  "prepare-form": "Vorbereiten",
  "mark-lines": "Anzeichnen",
  "read-lines": "Messen",
  trial: "Probe",
} as const;

export function doneWords({ do: name, piece, act, turn }: Step): string {
  switch (name) {
    case "prepare-form":
      return "Die Büste ist bereit";
    case "mark-lines":
      return "Die Linien sind angezeichnet";
    case "read-lines":
      return "Weiter zu den Polstern";
    case "cut":
      return piece?.layers.length === 1 ? "Zugeschnitten" : "Alle Lagen zugeschnitten";
    case "stack":
      return "Aufeinandergelegt";
    case "pin":
      return piece?.kind === "tuning" ? "Eingeschoben" : "Aufgesteckt";
    case "carry-lines":
      return "Die Linien sind übertragen";
    case "plan-anew":
      return "Die übrigen Polster neu berechnen";
    case "tune":
      return act?.kind === "takeOut" ? "Herausgenommen" : act?.kind === "narrow" ? "Schmaler gemacht" : "Eingeschoben";
    case "baste":
      return "Geheftet, Nadeln heraus und gezählt";
    case "build-above":
    case "mark-armhole":
      return "Erledigt";
    case "correct-above":
      return turn?.what === "takeOff" ? "Abgenommen" : "Aufgesteckt";
    case "look":
      return "Ich habe es angesehen";
    case "done":
      return "Alle Anproben";
    case "read":
    case "read-all":
    case "check":
    case "trial":
      return "";
    default:
      return makingDone[name];
  }
}

export function handSteps(
  { do: name, piece, act }: Step,
  feather: string,
  facts: Pick<StepFacts, "form" | "cloth" | "isReopened"> = unsaidFacts,
): readonly HandStep[] {
  const { form } = facts;
  switch (name) {
    case "cut":
      return [
        { title: "Jede Lage aufzeichnen", text: "Mittellinie und waagerechte Linien darauf anzeichnen." },
        { title: "Gerade schneiden", text: "Nur die äußerste Kante wird ausgezupft, auf der Büste." },
      ];
    case "stack":
      return [
        { title: "Die größte nach außen", text: "Mitte auf Mitte, Linie auf Linie." },
        { title: "Lange Stiche", text: "Flach liegend; beide Enden verknoten, nicht festziehen." },
      ];
    case "pin":
      return pinSteps(piece, feather, form);
    case "carry-lines":
      return [
        { title: "Das Band auflegen", text: "Jede Linie auf der Höhe, die sie auf der Büste hat." },
        { title: "Vorstich", text: "In Kontrastfarbe: Klebeband hält auf Vlies nicht." },
      ];
    case "tune":
      return act?.kind === "takeOut"
        ? [
            { title: "Eine Seite lösen", text: "Die äußerste Lage bleibt auf der Büste." },
            { title: "Herausziehen", text: "Dann glatt streichen und wieder stecken." },
          ]
        : [
            { title: "Eine Seite lösen", text: "Unter der äußersten Lage herausziehen oder hineinschieben." },
            { title: "Wieder stecken", text: `Mitte auf Mitte. ${feather}` },
          ];
    case "baste":
      return [
        { title: "Lange Stiche", text: bastedTo(form) },
        { title: "Nadeln heraus", text: "Eine nach der anderen, in die Schale." },
        { title: "Zählen", text: "So viele, wie hineingekommen sind." },
      ];
    case "look":
      return [
        { title: "Von vorn, dann von links", text: "Gestrichelt ist die Person, weiß die gepolsterte Büste." },
        {
          title: "Vier Längen",
          text: "Höhe und Abstand der Brustpunkte, Rückenlänge und vordere Taillenlänge.",
        },
      ];
    default:
      return partOfStep[name] === "padding" ? [] : makingHands(name as AfterPaddingName, facts);
  }
}

const unsaidFacts = { form: unsaidForm, cloth: "knit", isReopened: false } as const;

function pinSteps(piece: Piece | null, feather: string, form: FormFacts): readonly HandStep[] {
  if (piece?.kind === "tuning") {
    return [
      { title: "Eine Seite lösen", text: "Unter die äußerste Lage schieben, Mitte auf Mitte." },
      { title: "Wieder stecken", text: `Zuerst in der Mitte. ${pinningWords(form)} ${feather}` },
    ];
  }
  if (piece?.kind === "cup") {
    return [
      { title: "Jede Scheibe einschneiden", text: "Bis zur Mitte, und übereinanderlegen, bis sie sich wölbt." },
      { title: "Die größte ans Körbchen", text: "Der BH sitzt schon auf der Büste." },
    ];
  }
  return [
    { title: "Zuerst die Mitte", text: "Dann die Seiten, dann die Kanten." },
    {
      title: "Stecknadeln",
      text: `${pinningWords(form)} Nach unten ausstreichen. Keine Nadel näher als 2 cm an einer Linie.`,
    },
    { title: "Auszupfen", text: feather },
  ];
}

export const bandWords = {
  expected: "soll hier stehen.",
  tolerance: (within: string): string => `Auf ${within} genau ist am Ziel.`,
  tap: "Tippen Sie an, was Ihr Maßband zeigt.",
  another: "Eine andere Zahl eintippen",
  nextReading: "Das nächste Maß",
  keys: "Zurück zum Maßband",
  tape: "Maßband",
  less: (than: string): string => `Weniger als ${than}`,
  between: (from: string, to: string): string => `${from} bis ${to}`,
  more: (than: string): string => `Mehr als ${than}`,
  short: { less: "Weniger:", onTarget: "", more: "Mehr:" },
  make: {
    less: "Der nächste Schritt sagt, was dazukommt.",
    onTarget: "Am Ziel. Weiter.",
    more: "Der nächste Schritt sagt, was schmaler wird.",
  },
  said: { less: "weniger als erwartet", onTarget: "am Ziel", more: "mehr als erwartet" },
  rowsDown: (than: string): string => `${than} und weniger`,
  rowsUp: (than: string): string => `${than} und mehr`,
  save: (length: string, next: string | null): string => `${length} speichern${next === null ? "" : `, dann ${next}`}`,
  nothingYet: "Eintippen, was das Maßband zeigt",
  leaveOut: "Dieses auslassen",
  leaveAllOut: "Diese Maße auslassen",
  parts: { Girth: "rundum", FrontArc: "vorn", BackArc: "hinten" },
  saved: (what: string, length: string, band: string): string => `${what} ${length}: ${band}.`,
} as const;

export const trialStop = {
  before: { title: "Die Taille der nackten Büste messen.", next: "den Streifen herumlegen" },
  after: {
    title: "Die Taille über dem Streifen messen.",
    how: "Drei Runden eines 7,5 cm hohen Streifens, glatt und ungedehnt.",
  },
  what: { before: "Taille, nackt", after: "Taille, über dem Streifen" },
  saveLast: (length: string): string => `${length} speichern, Streifen wieder ab`,
  skip: "Die Probe auslassen",
  noMore: "Danach ist es nicht mehr als davor. Sind die beiden vertauscht?",
} as const;

export const tuneWays = {
  leave: "So lassen: nicht weiter ausgleichen",
  ignore: "Dieses Maß nicht beachten",
} as const;

export const checkStop = {
  read: (length: string): string => `Eingetippt sind ${length}.`,
  can: (least: string, most: string): string => `Mit diesen Polstern kann das Maßband ${least} bis ${most} zeigen.`,
  should: (expected: string): string => `Über diesen Polstern sollte das Maßband etwa ${expected} zeigen.`,
  ignore: "Dieses Maß nicht beachten",
  which: "Welches stimmt?",
  first: "erstes",
  second: "zweites",
  keep: (length: string): string => `${length} stimmt`,
  choose: "Wählen Sie das richtige",
  again: "Noch einmal messen",
} as const;

export const pinsOutStop = {
  pins: "Herausgezogene Nadeln",
  done: (what: string, count: number): string => `${what}, ${count} ${count === 1 ? "Nadel" : "Nadeln"} heraus`,
  missing: "Eine fehlt",
  missingTitle: "Eine Nadel fehlt: aufhören.",
  missingHow: [
    "Die Büste nicht bewegen und nicht bügeln. Den Boden ringsum absuchen.",
    "Mit einem Magneten über das Polster fahren, Naht für Naht.",
    "Sanft auf jede Stelle drücken. Erst weitermachen, wenn die Zahl stimmt.",
  ],
  found: "Sie ist gefunden",
} as const;

const fates: { readonly [fate in PlannedChange["fate"]]: string } = {
  stays: "bleibt, wie es ist",
  changes: "ändert sich",
  isNew: "neu",
  isGone: "wird nicht mehr gebraucht",
};

export const changeWords = ({ piece, fate }: PlannedChange): readonly [name: string, fate: string] => [
  thePiece(piece),
  fate === "isGone" || fate === "stays" ? fates[fate] : `${fates[fate]}: ${layerCount(piece.layers.length)}`,
];

export const planAnewStop = {
  pinned: (count: number): string =>
    count === 0
      ? "Noch ist nichts aufgesteckt."
      : count === 1
        ? "Das eine aufgesteckte Polster bleibt."
        : `Die ${count} aufgesteckten Polster bleiben.`,
  list: "Die übrigen Polster",
  none: "Es ist kein Polster mehr aufzustecken.",
} as const;
