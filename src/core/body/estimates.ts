import type { LevelName } from "./vocabulary";

/**
 * What is assumed of a body or a form where nothing was measured, with its spread (one standard deviation) and source.
 * Lengths in mm. "Army 1988": US Army anthropometric survey of 1988, women, n 2208 (Gordon et al. 1989, technical report
 * NATICK/TR-89/044). "Spanish survey": Alemany et al., Proc. 2010 Intl Conf. 3D Body Scanning Technologies, 307-315.
 */
export interface Estimate {
  readonly value: number;
  readonly spread: number;
}

/** Underbust girth from bust, waist and full hip girth. Army 1988, held-out RMSE 22.5 mm. */
export const underbustGirthEstimate = (bust: number, waist: number, fullHip: number): Estimate => ({
  value: 145.4 + 0.4066 * bust + 0.352 * waist - 0.0008 * fullHip,
  spread: 22.5,
});

/**
 * High hip girth between waist and full hip. Heinz et al. 2003 (J. Statistics Education 11(2), women, n 260): waist 698,
 * navel 837.5, hip 956.5 mm, so at the navel 54 % of the gain is made; Army 1988 puts the navel 74 of 218 mm below the
 * natural waist. One power law through both ends and that point has the exponent ln 0.54 / ln 0.34 = 0.57. The spread is a
 * judgement: a tenth of a typical gain each way.
 */
export const highHipGirthEstimate = (waist: number, fullHip: number, shareOfDrop: number): Estimate => ({
  value: waist + (fullHip - waist) * shareOfDrop ** 0.57,
  spread: 25,
});

/** Vertical drop of the waist below the nape from the tape down the back. Army 1988, held-out RMSE 8.7 mm. */
export const waistDropFromTape = (napeToWaist: number): Estimate => ({
  value: 34.3393 + 0.8623 * napeToWaist,
  spread: 8.7,
});

/** Tape from nape to natural waist when nobody measured it. Army 1988, mean and SD. */
export const napeToWaistEstimate: Estimate = { value: 367.3, spread: 25 };

/** Vertical drop of the apex below the nape from the tape neck side to apex. Army 1988, held-out RMSE 14.8 mm. */
export const apexDropFromTape = (shoulderToApex: number): Estimate => ({
  value: 34.1209 + 0.744 * shoulderToApex,
  spread: 14.8,
});

/** Tape from neck side to apex when nobody measured it, from the bust girth. Army 1988, held-out RMSE 17.1 mm. */
export const shoulderToApexEstimate = (bust: number): Estimate => ({ value: 65.5965 + 0.2232 * bust, spread: 17.1 });

/** Distance between the apexes, straight, from the bust girth. Spanish survey, residual SD 9.8 mm. */
export const apexToApexEstimate = (bust: number): Estimate => ({ value: 26 + 0.174 * bust, spread: 9.8 });

/** How far the underbust lies below the apex. Spanish survey, mean 59.7, SD 13.8 mm. */
export const apexAboveUnderbust: Estimate = { value: 59.7, spread: 13.8 };

/**
 * How far the full hip lies below the waist. Sewing texts say 7 to 9 in by height; the Spanish survey's hip girth level
 * lies 177 mm and Army 1988's fullest buttock 218 mm below the waist. The middle, with the wider spread of the two.
 */
export const waistToFullHipEstimate: Estimate = { value: 200, spread: 24 };

/** The high hip lies halfway between waist and full hip (ISO 8559-1:2017, 5.3.12); the spread is a judgement. */
export const highHipShareOfDrop: Estimate = { value: 0.5, spread: 0.1 };

/**
 * Front share of the girth, side seam to side seam, when no arc was measured. Waist: Spanish survey, fit on 600 women,
 * residual SD 2.1 % √(1 − 0.62²). The other levels: common practice, no source; the spread is a judgement.
 */
export function frontShareEstimate(level: LevelName, girth: number): Estimate {
  const waist = { value: 0.4586 + 0.000093 * girth, spread: 0.0165 };
  const seat = { value: 0.49, spread: 0.02 };
  switch (level) {
    case "bust":
      return { value: 0.535, spread: 0.02 };
    case "underbust":
      return { value: 0.52, spread: 0.02 };
    case "waist":
      return waist;
    case "highHip":
      return { value: (waist.value + seat.value) / 2, spread: 0.02 };
    case "fullHip":
      return seat;
  }
}

/**
 * Of a gain in girth that nobody measured front and back apart, the share that goes to the front: two parts in front
 * to one behind. Common practice, no source.
 */
export const frontShareOfGain = 2 / 3;

/**
 * The default shape of a section: exponent, and depth over breadth as a + b·girth held inside a range. A midway form
 * between US Army 2012 (Gordon et al. 2014, NATICK/TR-15/007) and Army 1988; held-out RMSE of the breadth in mm. The waist
 * was fitted at the navel. Underbust and high hip have no data: the mean of their neighbours.
 */
export interface SectionShape {
  readonly exponent: number;
  readonly ratio: number;
  readonly breadthSpread: number;
}

const bustShape = (girth: number): SectionShape => shape(4.75, 0.48, 0.000442, 0.78, 1.06, 15.6, girth);
const waistShape = (girth: number): SectionShape => shape(2.46, 0.572, 0.000163, 0.6, 0.85, 11.8, girth);
const fullHipShape = (girth: number): SectionShape => shape(3.26, 0.502, 0.000161, 0.57, 0.78, 9.9, girth);

export function sectionShapeEstimate(level: LevelName, girth: number): SectionShape {
  switch (level) {
    case "bust":
      return bustShape(girth);
    case "underbust":
      return between(bustShape(girth), waistShape(girth));
    case "waist":
      return waistShape(girth);
    case "highHip":
      return between(waistShape(girth), fullHipShape(girth));
    case "fullHip":
      return fullHipShape(girth);
  }
}

function shape(
  exponent: number,
  a: number,
  b: number,
  least: number,
  most: number,
  breadthSpread: number,
  girth: number,
): SectionShape {
  return { exponent, ratio: Math.min(most, Math.max(least, a + b * girth)), breadthSpread };
}

function between(above: SectionShape, below: SectionShape): SectionShape {
  return {
    exponent: (above.exponent + below.exponent) / 2,
    ratio: (above.ratio + below.ratio) / 2,
    breadthSpread: Math.max(above.breadthSpread, below.breadthSpread),
  };
}
