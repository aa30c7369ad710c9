import { upperFirst } from "../upperFirst";
import type { AboveTurn } from "../../core/above/aboveTurn";
import type {
  AboveReading,
  AboveReadingName,
  BuildAbove,
  BuildKind,
  StackPart,
  UnreadAbove,
} from "../../core/above/buildAbove";
import { halfLayers } from "../../core/above/upperChest";
import type { LengthStep } from "../../core/lengthText";
import type { PatternPart } from "../../core/pattern/patternPart";
import type { AboveWords } from "../above";
import { shownLength } from "../shownLength";
import { listed } from "./grammar/listed";
import { measurementInSentence } from "./measurements";
import { featherWords, layerCount } from "./pieces";
import { writtenLength } from "./writtenLength";

export type { AboveWords } from "../above";

export const aboveWords = (build: BuildAbove, step: LengthStep, hasCover = true): AboveWords => ({
  name: upperFirst(aboveName(build)),
  act: actSentence(build, step, hasCover),
  how: howSentences(build, step, hasCover),
  reads: isBuilt(build) ? build.readings.map((reading) => readSentence(reading, step)) : [],
  stays: build.readings.flatMap((reading) => staySentence(build, reading, step, hasCover)),
});

const isBuilt = ({ act }: BuildAbove): boolean =>
  act.what === "layers" || act.what === "extend" || act.what === "markInward";

const names: { readonly [kind in BuildKind]: string } = {
  upperBack: "Rückenpolster",
  upperChest: "Oberbrustpolster",
  chestFill: "Brustkorbpolster",
  shoulderHeight: "Schulterkeil",
  shoulderLength: "Schulterlänge",
  neck: "Halswickel",
};

/** With its article, as subject and as object. */
const articles: { readonly [kind in BuildKind]: string } = {
  upperBack: "das",
  upperChest: "die",
  chestFill: "das",
  shoulderHeight: "den",
  shoulderLength: "die",
  neck: "den",
};

const sideWords: { readonly [side in BuildAbove["side"]]: string } = { both: "", left: "links", right: "rechts" };

export const aboveName = ({ kind, side }: Pick<BuildAbove, "kind" | "side">): string =>
  [names[kind], sideWords[side]].filter((word) => word !== "").join(" ");

function actSentence(build: BuildAbove, step: LengthStep, hasCover: boolean): string {
  const { act, kind, side } = build;
  const where = sideWords[side];
  switch (act.what) {
    case "unread":
      return `Noch nicht aufgebaut. Messen Sie: ${listed(act.missing.map(unreadWords))}.`;
    case "none":
      return build.readings.some(({ stays }) => stays !== null)
        ? "Hier wird nichts aufgebaut: Keine Lage hilft."
        : "Hier wird nichts aufgebaut: Die Büste stimmt mit der Person überein.";
    case "noRoom":
      return "Hier wird nichts aufgebaut: Die Oberbrustlinie liegt zu nahe an der Brustlinie, dazwischen kann keine Lage auslaufen.";
    case "markInward":
      return `Die Armlochlinie ${where} um ${shownLength(act.amount, step)} weiter innen anzeichnen, zum Hals hin, ${hasCover ? "auf dem Bezug" : "mit Heftgarn"}.`;
    case "extend":
      return `Die Schulter ${where} am Ende um ${shownLength(act.amount, step)} verlängern.`;
    case "layers":
      return kind === "upperChest"
        ? `Die ${names.upperChest} auf der Oberbrustlinie aufstecken: ${halvesWords(act.layers)}.`
        : pinSentences[kind](`${upperFirst(articles[kind])} ${aboveName(build)}`, layerCount(act.layers.length));
  }
}

const halfWords = { front: "vorn", back: "hinten" } as const;

const halvesWords = (layers: readonly PatternPart[]): string =>
  (["front", "back"] as const)
    .flatMap((half) => {
      const count = halfLayers(layers, half).length;
      return count === 0 ? [] : [`${halfWords[half]} ${layerCount(count)}`];
    })
    .join(", ");

const pinSentences: { readonly [kind in Exclude<BuildKind, "upperChest">]: (name: string, layers: string) => string } =
  {
    upperBack: (name, layers) => `${name} (${layers}) zwischen den Schulterblättern aufstecken.`,
    chestFill: (name, layers) => `${name} (${layers}) zwischen Schulter und Brust aufstecken.`,
    shoulderHeight: (name, layers) => `${name} (${layers}) oben auf der Schulter aufstecken.`,
    shoulderLength: (name) => `${name} anzeichnen.`,
    neck: (name, layers) => `${name} (${layers}) um den Halsansatz stecken.`,
  };

