import fc from "fast-check";
import { afterAll, describe, expect, test, vi } from "vitest";
import { planOfFitting, planOfText } from "../../src/command/planOfText";
import { checkMeasurements, isContradiction } from "../../src/core/body/plausibility";
import { measurementNames } from "../../src/core/body/vocabulary";
import { mm } from "../../src/core/units";
import { readFitting } from "../../src/document/readFitting";
import { fittingFileOf, type Person } from "../tools/people";
import type { PlanFile } from "../tools/planCheckerFile";
import { anybody, chances } from "./planned";

/** The laws about numbers: units change nothing, and numbers that cannot be a body never become a plan. */

/** Many plans to a test, and other work may share the machine. */
vi.setConfig({ testTimeout: 120_000 });

/** Broken on purpose: an inch of 25.3 mm. Seen to fail with the first person. */
describe("law 7: units", () => {
  let compared = 0;
  afterAll(() => expect(compared).toBeGreaterThan(50));

  test("a plan made in inches equals the plan made in the same lengths in centimetres and in millimetres", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const [inches, centimetres, millimetres] = (["in", "cm", "mm"] as const).map((unit) =>
          bones(planIn(one, unit)),
        );
        compared += inches?.pieces.length ?? 0;
        expect(centimetres).toEqual(inches);
        expect(millimetres).toEqual(inches);
      }),
      chances(10),
    );
  });

  test("and so does a fitting typed as text with its units beside each number", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const typed = inEighths(one, (eighths) =>
          eighths % 8 === 0 ? `${eighths / 8} in` : `${Math.floor(eighths / 8)} ${eighths % 8}/8 in`,
        );
        expect(bones(planned({ ...typed, unit: "cm" }))).toEqual(bones(planIn(one, "in")));
      }),
      chances(5),
    );
  });

  /** Every length taken to the nearest eighth of an inch, which all three units write exactly. */
  const inEighths = ({ body, form, batting }: Person, write: (eighths: number) => number | string) => {
    const all = (measurements: object) =>
      Object.fromEntries(
        Object.entries(measurements).map(([name, value]) => [name, write(Math.round((value as number) / 3.175))]),
      );
    return {
      version: 1,
      body: all(body),
      form: all(form),
      batting: { name: "batting", layerThickness: write(Math.max(1, Math.round(batting.layerThickness / 3.175))) },
    };
  };

  function planIn(one: Person, unit: "in" | "cm" | "mm"): PlanFile {
    const each = { in: 0.125, cm: 0.3175, mm: 3.175 }[unit];
    return planned({ ...inEighths(one, (eighths) => Number((eighths * each).toFixed(6))), unit });
  }

  function planned(file: object): PlanFile {
    const made = planOfText(JSON.stringify(file));
    if (!made.ok) throw new Error(`refused to plan: ${made.problem.join(" ")}`);
    return made.value;
  }

  /** Everything in a plan but its sentences, which speak in the unit of the fitting. */
  const bones = ({ levels, pieces, shortfalls, seamShifts, battingAreaMm2 }: PlanFile) => ({
    levels,
    pieces: pieces.map(({ name: _name, ...piece }) => ({ ...piece, place: "" })),
    shortfalls: shortfalls.map((shortfall) => ({ ...shortfall, advice: "" })),
    seamShifts: seamShifts.map((shift) => ({ ...shift, say: "" })),
    battingAreaMm2,
  });
});

const hostile: fc.Arbitrary<number> = fc.constantFrom(
  0,
  -1,
  -950,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  1e9,
  1e-9,
  -0,
  Number.MAX_VALUE,
);
const required = fc.constantFrom("bustGirth", "waistGirth", "fullHipGirth");

/** Broken on purpose: no range of possible lengths; no look for inches typed as centimetres. Each seen to fail. (Zero and
 * NaN are caught twice: with the check for lengths alone taken out, the range still refuses them.) */
describe("law 10: hostile numbers", () => {
  let refusals = 0;
  afterAll(() => expect(refusals).toBeGreaterThan(300));

  /** Refused with at least one sentence and without throwing; NaN and infinity cannot even be written in a file. */
  function expectRefusal(file: object): void {
    const fitting = readFitting(file);
    if (fitting.ok) {
      const plan = planOfFitting(fitting.value);
      expect(plan.ok).toBe(false);
      if (!plan.ok) {
        expect(plan.problem.length).toBeGreaterThan(0);
        for (const sentence of plan.problem) expect(sentence).toMatch(/\w+ \w+/);
      }
    } else {
      expect(fitting.problem.length).toBeGreaterThan(0);
    }
    const text = planOfText(JSON.stringify(file));
    expect(text.ok).toBe(false);
    refusals++;
  }

  test("any measurement of the body or the form, or the layer, replaced: a named problem, never a plan", () => {
    fc.assert(
      fc.property(
        anybody,
        fc.constantFrom("body", "form"),
        fc.constantFrom(...measurementNames),
        hostile,
        (one, whose, name, value) => {
          const file = fittingFileOf(one);
          expectRefusal({ ...file, [whose]: { ...file[whose], [name]: value } });
          expectRefusal({ ...file, batting: { name: "batting", layerThickness: value } });
          const problems = checkMeasurements({ ...one[whose], [name]: mm(value) }, whose);
          expect(problems.some((problem) => isContradiction(problem) && problem.names.includes(name))).toBe(true);
        },
      ),
      chances(120),
    );
  });

  test("a required girth typed in inches as centimetres, or the other way, is refused and named", () => {
    fc.assert(
      fc.property(
        anybody,
        fc.constantFrom("body", "form"),
        required,
        fc.constantFrom(2.54, 1 / 2.54),
        (one, whose, name, factor) => {
          const file = fittingFileOf(one);
          const value = (one[whose][name] ?? 0) * factor;
          expectRefusal({ ...file, [whose]: { ...file[whose], [name]: value } });
          const problems = checkMeasurements({ ...one[whose], [name]: mm(value) }, whose);
          expect(problems.some((problem) => isContradiction(problem) && problem.names.includes(name))).toBe(true);
        },
      ),
      chances(60),
    );
  });

  test("a whole body in inches in a file that says centimetres, or the other way, is refused", () => {
    fc.assert(
      fc.property(anybody, fc.constantFrom(2.54, 1 / 2.54), (one, factor) => {
        const file = fittingFileOf(one);
        const scaled = Object.fromEntries(Object.entries(one.body).map(([name, value]) => [name, value * factor]));
        expectRefusal({ ...file, body: scaled });
      }),
      chances(60),
    );
  });

  test("a required girth left out, or text that is no length, is refused", () => {
    fc.assert(
      fc.property(
        anybody,
        required,
        fc.constantFrom("", "abc", "--", "1/0", "12 34 56", "1e400", "NaN"),
        (one, name, text) => {
          const file = fittingFileOf(one);
          const { [name]: _left, ...rest } = file.body;
          expectRefusal({ ...file, body: rest });
          expectRefusal({ ...file, body: { ...file.body, [name]: text } });
        },
      ),
      chances(30),
    );
  });
});
