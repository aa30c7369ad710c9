import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import type { Measurements } from "../../../src/core/body/measurements";
import {
  checkMeasurements,
  contradictionCodes,
  isContradiction,
  pleaseCheckCodes,
  type Whose,
} from "../../../src/core/body/plausibility";
import { measurementNames, requiredMeasurementNames } from "../../../src/core/body/vocabulary";
import { checkBatting } from "../../../src/core/checkBatting";
import { mm, ratio } from "../../../src/core/units";
import { formTables } from "../../../src/document/formTables";

const body = { bustGirth: 920, waistGirth: 830, fullHipGirth: 1000 };
const check = (readings: { readonly [name: string]: number }, whose: Whose = "body") =>
  checkMeasurements({ ...body, ...readings } as Measurements, whose);
const codes = (readings: { readonly [name: string]: number }, whose: Whose = "body") =>
  check(readings, whose).map(({ code }) => code);

// Hundreds of cases on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const random = { seed: 20260102, numRuns: 400 };

describe("nothing to say", () => {
  test.each([
    ["three girths", {}],
    ["arcs of an average waist", { waistFrontArc: 447, waistBackArc: 383 }],
    ["arcs that miss the girth by 10 mm", { waistFrontArc: 447, waistBackArc: 393 }],
    ["quarters of one arc", { waistFrontArc: 447, waistLeftFrontArc: 228, waistRightFrontArc: 219 }],
    ["a waist larger than the bust", { waistGirth: 945, fullHipGirth: 1010 }],
    ["a large body", { bustGirth: 1372, waistGirth: 1245, fullHipGirth: 1422 }],
    ["a small body", { bustGirth: 775, waistGirth: 584, fullHipGirth: 826 }],
    [
      "lengths of an average body",
      { shoulderToApex: 268, napeToWaist: 367, apexToApex: 187, waistToHighHip: 95, waistToFullHip: 200 },
    ],
  ])("%s", (_what, readings) => {
    expect(check(readings)).toEqual([]);
  });

  test("every size of every table, as a form and as a body, but for girths the table does not print", () => {
    const sizes = formTables.flatMap((table) => table.sizes);
    expect(sizes.length).toBeGreaterThan(40);
    for (const { measurements } of sizes) {
      for (const whose of ["body", "form"] as const) {
        expect(checkMeasurements(measurements, whose).filter(({ code }) => code !== "missing")).toEqual([]);
      }
    }
  });

  // Spanish survey, Alemany et al. 2010: the middle of 600 women, and front share 50.4 to 57.4 % (p5, p95) of their waists.
  test("the middle of a survey, with the front shares it found", () => {
    for (const share of [0.505, 0.538, 0.573]) {
      expect(check({ bustGirth: 934, waistGirth: 832, fullHipGirth: 1032, waistFrontArc: 832 * share })).toEqual([]);
    }
  });
});

/** What a contradiction names. */
const frontArc = ["waistFrontArc", "waistGirth"];
const bothArcs = ["waistFrontArc", "waistBackArc", "waistGirth"];
const breadth = ["waistBreadth", "waistGirth"];
const apex = ["shoulderToApex", "napeToWaist"];
const hips = ["waistToHighHip", "waistToFullHip"];

