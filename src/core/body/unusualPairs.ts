import { type BeyondRange, beyondRange } from "./beyondRange";
import type { Measurements } from "./measurements";
import { publishedArcShare, publishedWaistFrontShare } from "./publishedRange";
import { levelNames, type MeasurementName } from "./vocabulary";

/**
 * Readings that are usual by themselves and unusual side by side. Nothing here is an error: bodies differ, and the
 * person is only asked to look at the tape once more.
 */
export type UnusualPair = BeyondRange<"unusualProportion" | "unusualFrontShare" | "unevenSides">;

export function unusualPairs(measurements: Measurements, whose: "body" | "form"): readonly UnusualPair[] {
  const found = [...frontShares(measurements, whose), ...unevenSides(measurements)];
  return whose === "form" ? found : [...found, ...girthPairs(measurements)];
}

/**
 * One girth from another: the lines of regression of the Spanish survey, from its means, standard deviations and
 * correlations (0.958 and 0.819), give the middle, Army 1988 the underbust (90 to 191 mm below the bust, p5 and p95).
 * How far from it is still usual is a judgement of three residual standard deviations and more, wider on the side where
 * a dressmaker's waist is smaller than the survey's and for small and large busts.
 */
const girthPairs = (measurements: Measurements): readonly UnusualPair[] =>
  girthRules.flatMap(({ name, from, range }) => {
    const [girth, other] = [measurements[name], measurements[from]];
    if (girth === undefined || other === undefined) return [];
    const [least, most] = range(other);
    return beyondRange("unusualProportion", [name, from], girth, least, most);
  });

const around = (middle: number, below: number, above: number): readonly [number, number] => [
  middle - below,
  middle + above,
];

const girthRules: readonly {
  readonly name: MeasurementName;
  readonly from: MeasurementName;
  readonly range: (other: number) => readonly [number, number];
}[] = [
  { name: "waistGirth", from: "bustGirth", range: (bust) => around(1.139 * bust - 236.8, 300, 150) },
  { name: "fullHipGirth", from: "waistGirth", range: (waist) => around(0.628 * waist + 517.4, 190, 300) },
  { name: "underbustGirth", from: "bustGirth", range: (bust) => around(bust, 330, -40) },
];

/** The survey has the front share of a body's waist only; other levels, and forms, go by the wider range of practice. */
function frontShares(measurements: Measurements, whose: "body" | "form"): readonly UnusualPair[] {
  return levelNames.flatMap((level) => {
    const [front, back, girth] = [
      measurements[`${level}FrontArc`],
      measurements[`${level}BackArc`],
      measurements[`${level}Girth`],
    ];
    const arc = front ?? (back === undefined || girth === undefined ? undefined : girth - back);
    if (arc === undefined || girth === undefined) return [];
    const { low, high } = level === "waist" && whose === "body" ? publishedWaistFrontShare : publishedArcShare;
    const read = front === undefined ? (`${level}BackArc` as const) : (`${level}FrontArc` as const);
    const [least, most] = front === undefined ? [girth * (1 - high), girth * (1 - low)] : [girth * low, girth * high];
    return beyondRange("unusualFrontShare", [read, `${level}Girth`], front ?? girth - arc, least, most);
  });
}

/**
 * Left and right. Of 600 women the Spanish survey has 95 in 100 within 18.6 mm neck side to apex and 22.7 mm along the
 * shoulder; nobody published quarters of a girth, so theirs is a judgement.
 */
function unevenSides(measurements: Measurements): readonly UnusualPair[] {
  return sidePairs.flatMap(({ left, right, most }) => {
    const [one, other] = [measurements[left], measurements[right]];
    return one === undefined || other === undefined
      ? []
      : beyondRange("unevenSides", [left, right], Math.abs(one - other), 0, most);
  });
}

const sidePairs: readonly { readonly left: MeasurementName; readonly right: MeasurementName; readonly most: number }[] =
  [
    { left: "leftShoulderToApex", right: "rightShoulderToApex", most: 30 },
    { left: "leftShoulderLength", right: "rightShoulderLength", most: 30 },
    { left: "waistToFloorLeft", right: "waistToFloorRight", most: 40 },
    ...levelNames.flatMap((level) => [
      { left: `${level}LeftFrontArc`, right: `${level}RightFrontArc`, most: 40 } as const,
      { left: `${level}LeftBackArc`, right: `${level}RightBackArc`, most: 40 } as const,
    ]),
  ];
