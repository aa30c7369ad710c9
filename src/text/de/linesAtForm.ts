import { isNought } from "../shownLength";
import type { LinePart } from "../../core/form/linePart";
import type { LineChange } from "../../core/plan/lineChange";
import type { Millimetres } from "../../core/units";
import { inflected } from "./grammar/levels";
import { lineWords } from "./pictures";

export { markSpacing } from "../linesAtForm";

const parts: {
  readonly [part in LinePart]: {
    readonly name: string;
    readonly measure: (line: string) => string;
    readonly how: string;
  };
} = {
  girth: {
    name: "rundum",
    measure: (line) => `Die nackte Büste auf der ${inflected(line)} rundum messen.`,
    how: "Waagerecht, an der Oberkante des Markierbands entlang. Das Maßband liegt überall an und drückt nicht ein.",
  },
  frontArc: {
    name: "vorn, von Seitennaht zu Seitennaht",
    measure: (line) => `Auf der ${inflected(line)} vorn messen, von Seitennaht zu Seitennaht.`,
    how: "Von der linken Seitennaht der Büste über die Vorderseite zur rechten, auf derselben Linie.",
  },
  breadth: {
    name: "Breite gerade hindurch",
    measure: (line) => `Auf der ${inflected(line)} die Breite gerade hindurch messen.`,
    how: "Auf der Linie an jede Seite ein Buch flach anhalten, den Buchrücken nach innen. Gerade von einem zum anderen messen.",
  },
  depth: {
    name: "Tiefe von vorn nach hinten",
    measure: (line) => `Auf der ${inflected(line)} die Tiefe von vorn nach hinten messen.`,
    how: "Auf der Linie ein Buch vorn und eines hinten flach anhalten, den Buchrücken nach innen. Gerade von einem zum anderen messen.",
  },
};

const shortNames: { readonly [part in LinePart]: string } = {
  girth: "rundum",
  frontArc: "vorn",
  breadth: "Breite",
  depth: "Tiefe",
};

/** Behind `dann`, as the next thing to measure. */
const nextParts: { readonly [part in LinePart]: string } = {
  girth: "rundum",
  frontArc: "vorn",
  breadth: "die Breite",
  depth: "die Tiefe",
};

type Write = (length: Millimetres) => string;

