import { readingSum } from "../tolerances";
import { type BeyondRange, beyondRange } from "./beyondRange";
import type { Measurements } from "./measurements";
import type { LevelName, MeasurementName } from "./vocabulary";

/**
 * Readings of one level that cannot all be true: an arc as long as the girth or too short for its share, arcs or
 * quarters that do not sum to the whole, a breadth the girth cannot go round. The reading to measure again comes first.
 */
export type LevelContradiction = BeyondRange<
  "arcNotShorterThanGirth" | "arcDoesNotFitGirth" | "arcsMissGirth" | "quartersMissArc" | "breadthDoesNotFitGirth"
>;

export function levelContradictions(level: LevelName, measurements: Measurements): readonly LevelContradiction[] {
  const wrongParts = [...wrongBreadth(level, measurements), ...wrongArcs(level, measurements)];
  return wrongParts.length > 0 ? wrongParts : wrongSums(level, measurements);
}

/**
 * A tape round something of breadth b reads more than 2b, and nobody is more than twice as deep as broad: then the
 * breadth is a sixth of the girth at the least.
 */
function wrongBreadth(level: LevelName, measurements: Measurements): readonly LevelContradiction[] {
  const [girth, breadth] = [measurements[`${level}Girth`], measurements[`${level}Breadth`]];
  if (girth === undefined || breadth === undefined) return [];
  return beyondRange(
    "breadthDoesNotFitGirth",
    [`${level}Breadth`, `${level}Girth`],
    breadth,
    girth / 6,
    (girth - 1) / 2,
  );
}

/**
 * An arc from side seam to side seam is at least as long as the breadth it spans, and so is the other one, its rest. A
 * breadth is about a third of the girth on anybody; where nobody measured it, a quarter is asked of an arc. Of a quarter
 * arc half of that is asked.
 */
function wrongArcs(level: LevelName, measurements: Measurements): readonly LevelContradiction[] {
  const girth = measurements[`${level}Girth`];
  if (girth === undefined) return [];
  const least = measurements[`${level}Breadth`] ?? girth / 4;
  return arcReadings.flatMap(({ reading, share }): readonly LevelContradiction[] => {
    const arc = measurements[`${level}${reading}`];
    if (arc === undefined) return [];
    const names = [`${level}${reading}`, `${level}Girth`] as const;
    return arc >= girth
      ? beyondRange("arcNotShorterThanGirth", names, arc, 0, girth - 1)
      : beyondRange("arcDoesNotFitGirth", names, arc, share * least, girth - least - (1 - share) * least);
  });
}

const arcReadings = [
  { reading: "FrontArc", share: 1 },
  { reading: "BackArc", share: 1 },
  { reading: "LeftFrontArc", share: 0.5 },
  { reading: "RightFrontArc", share: 0.5 },
  { reading: "LeftBackArc", share: 0.5 },
  { reading: "RightBackArc", share: 0.5 },
] as const;

function wrongSums(level: LevelName, measurements: Measurements): readonly LevelContradiction[] {
  const misses = (
    code: LevelContradiction["code"],
    parts: readonly MeasurementName[],
    whole: MeasurementName,
  ): readonly LevelContradiction[] => {
    const [lengths, wanted] = [parts.map((name) => measurements[name]), measurements[whole]];
    if (wanted === undefined || lengths.some((length) => length === undefined)) return [];
    const sum = lengths.reduce<number>((total, length) => total + (length ?? 0), 0);
    return beyondRange(code, [...parts, whole], sum, wanted - readingSum, wanted + readingSum);
  };
  const halves = [
    { arc: `${level}FrontArc`, quarters: [`${level}LeftFrontArc`, `${level}RightFrontArc`] },
    { arc: `${level}BackArc`, quarters: [`${level}LeftBackArc`, `${level}RightBackArc`] },
  ] as const;
  return [
    ...halves.flatMap(({ arc, quarters }) => misses("quartersMissArc", quarters, arc)),
    ...misses(
      "arcsMissGirth",
      halves.flatMap(({ arc, quarters }) => (measurements[arc] === undefined ? quarters : [arc])),
      `${level}Girth`,
    ),
  ];
}
