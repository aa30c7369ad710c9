import { mm, type Millimetres } from "../units";
import {
  apexAboveUnderbust,
  apexDropFromTape,
  apexToApexEstimate,
  highHipShareOfDrop,
  napeToWaistEstimate,
  shoulderToApexEstimate,
  waistDropFromTape,
  waistToFullHipEstimate,
} from "./estimates";
import type { Measurements } from "./measurements";
import { guessed, known, measured, type Reading } from "./reading";
import type { ByLevel } from "./vocabulary";
import { waistTilt } from "./waistTilt";

/** The apexes of a body or a form: their drops below the nape, and how far apart they are. */
export interface ApexReadings {
  readonly leftDrop: Reading;
  readonly rightDrop: Reading;
  readonly apart: Reading;
}

/** Every height below the nape, and at which share of the way from waist to full hip the high hip lies. */
export interface HeightReadings {
  readonly drops: ByLevel<Reading>;
  readonly apex: ApexReadings;
  readonly highHipShare: number;
}

/**
 * Where the levels and the apexes of a body or a form lie. A height of a BODY that nobody read is taken to be where the
 * form has it, if it was read there: an unread difference is no reason for a piece. It stays an estimate, with the spread
 * that bodies have.
 */
export function heightReadings(measurements: Measurements, form: Measurements): HeightReadings {
  const apex = apexReadings(measurements, form);
  const toFullHip = toFullHipReading(measurements, form);
  const toHighHip = toHighHipReading(measurements, form, toFullHip);
  return {
    apex,
    drops: dropReadings(measurements, form, { apex, toFullHip, toHighHip }),
    highHipShare: Math.min(1, toHighHip.value / toFullHip.value),
  };
}

function apexReadings(measurements: Measurements, form: Measurements): ApexReadings {
  const { bustGirth = mm(0), shoulderToApex, leftShoulderToApex, rightShoulderToApex, apexToApex } = measurements;
  const drop = (tape: Millimetres | undefined): Reading => {
    if (tape !== undefined) return measured(mm(apexDropFromTape(tape).value));
    const assumed = shoulderToApexEstimate(bustGirth);
    const { value, spread } = apexDropFromTape(assumed.value + lowerThanUsual(form));
    return guessed({ value, spread: Math.hypot(spread, 0.744 * assumed.spread) });
  };
  return {
    leftDrop: drop(leftShoulderToApex ?? shoulderToApex ?? rightShoulderToApex),
    rightDrop: drop(rightShoulderToApex ?? shoulderToApex ?? leftShoulderToApex),
    apart: known(apexToApex, () => apexToApexEstimate(bustGirth)),
  };
}

/** By how much longer (mm) the tape from neck side to apex is on this form than on most of its bust girth. */
function lowerThanUsual({ bustGirth, shoulderToApex }: Measurements): number {
  if (bustGirth === undefined || shoulderToApex === undefined) return 0;
  return shoulderToApex - shoulderToApexEstimate(bustGirth).value;
}

/**
 * Where a drop is only estimated, the apex keeps this distance (mm) above the waist (Army 1988: P5 77, mean 118), and the
 * underbust lies no further down than this share of it.
 */
const leastGap = { bustToWaist: 85, share: 0.55 } as const;

interface HeightParts {
  readonly apex: ApexReadings;
  readonly toFullHip: Reading;
  readonly toHighHip: Reading;
}

function dropReadings(
  measurements: Measurements,
  form: Measurements,
  { apex, toFullHip, toHighHip }: HeightParts,
): ByLevel<Reading> {
  const tape = measurements.napeToWaist;
  const waistGuess = waistDropFromTape(tape ?? form.napeToWaist ?? napeToWaistEstimate.value);
  const waistSpread = Math.hypot(waistGuess.spread, 0.8623 * napeToWaistEstimate.spread);
  // The nape-to-waist tape ends at the back; a waist that tilts lies in the middle half its tilt further down.
  const waistDrop = waistGuess.value + waistTilt(measurements) / 2;
  const waist = tape === undefined ? guessed({ value: waistDrop, spread: waistSpread }) : measured(mm(waistDrop));
  const meanApex = (apex.leftDrop.value + apex.rightDrop.value) / 2;
  const bustDrop =
    apex.leftDrop.kind === "measured" && tape !== undefined
      ? meanApex
      : Math.min(meanApex, waist.value - leastGap.bustToWaist);
  const underbustGap = Math.min(apexAboveUnderbust.value, leastGap.share * (waist.value - bustDrop));
  const below = (distance: Reading): Reading => ({ ...distance, value: mm(waist.value + distance.value) });
  return {
    bust: { ...apex.leftDrop, value: mm(bustDrop) },
    underbust: guessed({ value: bustDrop + underbustGap, spread: apexAboveUnderbust.spread }),
    waist,
    highHip: below(toHighHip),
    fullHip: below(toFullHip),
  };
}

/** The full hip below the waist; where only the high hip was measured, it lies at least as far below that as that below the waist. */
function toFullHipReading(measurements: Measurements, form: Measurements): Reading {
  const least = (measurements.waistToHighHip ?? 0) / highHipShareOfDrop.value;
  return known(measurements.waistToFullHip, () => ({
    value: Math.max(form.waistToFullHip ?? waistToFullHipEstimate.value, least),
    spread: waistToFullHipEstimate.spread,
  }));
}

function toHighHipReading(measurements: Measurements, form: Measurements, toFullHip: Reading): Reading {
  const { waistToHighHip, waistToFullHip = mm(waistToFullHipEstimate.value) } = form;
  const share = waistToHighHip === undefined ? highHipShareOfDrop.value : Math.min(1, waistToHighHip / waistToFullHip);
  return known(measurements.waistToHighHip, () => ({
    value: share * toFullHip.value,
    spread: highHipShareOfDrop.spread * toFullHip.value,
  }));
}
