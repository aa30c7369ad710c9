import figures from "../../shared/body-data.json";
import type { Chance } from "./peopleChance";
import { drawSurveyGirths, type SurveyName } from "./peopleGirths";

/**
 * A whole made-up body: what a tape would truly read at every level and along it (mm), before anyone decides what to
 * measure. Girths follow a published survey (peopleGirths); what no survey here gives is marked and plausible only.
 */
export interface WholeBody extends Lengths {
  readonly survey: SurveyName;
  readonly girth: ByBodyLevel;
  /** Front share of each girth, side seam to side seam. */
  readonly frontShare: ByBodyLevel;
  /** How much longer the left quarter is than the right one, front and back (mm). */
  readonly leftMore: { readonly front: number; readonly back: number };
  readonly breadth: { readonly bust: number; readonly waist: number; readonly fullHip: number };
  readonly shoulderLength: number;
  readonly neckGirth: number;
  readonly upperArmGirth: number;
  readonly wristGirth: number;
}

export interface ByBodyLevel {
  readonly bust: number;
  readonly underbust: number;
  readonly waist: number;
  readonly highHip: number;
  readonly fullHip: number;
}

const { spanishSurveyWomen, usArmy2012Women, usArmy1988Women, heinz2003Women, nhanes2017to2020Women } = figures;

export function drawWholeBody(chance: Chance, survey: SurveyName): WholeBody {
  const surveyed = drawSurveyGirths(chance, survey);
  const waist = survey === "spanish" ? surveyed.waist : naturalWaist(chance, surveyed.waist);
  const lengths = drawLengths(chance, survey, surveyed.bust);
  const girth = {
    bust: surveyed.bust,
    underbust: underbustGirth(chance, surveyed.bust, waist, surveyed.fullHip),
    waist,
    highHip: highHipGirth(chance, survey, { waist, navel: surveyed.waist, fullHip: surveyed.fullHip }, lengths),
    fullHip: surveyed.fullHip,
  };
  return {
    survey,
    girth,
    frontShare: drawFrontShares(chance, waist),
    // Common practice, no source: left and right differ by a few millimetres on nearly everybody.
    leftMore: { front: chance.normal(0, 5), back: chance.normal(0, 5) },
    breadth: {
      bust: breadth(chance, "bust", girth.bust),
      waist: breadth(chance, "waist", girth.waist),
      fullHip: breadth(chance, "fullHip", girth.fullHip),
    },
    ...lengths,
    shoulderLength: drawn(chance, usArmy2012Women.percentiles_mm.shoulderLength),
    neckGirth: drawn(chance, usArmy2012Women.percentiles_mm.neckGirth),
    upperArmGirth: 10 * drawn(chance, nhanes2017to2020Women.upperArmGirthRelaxed_cm),
    wristGirth: drawn(chance, usArmy2012Women.percentiles_mm.wristGirth),
  };
}

const drawn = (chance: Chance, { mean, sd }: { readonly mean: number; readonly sd: number }): number =>
  within(chance.normal(mean, sd), mean - 2.5 * sd, mean + 2.5 * sd);

const within = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value));

/**
 * A dressmaker's waist from the girth at the navel. Means and SDs of both: Heinz et al. 2003 (waist 698, SD 75.9; navel
 * 837.5, SD 99.6 mm). Their correlation is not among our figures: 0.9 is plausible, no source. Cross-check: it puts the
 * US Army 2012 mean (navel 860.9) at a waist of 714, and the 1988 survey measured a natural waist of 725.5 mm.
 */
function naturalWaist(chance: Chance, navel: number): number {
  const [waist, abdomen] = [heinz2003Women.waistGirth, heinz2003Women.abdomenGirthAtNavel];
  const correlation = 0.9;
  const slope = (correlation * waist.sd) / abdomen.sd;
  return chance.normal(
    10 * waist.mean + slope * (navel - 10 * abdomen.mean),
    10 * waist.sd * Math.sqrt(1 - correlation ** 2),
  );
}

/** Underbust by the 1988 regression on bust, natural waist and hip with its error; always a little under the bust. */
function underbustGirth(chance: Chance, bust: number, waist: number, hip: number): number {
  const { coef, heldOutRmse_mm } = usArmy1988Women.underbustGirth_fromBustNaturalWaistHip;
  const [constant = 0, onBust = 0, onWaist = 0, onHip = 0] = coef;
  return Math.min(bust - 25, chance.normal(constant + onBust * bust + onWaist * waist + onHip * hip, heldOutRmse_mm));
}

/**
 * High hip girth. US Army: on straight lines waist, navel, full hip at the 1988 heights (navel 74.4 mm below the waist).
 * Spanish: 62 % of the way from waist to full hip. No source for either; the scatter of 12 mm is plausible only.
 */
function highHipGirth(
  chance: Chance,
  survey: SurveyName,
  { waist, navel, fullHip }: { readonly waist: number; readonly navel: number; readonly fullHip: number },
  { waistToHighHip, waistToFullHip }: Lengths,
): number {
  const toNavel = Math.min(usArmy1988Women.naturalWaistToNavel.mean, 0.9 * waistToFullHip);
  const share = (waistToHighHip - toNavel) / (waistToFullHip - toNavel);
  const onLines = share >= 0 ? navel + share * (fullHip - navel) : waist + (waistToHighHip / toNavel) * (navel - waist);
  return chance.normal(survey === "usArmy" ? onLines : waist + 0.62 * (fullHip - waist), 12);
}

