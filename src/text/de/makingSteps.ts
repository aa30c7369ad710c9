import { upperFirst } from "../upperFirst";
import type { CoverOff, Step, StepName } from "../../app/steps/step";
import { handLengths, tiltTold } from "../../app/steps/handLengths";
import type { StepFacts } from "../../app/steps/stepFacts";
import { levelNames } from "../../core/body/vocabulary";
import type { LengthStep } from "../../core/lengthText";
import { mm } from "../../core/units";
import type { CoverCloth } from "../../document/fittingLimits";
import type { AfterPaddingName } from "../makingSteps";
import { shownLength } from "../shownLength";
import { armStepNames, armStepText } from "./arm";
import { heldBy } from "./formKinds";
import { atLevel, theLevel } from "./grammar/levels";
import { listed } from "./grammar/listed";
import { levelList } from "./learning";
import { dateText } from "./moment";
import { levelWords } from "./pictures";

export type { AfterPaddingName } from "../makingSteps";

interface MakingSaying {
  readonly lengths: LengthStep;
  readonly facts?: StepFacts;
}

type Words = readonly [act: string, how: string];

const { fitted, seam, hem } = handLengths.allowance;

const always = {
  "choose-cover": [
    "Wählen, woraus der Bezug wird.",
    "Maschenware aus Schnittteilen, Maschenware straff gesteckt, wie sie ist, Webstoff, oder kein Bezug. Maschenware zuerst ausprobieren: zwei Stellen anzeichnen, ziehen und messen.",
  ],
  "read-between": [
    "Zwischen den Linien messen, wenn es geht.",
    "Dann passt der Bezug auch dort: rundum, und vorn von Seitennaht zu Seitennaht.",
  ],
  "sew-cover": [
    "Die Nähte schließen, die die Form geben.",
    "Vordere Mitte und Teilungsnähte, Knips auf Knips. Die Seiten und die hintere Mitte bleiben offen.",
  ],
  "hem-cover": [
    "Den Bezug säumen.",
    "Unter die Unterkante der Büste einschlagen. Dort von Hand annähen, oder eine Kordel durch den Saum ziehen und zubinden.",
  ],
} as const satisfies { readonly [name in AfterPaddingName]?: Words };
type NamesLengths = Exclude<AfterPaddingName, keyof typeof always>;

export function makingWords(step: Step & { readonly do: AfterPaddingName }, { facts, lengths }: MakingSaying): Words {
  const { do: name } = step;
  if (name in always) return always[name as keyof typeof always];
  const write = (length: number) => shownLength(mm(length), lengths);
  switch (name as NamesLengths) {
    case "cut-cover":
      return [
        "Die Teile des Bezugs zuschneiden.",
        `Die Schnittteile in wahrer Größe drucken und jedes auf der durchgezogenen Linie ausschneiden; oberhalb der Brustlinie den Stoff stehen lassen. Die Nahtzugaben sind ${write(fitted)} an den Seiten und in der hinteren Mitte, ${write(hem)} am Saum, sonst ${write(seam)}.`,
      ];
    case "fit-cover":
      return fitWords(facts);
    case "close-cover":
      return closeWords(facts, write);
    case "read-cover":
      return readCoverWords(step);
    case "correct-cover":
      return correctWords(step.off, write);
    case "waist-tape":
      return waistTapeWords(facts, write);
    case "style-lines":
      return [
        "Die Linien anbringen, denen die Kleider folgen.",
        hasCover(facts)
          ? `Markierband auf ${styleLines(facts, write)}, vordere und hintere Mitte, Teilungsnähte, Hals und Armlöcher. ${hemWords(facts)}`
          : `Markierband auf ${styleLines(facts, write)}, vordere und hintere Mitte, Teilungslinien, Hals und Armlöcher nähen, durch das, was ganz außen liegt: Klebeband hält auf Vlies nicht. ${hemWords(facts)}`,
      ];
    case "cut-arm":
    case "sew-arm":
    case "fill-arm":
    case "hang-arm":
      return armWords(name as ArmStep, facts, lengths);
    case "put-away":
      return [
        "Eine Staubhülle über die Büste ziehen, bis sie gebraucht wird.",
        `Nicht in die Sonne stellen. Am Ständer heben, nie am Polster. ${measureAgain(facts)}`,
      ];
  }
}

