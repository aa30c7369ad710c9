import { quarterLength } from "../geometry/superellipse";
import { mm, type Millimetres } from "../units";
import {
  apexAboveUnderbust,
  apexDropFromTape,
  apexToApexEstimate,
  type Estimate,
  frontShareEstimate,
  highHipGirthEstimate,
  highHipShareOfDrop,
  napeToWaistEstimate,
  sectionShapeEstimate,
  shoulderToApexEstimate,
  underbustGirthEstimate,
  waistDropFromTape,
  waistToFullHipEstimate,
} from "./estimates";
import { hipLean, leftMore, waistTilt } from "./waistTilt";
import type { Measurements } from "./measurements";
import { estimated, measured, type Reading } from "./reading";
import { type ByLevel, type LevelName, levelNames } from "./vocabulary";

/** The four quarters of a level's girth (mm), each from centre to side seam. */
export interface QuarterReadings {
  readonly leftFront: Millimetres;
  readonly rightFront: Millimetres;
  readonly leftBack: Millimetres;
  readonly rightBack: Millimetres;
}

/**
 * Everything the plan works with at one level of a body or a form, at its own drop below the nape: measured where a tape
 * was read, estimated with its spread elsewhere. The arcs always sum to the girth. Quarters are there only where left
 * and right were measured.
 */
export interface LevelReadings {
  readonly drop: Reading;
  readonly girth: Reading;
  readonly frontArc: Reading;
  readonly backArc: Reading;
  readonly breadth: Reading;
  readonly exponent: number;
  readonly quarters: QuarterReadings | null;
}

export interface ApexReadings {
  readonly leftDrop: Reading;
  readonly rightDrop: Reading;
  readonly apart: Reading;
}

export interface TorsoReadings {
  readonly levels: ByLevel<LevelReadings>;
  readonly apex: ApexReadings;
}

