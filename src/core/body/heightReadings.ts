import { mm, type Millimetres } from "../units";
import {
  apexAboveUnderbust,
  apexDropFromTape,
  apexToApexEstimate,
  type Estimate,
  highHipShareOfDrop,
  napeToWaistEstimate,
  shoulderToApexEstimate,
  waistDropFromTape,
  waistToFullHipEstimate,
} from "./estimates";
import type { Measurements } from "./measurements";
import { guessed, known, measured, type Reading } from "./reading";
import { belowNape } from "./linePlace";
import { type ByLevel, levelNames, mapLevels } from "./vocabulary";
import { waistTilt } from "./waistTilt";

/** The apexes of a body or a form: their depths below the nape, and how far apart they are. */
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
 * Where the levels and the apexes of a body or a form lie below the nape (mm, vertical). What was read vertically, above
 * the floor or straight down from the nape, is measured and wins. A tape over the surface is converted and stays an
 * estimate with its honest doubt. A height of a BODY that nobody read is taken to be where the form has it, if it was
 * read there: an unread difference is no reason for a piece; it keeps the spread that bodies have.
 */
export function heightReadings(measurements: Measurements, form: Measurements): HeightReadings {
  const apex = apexReadings(measurements, form);
  const waist = waistReading(measurements, form);
  const bust = bustReading(measurements, apex, waist);
  const fullHip = fullHipReading(measurements, form, waist);
  const highHip = highHipReading(measurements, form, waist, fullHip);
  const underbust = underbustReading(measurements, form, bust, waist);
  const drops = inOrder({ bust, underbust, waist, highHip, fullHip });
  const share = (drops.highHip.value - drops.waist.value) / (drops.fullHip.value - drops.waist.value);
  return { apex, drops, highHipShare: Math.min(1, share) };
}

/** Lines of one figure are never closer than this (mm). What was read closer, or out of order, is named as a problem. */
export const leastLineGap = 3;

/** Lines that are only estimated give way to those that were read above and below. */
function inOrder(drops: ByLevel<Reading>): ByLevel<Reading> {
  const places = levelNames.map((name) => drops[name].value as number);
  const isFree = levelNames.map((name) => drops[name].kind === "estimated");
  for (let i = 1; i < places.length; i++)
    if (isFree[i]) places[i] = Math.max(places[i] as number, (places[i - 1] as number) + leastLineGap);
  for (let i = places.length - 2; i >= 0; i--)
    if (isFree[i]) places[i] = Math.min(places[i] as number, (places[i + 1] as number) - leastLineGap);
  return mapLevels((name) => ({ ...drops[name], value: mm(places[levelNames.indexOf(name)] as number) }));
}

function apexReadings(measurements: Measurements, form: Measurements): ApexReadings {
  const { bustGirth = mm(0), shoulderToApex, leftShoulderToApex, rightShoulderToApex, apexToApex } = measurements;
  const vertical = belowNape(measurements, "bust");
  const uneven =
    leftShoulderToApex === undefined || rightShoulderToApex === undefined
      ? 0
      : apexDropFromTape(leftShoulderToApex).value - apexDropFromTape(rightShoulderToApex).value;
  const drop = (side: 1 | -1, tape: Millimetres | undefined): Reading => {
    if (vertical !== undefined) return measured(mm(vertical + (side * uneven) / 2));
    if (tape !== undefined) return guessed(apexDropFromTape(tape));
    const assumed = shoulderToApexEstimate(bustGirth);
    const { value, spread } = apexDropFromTape(assumed.value + lowerThanUsual(form));
    return guessed({ value, spread: Math.hypot(spread, 0.744 * assumed.spread) });
  };
  return {
    leftDrop: drop(1, leftShoulderToApex ?? shoulderToApex ?? rightShoulderToApex),
    rightDrop: drop(-1, rightShoulderToApex ?? shoulderToApex ?? leftShoulderToApex),
    apart: known(apexToApex, () => apexToApexEstimate(bustGirth)),
  };
}

/** By how much longer (mm) the tape from neck side to apex is on this form than on most of its bust girth. */
function lowerThanUsual(form: Measurements): number {
  const { bustGirth, shoulderToApex } = form;
  if (bustGirth === undefined) return 0;
  const usual = shoulderToApexEstimate(bustGirth).value;
  const vertical = belowNape(form, "bust");
  if (vertical !== undefined) return (vertical - apexDropFromTape(usual).value) / 0.744;
  return shoulderToApex === undefined ? 0 : shoulderToApex - usual;
}

