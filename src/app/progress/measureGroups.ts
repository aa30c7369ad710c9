import { type Improvement, measurementFacts } from "../../core/body/measurementFacts";
import { type ByLevel, levelNames, type MeasurementName, measurementNames } from "../../core/body/vocabulary";
import type { Millimetres } from "../../core/units";
import { type QuestionId, questionOrder } from "./questions";

/**
 * The order in which measurements are asked for: the three girths a plan starts from, then whatever brings the plan
 * nearest to the body, as the study found it, then the rest grouped by what they buy.
 */
export interface MeasureGroup {
  readonly improves: Improvement;
  readonly names: readonly MeasurementName[];
  /** How much nearer it brings nine in ten measurements of the padded form; null where that was not studied. */
  readonly gain: Millimetres | null;
}

const questionGroups: { readonly [whose in "body" | "form"]: { readonly [id in QuestionId]?: Improvement } } = {
  body: {
    bodyFronts: "frontAndBack",
    bodyGirths: "betweenLevels",
    bodyHeights: "linePlaces",
    bodyLengths: "levelHeights",
    bodyApexes: "apexPlace",
    bodyBreadths: "sectionShape",
  },
  form: { formGirths: "frontAndBack", formHeights: "linePlaces" },
};

/** What the study did not ask about, and so does not order. */
const otherwise: readonly Improvement[] = [
  "frontAndBack",
  "linePlaces",
  "levelHeights",
  "betweenLevels",
  "apexPlace",
  "leftAndRight",
  "sectionShape",
  "upperChest",
  "shoulderMatch",
  "backMatch",
  "neckMatch",
  "waistTilt",
  "cover",
  "arm",
];

/** The waist decides most, then the hips; back arcs follow from the fronts and come last. */
const arcRank = (name: MeasurementName): number => {
  const level = levelNames.find((start) => name.startsWith(start));
  return (level === undefined ? 0 : levelRanks[level]) + (name.endsWith("BackArc") ? 10 : 0);
};

const levelRanks: ByLevel<number> = { waist: 0, fullHip: 1, highHip: 2, bust: 3, underbust: 4 };

/** The nape comes before the heights that mean nothing without it, and heights before what is read at the form alone. */
const placeRank = (name: MeasurementName): number =>
  name === "napeHeight" ? 0 : name.endsWith("Height") ? 1 : name.endsWith("BelowNape") ? 3 : 2;

const ranks: { readonly [improves in Improvement]?: (name: MeasurementName) => number } = {
  frontAndBack: arcRank,
  linePlaces: placeRank,
};

/** A group nobody has anything to measure for is left out. */
function groupsOf(whose: "body" | "form" | "sheet"): readonly MeasureGroup[] {
  const studied = questionOrder.flatMap(({ id, gain }) => {
    const improves = questionGroups[whose === "form" ? "form" : "body"][id];
    return improves === undefined ? [] : [{ improves, gain }];
  });
  const rest = otherwise.filter((improves) => !studied.some((one) => one.improves === improves));
  const order = [
    { improves: "wholePlan" as const, gain: null },
    ...studied,
    ...rest.map((improves) => ({ improves, gain: null })),
  ];
  return order.flatMap(({ improves, gain }) => {
    const found = measurementNames.filter((name) => measurementFacts[name].improves === improves && isOf(whose, name));
    const rank = ranks[improves];
    const names = rank === undefined ? found : found.toSorted((a, b) => rank(a) - rank(b));
    return names.length === 0 ? [] : [{ improves, names, gain }];
  });
}

/** What only a form has: a lower edge, and a plate that closes the armhole. */
const ofFormAlone: ReadonlySet<MeasurementName> = new Set([
  "lowerEdgeBelowNape",
  "armholePlateHeight",
  "armholePlateBreadth",
]);

/** A form has neither arms nor a cover to cut for, and stands on no floor of its own. */
function isOf(whose: "body" | "form" | "sheet", name: MeasurementName): boolean {
  const { improves } = measurementFacts[name];
  if (whose === "sheet") return true;
  if (ofFormAlone.has(name)) return whose === "form";
  return whose === "body" || (improves !== "arm" && improves !== "cover" && improves !== "waistTilt");
}

export const bodyGroups = groupsOf("body");
export const formGroups = groupsOf("form");
/** The measuring sheet serves both. */
export const sheetGroups = groupsOf("sheet");

/** The measurement to ask for after this one: the next that is still missing, in the order of asking. */
export function measurementAfter(
  groups: readonly MeasureGroup[],
  name: MeasurementName,
  isKnown: (name: MeasurementName) => boolean,
): MeasurementName | undefined {
  const askingOrder = groups.flatMap(({ names }) => names);
  const at = askingOrder.indexOf(name);
  return [...askingOrder.slice(at + 1), ...askingOrder.slice(0, at)].find((other) => !isKnown(other));
}