/** Completes what was measured of a body or a form. The three required girths must be there and have passed the checks. */
export function torsoReadings(measurements: Measurements): TorsoReadings {
  const girths = girthReadings(measurements);
  const apex = apexReadings(measurements, girths.bust.value);
  const drops = dropReadings(measurements, apex);
  const level = (name: LevelName): LevelReadings => levelReadings(name, measurements, drops[name], girths[name]);
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

/** Where the hips were found uneven in height but not measured left and right: the higher hip takes its share of the high hip. */
function leaningQuarters(measurements: Measurements, high: LevelReadings, full: LevelReadings): QuarterReadings | null {
  const lean = hipLean(measurements);
  if (lean === 0) return null;
  const growth = (full.girth.value - high.girth.value) / (full.drop.value - high.drop.value);
  const left = (1 + leftMore(lean, high.girth.value, growth)) / 2;
  const [front, back] = [high.frontArc.value, high.backArc.value];
  return {
    leftFront: mm(left * front),
    rightFront: mm((1 - left) * front),
    leftBack: mm(left * back),
    rightBack: mm((1 - left) * back),
  };
}

const guess = ({ value, spread }: Estimate): Reading => estimated(mm(value), mm(spread));

const known = (value: Millimetres | undefined, otherwise: () => Estimate): Reading =>
  value === undefined ? guess(otherwise()) : measured(value);

function girthReadings(measurements: Measurements): ByLevel<Reading> {
  const bust = measurements.bustGirth ?? mm(0);
  const waist = measurements.waistGirth ?? mm(0);
  const fullHip = measurements.fullHipGirth ?? mm(0);
  const toFullHip = measurements.waistToFullHip ?? waistToFullHipEstimate.value;
  const toHighHip = measurements.waistToHighHip ?? highHipShareOfDrop.value * toFullHip;
  const share = Math.min(1, toHighHip / toFullHip);
  return {
    bust: measured(bust),
    underbust: known(measurements.underbustGirth, () => underbustGirthEstimate(bust, waist, fullHip)),
    waist: measured(waist),
    highHip: known(measurements.highHipGirth, () => highHipGirthEstimate(waist, fullHip, share)),
    fullHip: measured(fullHip),
  };
}

function apexReadings(measurements: Measurements, bustGirth: number): ApexReadings {
  const { shoulderToApex, leftShoulderToApex, rightShoulderToApex, apexToApex } = measurements;
  const drop = (tape: Millimetres | undefined): Reading => {
    if (tape !== undefined) return measured(mm(apexDropFromTape(tape).value));
    const assumed = shoulderToApexEstimate(bustGirth);
    const { value, spread } = apexDropFromTape(assumed.value);
    return guess({ value, spread: Math.hypot(spread, 0.744 * assumed.spread) });
  };
  return {
    leftDrop: drop(leftShoulderToApex ?? shoulderToApex ?? rightShoulderToApex),
    rightDrop: drop(rightShoulderToApex ?? shoulderToApex ?? leftShoulderToApex),
    apart: known(apexToApex, () => apexToApexEstimate(bustGirth)),
  };
}

/**
 * Where a drop is only estimated, the apex keeps this distance (mm) above the waist (Army 1988: P5 77, mean 118), and the
 * underbust lies no further down than this share of it.
 */
const leastGap = { bustToWaist: 85, share: 0.55 } as const;

function dropReadings(measurements: Measurements, apex: ApexReadings): ByLevel<Reading> {
  const tape = measurements.napeToWaist;
  const waistGuess = waistDropFromTape(tape ?? napeToWaistEstimate.value);
  const waistSpread = Math.hypot(waistGuess.spread, 0.8623 * napeToWaistEstimate.spread);
  // The nape-to-waist tape ends at the back; a waist that tilts lies in the middle half its tilt further down.
  const waistDrop = waistGuess.value + waistTilt(measurements) / 2;
  const waist = tape === undefined ? guess({ value: waistDrop, spread: waistSpread }) : measured(mm(waistDrop));
  const meanApex = (apex.leftDrop.value + apex.rightDrop.value) / 2;
  const bustDrop =
    apex.leftDrop.kind === "measured" && tape !== undefined
      ? meanApex
      : Math.min(meanApex, waist.value - leastGap.bustToWaist);
  const bust: Reading = { ...apex.leftDrop, value: mm(bustDrop) };
  const underbustGap = Math.min(apexAboveUnderbust.value, leastGap.share * (waist.value - bustDrop));
  const toFullHip = fullHipBelowWaist(measurements);
  const highHipGuess = {
    value: highHipShareOfDrop.value * toFullHip.value,
    spread: highHipShareOfDrop.spread * toFullHip.value,
  };
  const toHighHip = known(measurements.waistToHighHip, () => highHipGuess);
  const below = (distance: Reading): Reading => ({ ...distance, value: mm(waist.value + distance.value) });
  return {
    bust,
    underbust: guess({ value: bustDrop + underbustGap, spread: apexAboveUnderbust.spread }),
    waist,
    highHip: below(toHighHip),
    fullHip: below(toFullHip),
  };
}

/** The full hip below the waist; where only the high hip was measured, it lies at least as far below that as that below the waist. */
function fullHipBelowWaist(measurements: Measurements): Reading {
  const least = (measurements.waistToHighHip ?? 0) / highHipShareOfDrop.value;
  return known(measurements.waistToFullHip, () => ({
    value: Math.max(waistToFullHipEstimate.value, least),
    spread: waistToFullHipEstimate.spread,
  }));
}

function levelReadings(name: LevelName, measurements: Measurements, drop: Reading, girth: Reading): LevelReadings {
  const shape = sectionShapeEstimate(name, girth.value);
  const unitGirth = 4 * quarterLength({ breadth: 0.5, depth: shape.ratio / 2, exponent: shape.exponent });
  const breadth = known(measurements[`${name}Breadth`], () => ({
    value: girth.value / unitGirth,
    spread: Math.hypot(shape.breadthSpread, girth.kind === "estimated" ? girth.spread / unitGirth : 0),
  }));
  const arcs = arcReadings(name, measurements, girth);
  return {
    drop,
    girth,
    ...arcs,
    breadth,
    exponent: shape.exponent,
    quarters: quarterReadings(name, measurements, arcs),
  };
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
    const { value, spread } = frontShareEstimate(name, girth.value);
    const arcSpread = mm(Math.hypot(spread * girth.value, girth.kind === "estimated" ? value * girth.spread : 0));
    return {
      frontArc: estimated(mm(value * girth.value), arcSpread),
      backArc: estimated(mm((1 - value) * girth.value), arcSpread),
    };
  }
  const missing = front !== undefined && back !== undefined ? girth.value - front - back : 0;
  const frontValue = front !== undefined ? front + missing / 2 : girth.value - (back as number);
  const arc = (value: number, wasRead: boolean): Reading =>
    wasRead || girth.kind === "measured" ? measured(mm(value)) : estimated(mm(value), girth.spread);
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

/** Applies one function to every level. */
export function mapLevels<Value>(value: (name: LevelName) => Value): ByLevel<Value> {
  const entries = levelNames.map((name) => [name, value(name)] as const);
  return Object.fromEntries(entries) as { [level in LevelName]: Value };
}