function waistReading(measurements: Measurements, form: Measurements): Reading {
  const vertical = belowNape(measurements, "waist");
  if (vertical !== undefined) return measured(mm(vertical));
  const { napeToWaist } = measurements;
  // The tape from the nape ends at the back; a waist that tilts lies in the middle half its tilt further down.
  const tilt = waistTilt(measurements) / 2;
  if (napeToWaist !== undefined) {
    const { value, spread } = waistDropFromTape(napeToWaist);
    return guessed({ value: value + tilt, spread });
  }
  const ofForm = belowNape(form, "waist");
  const { value, spread } = waistDropFromTape(form.napeToWaist ?? napeToWaistEstimate.value);
  return guessed({
    value: (ofForm ?? value) + tilt,
    spread: Math.hypot(spread, 0.8623 * napeToWaistEstimate.spread),
  });
}

/**
 * Where a depth is only estimated, the apex keeps this distance (mm) above the waist (Army 1988: P5 77, mean 118), and
 * the underbust lies no further down than this share of it.
 */
const leastGap = { bustToWaist: 85, share: 0.55 } as const;

function bustReading(measurements: Measurements, apex: ApexReadings, waist: Reading): Reading {
  const mean = (apex.leftDrop.value + apex.rightDrop.value) / 2;
  const { shoulderToApex, leftShoulderToApex, rightShoulderToApex, napeToWaist } = measurements;
  const wasTaped = [shoulderToApex, leftShoulderToApex, rightShoulderToApex].some((tape) => tape !== undefined);
  const isPlaced = apex.leftDrop.kind === "measured" || (wasTaped && napeToWaist !== undefined);
  const value = isPlaced ? mean : Math.min(mean, waist.value - leastGap.bustToWaist);
  return { ...apex.leftDrop, value: mm(value) };
}

function underbustReading(measurements: Measurements, form: Measurements, bust: Reading, waist: Reading): Reading {
  const vertical = belowNape(measurements, "underbust");
  if (vertical !== undefined) return measured(mm(vertical));
  const { apexToUnderbust } = measurements;
  if (apexToUnderbust !== undefined) return { ...bust, value: mm(bust.value + apexToUnderbust) };
  const [formBust, formUnderbust] = [belowNape(form, "bust"), belowNape(form, "underbust")];
  const ofForm =
    formBust === undefined || formUnderbust === undefined ? form.apexToUnderbust : formUnderbust - formBust;
  const gap = Math.min(ofForm ?? apexAboveUnderbust.value, leastGap.share * (waist.value - bust.value));
  return guessed({ value: bust.value + gap, spread: apexAboveUnderbust.spread });
}

/** The full hip; where only the high hip was measured, it lies at least as far below that as that below the waist. */
function fullHipReading(measurements: Measurements, form: Measurements, waist: Reading): Reading {
  const vertical = belowNape(measurements, "fullHip");
  if (vertical !== undefined) return measured(mm(vertical));
  const { waistToFullHip, waistToHighHip } = measurements;
  if (waistToFullHip !== undefined) return below(waist, { value: waistToFullHip, spread: downTheSide });
  const highHip = belowNape(measurements, "highHip");
  const toHighHip = highHip === undefined ? (waistToHighHip ?? 0) : highHip - waist.value;
  const ofForm = spanOf(form, "fullHip") ?? waistToFullHipEstimate.value;
  const value = Math.max(ofForm, toHighHip / highHipShareOfDrop.value);
  return below(waist, { value, spread: waistToFullHipEstimate.spread });
}

function highHipReading(measurements: Measurements, form: Measurements, waist: Reading, fullHip: Reading): Reading {
  const vertical = belowNape(measurements, "highHip");
  if (vertical !== undefined) return measured(mm(vertical));
  const { waistToHighHip } = measurements;
  if (waistToHighHip !== undefined) return below(waist, { value: waistToHighHip, spread: downTheSide });
  const [toHighHip, toFullHip] = [spanOf(form, "highHip"), spanOf(form, "fullHip") ?? waistToFullHipEstimate.value];
  const share = toHighHip === undefined ? highHipShareOfDrop.value : Math.min(1, toHighHip / toFullHip);
  const reach = fullHip.value - waist.value;
  return below(waist, { value: share * reach, spread: highHipShareOfDrop.spread * reach });
}

/** How far a hip level of the form lies below its waist, if anything was read of it. */
function spanOf(form: Measurements, level: "highHip" | "fullHip"): number | undefined {
  const [waist, hip] = [belowNape(form, "waist"), belowNape(form, level)];
  const tape = level === "highHip" ? form.waistToHighHip : form.waistToFullHip;
  return waist === undefined || hip === undefined ? tape : hip - waist;
}

/** A tape down the side follows the hip: one standard deviation (mm) of what that makes. Real shapes, 7 to 19 longer. */
const downTheSide = 8;

const below = (waist: Reading, { value, spread }: Estimate): Reading =>
  guessed({
    value: waist.value + value,
    spread: Math.hypot(spread, waist.kind === "estimated" ? waist.spread : 0),
  });
