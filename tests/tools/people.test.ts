import { describe, expect, test } from "vitest";
import figures from "../../shared/body-data.json";
import { cares, people, person } from "./people";
import { drawWholeBody, type WholeBody } from "./peopleBody";
import { chance } from "./peopleChance";
import { formKinds } from "./peopleForm";
import { drawSurveyGirths, type Girths, surveyNames, surveys } from "./peopleGirths";

/**
 * The made-up people against the figures they claim to follow. Sample errors: a mean of n draws strays by SD / sqrt(n), a
 * standard deviation of these skewed girths by about SD / sqrt(n), a correlation by (1 - r^2) / sqrt(n); four of each are allowed.
 */
const count = 20_000;
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
const covariance = (p: readonly number[], q: readonly number[]) => {
  const [meanP, meanQ] = [mean(p), mean(q)];
  return mean(p.map((value, i) => (value - meanP) * ((q[i] as number) - meanQ)));
};
const sd = (values: readonly number[]) => Math.sqrt(covariance(values, values));
const correlation = (p: readonly number[], q: readonly number[]) => covariance(p, q) / (sd(p) * sd(q));
const quantile = (values: readonly number[], share: number) =>
  [...values].sort((a, b) => a - b)[Math.floor(share * values.length)] as number;
const straysBy = (size: number) => (4 * size) / Math.sqrt(count);

describe.each(surveyNames)("girths of the %s survey", (survey) => {
  const luck = chance(20_261_125);
  const drawn: readonly Girths[] = Array.from({ length: count }, () => drawSurveyGirths(luck, survey));
  const published = surveys[survey];

  test.each(["bust", "waist", "fullHip"] as const)("%s: mean, SD and percentiles", (girth) => {
    const values = drawn.map((one) => one[girth]);
    const { mean: publishedMean, sd: publishedSd, p5, p50, p95 } = published.girths[girth];
    expect(Math.abs(mean(values) - publishedMean)).toBeLessThan(straysBy(publishedSd));
    expect(Math.abs(sd(values) - publishedSd)).toBeLessThan(straysBy(publishedSd));
    // Percentiles follow from mean, SD and skew only roughly: a sixth of an SD.
    for (const [share, value] of [
      [0.05, p5],
      [0.5, p50],
      [0.95, p95],
    ] as const) {
      expect(Math.abs(quantile(values, share) - value)).toBeLessThan(publishedSd / 6);
    }
  });

  test("correlations", () => {
    const [bust, waist, hip] = [drawn.map((g) => g.bust), drawn.map((g) => g.waist), drawn.map((g) => g.fullHip)];
    for (const [r, p, q] of [
      [published.correlations.bustWaist, bust, waist],
      [published.correlations.bustHip, bust, hip],
      [published.correlations.waistHip, waist, hip],
    ] as const) {
      expect(Math.abs(correlation(p, q) - r)).toBeLessThan(0.01 + straysBy(1 - r ** 2));
    }
  });
});