const hows: { readonly [kind in BuildKind]: readonly string[] } = {
  upperBack: [
    "Die dickste Stelle jeder Lage auf die hintere Mitte legen, wo die Schulterblätter am weitesten vorstehen.",
    "Am Hals und an der Unterbrustlinie läuft es auf null aus.",
  ],
  upperChest: [
    "Die Linie jedes Polsters auf die Oberbrustlinie legen, seine Mitte auf die vordere oder hintere Mitte; an den Seiten stoßen die Polster aneinander.",
    "Die oberen Ecken an der Armlochkante entlang abschneiden. Die Unterkante bleibt über der Brustlinie.",
  ],
  chestFill: [
    "Die dickste Stelle jeder Lage auf halben Weg vom Halspunkt zum Brustpunkt legen, ihre Linie auf diesen Weg.",
    "An der Schulter, am Armloch und über der Brustlinie läuft es auf null aus.",
  ],
  shoulderHeight: [
    "Das breite Ende jeder Lage an die Armlochkante legen, ihre Linie auf die Schulternaht.",
    "Das Ende am Hals dünn auszupfen. Das breite Ende an der Armlochkante entlang abschneiden.",
  ],
  shoulderLength: [],
  neck: [
    "Die Unterkante auf die Halsnaht legen; die Enden stoßen in der hinteren Mitte aneinander, ohne sich zu überlappen.",
    "Die Unterkante einschneiden, wo sie nicht glatt liegt.",
  ],
};

function howSentences({ kind, act }: BuildAbove, step: LengthStep, hasCover: boolean): readonly string[] {
  switch (act.what) {
    case "layers":
      return [
        ...hows[kind],
        ...(act.layers.length > 1 ? ["Die kleinste Lage zuerst, die größte über alle."] : []),
        `${upperFirst(featherWords(act.feather, step))}.`,
        "Nach jeder Lage messen und aufhören, wenn das Maßband dasselbe zeigt wie an der Person.",
      ];
    case "extend":
      return [
        "Aus Filz zuschneiden, doppelt so breit, wie es vorstehen soll, oder ein Schulterpolster nehmen.",
        "Die innere Hälfte ans Polster nähen, die Kante am Schulterpunkt der Person.",
      ];
    case "markInward":
      return [
        hasCover
          ? "Das Armloch dort nähen oder zeichnen: Die Büste behält darunter ihre eigene Kante."
          : "Lange Stiche durch das, was dort ganz außen liegt; auf die Büste selbst nichts zeichnen.",
      ];
    case "unread":
    case "none":
    case "noRoom":
      return [];
  }
}

const readingWords = (name: AboveReadingName): string =>
  name === "upperChestBackArc" ? "Oberbrust hinten" : measurementInSentence(name);

function readSentence({ name, before, after, person }: AboveReading, step: LengthStep): string {
  const [from, to, wanted] = [before, after, person].map((length) => shownLength(length, step));
  const says = `${upperFirst(readingWords(name))}: vorher ${from}, danach ${to}`;
  return to === wanted ? `${says}, wie an der Person.` : `${says}; bei der Person ${wanted}.`;
}

function staySentence(
  { kind, side, act }: BuildAbove,
  { name, stays }: AboveReading,
  step: LengthStep,
  hasCover: boolean,
): readonly string[] {
  if (stays === null || act.what === "unread") return [];
  const amount = writtenLength(stays.amount, step);
  const what = upperFirst(readingWords(name));
  if (stays.sense === "short") return [`${what}: Es fehlen noch ${amount}. ${shortAdvice[kind]}`];
  const advice = (hasCover ? largerAdvice : largerUncovered)[kind];
  if (kind === "shoulderHeight")
    return [
      `Der Schulterpunkt der Büste steht ${sideWords[side]} ${amount} zu hoch, und Polstern macht nur größer. ${advice}`,
    ];
  return [`${what}: Die Büste hat ${amount} zu viel, und Polstern macht nur größer. ${advice}`];
}

const leaveAsIs = "Nehmen Sie eine andere Büste, oder lassen Sie es so und passen Sie dort an der Person an.";
const fitOnPerson = "Nehmen Sie eine andere Büste, oder passen Sie dort an der Person an.";

const largerAdvice: { readonly [kind in BuildKind]: string } = {
  upperBack: leaveAsIs,
  upperChest: leaveAsIs,
  chestFill: leaveAsIs,
  shoulderHeight:
    "Nehmen Sie eine andere Büste, oder schneiden Sie den Bezug für die Schulter der Person zu und passen Sie dort an der Person an.",
  shoulderLength:
    "Nehmen Sie eine andere Büste, oder schneiden Sie den Bezug nach dem Maß der Person zu und lassen Sie ihn dort lose.",
  neck: "Nehmen Sie eine Büste mit schmalerem Hals, oder zeichnen Sie den Halsausschnitt der Person auf dem Bezug an und passen Sie dort an der Person an.",
};

