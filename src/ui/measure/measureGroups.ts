import { type Improvement, measurementFacts } from "../../core/body/measurementFacts";
import { type MeasurementName, measurementNames } from "../../core/body/vocabulary";

/**
 * The order in which measurements are asked for: the three girths, then front arcs, which nothing else can replace,
 * then the rest grouped by what they buy.
 */
export interface MeasureGroup {
  readonly improves: Improvement;
  readonly names: readonly MeasurementName[];
}

const order: readonly Improvement[] = [
  "wholePlan",
  "frontAndBack",
  "linePlaces",
  "levelHeights",
  "betweenLevels",
  "apexPlace",
  "leftAndRight",
  "sectionShape",
  "shoulderMatch",
  "backMatch",
  "neckMatch",
  "waistTilt",
  "cover",
  "arm",
];

/** The waist decides most, then the hips; back arcs follow from the fronts and come last. */
const arcRank = (name: MeasurementName): number => {
  const level = ["waist", "fullHip", "highHip", "bust", "underbust"].findIndex((start) => name.startsWith(start));
  return level + (name.endsWith("BackArc") ? 10 : 0);
};

/** A group nobody has anything to measure for is left out. */
export const measureGroups: readonly MeasureGroup[] = order.flatMap((improves) => {
  const names = measurementNames.filter((name) => measurementFacts[name].improves === improves);
  if (names.length === 0) return [];
  return { improves, names: improves === "frontAndBack" ? names.toSorted((a, b) => arcRank(a) - arcRank(b)) : names };
});

/** The groups of a body: it has no lower edge. */
export const bodyGroups: readonly MeasureGroup[] = measureGroups.map((group) => ({
  ...group,
  names: group.names.filter((name) => name !== "lowerEdgeBelowNape"),
}));

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

export const groupOf = (name: MeasurementName): MeasureGroup | undefined =>
  measureGroups.find(({ names }) => names.includes(name));
