import { describe, expect, test } from "vitest";
import { derivation } from "../../../src/app/session/derived";
import { demoFitting } from "../../../src/app/session/demoFitting";
import { apply } from "../../../src/app/session/commands";
import { type StepFacts, stepFacts } from "../../../src/app/steps/stepFacts";
import type { Fitting, FormKind, WorkEntry } from "../../../src/document/fitting";
import { formKinds } from "../../../src/document/fittingLimits";
import { readyWords } from "../../../src/text/formKinds";
import { handSteps } from "../../../src/text/stops";
import { step } from "../../../src/app/steps/step";
import { nextOfFitting } from "../../../src/command/nextOfText";

function factsOf(fitting: Fitting): StepFacts {
  const { planning, lengths } = derivation()(fitting);
  if (planning.kind !== "planned" || lengths === null) throw new Error("no plan");
  return stepFacts(planning.plan, lengths.body, fitting);
}
const described = (kind: FormKind | null, isShared = false): Fitting =>
  apply(demoFitting, { does: "describeForm", kind, isShared, hasLegs: false });
const logged = (...work: WorkEntry[]): Fitting => ({ ...demoFitting, work });
const measuredOn = (at: string): WorkEntry => ({ did: "measured", readings: { waistGirth: "30" }, at });

describe("what kind of form it is", () => {
  /** Seen to fail: dials set to the person's own girth. */
  test("each dial stays a layer below the person, around", () => {
    const { planning } = derivation()(demoFitting);
    if (planning.kind !== "planned") throw new Error("no plan");
    const { levels, pieces } = planning.plan;
    const layer = pieces[0]?.layers[0]?.thickness ?? 0;
    const { dials } = factsOf(described("dials")).form;
    expect(dials.map(({ level }) => level)).toEqual(["bust", "waist", "fullHip"]);
    for (const { level, most } of dials) {
      const body = levels.find(({ name }) => name === level)?.body.girth.value ?? 0;
      expect(body - most).toBeCloseTo(2 * Math.PI * layer, 6);
    }
  });

  test("where no pin holds, or it must come off whole, an under-cover comes first and all is basted to that", () => {
    for (const kind of formKinds) {
      for (const isShared of [false, true]) {
        const facts = factsOf(described(kind, isShared));
        const { form } = facts;
        const isAsked = isShared || ["hard", "dials", "stretch"].includes(kind);
        expect(form.hasUnderCover, kind).toBe(isAsked);
        expect(/under-cover/.test(readyWords(form, "1/8 in").join(" ")), kind).toBe(isAsked);
        const baste = handSteps(step("baste"), "", facts).map(({ text }) => text);
        expect(/Catch the under-cover, never the form/.test(baste.join(" ")), kind).toBe(isAsked);
      }
    }
  });

  test("the command says it at the first step, and of a form that nobody described no more than before", () => {
    const say = (fitting: Fitting) => {
      const next = nextOfFitting({ ...fitting, work: [] });
      if (!next.ok) throw new Error("no step");
      return next.value.step.say.replaceAll("\u00a0", " ");
    };
    expect(say(described("dials"))).toMatch(/Set every dial smaller than the person, at most: bust [\d /]+in, waist/);
    expect(say(described("foam"))).toMatch(/solvents eat foam/);
    expect(say(described(null))).toBe(say(demoFitting));
    expect(say(demoFitting)).not.toMatch(/under-cover|dial/);
  });

  test("is kept with the form, through a change of unit, and taken away again", () => {
    const metric = apply(described("hard", true), { does: "changeUnit", unit: "cm" });
    expect(metric.form).toMatchObject({ kind: "hard", shared: true });
    const without = apply(metric, { does: "describeForm", kind: null, isShared: false, hasLegs: false });
    expect(without.form).not.toHaveProperty("kind");
    expect(without.form).not.toHaveProperty("shared");
  });
});

describe("the day to measure again", () => {
  /** Seen to fail: the months counted on from a 30th into March. */
  test.each([
    ["2026-10-03T10:00:00.000Z", "2027-01-03"],
    ["2026-11-30T23:30:00.000Z", "2027-02-28"],
    ["2027-11-29T00:00:00.000Z", "2028-02-29"],
  ])("three months after %s is %s", (at, day) => {
    expect(factsOf(logged(measuredOn("2025-01-01T00:00:00.000Z"), measuredOn(at))).measureAgain).toBe(day);
  });

  test("is not known of readings without a date", () => {
    expect(factsOf(logged({ did: "measured", readings: {} })).measureAgain).toBeNull();
  });
});
