import { upperFirst } from "./upperFirst";
import type { AboveTurn } from "../core/above/aboveTurn";
import type {
  AboveReading,
  AboveReadingName,
  BuildAbove,
  BuildKind,
  StackPart,
  UnreadAbove,
} from "../core/above/buildAbove";
import { halfLayers } from "../core/above/upperChest";
import type { LengthStep } from "../core/lengthText";
import type { PatternPart } from "../core/pattern/patternPart";
import { measurementInSentence } from "./measurements";
import { featherWords, layerCount } from "./pieces";
import { shownLength } from "./shownLength";
import { writtenLength } from "./writtenLength";

/** What is said of a build above the bust: what it is called, what to do, what the tape reads after it, what stays. */
export interface AboveWords {
  readonly name: string;
  /** The act first, as one sentence; what is missing where nothing is built. */
  readonly act: string;
  /** Where it goes and how it is built, in the order of the work. */
  readonly how: readonly string[];
  readonly reads: readonly string[];
  /** What stays short or too large, with what can be done. */
  readonly stays: readonly string[];
}

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
  upperBack: "upper back panel",
  upperChest: "upper chest panels",
  chestFill: "chest panel",
  shoulderHeight: "shoulder wedge",
  shoulderLength: "shoulder length",
  neck: "neck wrap",
};

/** What a build is called within a sentence. */
export const aboveName = ({ kind, side }: Pick<BuildAbove, "kind" | "side">): string =>
  side === "both" ? names[kind] : `${side} ${names[kind]}`;

function actSentence(build: BuildAbove, step: LengthStep, hasCover: boolean): string {
  const { act, kind, side } = build;
  switch (act.what) {
    case "unread":
      return `Not built yet: measure ${listed(act.missing.map(unreadWords))}.`;
    case "none":
      return build.readings.some(({ stays }) => stays !== null)
        ? "Nothing is built: no layer helps here."
        : "Nothing is built: the form agrees with the person.";
    case "noRoom":
      return "Nothing is built: the upper chest line lies too close to the bust line for a layer to end between them.";
    case "markInward":
      return `Mark the ${side} armhole line ${shownLength(act.amount, step)} farther in, toward the neck, ${hasCover ? "on the cover" : "with basting thread"}.`;
    case "extend":
      return `Extend the ${side} shoulder by ${shownLength(act.amount, step)} to its tip.`;
    case "layers":
      return kind === "upperChest"
        ? `Pin the ${names.upperChest} on the upper chest line: ${halvesWords(act.layers)}.`
        : pinSentences[kind](aboveName(build), layerCount(act.layers.length));
  }
}

/** "two layers in front, one layer in back"; a half without any is left out. */
const halvesWords = (layers: readonly PatternPart[]): string =>
  (["front", "back"] as const)
    .flatMap((half) => {
      const count = halfLayers(layers, half).length;
      return count === 0 ? [] : [`${layerCount(count)} in ${half}`];
    })
    .join(", ");

const pinSentences: { readonly [kind in Exclude<BuildKind, "upperChest">]: (name: string, layers: string) => string } =
  {
    upperBack: (name, layers) => `Pin the ${name}, ${layers}, between the shoulder blades.`,
    chestFill: (name, layers) => `Pin the ${name}, ${layers}, between shoulder and bust.`,
    shoulderHeight: (name, layers) => `Pin the ${name}, ${layers}, on top of the shoulder.`,
    shoulderLength: (name) => `Mark the ${name}.`,
    neck: (name, layers) => `Pin the ${name}, ${layers}, around the root of the neck.`,
  };

const hows: { readonly [kind in BuildKind]: readonly string[] } = {
  upperBack: [
    "Lay the peak of every layer on center back, where the shoulder blades stand out farthest.",
    "It fades to nothing at the neck and at the underbust line.",
  ],
  upperChest: [
    "Lay the line of each panel on the upper chest line, its center on center front or center back; panels meet at the sides.",
    "Trim the upper corners along the edge of the armhole. Keep the lower edge above the bust line.",
  ],
  chestFill: [
    "Lay the peak of every layer halfway from the side neck point to the apex, its line along that way.",
    "It fades to nothing at the shoulder, the armhole and above the bust line.",
  ],
  shoulderHeight: [
    "Lay the wide end of every layer at the edge of the armhole, its line on the shoulder seam.",
    "Feather the end at the neck. Trim the wide end along the edge of the armhole.",
  ],
  shoulderLength: [],
  neck: [
    "Lay the lower edge on the neck seam; the ends meet at center back, with no overlap.",
    "Snip the lower edge where it does not lie flat.",
  ],
};

function howSentences({ kind, act }: BuildAbove, step: LengthStep, hasCover: boolean): readonly string[] {
  switch (act.what) {
    case "layers":
      return [
        ...hows[kind],
        ...(act.layers.length > 1 ? ["Smallest layer first, the largest over all."] : []),
        `${upperFirst(featherWords(act.feather, step))}.`,
        "Measure after each layer, and stop when the tape reads as on the person.",
      ];
    case "extend":
      return [
        "Cut it from felt, twice as wide as it reaches, or use a shoulder pad.",
        "Sew its inner half to the padding, its edge at the person’s shoulder tip.",
      ];
    case "markInward":
      return [
        hasCover
          ? "Sew or draw the armhole there: the form keeps its own edge beneath."
          : "Long stitches through whatever lies outermost there; draw nothing on the form itself.",
      ];
    case "unread":
    case "none":
    case "noRoom":
      return [];
  }
}

