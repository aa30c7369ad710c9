import { quarterLength } from "../geometry/superellipse";
import type { ByLevel, LevelName } from "./vocabulary";

/**
 * What is assumed of a body or a form where nothing was measured, with its standard deviation and source.
 * Lengths in mm. "Army 1988": US Army anthropometric survey of 1988, women, n 2208 (Gordon et al. 1989, technical report
 * NATICK/TR-89/044). "Spanish survey": Alemany et al., Proc. 2010 Intl Conf. 3D Body Scanning Technologies, 307-315.
 */
export interface Estimate {
  readonly value: number;
  readonly standardDeviation: number;
}

/** Underbust girth from bust, waist and full hip girth. Army 1988, held-out RMSE 22.5 mm. */
export const underbustGirthEstimate = (bust: number, waist: number, fullHip: number): Estimate => ({
  value: 145.4 + 0.4066 * bust + 0.352 * waist - 0.0008 * fullHip,
  standardDeviation: 22.5,
});

/**
 * High hip girth between waist and full hip. Heinz et al. 2003 (J. Statistics Education 11(2), women, n 260): waist
 * 698, navel 837.5, hip 956.5 mm, so at the navel 54 % of the gain is made; Army 1988 puts the navel 74 of 218 mm below
 * the natural waist. One power law through both ends and that point has the exponent ln 0.54 / ln 0.34 = 0.57. The
 * standard deviation is a judgement: a tenth of a typical gain each way.
 */
export const highHipGirthEstimate = (waist: number, fullHip: number, shareOfDepth: number): Estimate => ({
  value: waist + (fullHip - waist) * shareOfDepth ** 0.57,
  standardDeviation: 25,
});

/**
 * Vertical distance of the waist below the nape from the tape down the back. Army 1988, held-out RMSE 8.7 mm; on the true
 * shapes of the tests it is off by 3 to 19 mm, 12 in the root mean square, and that is the doubt it is given.
 */
export const waistDepthFromTape = (napeToWaist: number): Estimate => ({
  value: 34.3393 + 0.8623 * napeToWaist,
  standardDeviation: 12,
});

/** Tape from nape to natural waist when nobody measured it. Army 1988, mean and SD. */
export const napeToWaistEstimate: Estimate = { value: 367.3, standardDeviation: 25 };

/**
 * Vertical distance of the apex below the nape from the tape neck side to apex. Army 1988, held-out RMSE 14.8 mm; on the
 * true shapes of the tests it is off by 3 to 37 mm, 21 in the root mean square, and that is the doubt it is given.
 */
export const apexDepthFromTape = (shoulderToApex: number): Estimate => ({
  value: 34.1209 + 0.744 * shoulderToApex,
  standardDeviation: 21,
});

/** Tape from neck side to apex when nobody measured it, from the bust girth. Army 1988, held-out RMSE 17.1 mm. */
export const shoulderToApexEstimate = (bust: number): Estimate => ({
  value: 65.5965 + 0.2232 * bust,
  standardDeviation: 17.1,
});

/** Distance between the apexes, straight, from the bust girth. Spanish survey, residual SD 9.8 mm. */
export const apexToApexEstimate = (bust: number): Estimate => ({ value: 26 + 0.174 * bust, standardDeviation: 9.8 });

/** How far the underbust lies below the apex. Spanish survey, mean 59.7, SD 13.8 mm. */
export const apexAboveUnderbust: Estimate = { value: 59.7, standardDeviation: 13.8 };

/**
 * How far the full hip lies below the waist. Sewing texts say 7 to 9 in by height; the Spanish survey's hip girth level
 * lies 177 mm and Army 1988's fullest buttock 218 mm below the waist. The middle, with the wider standard deviation of the two.
 */
export const waistToFullHipEstimate: Estimate = { value: 200, standardDeviation: 24 };

/** The high hip lies halfway between waist and full hip (ISO 8559-1:2017, 5.3.12); the standard deviation is a judgement. */
export const highHipShareOfDepth: Estimate = { value: 0.5, standardDeviation: 0.1 };

/**
 * Front share of the girth, side seam to side seam, when no arc was measured. Waist: Spanish survey, fit on 600 women,
 * residual SD 2.1 % √(1 − 0.62²). The other levels: common practice, no source; the standard deviation is a judgement.
 */
