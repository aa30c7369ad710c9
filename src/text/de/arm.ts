import { upperFirst } from "../upperFirst";
import type { FittingArm } from "../../app/arm/fittingArm";
import { usualPlate } from "../../core/arm/armCap";
import type { ArmPartName } from "../../core/arm/armParts";
import type { ArmProblem, ArmReading, ArmReadingName } from "../../core/arm/armReadings";
import type { ArmWish, SoftArm } from "../../core/arm/softArm";
import { type LengthStep, type LengthUnit, lengthSteps } from "../../core/lengthText";
import type { ArmLineName } from "../../core/pattern/patternPart";
import type { Millimetres } from "../../core/units";
import type { ArmHeld, ArmStepName, ArmStepText } from "../arm";
import { shownLength } from "../shownLength";
import { measurementInSentence } from "./measurements";
import { writtenLength } from "./writtenLength";

export { type ArmHeld, type ArmStepName, type ArmStepText, armStepNames } from "../arm";

export const armLineWords: { readonly [line in ArmLineName]: string } = {
  upperArm: "Oberarm",
  elbow: "Ellenbogen",
  wrist: "Handgelenk",
};

/** In the picture, where the parts are narrow. */
export const armPartLabels: { readonly [name in ArmPartName]: string } = {
  upper: "oben",
  under: "unten",
  whole: "Arm",
  capDisc: "Schulterscheibe",
  wristDisc: "Handgelenkscheibe",
  tab: "Lasche",
  capCard: "Pappe für die Schulter",
  wristCard: "Pappe für das Handgelenk",
};

/** As subject and as object. */
const sides = {
  left: { is: "linker Arm", the: "den linken Arm" },
  right: { is: "rechter Arm", the: "den rechten Arm" },
} as const;
type Side = keyof typeof sides;
const other = (side: Side): Side => (side === "left" ? "right" : "left");

const partTitles: { readonly [name in ArmPartName]: string } = {
  ...armPartLabels,
  upper: "oberes Teil",
  under: "unteres Teil",
  whole: "in einem Teil",
};

export const armPartWords = (
  name: ArmPartName,
  arm: SoftArm,
): { readonly title: string; readonly says: readonly string[] } => ({
  title: `Gepolsterter ${sides[arm.wish.side].is}, ${partTitles[name]}`,
  says: partSays(name, arm),
});

const edgeMarks = "Zwei Knipse nebeneinander zeigen, wo hinten ist.";