const hasCover = (facts: StepFacts | undefined): boolean => facts?.cloth !== "none";

function closeWords(facts: StepFacts | undefined, write: (length: number) => string): Words {
  const opening = `von Hand${facts?.cloth === "woven" ? ", mit Reißverschluss oder mit Schnürung" : ""}`;
  return facts?.isReopened === true
    ? [
        "Den Bezug wieder schließen.",
        `Von der Taille aus über das neue Vlies glatt streichen und die hintere Mitte Kante an Kante stecken. Wo die Kanten sich nicht treffen, die Seitennähte ein wenig auslassen. ${upperFirst(opening)} schließen; die Nadeln herausziehen und zählen.${facts.isSewnIn ? " Das Taillenband wieder hindurch ins Polster nähen." : ""}`,
      ]
    : [
        "Die Seiten nähen und hinten schließen.",
        `An den Nadeln entlang anzeichnen, sie herausziehen und zählen. Den Bezug abnehmen, die Seiten nähen, auf ${write(fitted)} zurückschneiden, wenden und wieder überziehen. Die hintere Mitte ${opening} schließen.`,
      ];
}

const fitWords = (facts: StepFacts | undefined): Words =>
  facts?.cloth === "pulledKnit"
    ? [
        "Die Maschenware überziehen und straff stecken.",
        `${tie(facts)} Linke Seite außen, Nähte an den Seiten und in der hinteren Mitte: zuerst Taille, Brust, Hüfte und Schultern, dann dazwischen, dann noch einmal rundum, straffer.`,
      ]
    : [
        "Den Bezug an beiden Seiten abstecken.",
        `${tie(facts)} Mit der linken Seite nach außen überziehen, die hintere Mitte zugesteckt. Die Seiten von der Taille abwärts abstecken, dann aufwärts; vor jeder Nadel den Saum nach unten ziehen.`,
      ];

function readCoverWords({ names, levels }: Pick<Step, "names" | "levels">): Words {
  const level = upperFirst(theLevel[levels[0] ?? "waist"]);
  const [only] = names;
  const how = "Über dem Bezug: Es ist ein wenig weniger als über dem Polster.";
  if (only !== undefined && names.length === 1)
    return only.endsWith("Girth")
      ? [`${level} rundum messen.`, how]
      : [`${level} vorn messen.`, `Von Seitennaht zu Seitennaht. ${how}`];
  return [
    `${upperFirst(levelList(levels, levelNames.length))} über dem Bezug messen.`,
    "Rundum, und vorn von Seitennaht zu Seitennaht.",
  ];
}

const tie = (facts: StepFacts | undefined): string =>
  facts?.isTied === true
    ? "An der Unterbrustlinie und an der Taille schmales Gummiband umbinden."
    : "An der Taille schmales Gummiband umbinden.";

function correctWords(off: readonly CoverOff[], write: (length: number) => string): Words {
  const each = off.map(
    ({ level, over }) =>
      `${atLevel[level]} insgesamt ${write(Math.abs(over))} ${over > 0 ? "enger nähen" : "auslassen"}`,
  );
  const isShort = off.some(({ over }) => over < 0);
  return [
    "Den Bezug an den Seiten berichtigen.",
    `Dort die Seitennähte auftrennen. ${upperFirst(each.join("; "))}: je ein Viertel davon an jeder Kante beider Seitennähte. Wieder nähen, die Nadeln heraus und gezählt.${isShort ? " Wo das nicht reicht, ein dünnes Stück Vlies unterlegen." : ""}`,
  ];
}