const readingWords = (name: AboveReadingName): string =>
  name === "upperChestBackArc" ? "back upper chest" : measurementInSentence(name);

function readSentence({ name, before, after, person }: AboveReading, step: LengthStep): string {
  const [from, to, wanted] = [before, after, person].map((length) => shownLength(length, step));
  const says = `${upperFirst(readingWords(name))}: ${from} before, ${to} after it`;
  return to === wanted ? `${says}, as on the person.` : `${says}; the person’s is ${wanted}.`;
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
  if (stays.sense === "short") return [`${what}: the padding stays ${amount} short. ${shortAdvice[kind]}`];
  const advice = (hasCover ? largerAdvice : largerUncovered)[kind];
  if (kind === "shoulderHeight")
    return [`The form’s ${side} shoulder tip stands ${amount} too high, and padding only adds. ${advice}`];
  return [`${what}: the form has ${amount} too much, and padding only adds. ${advice}`];
}

const leaveAsIs = "Choose another form, or leave it as it is and fit there on the person.";
const fitOnPerson = "Choose another form, or fit there on the person.";

/** Below the shoulder a cover lies on the form, and is no smaller than it. */
const largerAdvice: { readonly [kind in BuildKind]: string } = {
  upperBack: leaveAsIs,
  upperChest: leaveAsIs,
  chestFill: leaveAsIs,
  shoulderHeight: "Choose another form, or cut the cover to the person’s shoulder and fit there on the person.",
  shoulderLength: "Choose another form, or cut the cover to the person’s measurement and leave it loose there.",
  neck: "Choose a form with a smaller neck, or mark the person’s neckline on the cover and fit there on the person.",
};

const largerUncovered: { readonly [kind in BuildKind]: string } = {
  ...largerAdvice,
  shoulderHeight: fitOnPerson,
  shoulderLength: fitOnPerson,
  neck: "Choose a form with a smaller neck, or mark the person’s neckline with basting thread and fit there on the person.",
};

const shortAdvice: { readonly [kind in BuildKind]: string } = {
  upperBack: "More layers would put another measurement over. Measure again, and fit there on the person.",
  upperChest: "One layer more would put it over: a thinner batting makes up the rest.",
  chestFill: "More layers would put another measurement over. Measure again, and fit there on the person.",
  shoulderHeight: "A thinner batting makes up the rest, or a ready-made shoulder pad over the wedge.",
  shoulderLength: "Measure the shoulder again.",
  neck: "One wrap more would put it over: a thinner batting makes up the rest.",
};

/** One layer more, or the outermost off: the act, then what was read and how it is done. */
export function turnWords(
  build: BuildAbove,
  { what, part, because, amount }: AboveTurn,
  step: LengthStep,
): readonly [act: string, how: string] {
  const name = part === "whole" ? aboveName(build) : `${part} upper chest panel`;
  const [measured, off] = [upperFirst(readingWords(because)), shownLength(amount, step)];
  return what === "addLayer"
    ? [
        `Add one layer to the ${name}.`,
        `${measured} is ${off} short. Cut the layer like the outermost one, pin it on top, feather its edge, and baste it. Take the pins out and count them.`,
      ]
    : [
        `Take the outermost layer off the ${name}.`,
        `${measured} is ${off} over. Snip only its own basting stitches, points away from the layers below. Lift it off, and baste the layer that is outermost now. Count every needle back into its cushion.`,
      ];
}

/** Around the tape over a build: what is typed, and what its button says. */
export const readAboveWords = {
  measure: (build: Pick<BuildAbove, "kind" | "side">): string => `Measure over the ${aboveName(build)}.`,
  how: "As on the person, and snug. A field left empty is not asked again.",
  pinned: "Basted, pins out and counted: measure",
  off: "It is off, needles counted: measure",
  back: "Back to the layers",
  should: (length: string): string => `should read about ${length}`,
  layers: (part: StackPart): string => (part === "whole" ? "Layers that lie there" : `Layers that lie in ${part}`),
  fewer: "One layer fewer",
  more: "One layer more",
  leave: "Leave it as it is",
} as const;

export const aboveReadingLabel = (name: AboveReadingName): string => upperFirst(readingWords(name));

function unreadWords({ whose, name }: UnreadAbove): string {
  return `the ${measurementInSentence(name)} ${whose === "body" ? "of the person" : "of the form"}`;
}

/** "a", "a and b", "a, b and c". */
const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** Which piece a layer is of, and which of how many it is there: front and back of the upper chest are counted apart. */
function layerPlace(
  build: BuildAbove,
  layer: number,
): { readonly name: string; readonly at: number; readonly count: number } {
  const layers = build.act.what === "layers" ? build.act.layers : [];
  if (build.kind !== "upperChest") return { name: upperFirst(aboveName(build)), at: layer, count: layers.length };
  const front = halfLayers(layers, "front").length;
  return layer <= front
    ? { name: "Front upper chest panel", at: layer, count: front }
    : { name: "Back upper chest panel", at: layer - front, count: layers.length - front };
}

/** What is written on a layer to cut. */
export function aboveLayerWords(
  build: BuildAbove,
  layer: number,
  batting: string,
  step: LengthStep,
): { readonly title: string; readonly says: readonly string[] } {
  const { name, at, count } = layerPlace(build, layer);
  return {
    title: count === 1 ? name : `${name}, layer ${at} of ${count}`,
    says: [
      `Cut 1 from ${batting}.`,
      ...(build.act.what === "layers" ? [`${upperFirst(featherWords(build.act.feather, step))}.`] : []),
      ...hows[build.kind].slice(0, 1),
    ],
  };
}
