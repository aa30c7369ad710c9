import { straightDeviation } from "../tolerances";
import { mm, type Millimetres } from "../units";
import {
  breadthEstimate,
  type ExponentEstimate,
  exponentEstimates,
  frontShareEstimate,
  highHipGirthEstimate,
  peaksBeyondDepth,
  underbustGirthEstimate,
} from "./estimates";
import { type ApexReadings, heightReadings } from "./heightReadings";
import type { Measurements } from "./measurements";
import { estimated, known, measured, type Reading } from "./reading";
import type { ByLevel, LevelName } from "./vocabulary";
import { hipLean, leftMore } from "./waistTilt";

/** The four quarters of a level's girth (mm), each from centre to side seam. */
export interface QuarterReadings {
  readonly leftFront: Millimetres;
  readonly rightFront: Millimetres;
  readonly leftBack: Millimetres;
  readonly rightBack: Millimetres;
}

/**
 * Everything the plan works with at one level of a body or a form, at its own depth below the nape: measured where a
 * tape was read, estimated with its standard deviation elsewhere. The arcs always sum to the girth. Quarters are there
 * only where left and right were measured.
 */
export interface LevelReadings {
  readonly depthBelowNape: Reading;
  readonly girth: Reading;
  readonly frontArc: Reading;
  readonly backArc: Reading;
  readonly breadth: Reading;
  /** How far the front's and the back's furthest points lie apart, where the depth was read. */
  readonly depth: Reading | null;
  readonly exponents: ExponentEstimate;
  readonly quarters: QuarterReadings | null;
}

export interface TorsoReadings {
  readonly levels: ByLevel<LevelReadings>;
  readonly apex: ApexReadings;
}

/**
 * Completes what was measured of a body or a form. The three required girths must be there and have passed the checks.
 * Heights that were not read are taken from a form, where one is given; see `heightReadings`.
 */
export function torsoReadings(measurements: Measurements, form: Measurements = {}): TorsoReadings {
  const { depths, apex, highHipShare } = heightReadings(measurements, form);
  const girths = girthReadings(measurements, highHipShare);
  const level = (name: LevelName): LevelReadings =>
    levelReadings(name, measurements, { depthBelowNape: depths[name], girth: girths[name] });
  const [highHip, fullHip] = [level("highHip"), level("fullHip")];
  return {
    levels: {
      bust: level("bust"),
      underbust: level("underbust"),
      waist: level("waist"),
      highHip: { ...highHip, quarters: highHip.quarters ?? leaningQuarters(measurements, highHip, fullHip) },
      fullHip,
    },
    apex,
  };
}

/**
 * Where the hips were found uneven in height but not measured left and right: the higher hip takes its share of the
 * high hip.
 */
function leaningQuarters(measurements: Measurements, high: LevelReadings, full: LevelReadings): QuarterReadings | null {
  const lean = hipLean(measurements);
  if (lean === 0) return null;
  const growth = (full.girth.value - high.girth.value) / (full.depthBelowNape.value - high.depthBelowNape.value);
  const left = (1 + leftMore(lean, high.girth.value, growth)) / 2;
  const [front, back] = [high.frontArc.value, high.backArc.value];
  return {
    leftFront: mm(left * front),
    rightFront: mm((1 - left) * front),
    leftBack: mm(left * back),
    rightBack: mm((1 - left) * back),
  };
}

function girthReadings(measurements: Measurements, highHipShare: number): ByLevel<Reading> {
  const bust = measurements.bustGirth ?? mm(0);
  const waist = measurements.waistGirth ?? mm(0);
  const fullHip = measurements.fullHipGirth ?? mm(0);
  return {
    bust: measured(bust),
    underbust: known(measurements.underbustGirth, () => underbustGirthEstimate(bust, waist, fullHip)),
    waist: measured(waist),
    highHip: known(measurements.highHipGirth, () => highHipGirthEstimate(waist, fullHip, highHipShare)),
    fullHip: measured(fullHip),
  };
}