describe("contradictions", () => {
  test.each([
    ["an arc longer than the girth", { waistFrontArc: 900 }, "arcNotShorterThanGirth", frontArc],
    [
      "a quarter longer than the girth",
      { waistLeftBackArc: 830 },
      "arcNotShorterThanGirth",
      ["waistLeftBackArc", "waistGirth"],
    ],
    ["an arc in inches", { waistFrontArc: 176 }, "arcDoesNotFitGirth", frontArc],
    ["an arc that leaves nothing behind", { waistFrontArc: 700 }, "arcDoesNotFitGirth", frontArc],
    ["an arc shorter than the breadth", { waistBreadth: 290, waistFrontArc: 280 }, "arcDoesNotFitGirth", frontArc],
    ["front and back 11 mm too short", { waistFrontArc: 440, waistBackArc: 379 }, "arcsMissGirth", bothArcs],
    ["front and back 11 mm too long", { waistFrontArc: 450, waistBackArc: 391 }, "arcsMissGirth", bothArcs],
    [
      "four quarters that miss the girth",
      { waistLeftFrontArc: 220, waistRightFrontArc: 225, waistLeftBackArc: 180, waistRightBackArc: 190 },
      "arcsMissGirth",
      ["waistLeftFrontArc", "waistRightFrontArc", "waistLeftBackArc", "waistRightBackArc", "waistGirth"],
    ],
    [
      "quarters that miss their arc",
      { waistFrontArc: 447, waistLeftFrontArc: 235, waistRightFrontArc: 224 },
      "quartersMissArc",
      ["waistLeftFrontArc", "waistRightFrontArc", "waistFrontArc"],
    ],
    ["a breadth of half the girth", { waistBreadth: 415 }, "breadthDoesNotFitGirth", breadth],
    ["a breadth of nothing much", { waistBreadth: 120 }, "breadthDoesNotFitGirth", breadth],
    ["a bust level with the waist", { shoulderToApex: 400, napeToWaist: 330 }, "bustNotAboveWaist", apex],
    [
      "one bust point below the waist",
      { rightShoulderToApex: 410, napeToWaist: 330 },
      "bustNotAboveWaist",
      ["rightShoulderToApex", "napeToWaist"],
    ],
    ["a high hip below the full hip", { waistToHighHip: 200, waistToFullHip: 190 }, "highHipNotAboveFullHip", hips],
    ["a high hip on the full hip", { waistToHighHip: 190, waistToFullHip: 190 }, "highHipNotAboveFullHip", hips],
    [
      "all girths in inches",
      { bustGirth: 345, waistGirth: 290, fullHipGirth: 378 },
      "inchesAsCentimetres",
      ["bustGirth", "waistGirth", "fullHipGirth"],
    ],
    ["one girth in inches", { waistGirth: 290 }, "inchesAsCentimetres", ["waistGirth"]],
    ["two girths in inches", { waistGirth: 290, bustGirth: 345 }, "inchesAsCentimetres", ["bustGirth", "waistGirth"]],
    [
      "all girths in centimetres",
      { bustGirth: 2438, waistGirth: 2108, fullHipGirth: 2621 },
      "centimetresAsInches",
      ["bustGirth", "waistGirth", "fullHipGirth"],
    ],
    ["one girth in centimetres", { bustGirth: 2438 }, "centimetresAsInches", ["bustGirth"]],
    ["a length in inches", { napeToWaist: 157 }, "impossible", ["napeToWaist"]],
    ["a girth of a thumb", { underbustGirth: 60 }, "impossible", ["underbustGirth"]],
    ["a girth of a barrel", { underbustGirth: 5000 }, "impossible", ["underbustGirth"]],
  ] as const)("%s", (_what, readings, code, names) => {
    for (const whose of ["body", "form"] as const) {
      expect(check(readings, whose)).toEqual([
        expect.objectContaining({ severity: "contradiction", code, names, whose }),
      ]);
    }
  });

  test("what is required and missing, by name", () => {
    const problems = checkMeasurements({ bustGirth: mm(960) }, "form");
    expect(problems).toEqual(
      ["waistGirth", "fullHipGirth"].map((name) => ({
        whose: "form",
        severity: "contradiction",
        code: "missing",
        names: [name],
      })),
    );
  });

  test("the numbers say what was read and what was expected", () => {
    expect(check({ waistFrontArc: 440, waistBackArc: 379 })[0]).toMatchObject({
      got: 819,
      expected: { least: 820, most: 840 },
    });
    expect(check({ waistFrontArc: 900 })[0]).toMatchObject({ got: 900, expected: { least: 0, most: 829 } });
    expect(check({ waistGirth: 327 })[0]).toMatchObject({ got: 327 });
  });

  // Usual bodies, each typed in the wrong unit: the law of hostile numbers, by all three girths and by each alone.
  test("whatever usual body is typed in the wrong unit, a contradiction says so", () => {
    const usual = fc.record({
      bustGirth: fc.integer({ min: 800, max: 1300 }),
      waistGirth: fc.integer({ min: 640, max: 1200 }),
      fullHipGirth: fc.integer({ min: 870, max: 1350 }),
    });
    let seen = 0;
    fc.assert(
      fc.property(
        usual,
        fc.constantFrom(...requiredMeasurementNames, "all" as const),
        fc.constantFrom(2.54, 1 / 2.54),
        (girths, which, factor) => {
          fc.pre(checkMeasurements(girths as unknown as Measurements, "body").length === 0);
          seen += 1;
          const typed = Object.fromEntries(
            Object.entries(girths).map(([name, girth]) => [
              name,
              which === "all" || which === name ? girth * factor : girth,
            ]),
          );
          const problems = checkMeasurements(typed as Measurements, "body").filter(isContradiction);
          expect(problems.map(({ code }) => code)).toContain(
            factor < 1 ? "inchesAsCentimetres" : "centimetresAsInches",
          );
        },
      ),
      random,
    );
    expect(seen).toBeGreaterThan(200);
  });
});

