import { type Millimetres, mm } from "../units";
import { apexDepthFromTape, waistDepthFromTape } from "./estimates";
import { bustNearWaist } from "./bustNearWaist";
import { heightProblems } from "./heightProblems";
import { type LengthRange, measurementFacts } from "./measurementFacts";
import { levelContradictions } from "./levelContradictions";
import type { Measurements } from "./measurements";
import { unusualPairs } from "./unusualPairs";
import { inUnitSlip } from "./unitSlip";
import { levelNames, type MeasurementName, measurementNames, requiredMeasurementNames } from "./vocabulary";

/**
 * Whether readings can be of one body or form. A contradiction blocks the plan and says what to measure again; what is
 * only unusual is worth a second look and blocks nothing. At most one problem is named for a reading by itself, and a
 * reading that is wrong by itself takes no part in the comparisons.
 */
export type Whose = "body" | "form";

export const contradictionCodes = [
  "missing",
  "notALength",
  "impossible",
  "inchesAsCentimetres",
  "centimetresAsInches",
  "arcNotShorterThanGirth",
  "arcDoesNotFitGirth",
  "arcsMissGirth",
  "quartersMissArc",
  "breadthDoesNotFitGirth",
  "bustNotAboveWaist",
  "highHipNotAboveFullHip",
  "heightDoesNotFitNape",
  "linesOutOfOrder",
] as const;
export const pleaseCheckCodes = [
  "unusual",
  "unusualProportion",
  "unusualFrontShare",
  "unevenSides",
  "heightWithoutNape",
  "linesClose",
  "heightsDisagree",
] as const;
export type ContradictionCode = (typeof contradictionCodes)[number];
export type PleaseCheckCode = (typeof pleaseCheckCodes)[number];

/** A problem with its readings, the one to measure again first; lengths in mm. */
export type MeasurementProblem = { readonly whose: Whose; readonly names: readonly MeasurementName[] } & (
  | { readonly severity: "contradiction"; readonly code: "missing" }
  | { readonly severity: "contradiction"; readonly code: "notALength"; readonly got: number }
  | ({
      readonly severity: "contradiction";
      readonly code: Exclude<ContradictionCode, "missing" | "notALength">;
    } & Compared)
  | ({ readonly severity: "pleaseCheck"; readonly code: PleaseCheckCode } & Compared)
);
interface Compared {
  readonly got: Millimetres;
  readonly expected: LengthRange;
}

export function checkMeasurements(measurements: Measurements, whose: Whose): readonly MeasurementProblem[] {
  const unreadable = [...missing(measurements, whose), ...notLengths(measurements, whose)];
  const lengths = without(measurements, unreadable);
  const slips = inUnitSlip(lengths).map((slip) => ({ whose, severity: "contradiction", ...slip }) as const);
  const impossible = impossibleAlone(without(lengths, slips), whose);
  const comparable = without(lengths, [...slips, ...impossible]);
  const heights = heightProblems(comparable).map((found) => ({ whose, ...found }));
  const contradictions = [
    ...wrongLevels(comparable, whose),
    ...wrongHeights(comparable, whose),
    ...heights.filter(isContradiction),
  ];
  const settled = without(comparable, contradictions);
  const unusual = unusualAlone(settled, whose);
  const pairs = unusualPairs(without(settled, unusual), whose).map(
    (pair) => ({ whose, severity: "pleaseCheck", ...pair }) as const,
  );
  return [
    ...unreadable,
    ...slips,
    ...impossible,
    ...contradictions,
    ...unusual,
    ...pairs,
    ...heights.filter((found) => !isContradiction(found)),
    ...(whose === "body" ? bustNearWaist(measurements).map((found) => ({ whose, ...found })) : []),
  ];
}

export const isContradiction = (problem: MeasurementProblem): boolean => problem.severity === "contradiction";

const without = (measurements: Measurements, problems: readonly MeasurementProblem[]): Measurements => {
  const named = new Set<string>(problems.flatMap(({ names }) => names));
  return Object.fromEntries(Object.entries(measurements).filter(([name]) => !named.has(name)));
};

const missing = (measurements: Measurements, whose: Whose): readonly MeasurementProblem[] =>
  requiredMeasurementNames
    .filter((name) => measurements[name] === undefined)
    .map((name) => ({ whose, severity: "contradiction", code: "missing", names: [name] }));

const notLengths = (measurements: Measurements, whose: Whose): readonly MeasurementProblem[] =>
  measurementNames.flatMap((name): readonly MeasurementProblem[] => {
    const got = measurements[name];
    const isLength = got === undefined || (Number.isFinite(got) && got > 0);
    return isLength ? [] : [{ whose, severity: "contradiction", code: "notALength", names: [name], got }];
  });

const impossibleAlone = (measurements: Measurements, whose: Whose): readonly MeasurementProblem[] =>
  outside(measurements, "possible").map((found) => ({
    whose,
    severity: "contradiction",
    code: "impossible",
    ...found,
  }));

const unusualAlone = (measurements: Measurements, whose: Whose): readonly MeasurementProblem[] =>
  outside(measurements, "usual")
    .filter(({ names }) => whose === "body" || !names.some(isAboveFloor))
    .map((found) => ({ whose, severity: "pleaseCheck", code: "unusual", ...found }));

/** A form's heights may be measured from any floor. */
const isAboveFloor = (name: MeasurementName): boolean =>
  name === "napeHeight" || levelNames.some((level) => name === `${level}Height`);

/** The readings outside their own possible or usual range. */
const outside = (
  measurements: Measurements,
  kind: "possible" | "usual",
): readonly (Compared & { readonly names: readonly MeasurementName[] })[] =>
  measurementNames.flatMap((name) => {
    const [got, expected] = [measurements[name], measurementFacts[name][kind]];
    return got === undefined || (got >= expected.least && got <= expected.most)
      ? []
      : [{ names: [name], got, expected }];
  });

/** What cannot be at one level: arcs against the girth, quarters against the arcs, breadth against the girth. */
const wrongLevels = (measurements: Measurements, whose: Whose): readonly MeasurementProblem[] =>
  levelNames.flatMap((level) =>
    levelContradictions(level, measurements).map((found) => ({ whose, severity: "contradiction", ...found })),
  );

/** Levels out of order: the bust not above the waist, the high hip not above the full hip. */
function wrongHeights(measurements: Measurements, whose: Whose): readonly MeasurementProblem[] {
  const { napeToWaist, waistToHighHip, waistToFullHip } = measurements;
  const lowBusts = apexTapes.flatMap((name): readonly MeasurementProblem[] => {
    const tape = measurements[name];
    if (tape === undefined || napeToWaist === undefined) return [];
    const [bust, waist] = [apexDepthFromTape(tape).value, waistDepthFromTape(napeToWaist).value];
    if (bust < waist) return [];
    return [
      {
        whose,
        severity: "contradiction",
        code: "bustNotAboveWaist",
        names: [name, "napeToWaist"],
        got: mm(bust),
        expected: { least: mm(0), most: mm(waist) },
      },
    ];
  });
  if (waistToHighHip === undefined || waistToFullHip === undefined || waistToHighHip < waistToFullHip) return lowBusts;
  const expected = { least: mm(0), most: waistToFullHip };
  return [
    ...lowBusts,
    {
      whose,
      severity: "contradiction",
      code: "highHipNotAboveFullHip",
      names: ["waistToHighHip", "waistToFullHip"],
      got: waistToHighHip,
      expected,
    },
  ];
}

const apexTapes = ["shoulderToApex", "leftShoulderToApex", "rightShoulderToApex"] as const;