function levelReadings(
  name: LevelName,
  measurements: Measurements,
  { depthBelowNape, girth }: { readonly depthBelowNape: Reading; readonly girth: Reading },
): LevelReadings {
  const breadth = known(measurements[`${name}Breadth`], () => {
    const { value, standardDeviation } = breadthEstimate(name, girth.value);
    const ofGirth = girth.kind === "estimated" ? (girth.standardDeviation * value) / girth.value : 0;
    return { value, standardDeviation: Math.hypot(standardDeviation, ofGirth) };
  });
  const depth = measurements[`${name}Depth`];
  const arcs = arcReadings(name, measurements, girth);
  return {
    depthBelowNape,
    girth,
    ...arcs,
    breadth,
    depth: depth === undefined ? null : peaksApart(name, depth),
    exponents: exponentEstimates[name],
    quarters: quarterReadings(name, measurements, arcs),
  };
}

function peaksApart(name: LevelName, depth: Millimetres): Reading {
  const { value, standardDeviation } = peaksBeyondDepth[name];
  return estimated(mm(depth + value), mm(Math.hypot(standardDeviation, straightDeviation)));
}

interface Arcs {
  readonly frontArc: Reading;
  readonly backArc: Reading;
}

/** Front and back arcs that sum to the girth; where both were read, what they miss it by is shared between them. */
function arcReadings(name: LevelName, measurements: Measurements, girth: Reading): Arcs {
  const front =
    measurements[`${name}FrontArc`] ?? sum(measurements[`${name}LeftFrontArc`], measurements[`${name}RightFrontArc`]);
  const back =
    measurements[`${name}BackArc`] ?? sum(measurements[`${name}LeftBackArc`], measurements[`${name}RightBackArc`]);
  if (front === undefined && back === undefined) {
    const { value, standardDeviation } = frontShareEstimate(name, girth.value);
    const arcDeviation = mm(
      Math.hypot(standardDeviation * girth.value, girth.kind === "estimated" ? value * girth.standardDeviation : 0),
    );
    return {
      frontArc: estimated(mm(value * girth.value), arcDeviation),
      backArc: estimated(mm((1 - value) * girth.value), arcDeviation),
    };
  }
  const missing = front !== undefined && back !== undefined ? girth.value - front - back : 0;
  const frontValue = front !== undefined ? front + missing / 2 : girth.value - (back as number);
  const arc = (value: number, wasRead: boolean): Reading =>
    wasRead || girth.kind === "measured" ? measured(mm(value)) : estimated(mm(value), girth.standardDeviation);
  return { frontArc: arc(frontValue, front !== undefined), backArc: arc(girth.value - frontValue, back !== undefined) };
}

const sum = (left: Millimetres | undefined, right: Millimetres | undefined): number | undefined =>
  left === undefined || right === undefined ? undefined : left + right;

/** The quarters where at least one side was read; the other side of a half is what remains, an unread half is even. */
function quarterReadings(name: LevelName, measurements: Measurements, arcs: Arcs): QuarterReadings | null {
  const split = (
    left: Millimetres | undefined,
    right: Millimetres | undefined,
    whole: number,
  ): readonly [number, number] => {
    if (left !== undefined && right !== undefined)
      return [(whole * left) / (left + right), (whole * right) / (left + right)];
    if (left !== undefined) return [left, whole - left];
    if (right !== undefined) return [whole - right, right];
    return [whole / 2, whole / 2];
  };
  const read = (side: "LeftFront" | "RightFront" | "LeftBack" | "RightBack") => measurements[`${name}${side}Arc`];
  const [leftFront, rightFront] = split(read("LeftFront"), read("RightFront"), arcs.frontArc.value);
  const [leftBack, rightBack] = split(read("LeftBack"), read("RightBack"), arcs.backArc.value);
  if (leftFront === rightFront && leftBack === rightBack) return null;
  return { leftFront: mm(leftFront), rightFront: mm(rightFront), leftBack: mm(leftBack), rightBack: mm(rightBack) };
}