export const sewnInTick = "So weit steht er ab: ins Polster genäht";

function waistTapeWords(facts: StepFacts | undefined, write: (length: number) => string): Words {
  const tape = facts?.waistTape ?? null;
  if (tape === null)
    return ["Das Taillenband annähen.", "An der Taille, in der hinteren Mitte ein Ende über dem anderen."];
  const { height, length, tilt } = tape;
  const at =
    height.kind === "alongBack"
      ? `${write(height.value)} unter dem Nacken, auf dem Polster gemessen`
      : `etwa ${write(height.value)} senkrecht unter dem Nacken (geschätzt)`;
  const tilted =
    tilt === null || Math.abs(tilt.front - tilt.back) < 3
      ? ""
      : ` Vorn liegt es ${write(Math.abs(tilt.front - tilt.back))} ${tilt.front < tilt.back ? "tiefer" : "höher"} als hinten${tape.tiltAdds < tiltTold ? "" : `: So geneigt zeigt ein Maßband etwa ${write(tape.tiltAdds)} mehr als waagerecht`}.`;
  const sewn = hasCover(facts)
    ? `Lange Stiche an der Oberkante, nur durch den Bezug; wo eine gerade Kante von den Schulterblättern zum Gesäß an der Taille ${write(handLengths.sewnInFrom)} oder mehr absteht, bis ins Polster.`
    : "Lange Stiche an der Oberkante, nur durch die äußerste Lage Vlies.";
  return [
    "Das Taillenband annähen.",
    `${write(length)} lang abschneiden. Die Enden treffen sich in der hinteren Mitte, ${at}, und liegen ${write(25.4)} übereinander.${tilted} ${sewn}`,
  ];
}

const hemWords = (facts: StepFacts | undefined): string =>
  facts?.isFloorKnown === true
    ? "Für Säume die Taille der Büste so hoch über den Boden stellen wie die der Person."
    : "Für Säume bei der Person von der Taille bis zum Boden messen und die Büste danach einstellen.";

const styleLines = (facts: StepFacts | undefined, write: (length: number) => string): string =>
  listed((facts?.tapes ?? []).map(({ line, length }) => `${levelWords[line]} (${write(length)})`)) || "Brust und Hüfte";

type ArmStep = "cut-arm" | "sew-arm" | "fill-arm" | "hang-arm";

function armWords(name: ArmStep, facts: StepFacts | undefined, lengths: LengthStep): Words {
  const text = armStep(name, facts, lengths);
  return text === null
    ? ["Den Arm anfertigen.", "Nach den Schnittteilen in wahrer Größe."]
    : [text.title, text.lines.join(" ")];
}

export function armStep(
  step: StepName,
  facts: StepFacts | undefined,
  lengths: LengthStep,
): ReturnType<typeof armStepText> | null {
  const arm = facts?.arm ?? null;
  const name = armStepNames.find((one) => step === `${one}-arm`);
  if (arm === null || facts === undefined || name === undefined) return null;
  return armStepText(
    name,
    arm,
    lengths,
    hasCover(facts) ? { on: "cover" } : { on: "padding", into: heldBy(facts.form) },
  );
}

const measureAgain = (facts: StepFacts | undefined): string =>
  facts?.measureAgain == null
    ? "Die Person in drei Monaten wieder messen, oder wenn ein Kleidungsstück nicht passt."
    : `Die Person am ${dateText(facts.measureAgain)} wieder messen, oder wenn ein Kleidungsstück nicht passt.`;

