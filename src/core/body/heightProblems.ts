import { mm, type Millimetres } from "../units";
import { apexDepthFromTape, waistDepthFromTape } from "./estimates";
import { leastLineGap } from "./heightReadings";
import { belowNape, belowNapeByHeights } from "./linePlace";
import { type LengthRange, measurementFacts } from "./measurementFacts";
import type { Measurements } from "./measurements";
import { type LevelName, levelNames, type MeasurementName } from "./vocabulary";

/**
 * Heights that cannot be, or that do not agree: the reading to take again comes first. A height above the floor means
 * nothing without the nape's; lines run from the top down; a line read vertically and by a tape over the surface, or in
 * two vertical ways, is in one place. What disagrees is asked about and blocks nothing.
 */
export type HeightProblem = HeightContradiction | HeightQuestion;
export interface HeightContradiction extends HeightFound {
  readonly severity: "contradiction";
  readonly code: "inchesAsCentimetres" | "centimetresAsInches" | "heightDoesNotFitNape" | "linesOutOfOrder";
}
export interface HeightQuestion extends HeightFound {
  readonly severity: "pleaseCheck";
  readonly code: "heightWithoutNape" | "linesClose" | "heightsDisagree";
}
interface HeightFound {
  readonly names: readonly MeasurementName[];
  /** How far below the nape the line would lie, or how far two lines lie apart (mm), and what was expected of that. */
  readonly got: Millimetres;
  readonly expected: LengthRange;
}

export function heightProblems(measurements: Measurements): readonly HeightProblem[] {
  const slips = unitSlips(measurements);
  if (slips.length > 0) return slips;
  const unfit = doesNotFitNape(measurements);
  if (unfit.length > 0) return unfit;
  const disordered = outOfOrder(measurements);
  if (disordered.some(({ severity }) => severity === "contradiction")) return disordered;
  return [...withoutNape(measurements), ...disordered, ...disagreements(measurements)];
}

const range = (least: number, most: number): LengthRange => ({ least: mm(Math.max(0, least)), most: mm(most) });

/** Every height typed in the other unit: no line lies where one can below the nape, and in the other unit every one does. */
function unitSlips(measurements: Measurements): readonly HeightProblem[] {
  const placed = levelNames.flatMap((level) => {
    const depth = belowNapeByHeights(measurements, level);
    return depth === undefined ? [] : [{ level, depth }];
  });
  if (placed.length === 0) return [];
  const fits = (level: LevelName, depth: number) => isWithin(depth, measurementFacts[`${level}BelowNape`].possible);
  return unitFactors.flatMap(({ code, factor }): readonly HeightProblem[] => {
    const isSlip = placed.every(({ level, depth }) => !fits(level, depth) && fits(level, depth * factor));
    if (!isSlip) return [];
    const names = ["napeHeight", ...placed.map(({ level }) => `${level}Height` as const)] as const;
    const got = measurements.napeHeight ?? mm(0);
    return [{ severity: "contradiction", code, names, got, expected: measurementFacts.napeHeight.usual }];
  });
}

const unitFactors = [
  { code: "inchesAsCentimetres", factor: 2.54 },
  { code: "centimetresAsInches", factor: 1 / 2.54 },
] as const;

const isWithin = (value: number, { least, most }: LengthRange): boolean => value >= least && value <= most;

function doesNotFitNape(measurements: Measurements): readonly HeightProblem[] {
  return levelNames.flatMap((level): readonly HeightProblem[] => {
    const depth = belowNapeByHeights(measurements, level);
    const expected = measurementFacts[`${level}BelowNape`].possible;
    if (depth === undefined || isWithin(depth, expected)) return [];
    return [
      {
        severity: "contradiction",
        code: "heightDoesNotFitNape",
        names: [`${level}Height`, "napeHeight"],
        got: mm(Math.max(0, depth)),
        expected,
      },
    ];
  });
}

function withoutNape(measurements: Measurements): readonly HeightProblem[] {
  if (measurements.napeHeight !== undefined) return [];
  const names = levelNames.map((level) => `${level}Height` as const).filter((name) => measurements[name] !== undefined);
  const [first] = names;
  if (first === undefined) return [];
  return [
    {
      severity: "pleaseCheck",
      code: "heightWithoutNape",
      names: ["napeHeight", ...names],
      got: measurements[first] ?? mm(0),
      expected: measurementFacts.napeHeight.usual,
    },
  ];
}

