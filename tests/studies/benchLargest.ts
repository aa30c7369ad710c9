import type { Measurements } from "../../src/core/body/measurements";
import type { LevelName } from "../../src/core/body/vocabulary";
import type { PlanInput } from "../../src/core/plan/basis";
import { mm, ratio } from "../../src/core/units";

/** All readings there can be, left and right apart, and thin batting for a large difference: nothing the screens can ask for takes longer. */
export const largestFitting: PlanInput = {
  body: {
    ...quarters("bust", [342, 326, 258, 244]),
    ...quarters("underbust", [276, 262, 236, 224]),
    ...quarters("waist", [282, 270, 246, 232]),
    ...quarters("highHip", [304, 290, 290, 276]),
    ...quarters("fullHip", [316, 300, 322, 306]),
    leftShoulderToApex: mm(318),
    rightShoulderToApex: mm(306),
    apexToApex: mm(212),
    napeToWaist: mm(418),
    waistToHighHip: mm(104),
    waistToFullHip: mm(212),
    bustBreadth: mm(352),
    waistBreadth: mm(338),
    fullHipBreadth: mm(418),
  },
  form: {
    ...evenly("bust", 236, 209),
    ...evenly("underbust", 198, 182),
    ...evenly("waist", 178, 168),
    ...evenly("highHip", 214, 220),
    ...evenly("fullHip", 236, 250),
    napeToWaist: mm(410),
    waistToHighHip: mm(100),
    waistToFullHip: mm(205),
  },
  batting: { name: "thin wadding", layerThickness: mm(3), relativeDeviation: ratio(0.35) },
};

/** The same as a file that the tool opens. */
export function largestFittingFile(): string {
  const { body, form, batting } = largestFitting;
  const entries = (measurements: Measurements) =>
    Object.fromEntries(Object.entries(measurements).map(([name, length]) => [name, `${length} mm`]));
  return JSON.stringify({
    version: 1,
    unit: "cm",
    title: "The largest fitting (made up)",
    notes: "Nobody was measured.",
    body: entries(body),
    form: entries(form),
    batting: { name: batting.name, layerThickness: `${batting.layerThickness} mm` },
  });
}

/** A level with left like right. */
function evenly(level: LevelName, front: number, back: number): Measurements {
  return quarters(level, [front, front, back, back]);
}

/** One level's quarters (left front, right front, left back, right back) with the arcs and the girth they sum to. */
function quarters(
  level: LevelName,
  [leftFront, rightFront, leftBack, rightBack]: readonly [number, number, number, number],
): Measurements {
  return {
    [`${level}LeftFrontArc`]: mm(leftFront),
    [`${level}RightFrontArc`]: mm(rightFront),
    [`${level}LeftBackArc`]: mm(leftBack),
    [`${level}RightBackArc`]: mm(rightBack),
    [`${level}FrontArc`]: mm(leftFront + rightFront),
    [`${level}BackArc`]: mm(leftBack + rightBack),
    [`${level}Girth`]: mm(leftFront + rightFront + leftBack + rightBack),
  };
}
