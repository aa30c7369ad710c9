import { expect, test } from "vitest";
import type { Plan } from "../../../src/core/plan/plan";
import { lineChange } from "../../../src/core/plan/lineChange";
import { mm } from "../../../src/core/units";
import { linesWords } from "../../../src/text/linesAtForm";
import { examplePlan } from "../../gallery/examplePlan";

/** The same plan where the form reads so much more at the waist, with fewer pieces and less to miss. */
const after: Plan = {
  ...examplePlan,
  basis: "lines",
  mayMiss: mm(12),
  pieces: examplePlan.pieces.slice(1),
  bareForm: {
    ...examplePlan.bareForm,
    waist: { ...examplePlan.bareForm.waist, girth: mm(examplePlan.bareForm.waist.girth + 30) },
  },
};
const write = (length: number): string => `${Math.round(length)} mm`;

test("what a reading changed is counted where the padding goes: all around, or in front where the front was read", () => {
  const around = lineChange(examplePlan, after, "waist", "girth");
  expect(around.toAdd.before - around.toAdd.after).toBeCloseTo(30, 6);
  expect(around.pieces).toEqual({ before: examplePlan.pieces.length, after: examplePlan.pieces.length - 1 });
  expect(around.isFirmNow).toBe(true);
  const front = lineChange(examplePlan, after, "waist", "frontArc");
  expect(front.toAdd.before).toBe(front.toAdd.after);
  expect(lineChange(examplePlan, after, "bust", "breadth").toAdd).toEqual(
    lineChange(after, after, "bust", "girth").toAdd,
  );
});

test("a form larger than the body adds nothing, and never less than nothing", () => {
  const large: Plan = {
    ...examplePlan,
    bareForm: { ...examplePlan.bareForm, waist: { ...examplePlan.bareForm.waist, girth: mm(2000) } },
  };
  expect(lineChange(examplePlan, large, "waist", "girth").toAdd.after).toBe(0);
});

test("it is said in words: what changed with what it was, and what did not as it was", () => {
  const [firm, ...rest] = linesWords.changed(lineChange(examplePlan, after, "waist", "girth"), write);
  expect(firm).toContain("no draft any more");
  expect(rest.join(" ")).toMatch(/waistline it now adds \d+ mm all around, instead of \d+ mm/);
  expect(rest.join(" ")).toContain("instead of 40 mm");
  expect(rest.join(" ")).toContain(`instead of ${String(examplePlan.pieces.length)}.`);
  const same = linesWords.changed(lineChange(examplePlan, examplePlan, "bust", "frontArc"), write).join(" ");
  expect(same).toMatch(/adds \d+ mm in front, as before/);
  expect(same).not.toContain("instead of");
});