export const makingDone: { readonly [name in AfterPaddingName]: string } = {
  "choose-cover": "Damit weiter",
  "read-between": "Diese Maße speichern",
  "cut-cover": "Alle Teile zugeschnitten",
  "sew-cover": "Diese Nähte sind genäht",
  "fit-cover": "Beide Seiten sind abgesteckt",
  "close-cover": "Genäht, übergezogen und zu",
  "read-cover": "",
  "correct-cover": "Der Bezug ist berichtigt",
  "hem-cover": "Der Saum ist genäht",
  "waist-tape": "Das Taillenband ist daran",
  "style-lines": "Die Linien sind angebracht",
  "cut-arm": "Der Arm ist zugeschnitten",
  "sew-arm": "Der Arm ist genäht",
  "fill-arm": "Das Maß stimmt",
  "hang-arm": "Der Arm hängt",
  "put-away": "Die Hülle ist darüber",
};

interface Hand {
  readonly title: string;
  readonly text: string;
}
type Hands = { readonly [name in AfterPaddingName]?: readonly Hand[] };

export const closedAgain = "Wieder geschlossen";

export const makingHands = (
  name: AfterPaddingName,
  { cloth, isReopened }: Pick<StepFacts, "cloth" | "isReopened">,
): readonly Hand[] =>
  (isReopened ? handsReopened[name] : undefined) ??
  (cloth === "none" ? handsUncovered[name] : undefined) ??
  hands[name] ??
  [];

const countOnce: Hand = {
  title: "Noch einmal zählen",
  text: "Stecknadeln zurück in die Schale, Nähnadeln ins Nadelkissen.",
};
const atTheEnd: Hand = {
  title: "Am Ende",
  text: "Zuerst Nadeln und Draht aussortieren; das Vlies kommt dorthin, wohin Polyester am Ort gehört.",
};
const levelTape: Hand = { title: "Waagerechte Linien", text: "Die Oberkante des Bands auf die Linie." };
const neckAndArmhole: Hand = { title: "Hals und Armloch", text: "Das Band in der Rundung hochkant stellen." };

const handsReopened: Hands = {
  "close-cover": [
    { title: "Zuerst an der Taille", text: "Dann hinauf und hinab, Kante an Kante." },
    { title: "Nadeln heraus", text: "Jede, wenn Sie daran vorbeikommen. Zählen: so viele, wie hineingekommen sind." },
  ],
};

const handsUncovered: Hands = {
  "style-lines": [
    levelTape,
    { title: "Teilungslinien", text: "Vorn über den Brustpunkt, hinten über das Schulterblatt." },
    neckAndArmhole,
  ],
  "put-away": [
    countOnce,
    { title: "Wenn der Körper sich ändert", text: "Eine Lage dazugeben oder herausnehmen, und heften." },
    atTheEnd,
  ],
};