describe("whole bodies", () => {
  const luck = chance(7);
  const spanish: readonly WholeBody[] = Array.from({ length: count }, () => drawWholeBody(luck, "spanish"));
  const army: readonly WholeBody[] = Array.from({ length: count }, () => drawWholeBody(luck, "usArmy"));

  test("front share at the waist: mean 53.8 %, SD 2.1, r 0.62 (Spanish survey)", () => {
    const published = figures.spanishSurveyWomen.frontShareOfWaistGirth_percent;
    const shares = spanish.map((body) => 100 * body.frontShare.waist);
    expect(Math.abs(mean(shares) - published.mean)).toBeLessThan(0.1);
    expect(Math.abs(sd(shares) - published.sd)).toBeLessThan(0.1);
    expect(
      Math.abs(
        correlation(
          shares,
          spanish.map((body) => body.girth.waist),
        ) - published.r,
      ),
    ).toBeLessThan(0.03);
  });

  test("underbust: the 1988 regression's error, and its mean at that survey's means", () => {
    const { coef, heldOutRmse_mm } = figures.usArmy1988Women.underbustGirth_fromBustNaturalWaistHip;
    const [constant = 0, onBust = 0, onWaist = 0, onHip = 0] = coef;
    const residuals = army.map(
      ({ girth }) => girth.underbust - (constant + onBust * girth.bust + onWaist * girth.waist + onHip * girth.fullHip),
    );
    // The few bodies held to 25 mm under their bust narrow the spread a little.
    expect(Math.abs(mean(residuals))).toBeLessThan(1);
    expect(Math.abs(sd(residuals) - heldOutRmse_mm)).toBeLessThan(1);
    expect(Math.min(...army.map(({ girth }) => girth.bust - girth.underbust))).toBeGreaterThanOrEqual(25);
  });

  test("natural waist of the US Army women lies near the 725.5 mm (SD 63) that the 1988 survey measured", () => {
    const waists = army.map(({ girth }) => girth.waist);
    expect(Math.abs(mean(waists) - figures.usArmy1988Women.naturalWaistGirth.mean)).toBeLessThan(20);
    expect(sd(waists)).toBeGreaterThan(55);
    expect(sd(waists)).toBeLessThan(85);
  });

  test("lengths: nape to waist, neck side to apex, apex to apex, waist to full hip", () => {
    type Length = "napeToWaist" | "waistToFullHip" | "apexToApex";
    type Published = { readonly mean: number; readonly sd: number };
    const close = (bodies: typeof army, length: Length, published: Published, share: number) => {
      expect(Math.abs(mean(bodies.map((body) => body[length])) - published.mean)).toBeLessThan(share * published.sd);
    };
    const { usArmy1988Women, spanishSurveyWomen } = figures;
    // Redrawing implausible heights of the apex moves the two tapes it depends on by part of an SD.
    close(army, "napeToWaist", usArmy1988Women.napeToNaturalWaistTape, 0.35);
    close(army, "waistToFullHip", usArmy1988Women.naturalWaistToFullestButtock, 0.1);
    close(spanish, "apexToApex", spanishSurveyWomen.apexToApex, 0.05);
    close(spanish, "waistToFullHip", spanishSurveyWomen.waistToHipGirthLevel, 0.1);
    const apart = spanish.map((body) => Math.abs(body.leftShoulderToApex - body.rightShoulderToApex));
    expect(Math.abs(mean(apart) - 7.3)).toBeLessThan(0.4);
  });
});

describe("people", () => {
  const crowd = people(400);

  test("the same seed gives the same person, another seed another", () => {
    expect(person(12)).toEqual(person(12));
    expect(person(12).body).not.toEqual(person(14).body);
  });

  test("every way of measuring, every kind of form and both surveys occur", () => {
    expect(new Set(crowd.map((one) => one.care))).toEqual(new Set(cares));
    expect(new Set(crowd.map((one) => one.formKind))).toEqual(new Set(formKinds));
    expect(new Set(crowd.map((one) => one.survey))).toEqual(new Set(surveyNames));
  });

  test("a form is not larger than the body at a required girth unless it is meant to be, or no size is small enough", () => {
    const larger = crowd.filter(({ body, form }) =>
      (["bustGirth", "waistGirth", "fullHipGirth"] as const).some(
        (name) => (form[name] ?? 0) > (body[name] ?? 0) + 0.5,
      ),
    );
    const unmeant = larger.filter(({ formKind }) => formKind !== "too-large");
    expect(larger.length).toBeGreaterThan(20);
    expect(unmeant.length).toBeLessThan(crowd.length / 20);
  });

  test("every number is a length a tape could read, and both arcs nearly make the girth", () => {
    for (const { body, form, batting } of crowd) {
      for (const value of [...Object.values(body), ...Object.values(form)]) {
        expect(value).toBeGreaterThan(40);
        expect(value).toBeLessThan(2200);
      }
      for (const level of ["bust", "underbust", "waist", "highHip", "fullHip"] as const) {
        const [girth, front, back] = [body[`${level}Girth`], body[`${level}FrontArc`], body[`${level}BackArc`]];
        if (girth !== undefined && front !== undefined && back !== undefined)
          expect(Math.abs(front + back - girth)).toBeLessThanOrEqual(6);
      }
      expect(batting.layerThickness).toBeGreaterThanOrEqual(3);
      expect(batting.layerThickness).toBeLessThanOrEqual(12);
    }
  });
});
