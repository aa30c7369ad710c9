import figures from "../../shared/body-data.json";
import type { Chance } from "./peopleChance";

/**
 * Bust, waist and full hip girths drawn from what two surveys published of them: mean, SD, percentiles and correlations.
 *
 *  - "spanish": Alemany et al., Proc. 2010 Intl Conf. 3D Body Scanning Technologies, 307-315, as sampled in the CRAN
 *    package Anthropometry 1.20; 600 women of the general public; waist at the waist.
 *  - "usArmy": Gordon et al. 2014, NATICK/TR-15/007, women; fitter than the public; waist at the NAVEL.
 *
 * Girths are skewed (the large side reaches further), so each is a shifted lognormal: its skew from P5, P50 and P95, then
 * its scale and shift from mean and SD, so that those two are met exactly. The correlation r of two such variables comes
 * from the correlation rho of their normals as r = (exp(rho s1 s2) - 1) / sqrt((exp(s1^2) - 1)(exp(s2^2) - 1)), which is
 * solved for rho. All values in mm.
 */
export const surveyNames = ["spanish", "usArmy"] as const;
export type SurveyName = (typeof surveyNames)[number];

export interface Girths {
  readonly bust: number;
  readonly waist: number;
  readonly fullHip: number;
}

/** One published girth (mm). */
export interface GirthFigures {
  readonly mean: number;
  readonly sd: number;
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
}

export interface SurveyFigures {
  readonly girths: { readonly [girth in keyof Girths]: GirthFigures };
  readonly correlations: { readonly bustWaist: number; readonly bustHip: number; readonly waistHip: number };
}

const inMm = (cm: GirthFigures): GirthFigures => ({
  mean: 10 * cm.mean,
  sd: 10 * cm.sd,
  p5: 10 * cm.p5,
  p50: 10 * cm.p50,
  p95: 10 * cm.p95,
});

export const surveys: { readonly [name in SurveyName]: SurveyFigures } = {
  spanish: {
    girths: {
      bust: inMm(figures.spanishSurveyWomen.girths_cm.bust),
      waist: inMm(figures.spanishSurveyWomen.girths_cm.waist),
      fullHip: inMm(figures.spanishSurveyWomen.girths_cm.hip),
    },
    correlations: figures.spanishSurveyWomen.correlations,
  },
  usArmy: {
    girths: {
      bust: figures.usArmy2012Women.percentiles_mm.bustGirth,
      waist: figures.usArmy2012Women.percentiles_mm.waistGirthAtNavel,
      fullHip: figures.usArmy2012Women.percentiles_mm.fullHipGirth,
    },
    correlations: figures.usArmy2012Women.correlations,
  },
};

/** Draws the three girths of one woman of a survey; the US Army waist is the one at the navel. */
export function drawSurveyGirths(chance: Chance, survey: SurveyName): Girths {
  const { girths, correlations } = surveys[survey];
  const [bust, waist, fullHip] = [skewed(girths.bust), skewed(girths.waist), skewed(girths.fullHip)];
  const bustWaist = normalCorrelation(correlations.bustWaist, bust.standardDeviation, waist.standardDeviation);
  const bustHip = normalCorrelation(correlations.bustHip, bust.standardDeviation, fullHip.standardDeviation);
  const waistHip = normalCorrelation(correlations.waistHip, waist.standardDeviation, fullHip.standardDeviation);

  // The Cholesky factor of the three by three correlation matrix, row by row.
  const waistOwn = Math.sqrt(1 - bustWaist ** 2);
  const hipOnWaist = (waistHip - bustWaist * bustHip) / waistOwn;
  const hipOwn = Math.sqrt(1 - bustHip ** 2 - hipOnWaist ** 2);
  const [first, second, third] = [chance.normal(0, 1), chance.normal(0, 1), chance.normal(0, 1)];
  return {
    bust: bust.at(first),
    waist: waist.at(bustWaist * first + waistOwn * second),
    fullHip: fullHip.at(bustHip * first + hipOnWaist * second + hipOwn * third),
  };
}

interface Skewed {
  readonly standardDeviation: number;
  readonly at: (normal: number) => number;
}

/** The quantile of the normal distribution at 95 %. */
const quantile95 = 1.6449;

function skewed({ mean, sd, p5, p50, p95 }: GirthFigures): Skewed {
  const deviation = Math.log((p95 - p50) / (p50 - p5)) / quantile95;
  const scale = sd / Math.sqrt((Math.exp(deviation ** 2) - 1) * Math.exp(deviation ** 2));
  const shift = mean - scale * Math.exp(deviation ** 2 / 2);
  return { standardDeviation: deviation, at: (normal) => shift + scale * Math.exp(deviation * normal) };
}

function normalCorrelation(correlation: number, spread1: number, spread2: number): number {
  const both = Math.sqrt((Math.exp(spread1 ** 2) - 1) * (Math.exp(spread2 ** 2) - 1));
  return Math.log(1 + correlation * both) / (spread1 * spread2);
}