export const linesWords = {
  region: "Vor dem ersten Polster",
  trail: { prepare: "Vorbereiten", mark: "Anzeichnen", read: "Messen" },
  prepare: {
    title: "Die Büste vorbereiten.",
    sentence: "Alles Weitere wird über dem gemessen, was die Büste jetzt trägt.",
    steps: [
      {
        title: "Den Ständer feststellen",
        text: "Und beschweren: Eine gepolsterte Büste ist oben schwer. Eine schwere Büste heben zwei zusammen.",
      },
      {
        title: "Den BH anziehen, wenn einer getragen wird",
        text: "Den, über dem die Kleider sitzen sollen, oder einen, der ebenso sitzt. Im Band eine Falte abstecken; er bleibt an.",
      },
      {
        title: "Lotrecht stellen",
        text: "Einmal ganz herumdrehen: Saum und Schultern bleiben auf einer Höhe. Jeder Drehknopf bleibt von jetzt an, wie er ist.",
      },
    ],
    done: "Die Büste ist bereit",
    heightsFirst:
      "Einige Höhen der Person sind geschätzt, und eine Linie auf geschätzter Höhe ist noch nicht die der Person. Messen Sie sie zuerst über dem Boden, wenn es geht.",
    toHeights: "Die Höhen messen",
    nape: {
      label: "Höhe des Nackens der Büste über dem Boden",
      why: "Dann steht bei jeder Linie die Höhe für den Zeiger, und nichts ist abzuziehen. Jeder Boden ist recht, auch ein Tisch.",
    },
  },
  mark: {
    title: (line: string): string => `Die ${line} der Person anzeichnen.`,
    below: (distance: string): string =>
      `Auf der Büste, ${distance} senkrecht unter ihrem Nacken, waagerecht zum Boden.`,
    pointer: {
      title: "Einen Zeiger einstellen",
      known: (nape: string, below: string, height: string): string =>
        `Der Nacken der Büste liegt ${nape} über dem Boden; ${below} abgezogen ergibt ${height}. Auf dieser Höhe eine Klammer oder ein Fähnchen aus Klebeband an einem senkrechten Stab befestigen.`,
      unknown: (below: string): string =>
        `Messen, wie hoch der Nacken der Büste über dem Boden liegt, und ${below} abziehen. Auf dieser Höhe eine Klammer oder ein Fähnchen aus Klebeband an einem senkrechten Stab befestigen.`,
    },
    turn: {
      title: "Die Büste daran vorbeidrehen",
      text: (step: string): string =>
        `Abgezählte Stecknadeln in die Büste stecken: alle ${step} eine, am Zeiger, rundum.`,
    },
    tape: {
      title: "Das Markierband auflegen",
      text: "Seine Oberkante läuft an den Nadeln entlang. Feststecken, dann die Nadeln zum Anzeichnen herausziehen und zählen.",
    },
    shell: "Auf einer harten Büste: ablösbarer Stift oder Klebepunkte statt Nadeln.",
    done: (line: string): string => `Die ${line} ist angezeichnet`,
    estimated: "Diese Höhe ist geschätzt.",
    measureIt: "An der Person messen",
    front: "vorn",
    leftSide: "linke Seite",
    nape: "Nacken",
    picture: (line: string): string => `Anzeichnen: ${line}`,
    pictureText: (line: string, distance: string): string =>
      `Die Büste von vorn und von ihrer linken Seite. Ein Zeiger an einem senkrechten Stab berührt sie an der ${inflected(line)}, ${distance} unter dem Nacken.`,
    pictureCovered: (line: string): string =>
      `Die Büste von vorn und von ihrer linken Seite. Ein Zeiger an einem senkrechten Stab berührt sie an der ${inflected(line)}.`,
  },
  read: {
    part: (part: LinePart): string => parts[part].name,
    short: shortNames,
    title: (part: LinePart, line: string): string => parts[part].measure(line),
    how: (part: LinePart): string => parts[part].how,
    estimated: (length: string): string => `${length} ist geschätzt, bis Sie messen.`,
    save: (length: string, next: string | null): string =>
      `${length} speichern${next === null ? "" : `, dann ${next}`}`,
    saveNothing: "Eintippen, was das Maßband zeigt",
    skip: "Auslassen",
    passOver: "Den Rest auslassen",
    optional: "wenn Sie mögen",
    measured: "gemessen",
    lines: "Die Linien der Person",
    kept: (line: string, part: LinePart, length: string): string => `Die ${line}, ${parts[part].name}: ${length}.`,
    field: (line: string, part: LinePart): string => `${line}, ${parts[part].name}`,
    next: (line: string, part: LinePart, isSameLine: boolean): string => (isSameLine ? nextParts[part] : `die ${line}`),
  },
  changed: ({ level, counted, toAdd, pieces, mayMiss, isFirmNow }: LineChange, write: Write): readonly string[] => [
    isFirmNow ? "Jede Linie ist gemessen: Der Plan ist kein Entwurf mehr." : "Der Plan ist neu berechnet.",
    `An der ${inflected(lineWords[level])} ${addsWords(toAdd.before, toAdd.after, counted, write)}`,
    pieces.after === pieces.before
      ? `${piecesWords(pieces.after)}, wie zuvor.`
      : `${piecesWords(pieces.after)} statt ${pieces.before}.`,
    write(mayMiss.after) === write(mayMiss.before)
      ? `Er kann bis zu ${write(mayMiss.after)} danebenliegen.`
      : `Er kann bis zu ${write(mayMiss.after)} danebenliegen statt ${write(mayMiss.before)}.`,
  ],
  finished: {
    title: "Die nackte Büste ist gemessen.",
    stillDraft: "Einige Linien sind noch nicht gemessen.",
    sentence: (length: string): string =>
      `Die ersten Maße über dem Polster können bis zu ${length} danebenliegen; neun von zehn bleiben darunter.`,
    next: (pieces: number): string =>
      pieces === 0
        ? "An dieser Büste zeigt das Maßband dasselbe wie an der Person: Es gibt nichts aufzustecken."
        : `Der Plan für diese Büste hat ${pieces === 1 ? "ein Polster" : piecesWords(pieces)}. Als Nächstes kommen die Probelage und das erste Polster.`,
    again: "Messen, was ausgelassen wurde",
    toPlan: "Den Plan ansehen",
    goOn: "Weiter zum ersten Polster",
  },
  draft: {
    offer: "Jetzt nicht: den Entwurf des Plans ansehen",
    back: "Die Linien anzeichnen und die nackte Büste messen",
    first: "Zuerst: die Linien der Person anzeichnen",
    note: (length: string): string =>
      `Dieser Plan ist ein Entwurf: Maße können bis zu ${length} danebenliegen (neun von zehn bleiben darunter).`,
    makesFirm: "Sind die Linien der Person auf der Büste angezeichnet und dort gemessen, steht er fest.",
    begun:
      "Messen Sie nach jedem Polster jede Linie und lassen Sie die übrigen Polster neu berechnen: Das gleicht es aus.",
  },
} as const;

export const linesSheetWords = {
  title: (name: string): string => (name === "" ? "Linien auf der Büste" : `Linien auf der Büste, für ${name}`),
  isFirm: "Die nackte Büste ist auf den Linien der Person gemessen, und der Plan rechnet damit.",
  pointer:
    "Für jede Linie: Höhe des Nackens der Büste über dem Boden, weniger der Abstand der Linie unter dem Nacken. Auf dieser Höhe eine Klammer oder ein Fähnchen aus Klebeband an einem senkrechten Stab befestigen.",
  after:
    "Dann unter „Polstern“ bei den Linien eintippen, was das Maßband an der nackten Büste zeigt: Mit jedem Maß wird der Plan neu berechnet, und vorher gedruckte Polster gelten nicht mehr.",
  head: {
    line: "Linie",
    below: "unter dem Nacken",
    height: "über dem Boden",
    marked: "angezeichnet",
    person: "Person",
    form: "Nackte Büste",
    parts: {
      girth: "rundum",
      frontArc: "vorn, von Seitennaht zu Seitennaht",
      breadth: "Breite gerade hindurch",
      depth: "Tiefe von vorn nach hinten, wenn Sie mögen",
    } satisfies { readonly [part in LinePart]: string },
  },
  ways: {
    girth: "Rundum.",
    frontArc: "Vorn.",
    breadth: "Breite gerade hindurch.",
    depth: "Tiefe von vorn nach hinten.",
  } satisfies { readonly [part in LinePart]: string },
} as const;

const piecesWords = (count: number): string => (count === 1 ? "Ein Polster" : `${count} Polster`);

function addsWords(before: Millimetres, after: Millimetres, counted: LineChange["counted"], write: Write): string {
  const where = counted === "girth" ? "rundum" : "vorn";
  const [was, is] = [before, after].map((length) => (isNought(write(length)) ? "nichts" : write(length)));
  return was === is ? `kommt ${where} ${is} dazu, wie zuvor.` : `kommt ${where} jetzt ${is} dazu, statt ${was}.`;
}