const hands: Hands = {
  "cut-cover": [
    { title: "Die Quadrate nachmessen", text: "Beide Prüfquadrate auf der ersten Seite, bevor geschnitten wird." },
    {
      title: "Fadenlauf am Pfeil entlang",
      text: "Den Stoff zuerst waschen. Knipse nur in der Nahtzugabe anzeichnen; nie über die Nahtlinie einschneiden.",
    },
    {
      title: "Über der Brust abnehmen",
      text: "Oberhalb der Brustlinie Stoff stehen lassen; Schulter und Armloch werden auf der Büste angezeichnet.",
    },
  ],
  "sew-cover": [
    {
      title: "Von den Knipsen aus",
      text: "Linie auf Linie. Beide Kanten einer Naht sind gleich lang.",
    },
    { title: "Dehnbarer Stich", text: "Bei Maschenware. Die Nähte jetzt bügeln, nicht auf der Büste." },
  ],
  "fit-cover": [
    { title: "Nadeln an der Büste entlang", text: "Eine Handbreit auseinander, beide Seiten gleich, abgezählt." },
    { title: "Straff genug", text: "Wenn sich in der vorderen Mitte kaum Stoff abheben lässt." },
    {
      title: "Seiten verschieden?",
      text: "Mit der rechten Seite nach außen abstecken: Links und rechts sind sonst vertauscht.",
    },
  ],
  "close-cover": [
    {
      title: "Anzeichnen, dann Nadeln heraus",
      text: "Eine auswaschbare Linie an den Nadeln entlang. Zählen: so viele, wie hineingekommen sind.",
    },
  ],
  "correct-cover": [
    { title: "Auf beiden Seiten gleich", text: "Mittellinien und Brustpunkte bleiben, wo sie sind." },
    { title: "Sanft auslaufen lassen", text: "Bis auf null an der nächsten Linie, die am Ziel ist." },
  ],
  "hem-cover": [
    { title: "Glatt streichen", text: "Von der Taille aus, rundum, vor dem ersten Stich." },
    { title: "Nie durch eine harte Büste", text: "Dort hält auch eine Kordel." },
  ],
  "waist-tape": [
    { title: "Zuerst die hintere Mitte", text: "Dann rundum, waagerecht oder geneigt, wie es dasteht." },
    { title: "An der Oberkante", text: "Diese Kante ist die Taille." },
  ],
  "style-lines": [
    levelTape,
    { title: "Teilungsnähte", text: "Vorn über den Brustpunkt, hinten über das Schulterblatt." },
    neckAndArmhole,
  ],
  "put-away": [
    countOnce,
    {
      title: "Wenn der Körper sich ändert",
      text: "Die hintere Mitte öffnen, eine Lage dazugeben oder herausnehmen, wieder schließen.",
    },
    atTheEnd,
  ],
};

export const coverChoice = {
  legend: "Der Bezug",
  cloths: {
    knit: "Maschenware aus acht Schnittteilen: folgt der Büste am besten",
    pulledKnit: "Maschenware, straff gesteckt: geht schnell und drückt das Vlies ein wenig zusammen",
    woven: "Webstoff aus acht Schnittteilen: glatt und fest",
    none: "Vorerst kein Bezug",
  } satisfies { readonly [cloth in CoverCloth]: string },
  test: {
    title: "Die Maschenware zuerst ausprobieren",
    how: (length: string): string =>
      `${length} quer und ${length} längs anzeichnen. Quer so stark ziehen, wie der Bezug ziehen wird, und beides messen.`,
    marked: "Angezeichnet, in Ruhe",
    across: "Quer, gezogen",
    along: "Längs, zugleich",
    optional:
      "Darf leer bleiben: Dann wird mit einem Zehntel Dehnung zugeschnitten, das geben die meisten Maschenwaren her.",
    begun:
      "Alle drei Längen zusammen zeigen, wie die Maschenware sich verhält: Füllen Sie die anderen aus, oder leeren Sie alle drei.",
    cannot:
      "Gezogene Maschenware ist quer länger als angezeichnet und längs nicht länger. Sehen Sie die drei noch einmal an.",
    gives: (percent: number): string =>
      percent < 5
        ? "Diese Maschenware gibt kaum nach. Nehmen Sie Webstoff oder eine andere Maschenware."
        : `Mit ${String(percent)} % Dehnung zuschneiden, höchstens der Hälfte von dem, was sie hergibt.`,
  },
} as const;

export const betweenWords = {
  below: (line: string, distance: string): string => `${distance} tiefer als diese Linie: ${line}`,
  girth: "rundum",
  front: "vorn, von Seitennaht zu Seitennaht",
  kinds: {
    measured: "Der Bezug wird auch für diese Höhen zugeschnitten.",
    guessed: "Zwischen den Linien ist der Bezug geschätzt und kann dort um Daumenbreite danebenliegen.",
  },
  skip: "Diese auslassen",
  noFront: "Vorn und rundum gehören zusammen, und vorn ist weniger: Messen Sie beides, oder lassen Sie beides leer.",
} as const;

export const makingThen = {
  arm: "Oberarm, gefüllt",
  waistTape: "Taillenband, abgeschnitten",
} as const;
