import { render, screen } from "@testing-library/react";
import { beforeEach, describe, expect, test } from "vitest";
import type { Fitting } from "../../src/document/fitting";
import { questionOrder } from "../../src/app/progress/questions";
import { levelNames, measurementNames } from "../../src/core/body/vocabulary";
import { fittingStore } from "../../src/app/session/store";
import { formTables } from "../../src/document/formTables";
import { formingWords } from "../../src/text/forming";
import { bodyGroups, formGroups, measurementAfter, sheetGroups } from "../../src/app/progress/measureGroups";
import { newFitting } from "../../src/app/session/newFitting";
import { FormPage } from "../../src/ui/pages/form/FormPage";
import { fittingProblemText } from "../../src/text/problems";
import { StoreProvider } from "../../src/ui/kit/useStore";

const shown = (fitting: Fitting) => {
  const { container } = render(
    <StoreProvider store={fittingStore(fitting)}>
      <FormPage />
    </StoreProvider>,
  );
  return container;
};

beforeEach(() => {
  window.location.hash = "#form";
});

test("the sizes stand in columns with heads, and each figure is named for those who cannot see them", () => {
  const container = shown({ ...newFitting("in"), body: { bustGirth: "36", waistGirth: "28", fullHipGirth: "38" } });
  const [head] = container.querySelectorAll(".size-head");
  expect(head?.textContent).toBe("Size, inbustwaistfull hipFor this person");
  const size = screen.getByRole("radio", { name: /^Size 10 bust 32 1\/2 in waist 25 in full hip 34 1\/2 in / });
  expect(size).not.toBeChecked();
});

test("the size chosen before stands among the first, beside the best", () => {
  const body = { bustGirth: "36", waistGirth: "28", fullHipGirth: "38" };
  const container = shown({ ...newFitting("in"), body, form: { table: "misses", size: "8" } });
  const first = [...(container.querySelector(".size-list")?.querySelectorAll<HTMLInputElement>("input") ?? [])];
  expect(first.filter(({ checked }) => checked).length).toBe(1);
  expect(container.querySelectorAll("input[type=radio]:checked").length).toBe(1);
});

test("a size that needs nothing at the waist says no layers, and never “0 layers”", () => {
  const container = shown({ ...newFitting("in"), body: { bustGirth: "36", waistGirth: "28", fullHipGirth: "38" } });
  expect(container.textContent).not.toMatch(/\b0 layers/);
  expect(screen.getByRole("radio", { name: /^Size 14 .*no layers at the waist/ })).toBeInTheDocument();
});

test("the source of every table stands alone and holds no working notes", () => {
  expect(formTables.length).toBeGreaterThan(3);
  for (const { source, id } of formTables) {
    expect(source.title, id).toMatch(/Pattern Sizing|ASTM D5585/);
    expect(source.title, id).not.toMatch(/same page|read whole|not seen|secondary/i);
    expect(formingWords.source(source), id).toMatch(/standard.*, 20\d\d\.$/);
  }
});

test("no group of readings is empty, and the sheet has every one", () => {
  for (const groups of [bodyGroups, formGroups, sheetGroups]) {
    expect(groups.length).toBeGreaterThan(8);
    for (const { improves, names } of groups) expect(names.length, improves).toBeGreaterThan(0);
  }
  expect(sheetGroups.flatMap(({ names }) => names).toSorted()).toEqual([...measurementNames].sort());
});

test("what the study found to gain most is asked for first, and the nape before every height", () => {
  const gains = bodyGroups.flatMap(({ gain }) => (gain === null ? [] : [gain]));
  expect(gains.length).toBeGreaterThan(2);
  const ofBody = questionOrder.filter(({ id }) => id.startsWith("body")).map(({ gain }) => gain);
  expect(gains).toEqual(ofBody);
  expect(bodyGroups[0]?.improves).toBe("wholePlan");
  const heights = bodyGroups.find(({ improves }) => improves === "linePlaces")?.names ?? [];
  expect(heights[0]).toBe("napeHeight");
  expect(heights.slice(1, 6)).toEqual(levelNames.map((level) => `${level}Height`));
});

test("nobody is asked for what they have not: a body for a lower edge, a form for an arm", () => {
  const asked = (groups: typeof bodyGroups) => {
    const all: string[] = [];
    for (let name = measurementAfter(groups, "bustGirth", () => false); name && all.length < 200; ) {
      all.push(name);
      name = measurementAfter(groups, name, (one) => all.includes(one));
    }
    return all;
  };
  for (const name of ["lowerEdgeBelowNape", "armholePlateHeight", "armholePlateBreadth"] as const) {
    expect(asked(bodyGroups)).not.toContain(name);
    expect(asked(formGroups)).toContain(name);
  }
  expect(asked(bodyGroups)).toContain("armLength");
  expect(asked(formGroups)).not.toContain("armLength");
});

test("a file that is no fitting is told in a sewist's words", () => {
  expect(fittingProblemText({ path: [], code: "notJson" }, "1/8 in")).toMatch(/^This file is not a fitting/);
  expect(fittingProblemText({ path: [], code: "notJson" }, "1/8 in")).not.toContain("JSON");
});

/** Seen to fail: on the page of before, which said it only once the form was made ready. */
describe("what the kind of form asks for is said before it is measured", () => {
  const person = { bustGirth: "38", waistGirth: "30", fullHipGirth: "40" };
  const said = (form: Fitting["form"], body: Fitting["body"] = person) =>
    (shown({ ...newFitting("in"), body, form }).querySelector(".form-kind")?.textContent ?? "").replaceAll(
      "\u00a0",
      " ",
    );

  test("each dial has its setting, a layer below the person, also while there is no plan", () => {
    const text = said({ kind: "dials" });
    const [bust, waist, hip] = [...text.matchAll(/(bust|waist|full hip) (\d+)(?: (\d)\/(\d))? in/g)].map(
      ([, , whole, part = "0", parts = "1"]) => Number(whole) + Number(part) / Number(parts),
    );
    for (const [most, girth] of [
      [bust, 38],
      [waist, 30],
      [hip, 40],
    ]) {
      expect(most).toBeLessThan((girth ?? 0) - 1);
      expect(most).toBeGreaterThan((girth ?? 0) - 3);
    }
    expect(text).toContain("which bridges the gaps");
    expect(said({ kind: "dials" }, {})).toContain("smaller than the person, by a layer of batting all around.");
  });

  test.each(["dials", "hard", "stretch"] as const)("over a form of kind %s it is measured again", (kind) => {
    expect(said({ kind })).toContain("Pull a snug under-cover over it");
    expect(said({ kind })).toContain("If it was measured before that, measure it again");
  });

  test("what changes no reading asks for none", () => {
    // Whatever it is made of, foam too. Seen to fail: while legs were a kind of their own.
    for (const kind of ["foam", "cloth"] as const)
      expect(said({ kind, legs: true })).toContain("Its thighs are not padded here");
    expect(said({ kind: "foam" })).toContain("solvents eat foam");
    for (const kind of ["foam", "cloth"] as const) expect(said({ kind })).not.toContain("measure it again");
    expect(said({ kind: "cloth", shared: true })).toContain("measure it again");
    expect(said({})).not.toMatch(/under-cover|dial(?!s that)/);
  });
});
