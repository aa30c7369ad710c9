import { describe, expect, test } from "vitest";
import bodyData from "../../../shared/body-data.json";
import { measurementFacts } from "../../../src/core/body/measurementFacts";
import {
  publishedBreadths,
  publishedGirths,
  publishedLengths,
  publishedWaistFrontShare,
} from "../../../src/core/body/publishedRange";
import { unusualPairs } from "../../../src/core/body/unusualPairs";
import { levelNames, measurementNames, requiredMeasurementNames } from "../../../src/core/body/vocabulary";
import { mm } from "../../../src/core/units";
import { formTables } from "../../../src/document/formTables";

const {
  usArmy2012Women,
  usArmy1988Women: army1988,
  spanishSurveyWomen: spanish,
  nhanes2017to2020Women: nhanes,
} = bodyData;
const army2012 = usArmy2012Women.percentiles_mm;
/** The first and the ninety-ninth of a hundred, where only mean and standard deviation were published. */
const ends = ({ mean, sd }: { readonly mean: number; readonly sd: number }) =>
  [mean - 2.33 * sd, mean + 2.33 * sd] as const;

describe("the published ranges are the figures of shared/body-data.json", () => {
  // Gordon et al. 2014 (NATICK/TR-15/007) and 1989 (NATICK/TR-89/044); Alemany et al. 2010, 307-315; NHANES 2017-March 2020.
  test.each([
    ["bust girth", publishedGirths.bust, army2012.bustGirth.p1, spanish.girths_cm.bust.p95 * 10],
    [
      "underbust girth",
      publishedGirths.underbust,
      army1988.underbustGirth.p5,
      spanish.girths_cm.bust.p95 * 10 - army1988.bustMinusUnderbust.mean,
    ],
    ["waist girth", publishedGirths.waist, army1988.naturalWaistGirth.p5, spanish.girths_cm.waist.p95 * 10],
    ["high hip girth", publishedGirths.highHip, army1988.naturalWaistGirth.p5, spanish.girths_cm.hip.p95 * 10],
    ["full hip girth", publishedGirths.fullHip, army2012.fullHipGirth.p1, spanish.girths_cm.hip.p95 * 10],
    ["bust breadth", publishedBreadths.bust, army2012.bustBreadth.p1, army2012.bustBreadth.p99],
    ["waist breadth", publishedBreadths.waist, army2012.waistBreadth.p1, army2012.waistBreadth.p99],
    ["hip breadth", publishedBreadths.fullHip, army2012.hipBreadth.p1, army2012.hipBreadth.p99],
    ["apex to apex", publishedLengths.apexToApex, ...ends(spanish.apexToApex)],
    [
      "nape to waist",
      publishedLengths.napeToWaist,
      army1988.napeToNaturalWaistTape.p5,
      spanish.napeToWaistVertical.p95,
    ],
    ["waist to full hip", publishedLengths.waistToFullHip, spanish.waistToMaximumHip.p5, spanish.waistToMaximumHip.p95],
    [
      "waist to high hip",
      publishedLengths.waistToHighHip,
      spanish.waistToMaximumHip.p5 / 2,
      spanish.waistToMaximumHip.p95 / 2,
    ],
    [
      "waist to floor",
      publishedLengths.waistToFloorFront,
      army2012.waistHeightNavel.p1,
      army2012.waistHeightNavel.p99 + army1988.naturalWaistToNavel.mean,
    ],
    ["shoulder length", publishedLengths.shoulderLength, army2012.shoulderLength.p1, army2012.shoulderLength.p99],
    ["neck girth", publishedLengths.neckGirth, army2012.neckBaseGirth.p1, army2012.neckBaseGirth.p99],
    [
      "upper arm girth",
      publishedLengths.upperArmGirth,
      nhanes.upperArmGirthRelaxed_cm.p5 * 10,
      nhanes.upperArmGirthRelaxed_cm.p95 * 10,
    ],
    ["elbow girth", publishedLengths.elbowGirth, ends(army1988.elbowGirthExtended)[0], army2012.forearmGirthFlexed.p99],
    ["wrist girth", publishedLengths.wristGirth, army2012.wristGirth.p1, army2012.wristGirth.p99],
    ["arm length", publishedLengths.armLength, ...ends(army1988.sleeveOutseam)],
    ["shoulder to elbow", publishedLengths.shoulderToElbow, army2012.shoulderToElbow.p1, army2012.shoulderToElbow.p99],
    [
      "waist front share, in hundredths",
      { low: 100 * publishedWaistFrontShare.low, high: 100 * publishedWaistFrontShare.high },
      spanish.frontShareOfWaistGirth_percent.p5,
      spanish.frontShareOfWaistGirth_percent.p95,
    ],
  ])("%s", (_what, { low, high }, expectedLow, expectedHigh) => {
    expect(low).toBeCloseTo(expectedLow, 0);
    expect(high).toBeCloseTo(expectedHigh, 0);
  });

  test("neck side to apex: Gordon 1989, tape, p5; Spanish survey, straight, p95 348 (trade facts, section 7)", () => {
    expect(publishedLengths.shoulderToApex).toMatchObject({ low: army1988.neckSideToApexTape.p5, high: 348 });
  });

  test("shoulder drop: Spanish survey, mean 47, SD 12 (trade facts, section 6)", () => {
    const [low, high] = ends({ mean: 47, sd: 12 });
    expect(publishedLengths.shoulderDrop.low).toBeCloseTo(low, 0);
    expect(publishedLengths.shoulderDrop.high).toBeCloseTo(high, 0);
  });
});

