import { describe, expect, test } from "vitest";
import { chooseForm } from "../../../src/core/plan/chooseForm";
import { shiftedReading } from "../../../src/core/plan/shortfalls";
import { planFitting } from "../../../src/core/plan/planFitting";
import { basis } from "../../../src/core/plan/basis";
import { mm } from "../../../src/core/units";
import { batting, body, bodyWith, form, level, lengths, untoldMisses } from "./examplePerson";

const planOf = (person: typeof body, on = form) => planFitting({ body: person, form: on, batting });

/** Broken on purpose: the seam moved the wrong way. Seen to fail. */
describe("what gives way is said", () => {
  test("a form that is larger somewhere: the girth there, by how much, and nothing is pinned to make it worse", () => {
    const plan = planOf(bodyWith(level("waist", 640, 327)));
    const told = plan.shortfalls.filter(({ level: name }) => name === "waist");
    expect(told.map(({ what, sense }) => [what, sense])).toContainEqual(["girth", "tooLarge"]);
    const girth = told.find(({ what }) => what === "girth");
    expect(Math.abs((girth?.amount ?? 0) - 20)).toBeLessThan(2);
    expect(untoldMisses(plan)).toEqual([]);
  });

  test("a back that is already too long behind: the side seam is re-marked towards the back, and the arcs then read right", () => {
    const person = bodyWith(level("waist", 700, 390));
    const plan = planOf(person);
    const shift = plan.seamShifts.find(({ level: name }) => name === "waist");
    expect(shift?.towards).toBe("back");
    expect(shift?.perSide).toBeGreaterThan(1);
    expect(shift?.perSide).toBeLessThanOrEqual(15);
    expect(untoldMisses(plan)).toEqual([]);
    expect(plan.shortfalls.filter(({ level: name }) => name === "waist")).toEqual([]);
  });

  test("re-marking keeps the girth and gives to the one what it takes of the other, on both sides", () => {
    const target = basis({ body, form }).targets.waist;
    const reading = { girth: mm(700), frontArc: mm(360), backArc: mm(340) };
    expect(shiftedReading(reading, { ...target, seamBack: 5 })).toEqual({ girth: 700, frontArc: 370, backArc: 330 });
    expect(shiftedReading(reading, { ...target, seamBack: -5 })).toEqual({ girth: 700, frontArc: 350, backArc: 350 });
    expect(shiftedReading(reading, { ...target, seamBack: 0 })).toEqual(reading);
  });

  test.each([
    ["shoulderLength", 118, 128, "tooLarge", 10],
    ["neckGirth", 372, 350, "staysShort", 22],
    ["acrossShoulders", 350, 338, "staysShort", 12],
  ] as const)(
    "%s: told where body and form were both measured and differ by more than 5 mm",
    (length, ofBody, ofForm, sense, amount) => {
      const plan = (of: number) => planOf(bodyWith({ [length]: ofBody }), { ...form, ...lengths({ [length]: of }) });
      expect(plan(ofForm).shortfalls).toEqual([{ what: "length", level: "bust", length, amount, sense }]);
      expect(plan(ofBody + 5).shortfalls).toEqual([]);
      expect(planOf(bodyWith({ [length]: ofBody })).shortfalls).toEqual([]);
    },
  );
});

/** Broken on purpose: the sizes ordered by batting alone. Seen to fail. */
describe("choosing the form", () => {
  const size = (name: string, more: number) => ({
    name,
    measurements: lengths({
      bustGirth: 880 + more,
      waistGirth: 680 + more,
      fullHipGirth: 930 + more,
      napeToWaist: 400,
    }),
  });
  const table = {
    id: "invented",
    title: "invented",
    source: { kind: "privatePage" as const, title: "a chart", year: 2020 },
    sizes: [-80, -40, 0, 40, 80].map((more, i) => size(String(i), more)),
  };
  const person = lengths({ bustGirth: 930, waistGirth: 735, fullHipGirth: 985, napeToWaist: 400 });

  test("is the largest size with no shortfall, the smaller ones after it by how much they need, the larger ones last", () => {
    const ranked = chooseForm(person, table, batting);
    expect(ranked.map(({ size: name }) => name)).toEqual(["3", "2", "1", "0", "4"]);
    expect(ranked[0]?.shortfallTotal).toBe(0);
    expect(ranked.at(-1)?.shortfallTotal).toBeGreaterThan(20);
    // 735 round the body, 720 round the form, and a layer adds 2 pi 7.
    expect(ranked[0]?.waistGain).toBeCloseTo(15, 0);
    expect(ranked[0]?.waistLayers).toBe(0);
    expect(ranked[1]?.waistLayers).toBe(Math.round(55 / (2 * Math.PI * 7)));
  });

  test("where every size is too large, the least too large comes first; an empty table has none", () => {
    const ranked = chooseForm(lengths({ bustGirth: 780, waistGirth: 590, fullHipGirth: 830 }), table, batting);
    expect(ranked[0]?.size).toBe("0");
    expect(ranked[0]?.shortfallTotal).toBeGreaterThan(0);
    expect(chooseForm(person, { ...table, sizes: [] }, batting)).toEqual([]);
  });

  test("compares at the body's heights: a long-waisted form is wider where a short body has its waist", () => {
    const short = lengths({ bustGirth: 930, waistGirth: 735, fullHipGirth: 985, napeToWaist: 350 });
    const usual = chooseForm(person, table, batting).find(({ size: name }) => name === "2");
    const lifted = chooseForm(short, table, batting).find(({ size: name }) => name === "2");
    expect(lifted?.waistGain).toBeLessThan((usual?.waistGain ?? 0) - 5);
  });
});
