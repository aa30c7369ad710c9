import { mm, type Millimetres } from "../units";
import {
  apexAboveUnderbust,
  apexDepthFromTape,
  apexToApexEstimate,
  type Estimate,
  highHipShareOfDepth,
  napeToWaistEstimate,
  shoulderToApexEstimate,
  waistDepthFromTape,
  waistToFullHipEstimate,
} from "./estimates";
import type { Measurements } from "./measurements";
import { guessed, known, measured, type Reading } from "./reading";
import { belowNape } from "./linePlace";
import { type ByLevel, levelNames, mapLevels } from "./vocabulary";
import { waistTilt } from "./waistTilt";

/** The apexes of a body or a form: their depths below the nape, and how far apart they are. */
export interface ApexReadings {
  readonly leftDepth: Reading;
  readonly rightDepth: Reading;
  readonly apart: Reading;
}

/** Every height below the nape, and at which share of the way from waist to full hip the high hip lies. */
export interface HeightReadings {
  readonly depths: ByLevel<Reading>;
  readonly apex: ApexReadings;
  readonly highHipShare: number;
}

/**
 * Where the levels and the apexes of a body or a form lie below the nape (mm, vertical). What was read vertically, above
 * the floor or straight down from the nape, is measured and wins. A tape over the surface is converted and stays an
 * estimate with its honest doubt. A height of a BODY that nobody read is taken to be where the form has it, if it was
 * read there: an unread difference is no reason for a piece; it keeps the standard deviation that bodies have.
 */
export function heightReadings(measurements: Measurements, form: Measurements): HeightReadings {
  const apex = apexReadings(measurements, form);
  const waist = waistReading(measurements, form);
  const bust = bustReading(measurements, apex, waist);
  const fullHip = fullHipReading(measurements, form, waist);
  const highHip = highHipReading(measurements, form, waist, fullHip);
  const underbust = underbustReading(measurements, form, bust, waist);
  const depths = inOrder({ bust, underbust, waist, highHip, fullHip });
  const share = (depths.highHip.value - depths.waist.value) / (depths.fullHip.value - depths.waist.value);
  return { apex, depths, highHipShare: Math.min(1, share) };
}

/** Lines of one figure are never closer than this (mm). What was read closer, or out of order, is named as a problem. */
export const leastLineGap = 3;

/** Lines that are only estimated give way to those that were read above and below. */
function inOrder(depths: ByLevel<Reading>): ByLevel<Reading> {
  const places = levelNames.map((name) => depths[name].value as number);
  const isFree = levelNames.map((name) => depths[name].kind === "estimated");
  for (let i = 1; i < places.length; i++)
    if (isFree[i]) places[i] = Math.max(places[i] as number, (places[i - 1] as number) + leastLineGap);
  for (let i = places.length - 2; i >= 0; i--)
    if (isFree[i]) places[i] = Math.min(places[i] as number, (places[i + 1] as number) - leastLineGap);
  return mapLevels((name) => ({ ...depths[name], value: mm(places[levelNames.indexOf(name)] as number) }));
}

function apexReadings(measurements: Measurements, form: Measurements): ApexReadings {
  const { bustGirth = mm(0), shoulderToApex, leftShoulderToApex, rightShoulderToApex, apexToApex } = measurements;
  const vertical = belowNape(measurements, "bust");
  const uneven =
    leftShoulderToApex === undefined || rightShoulderToApex === undefined
      ? 0
      : apexDepthFromTape(leftShoulderToApex).value - apexDepthFromTape(rightShoulderToApex).value;
  const depth = (side: 1 | -1, tape: Millimetres | undefined): Reading => {
    if (vertical !== undefined) return measured(mm(vertical + (side * uneven) / 2));
    if (tape !== undefined) return guessed(apexDepthFromTape(tape));
    const assumed = shoulderToApexEstimate(bustGirth);
    const { value, standardDeviation } = apexDepthFromTape(assumed.value + lowerThanUsual(form));
    return guessed({ value, standardDeviation: Math.hypot(standardDeviation, 0.744 * assumed.standardDeviation) });
  };
  return {
    leftDepth: depth(1, leftShoulderToApex ?? shoulderToApex ?? rightShoulderToApex),
    rightDepth: depth(-1, rightShoulderToApex ?? shoulderToApex ?? leftShoulderToApex),
    apart: known(apexToApex, () => apexToApexEstimate(bustGirth)),
  };
}

/** By how much longer (mm) the tape from neck side to apex is on this form than on most of its bust girth. */
function lowerThanUsual(form: Measurements): number {
  const { bustGirth, shoulderToApex } = form;
  if (bustGirth === undefined) return 0;
  const usual = shoulderToApexEstimate(bustGirth).value;
  const vertical = belowNape(form, "bust");
  if (vertical !== undefined) return (vertical - apexDepthFromTape(usual).value) / 0.744;
  return shoulderToApex === undefined ? 0 : shoulderToApex - usual;
}