describe("worth a second look, and nothing more", () => {
  test.each([
    ["a very small waist", { waistGirth: 560 }, "unusual", ["waistGirth"]],
    ["a very long back", { napeToWaist: 520 }, "unusual", ["napeToWaist"]],
    [
      "a waist far above the bust",
      { waistGirth: 1040, fullHipGirth: 1100 },
      "unusualProportion",
      ["waistGirth", "bustGirth"],
    ],
    [
      "hips far below the waist",
      { bustGirth: 1100, waistGirth: 1080, fullHipGirth: 950 },
      "unusualProportion",
      ["fullHipGirth", "waistGirth"],
    ],
    [
      "an underbust as large as the bust",
      { underbustGirth: 945 },
      "unusualProportion",
      ["underbustGirth", "bustGirth"],
    ],
    ["a front of more than 57.4 %", { waistFrontArc: 830 * 0.58 }, "unusualFrontShare", frontArc],
    ["a front of less than 50.4 %", { waistFrontArc: 830 * 0.5 }, "unusualFrontShare", frontArc],
    ["the same, read at the back", { waistBackArc: 830 * 0.42 }, "unusualFrontShare", ["waistBackArc", "waistGirth"]],
    [
      "sides 31 mm apart",
      { leftShoulderToApex: 290, rightShoulderToApex: 259 },
      "unevenSides",
      ["leftShoulderToApex", "rightShoulderToApex"],
    ],
    [
      "quarters 50 mm apart",
      { waistLeftFrontArc: 248, waistRightFrontArc: 198 },
      "unevenSides",
      ["waistLeftFrontArc", "waistRightFrontArc"],
    ],
  ] as const)("%s", (_what, readings, code, names) => {
    const problems = check(readings);
    expect(problems).toEqual([expect.objectContaining({ severity: "pleaseCheck", code, names })]);
    expect(problems.some(isContradiction)).toBe(false);
  });

  test("a form is not held against a survey's proportions or its front share", () => {
    expect(codes({ waistGirth: 1040, fullHipGirth: 1100 }, "form")).toEqual([]);
    expect(codes({ waistFrontArc: 830 * 0.58 }, "form")).toEqual([]);
  });
});

describe("hostile numbers (law 10)", () => {
  const hostile = fc.constantFrom(
    0,
    -0,
    -1,
    -1e9,
    1e9,
    1e308,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
    1e-300,
  );

  test("any of them at any measurement is a contradiction that names it, once", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...measurementNames),
        hostile,
        fc.constantFrom("body" as const, "form" as const),
        (name, value, whose) => {
          const named = check({ [name]: value }, whose).filter((problem) => problem.names.includes(name));
          expect(named).toHaveLength(1);
          expect(named[0]).toMatchObject({ severity: "contradiction", names: [name] });
        },
      ),
      random,
    );
  });

  test.each([0, -5, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    "%f is no length, a mile is an impossible one",
    (value) => {
      expect(check({ waistGirth: value })).toEqual([
        { whose: "body", severity: "contradiction", code: "notALength", names: ["waistGirth"], got: value },
      ]);
      expect(codes({ waistGirth: 1_609_344 })).toEqual(["impossible"]);
    },
  );

  test("any numbers at all give problems with closed codes, known names and at most one problem of its own for each", () => {
    const anything = fc.dictionary(
      fc.constantFrom(...measurementNames),
      fc.oneof(hostile, fc.double(), fc.double({ min: 1, max: 3000, noNaN: true })),
    );
    const closed: readonly string[] = [...contradictionCodes, ...pleaseCheckCodes];
    const seen = new Set<string>();
    fc.assert(
      fc.property(anything, (readings) => {
        const problems = check(readings);
        for (const { code, names } of problems) {
          seen.add(code);
          expect(closed).toContain(code);
          expect(names.length).toBeGreaterThan(0);
        }
        const alone = problems.filter(({ names }) => names.length === 1).map(({ names }) => names[0]);
        expect(new Set(alone).size).toBe(alone.length);
      }),
      random,
    );
    expect(seen.size).toBeGreaterThan(5);
  });
});

describe("battings", () => {
  const batting = (layerThickness: number) => ({
    name: "wadding",
    layerThickness: mm(layerThickness),
    relativeDeviation: ratio(0.5),
  });

  // Trade figures: quilt battings of 1/8 to 1 in loft, needled cotton of 2.5 mm (trade facts, section 5).
  test.each([2.5, 3.2, 6, 12.7, 25.4])("%f mm is a layer", (thickness) => {
    expect(checkBatting(batting(thickness))).toEqual([]);
  });

  test.each([0, -6, 0.1, 60, 1e9, Number.NaN])("%f mm is none", (thickness) => {
    expect(checkBatting(batting(thickness))).toMatchObject([{ code: "impossibleLayer", got: thickness }]);
  });
});