const largerUncovered: { readonly [kind in BuildKind]: string } = {
  ...largerAdvice,
  shoulderHeight: fitOnPerson,
  shoulderLength: fitOnPerson,
  neck: "Nehmen Sie eine Büste mit schmalerem Hals, oder markieren Sie den Halsausschnitt der Person mit Heftgarn und passen Sie dort an der Person an.",
};

const shortAdvice: { readonly [kind in BuildKind]: string } = {
  upperBack:
    "Mit mehr Lagen würde ein anderes Maß zu groß. Messen Sie noch einmal, und passen Sie dort an der Person an.",
  upperChest: "Mit einer Lage mehr würde es zu groß: Ein dünneres Vlies gleicht den Rest aus.",
  chestFill:
    "Mit mehr Lagen würde ein anderes Maß zu groß. Messen Sie noch einmal, und passen Sie dort an der Person an.",
  shoulderHeight: "Ein dünneres Vlies gleicht den Rest aus, oder ein gekauftes Schulterpolster über dem Keil.",
  shoulderLength: "Messen Sie die Schulter noch einmal.",
  neck: "Mit einem Wickel mehr würde es zu groß: Ein dünneres Vlies gleicht den Rest aus.",
};

export function turnWords(
  build: BuildAbove,
  { what, part, because, amount }: AboveTurn,
  step: LengthStep,
): readonly [act: string, how: string] {
  const name = part === "whole" ? aboveName(build) : `Oberbrustpolster ${part === "front" ? "vorn" : "hinten"}`;
  const [measured, off] = [upperFirst(readingWords(because)), shownLength(amount, step)];
  return what === "addLayer"
    ? [
        `Eine Lage mehr: ${name}.`,
        `${measured}: ${off} zu wenig. Die Lage wie die äußerste zuschneiden, obenauf stecken, den Rand auslaufen lassen und heften; die Nadeln herausziehen und zählen.`,
      ]
    : [
        `Die äußerste Lage abnehmen: ${name}.`,
        `${measured}: ${off} zu viel. Nur ihre eigenen Heftstiche aufschneiden, die Spitzen von den Lagen darunter weg. Die Lage abheben und die nun äußerste heften. Jede Nähnadel zurück ins Kissen zählen.`,
      ];
}

export const readAboveWords = {
  measure: (build: Pick<BuildAbove, "kind" | "side">): string => `Darüber messen: ${aboveName(build)}.`,
  how: "Wie an der Person, anliegend. Was leer bleibt, wird nicht noch einmal gefragt.",
  pinned: "Geheftet, Nadeln heraus und gezählt: messen",
  off: "Abgenommen, Nähnadeln gezählt: messen",
  back: "Zurück zu den Lagen",
  should: (length: string): string => `soll etwa ${length} sein`,
  layers: (part: StackPart): string =>
    part === "whole" ? "So viele Lagen liegen dort" : `So viele Lagen liegen ${part === "front" ? "vorn" : "hinten"}`,
  fewer: "Eine Lage weniger",
  more: "Eine Lage mehr",
  leave: "So lassen",
} as const;

export const aboveReadingLabel = (name: AboveReadingName): string => upperFirst(readingWords(name));

function unreadWords({ whose, name }: UnreadAbove): string {
  return `${measurementInSentence(name)} (${whose === "body" ? "Person" : "Büste"})`;
}

function layerPlace(
  build: BuildAbove,
  layer: number,
): { readonly name: string; readonly at: number; readonly count: number } {
  const layers = build.act.what === "layers" ? build.act.layers : [];
  if (build.kind !== "upperChest") return { name: upperFirst(aboveName(build)), at: layer, count: layers.length };
  const front = halfLayers(layers, "front").length;
  return layer <= front
    ? { name: "Oberbrustpolster vorn", at: layer, count: front }
    : { name: "Oberbrustpolster hinten", at: layer - front, count: layers.length - front };
}

export function aboveLayerWords(
  build: BuildAbove,
  layer: number,
  batting: string,
  step: LengthStep,
): { readonly title: string; readonly says: readonly string[] } {
  const { name, at, count } = layerPlace(build, layer);
  return {
    title: count === 1 ? name : `${name}, Lage ${at} von ${count}`,
    says: [
      `1-mal zuschneiden (${batting}).`,
      ...(build.act.what === "layers" ? [`${upperFirst(featherWords(build.act.feather, step))}.`] : []),
      ...hows[build.kind].slice(0, 1),
    ],
  };
}