function waistReading(measurements: Measurements, form: Measurements): Reading {
  const vertical = belowNape(measurements, "waist");
  if (vertical !== undefined) return measured(mm(vertical));
  const { napeToWaist } = measurements;
  // The tape from the nape ends at the back; a waist that tilts lies in the middle half its tilt further down.
  const tilt = waistTilt(measurements) / 2;
  if (napeToWaist !== undefined) {
    const { value, standardDeviation } = waistDepthFromTape(napeToWaist);
    return guessed({ value: value + tilt, standardDeviation });
  }
  const ofForm = belowNape(form, "waist");
  const { value, standardDeviation } = waistDepthFromTape(form.napeToWaist ?? napeToWaistEstimate.value);
  return guessed({
    value: (ofForm ?? value) + tilt,
    standardDeviation: Math.hypot(standardDeviation, 0.8623 * napeToWaistEstimate.standardDeviation),
  });
}

/**
 * Where a depth is only estimated, the apex keeps this distance (mm) above the waist (Army 1988: P5 77, mean 118), and
 * the underbust lies no further down than this share of it.
 */
const leastGap = { bustToWaist: 85, share: 0.55 } as const;

function bustReading(measurements: Measurements, apex: ApexReadings, waist: Reading): Reading {
  const mean = (apex.leftDepth.value + apex.rightDepth.value) / 2;
  const { shoulderToApex, leftShoulderToApex, rightShoulderToApex, napeToWaist } = measurements;
  const wasTaped = [shoulderToApex, leftShoulderToApex, rightShoulderToApex].some((tape) => tape !== undefined);
  const isPlaced = apex.leftDepth.kind === "measured" || (wasTaped && napeToWaist !== undefined);
  const value = isPlaced ? mean : Math.min(mean, waist.value - leastGap.bustToWaist);
  return { ...apex.leftDepth, value: mm(value) };
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
  return guessed({ value: bust.value + gap, standardDeviation: apexAboveUnderbust.standardDeviation });
}

/** The full hip; where only the high hip was measured, it lies at least as far below that as that below the waist. */
function fullHipReading(measurements: Measurements, form: Measurements, waist: Reading): Reading {
  const vertical = belowNape(measurements, "fullHip");
  if (vertical !== undefined) return measured(mm(vertical));
  const { waistToFullHip, waistToHighHip } = measurements;
  if (waistToFullHip !== undefined) return below(waist, { value: waistToFullHip, standardDeviation: downTheSide });
  const highHip = belowNape(measurements, "highHip");
  const toHighHip = highHip === undefined ? (waistToHighHip ?? 0) : highHip - waist.value;
  const ofForm = spanOf(form, "fullHip") ?? waistToFullHipEstimate.value;
  const value = Math.max(ofForm, toHighHip / highHipShareOfDepth.value);
  return below(waist, { value, standardDeviation: waistToFullHipEstimate.standardDeviation });
}

function highHipReading(measurements: Measurements, form: Measurements, waist: Reading, fullHip: Reading): Reading {
  const vertical = belowNape(measurements, "highHip");
  if (vertical !== undefined) return measured(mm(vertical));
  const { waistToHighHip } = measurements;
  if (waistToHighHip !== undefined) return below(waist, { value: waistToHighHip, standardDeviation: downTheSide });
  const [toHighHip, toFullHip] = [spanOf(form, "highHip"), spanOf(form, "fullHip") ?? waistToFullHipEstimate.value];
  const share = toHighHip === undefined ? highHipShareOfDepth.value : Math.min(1, toHighHip / toFullHip);
  const reach = fullHip.value - waist.value;
  return below(waist, { value: share * reach, standardDeviation: highHipShareOfDepth.standardDeviation * reach });
}

/** How far a hip level of the form lies below its waist, if anything was read of it. */
function spanOf(form: Measurements, level: "highHip" | "fullHip"): number | undefined {
  const [waist, hip] = [belowNape(form, "waist"), belowNape(form, level)];
  const tape = level === "highHip" ? form.waistToHighHip : form.waistToFullHip;
  return waist === undefined || hip === undefined ? tape : hip - waist;
}

/** A tape down the side follows the hip: one standard deviation (mm) of what that makes. Real shapes, 7 to 19 longer. */
const downTheSide = 8;

const below = (waist: Reading, { value, standardDeviation }: Estimate): Reading =>
  guessed({
    value: waist.value + value,
    standardDeviation: Math.hypot(standardDeviation, waist.kind === "estimated" ? waist.standardDeviation : 0),
  });