describe("every measurement has its facts", () => {
  test.each(measurementNames)("%s: the usual lies within the possible", (name) => {
    const { possible, usual, sources, level } = measurementFacts[name];
    expect(possible.least).toBeLessThan(usual.least);
    expect(usual.least).toBeLessThan(usual.most);
    expect(usual.most).toBeLessThan(possible.most);
    expect(sources.length).toBeGreaterThan(0);
    expect(level).toBe(
      levelNames.find((prefix) => name.startsWith(prefix) && measurementFacts[name].reading !== "length") ?? null,
    );
  });

  test("the three required girths are the required ones", () => {
    expect(measurementNames.filter((name) => measurementFacts[name].need === "required")).toEqual([
      ...requiredMeasurementNames,
    ]);
  });

  test("no bust and underbust as far apart as nine women in ten have them is unusual (Army 1988, p5 and p95)", () => {
    const { p5, p95 } = army1988.bustMinusUnderbust;
    for (const bust of [800, 950, 1150]) {
      for (const less of [p5, p95])
        expect(unusualPairs({ bustGirth: mm(bust), underbustGirth: mm(bust - less) }, "body")).toEqual([]);
      expect(unusualPairs({ bustGirth: mm(bust), underbustGirth: mm(bust - 3 * p95) }, "body")).toHaveLength(1);
    }
  });

  test("no size of a published table is unusual, and neither is the general public (NHANES hip, mean and two standard deviations)", () => {
    const figures = formTables.flatMap(({ sizes }) =>
      sizes.flatMap(({ measurements }) => Object.entries(measurements)),
    );
    expect(figures.length).toBeGreaterThan(150);
    for (const [name, length] of figures) {
      const { usual } = measurementFacts[name as keyof typeof measurementFacts];
      expect(length, name).toBeGreaterThanOrEqual(usual.least);
      expect(length, name).toBeLessThanOrEqual(usual.most);
    }
    expect(measurementFacts.fullHipGirth.usual.most).toBeGreaterThan(
      10 * (nhanes.hipGirth_cm.mean + 2 * nhanes.hipGirth_cm.sd),
    );
  });

  test("inches taken for centimetres are never a possible length where a usual one would be meant", () => {
    // A form's nape may stand on a table, and breasts differ by more than inches do: `heightProblems` finds these slips.
    const others = ["shoulderDrop", "leftShoulderDrop", "rightShoulderDrop", "napeHeight", "apexToUnderbust"];
    const lengths = measurementNames.filter((name) => {
      const { level, reading } = measurementFacts[name];
      return (level === null || reading === "BelowNape") && !others.includes(name);
    });
    for (const name of lengths) {
      const { possible, usual } = measurementFacts[name];
      const middle = (usual.least + usual.most) / 2;
      expect(middle / 2.54, name).toBeLessThan(possible.least);
    }
  });

  // ISO 8559-1:2017 clause numbers as a public vendor page maps them (trade facts, section 3; a secondary source).
  test.each([
    ["bustGirth", "5.3.4"],
    ["underbustGirth", "5.3.8"],
    ["waistGirth", "5.3.10"],
    ["highHipGirth", "5.3.12"],
    ["fullHipGirth", "5.3.13"],
    ["neckGirth", "5.3.3"],
    ["upperArmGirth", "5.3.16"],
    ["wristGirth", "5.3.19"],
    ["acrossShoulders", "5.4.3"],
    ["napeToWaist", "5.4.5"],
    ["armLength", "5.7.8"],
  ] as const)("%s is clause %s", (name, clause) => {
    expect(measurementFacts[name].standard).toMatchObject({ standard: "ISO 8559-1:2017", clause });
  });
});