function partSays(name: ArmPartName, arm: SoftArm): readonly string[] {
  const lines = "Auf der durchgezogenen Linie schneiden, auf der gestrichelten nähen.";
  const turned = `Für ${sides[other(arm.wish.side)].the} jedes Teil umdrehen.`;
  const sameFabric = "1-mal aus demselben Stoff zuschneiden.";
  const card = "1-mal aus fester Pappe ausschneiden, auf der Linie.";
  switch (name) {
    case "upper":
    case "under":
      return [
        cutFrom(arm),
        lines,
        `${edgeMarks} Das andere Teil ist schon spiegelverkehrt: So liegt rechts auf rechts.`,
        turned,
      ];
    case "whole":
      return [cutFrom(arm), lines, `${edgeMarks} Zuerst die beiden Abnäher nähen.`, turned];
    case "capDisc":
      return [
        sameFabric,
        "Sie schließt den Arm an der Schulter. Sie bleibt weich, bis der Arm gewendet ist.",
        ...(arm.capEase > 0 ? [`Die Armkugel ist ${percent(arm.capEase)} länger: einhalten.`] : []),
      ];
    case "wristDisc":
      return [sameFabric, "Sie schließt den Arm, als Letztes."];
    case "tab":
      return ["1-mal aus festem Webstoff zuschneiden.", "Ein kurzes Ende kommt ganz oben in die Naht der Armkugel."];
    case "capCard":
      return [card, "Sie kommt hinter die Schulterscheibe, wenn der Arm gewendet ist."];
    case "wristCard":
      return [card, "Sie kommt hinter die Handgelenkscheibe."];
  }
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

const cutFrom = ({ cloth }: SoftArm): string =>
  cloth.kind === "knit"
    ? `1-mal aus Maschenware zuschneiden, rechte Seite oben. Die Füllung dehnt sie um ${percent(cloth.stretch)} auf die Größe des Arms.`
    : "1-mal aus Webstoff zuschneiden, rechte Seite oben, den Pfeil im Fadenlauf.";

export function armStepText(
  name: ArmStepName,
  arm: SoftArm,
  step: LengthStep,
  held: ArmHeld = { on: "cover" },
): ArmStepText {
  const { unit } = lengthSteps[step];
  switch (name) {
    case "cut":
      return { title: "Den Arm zuschneiden.", lines: cutLines(arm, step), cautions: "cuttingFabric" };
    case "sew":
      return { title: "Den Arm nähen.", lines: sewLines(arm, unit), cautions: "sewing" };
    case "fill":
      return { title: "Den Arm füllen.", lines: fillLines(arm, step), cautions: "fillingArm" };
    case "hang":
      return { title: "Den Arm an seiner Lasche aufhängen.", lines: hangLines(held), cautions: null };
  }
}

const cutLines = (arm: SoftArm, step: LengthStep): readonly string[] => {
  const { wish, cloth } = arm;
  return [
    wish.cut === "twoPieces"
      ? "Oberes Teil, unteres Teil, Schulterscheibe und Handgelenkscheibe aus einem Stoff zuschneiden, alle mit der rechten Seite nach oben. Das untere Teil ist spiegelverkehrt gezeichnet, damit rechts auf rechts liegt."
      : "Den Arm, die Schulterscheibe und die Handgelenkscheibe aus einem Stoff zuschneiden, alle mit der rechten Seite nach oben.",
    ...(cloth.kind === "knit"
      ? ["Die Maschenware dehnt sich am meisten quer zum Arm: den Pfeil an den Maschenrippen entlang legen."]
      : []),
    `Das ist ein ${sides[wish.side].is}. Für den anderen jedes Teil umdrehen.`,
    "Die Knipse und die gepunkteten Linien für Oberarm und Ellenbogen anzeichnen.",
    "Die Lasche aus festem Webstoff zuschneiden, die Teile für Schulter und Handgelenk noch einmal aus fester Pappe.",
    ...capMatters(arm, step),
  ];
};

const ownOval = "Die Armkugel endet in einem eigenen Oval";

export function capMatters({ wish, capRefused }: SoftArm, step: LengthStep): readonly string[] {
  switch (capRefused) {
    case "plateUnread":
      return [
        `${ownOval}: Um sie auf das Armloch der Büste einzuhalten, messen Sie dessen Höhe und Breite an der Büste.`,
      ];
    case "plateSmall":
      return [`${ownOval}: Dieser Arm ist rundum zu groß, um ihn auf das Armloch der Büste einzuhalten.`];
    case "plateLarge":
      return [`${ownOval}: Das Armloch der Büste ist zu groß, um die Armkugel dieses Arms darauf einzuhalten.`];
    case null:
      return wish.plate.height === null
        ? [
            `Das Armloch der Büste ist nicht gemessen. Die Armkugel ist darum für eines zugeschnitten, das ${shownLength(usualPlate, step)} hoch ist (geschätzt, nach Ermessen).`,
          ]
        : [];
  }
}

export const armChoiceWords = {
  cut: "Der Arm besteht aus",
  cuts: {
    twoPieces: "zwei Teilen, mit Nähten vorn und hinten",
    onePiece: "einem Teil, mit einer Naht vorn und zwei Abnähern am Ellenbogen",
  } satisfies { readonly [cut in ArmWish["cut"]]: string },
  cap: "Seine Armkugel",
  caps: {
    ownOval: "endet in einem eigenen Oval, Kante an Kante",
    gathered:
      "wird auf ein Oval eingehalten, das so groß ist wie das Armloch der Büste, um 5 % (üblich in der Praxis, ohne Quelle)",
  } satisfies { readonly [cap in ArmWish["cap"]]: string },
} as const;

const sewLines = ({ wish, cloth, capEase }: SoftArm, unit: LengthUnit): readonly string[] => [
  ...(cloth.kind === "knit" ? ["Einen dehnbaren Stich nehmen."] : []),
  ...(wish.cut === "twoPieces"
    ? [
        "Oberes und unteres Teil rechts auf rechts legen, Knips auf Knips: Zwei nebeneinander zeigen, wo hinten ist. Die vordere und die hintere Naht nähen; an Schulter und Handgelenk offen lassen.",
      ]
    : [
        "Beide Abnäher von der Vorderkante bis auf null an der hinteren Linie nähen.",
        "Die Vorderkanten rechts auf rechts legen, Knips auf Knips. Die vordere Naht nähen; an Schulter und Handgelenk offen lassen.",
      ]),
  "Die Nahtzugabe in der Beuge des Ellenbogens einschneiden.",
  `Die Lasche der Länge nach rechts auf rechts falten, an der langen Kante nähen und wenden. Vier Bänder abschneiden, je ${unit === "in" ? "8 in" : "20 cm"} lang.`,
  ...(capEase > 0
    ? [
        `Die Armkugel ist ${percent(capEase)} länger als die Scheibe. An ihrer Kante einen Reihfaden in die Nahtzugabe einziehen und zwischen den Knipsen anziehen, bis sie glatt liegt.`,
      ]
    : []),
  "Die Schulterscheibe rechts auf rechts in die Armkugel stecken, ihre Oberkante am obersten Knips. Ganz oben die Lasche in der Naht mitfassen und an jedem seitlichen Knips ein Band. Nur die obere Hälfte der Naht nähen, noch ohne Pappe hinter der Scheibe.",
  "Den Arm durch das Handgelenk wenden. Die Pappe hinter die Schulterscheibe schieben, und die untere Hälfte der Naht von Hand nähen. Alle Nadeln herausziehen und zählen.",
];

function fillLines({ girths }: SoftArm, step: LengthStep): readonly string[] {
  const read = (line: ArmLineName) => `${armLineWords[line]} ${shownLength(girths[line], step)}`;
  return [
    "Vom Handgelenk aus mit kleinen Büscheln füllen, jedes vorher auseinandergezupft. Bis in die Armkugel hinaufschieben, dann abwärts füllen, fest und gleichmäßig.",
    `Beim Füllen rundum messen: ${read("upperArm")}, ${read("elbow")}, ${read("wrist")}.`,
    `Etwa ${lengthSteps[step].unit === "in" ? "5 bis 9 oz" : "150 bis 250 g"} lose Füllwatte, aus dem Gedächtnis geschätzt.`,
    "Die Pappe hinter die Handgelenkscheibe legen und die Scheibe von Hand einnähen.",
  ];
}

const hangLines = (held: ArmHeld): readonly string[] => [
  held.on === "cover"
    ? "Vorn und hinten am Armloch je ein Band an den Bezug nähen."
    : `Vorn und hinten am Armloch je ein Band annähen, durch das Polster in ${held.into}: Vlies allein reißt.`,
  "Die Schulterscheibe an das Armloch legen, den Ellenbogen nach vorn gebeugt und die Lasche über die Schulter.",
  held.on === "cover"
    ? "Die Lasche mit Klettband am Bezug befestigen, auf beide genäht."
    : `Die Lasche mit Klettband befestigen: eine Hälfte auf die Lasche genäht, die andere über der Schulter, durch das Polster in ${held.into}.`,
  "Die Bänder zubinden, vorn und hinten. Unter einem Ärmel bleibt keine Nadel.",
  "Zum Überziehen eines Ärmels losbinden, und abnehmen, wenn er nicht gebraucht wird.",
];

export const armUnreadText = (missing: readonly ArmReadingName[]): string =>
  `Messen Sie für einen gepolsterten Arm: ${missing.map((name) => measurementInSentence(name)).join(", ")}. Nichts davon wird geschätzt.`;

export function armProblemText({ code, names, got, expected }: ArmProblem, step: LengthStep): string {
  const [first = "", second = ""] = names.map(measurementInSentence);
  const length = (value: Millimetres) => writtenLength(value, step);
  const { least, most } = expected;
  const reads = `${upperFirst(first)} der Person: ${length(got)}. Neben dem anderen Maß (${second})`;
  switch (code) {
    case "elbowBesideUpperArm":
    case "wristBesideElbow":
      return `${reads} sind ${length(least)} bis ${length(most)} möglich. Messen Sie beides noch einmal.`;
    case "elbowPlace":
      return `${reads} sind ${length(least)} bis ${length(most)} möglich. Messen Sie beides noch einmal, vom Schulterpunkt aus.`;
    case "lengthBesideGirth":
      return `${reads} müssen es mindestens ${length(least)} sein. Prüfen Sie die Einheit, und messen Sie beides noch einmal.`;
  }
}

export const armNotes = (arm: FittingArm | ArmReading, step: LengthStep): readonly string[] =>
  arm.kind === "contradicting"
    ? arm.problems.map((problem) => `Unter den Teilen ist kein Arm. ${armProblemText(problem, step)}`)
    : [];

export const armPictureWords = {
  pattern: "Ein gepolsterter Arm, flach ausgelegt",
  patternText: (arm: SoftArm, step: LengthStep): string =>
    `Die Teile für ${sides[arm.wish.side].the}, gepolstert: ${arm.wish.cut === "twoPieces" ? "das obere Teil und das untere, spiegelverkehrt und mit einer Armkugel, die sich einsenkt" : "ein Teil mit einem Abnäher an jeder Vorderkante"}, die Schulterscheibe, die Handgelenkscheibe und die Lasche. Rundum, gefüllt: Oberarm ${shownLength(arm.girths.upperArm, step)}, Ellenbogen ${shownLength(arm.girths.elbow, step)}, Handgelenk ${shownLength(arm.girths.wrist, step)}.`,
  hangs: "Der Arm hängt an seiner Lasche",
  hangsText:
    "Ein gefüllter Arm liegt mit seiner Armkugel am Armloch der Büste. Seine Lasche ist über der Schulter befestigt, und zwei Bänder halten ihn am Armloch.",
  allAround: "rundum",
  front: "vorn",
  back: "hinten",
} as const;