/** Lines that are read closer than this (mm) are asked about: edges of padding find no room between them. */
const closeLines = 10;

/** Each line that was read against the next below it that was read. */
function outOfOrder(measurements: Measurements): readonly HeightProblem[] {
  const read = levelNames.flatMap((level, i) => {
    const depth = belowNape(measurements, level);
    return depth === undefined ? [] : [{ level, depth, i }];
  });
  return read.slice(1).flatMap(({ level, depth, i }, at): readonly HeightProblem[] => {
    const above = read[at] as (typeof read)[number];
    const least = (i - above.i) * leastLineGap;
    const gap = depth - above.depth;
    const found = {
      names: [placeName(measurements, level), placeName(measurements, above.level)],
      got: mm(Math.max(0, depth)),
      expected: range(above.depth + least, measurementFacts[`${level}BelowNape`].possible.most),
    };
    if (gap < least) return [{ severity: "contradiction", code: "linesOutOfOrder", ...found }];
    return gap < closeLines
      ? [
          {
            severity: "pleaseCheck",
            code: "linesClose",
            ...found,
            got: mm(gap),
            expected: range(closeLines, closeLines),
          },
        ]
      : [];
  });
}

const placeName = (measurements: Measurements, level: LevelName): MeasurementName =>
  measurements[`${level}BelowNape`] === undefined ? `${level}Height` : `${level}BelowNape`;

/**
 * How far two ways to one place may differ (mm) before it is asked about. Vertical readings: three of their standard
 * deviations together. A tape over the surface: just beyond the furthest that it was off on true shapes (apex 37, waist
 * 19, down the side 19).
 */
const mayDiffer = { vertical: 15, apexTape: 45, backTape: 25, sideTape: 30 } as const;

/** The apex is one; where left and right were read, the first of them stands for it. */
const apexTapes = ["shoulderToApex", "leftShoulderToApex", "rightShoulderToApex"] as const;

function disagreements(measurements: Measurements): readonly HeightProblem[] {
  const { napeToWaist, apexToUnderbust } = measurements;
  const depth = (level: LevelName) => belowNape(measurements, level);
  const asked = (level: LevelName, other: MeasurementName, place: number | undefined, most: number) =>
    disagreement(measurements, level, other, place, most);
  const [bust, waist] = [depth("bust"), depth("waist")];
  const apexName = apexTapes.find((name) => measurements[name] !== undefined) ?? "shoulderToApex";
  const apexTape = measurements[apexName];
  const isTwice = levelNames.filter((level) => measurements[`${level}BelowNape`] !== undefined);
  const down = (tape: number | undefined) => (waist === undefined || tape === undefined ? undefined : waist + tape);
  return [
    ...isTwice.flatMap((level) =>
      asked(level, `${level}Height`, belowNapeByHeights(measurements, level), mayDiffer.vertical),
    ),
    ...asked("bust", apexName, apexTape && apexDepthFromTape(apexTape).value, mayDiffer.apexTape),
    ...asked(
      "underbust",
      "apexToUnderbust",
      bust === undefined || apexToUnderbust === undefined ? undefined : bust + apexToUnderbust,
      mayDiffer.vertical,
    ),
    ...asked("waist", "napeToWaist", napeToWaist && waistDepthFromTape(napeToWaist).value, mayDiffer.backTape),
    ...asked("highHip", "waistToHighHip", down(measurements.waistToHighHip), mayDiffer.sideTape),
    ...asked("fullHip", "waistToFullHip", down(measurements.waistToFullHip), mayDiffer.sideTape),
  ];
}

function disagreement(
  measurements: Measurements,
  level: LevelName,
  other: MeasurementName,
  place: number | undefined,
  most: number,
): readonly HeightProblem[] {
  const depth = belowNape(measurements, level);
  if (depth === undefined || place === undefined || Math.abs(depth - place) <= most) return [];
  return [
    {
      severity: "pleaseCheck",
      code: "heightsDisagree",
      names: [placeName(measurements, level), other],
      got: mm(depth),
      expected: range(place - most, place + most),
    },
  ];
}