/** Residual SD of the front share at the waist: 2.1 % with r 0.62 against the girth (Spanish survey). */
const waistShareResidual = 2.1 * Math.sqrt(1 - spanishSurveyWomen.frontShareOfWaistGirth_percent.r ** 2);

/**
 * Front shares. Waist: the Spanish survey's fit, 45.86 + 0.093 x waist in cm, with its residual. The other levels are
 * common practice, no source: fuller in front at the bust, fuller behind at the hip, and a belly that reaches down to
 * the high hip.
 */
function drawFrontShares(chance: Chance, waistGirth: number): ByBodyLevel {
  const waist = chance.normal(45.86 + 0.0093 * waistGirth, waistShareResidual);
  const belly = waist - spanishSurveyWomen.frontShareOfWaistGirth_percent.mean;
  const share = (percent: number) => within(percent, 42, 62) / 100;
  return {
    bust: share(chance.normal(54, 2)),
    underbust: share(chance.normal(52 + 0.3 * belly, 1.5)),
    waist: share(waist),
    highHip: share(chance.normal(50.5 + 0.6 * belly, 1.5)),
    fullHip: share(chance.normal(48.5 + 0.3 * belly, 1.5)),
  };
}

/** Breadth from the girth with its error: US Army 2012 (the waist was taken at the navel, the bust with calipers held in). */
function breadth(chance: Chance, level: "bust" | "waist" | "fullHip", girth: number): number {
  const { intercept_mm, slope, heldOutResidualSd_mm } = usArmy2012Women.levels[level].breadthFromGirth;
  return chance.normal(intercept_mm + slope * girth, heldOutResidualSd_mm);
}

interface Lengths {
  readonly leftShoulderToApex: number;
  readonly rightShoulderToApex: number;
  readonly apexToApex: number;
  readonly napeToWaist: number;
  readonly waistToHighHip: number;
  readonly waistToFullHip: number;
}

/** The apex lies this far above the waist: about P2 to P98 of the two surveys that have it (P5 77, P95 167 mm). */
const apexAboveWaist = { least: 70, most: 175 } as const;

/** Draws of the two tapes before the apex is held to the lowest plausible place: a very large bust may need it. */
const mostDraws = 40;

/**
 * Lengths by tape. Left and right apex tapes differ by 7.3 mm on average (Spanish survey, neck side to apex), a normal
 * of SD 9.1.
 */
function drawLengths(chance: Chance, survey: SurveyName, bust: number): Lengths {
  const { toApex, napeToWaist } = drawApexAndWaist(chance, survey, bust);
  const toFullHip = drawn(
    chance,
    survey === "usArmy" ? usArmy1988Women.naturalWaistToFullestButtock : spanishSurveyWomen.waistToHipGirthLevel,
  );
  const difference = within(chance.normal(0, 9.1), -22, 22);
  return {
    leftShoulderToApex: toApex + difference / 2,
    rightShoulderToApex: toApex - difference / 2,
    apexToApex: chance.normal(26 + 0.174 * bust, spanishSurveyWomen.apexToApex.residualSd),
    napeToWaist,
    // Halfway by ISO 8559-1:2017, 5.3.12; how far a home tape strays from it: no source.
    waistToHighHip: toFullHip * within(chance.normal(0.5, 0.05), 0.4, 0.6),
    waistToFullHip: toFullHip,
  };
}

/**
 * Neck side to apex and nape to waist are drawn apart, and drawn again until the apex lies a plausible height above the
 * waist by the 1988 conversions from tape to vertical depth.
 */
function drawApexAndWaist(chance: Chance, survey: SurveyName, bust: number) {
  const army = usArmy1988Women;
  const fit = army.neckSideToApexTape_fromBustGirth;
  for (let draw = 1; ; draw++) {
    const toApex = chance.normal(linear(fit.coef, bust), fit.heldOutRmse_mm);
    const napeToWaist = survey === "usArmy" ? drawn(chance, army.napeToNaturalWaistTape) : napeToWaistTape(chance);
    const apexDepth = linear(army.napeToApexDrop_fromShoulderToApexTape.coef, toApex);
    const waistDepth = linear(army.napeToWaistDrop_fromNapeToWaistTape.coef, napeToWaist);
    const above = waistDepth - apexDepth;
    if (above >= apexAboveWaist.least && above <= apexAboveWaist.most) return { toApex, napeToWaist };
    if (draw < mostDraws) continue;
    const [constant = 0, slope = 1] = army.napeToApexDrop_fromShoulderToApexTape.coef;
    const heldAbove = within(above, apexAboveWaist.least, apexAboveWaist.most);
    return { toApex: (waistDepth - heldAbove - constant) / slope, napeToWaist };
  }
}

/** The Spanish survey gives the vertical depth of the waist; the tape down the back by the 1988 conversion backwards. */
function napeToWaistTape(chance: Chance): number {
  const [constant = 0, slope = 1] = usArmy1988Women.napeToWaistDrop_fromNapeToWaistTape.coef;
  return (drawn(chance, spanishSurveyWomen.napeToWaistVertical) - constant) / slope;
}

const linear = ([constant = 0, slope = 0]: readonly number[], value: number): number => constant + slope * value;