export function frontShareEstimate(level: LevelName, girth: number): Estimate {
  const waist = { value: 0.4586 + 0.000093 * girth, standardDeviation: 0.0165 };
  const seat = { value: 0.49, standardDeviation: 0.02 };
  switch (level) {
    case "bust":
      return { value: 0.535, standardDeviation: 0.02 };
    case "underbust":
      return { value: 0.52, standardDeviation: 0.02 };
    case "waist":
      return waist;
    case "highHip":
      return { value: (waist.value + seat.value) / 2, standardDeviation: 0.02 };
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
 * How boxy the halves of a section are: exponents of superellipses with the doubt of each (one standard deviation). Two
 * numbers: one for every half, and one for the bust in front, which is boxier (3.5, from shapes other than those the tests
 * lay plans on). `study:shapes` chooses both anew without each body and form it then reads: 2.2 to 2.4 everywhere, and
 * 3 to 4 for the bust in front, where the plans differ little. Squarer ones, as calipers and tapes of surveys gave,
 * forced wrong depths wherever a true breadth was read.
 */
export interface ExponentEstimate {
  readonly front: number;
  readonly back: number;
  readonly standardDeviation: number;
}

export const exponentEstimates: ByLevel<ExponentEstimate> = {
  bust: { front: 3.5, back: 2.3, standardDeviation: 0.4 },
  underbust: { front: 2.3, back: 2.3, standardDeviation: 0.4 },
  waist: { front: 2.3, back: 2.3, standardDeviation: 0.4 },
  highHip: { front: 2.3, back: 2.3, standardDeviation: 0.4 },
  fullHip: { front: 2.3, back: 2.3, standardDeviation: 0.4 },
};

/**
 * By how much more (mm) the peaks of the two halves lie apart than two books held in front and behind: a tape over the
 * hollow between the breasts or over the seat runs flat where the curve is still rising. From the same shapes.
 */
export const peaksBeyondDepth: ByLevel<Estimate> = {
  bust: { value: 8, standardDeviation: 2 },
  underbust: { value: 5, standardDeviation: 6 },
  waist: { value: 2, standardDeviation: 2 },
  highHip: { value: 5, standardDeviation: 3 },
  fullHip: { value: 13, standardDeviation: 4 },
};

/**
 * The breadth of a section from its girth: depth over breadth as a + b·girth held inside a range, on the halves assumed
 * here. A midway form between US Army 2012 (Gordon et al. 2014, NATICK/TR-15/007) and Army 1988; held-out RMSE of the
 * breadth in mm. There calipers pressed in, and the pair was fitted with boxier curves (4.75 at the bust, 3.26 at the full
 * hip); on rounder ones a torso of that shape is broader and deeper for its girth, as the true shapes of the tests are. The
 * waist was fitted at the navel. Underbust and high hip have no data: the mean of their neighbors.
 */
export function breadthEstimate(level: LevelName, girth: number): Estimate {
  const { ratio, breadthDeviation } = breadthShape(level, girth);
  const { front, back } = exponentEstimates[level];
  const quarter = (exponent: number) => quarterLength({ breadth: 0.5, depth: ratio / 2, exponent });
  return { value: girth / (2 * quarter(front) + 2 * quarter(back)), standardDeviation: breadthDeviation };
}

interface BreadthShape {
  readonly ratio: number;
  readonly breadthDeviation: number;
}

const bustShape = (girth: number): BreadthShape => shape(0.48, 0.000442, 0.78, 1.06, 15.6, girth);
const waistShape = (girth: number): BreadthShape => shape(0.572, 0.000163, 0.6, 0.85, 11.8, girth);
const fullHipShape = (girth: number): BreadthShape => shape(0.502, 0.000161, 0.57, 0.78, 9.9, girth);

function breadthShape(level: LevelName, girth: number): BreadthShape {
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
  a: number,
  b: number,
  least: number,
  most: number,
  breadthDeviation: number,
  girth: number,
): BreadthShape {
  return { ratio: Math.min(most, Math.max(least, a + b * girth)), breadthDeviation };
}

function between(above: BreadthShape, below: BreadthShape): BreadthShape {
  return {
    ratio: (above.ratio + below.ratio) / 2,
    breadthDeviation: Math.max(above.breadthDeviation, below.breadthDeviation),
  };
}
