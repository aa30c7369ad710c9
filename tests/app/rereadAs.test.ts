import { describe, expect, test } from "vitest";
import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { fittingStore } from "../../src/app/session/store";
import type { Fitting } from "../../src/document/fitting";
import { newFitting } from "../../src/app/session/newFitting";

const typed: Fitting = {
  ...newFitting("in"),
  body: { bustGirth: "88", waistGirth: "76", fullHipGirth: "97 1/2" },
};
const slip = (fitting: Fitting) =>
  derivation()(fitting).problems.measurements.find(({ code }) => code === "centimetresAsInches");

describe("centimetres typed as inches", () => {
  test("are found, and read again in their own unit they make a plan; the next is typed in it too", () => {
    const problem = slip(typed);
    expect(problem?.names).toEqual(["bustGirth", "waistGirth", "fullHipGirth"]);
    if (problem === undefined) return;
    const after = apply(typed, { does: "reread", slipped: { whose: "body", names: problem.names, unit: "cm" } });
    expect(after.body).toEqual({ bustGirth: "88 cm", waistGirth: "76 cm", fullHipGirth: "97.5 cm" });
    expect(after.unit).toBe("cm");
    expect(derivation()(after).planning.kind).toBe("planned");
  });

  test("beside readings that did not slip leave those and the unit alone", () => {
    const one = { ...typed, body: { bustGirth: "35", waistGirth: "76", fullHipGirth: "38" } };
    const problem = slip(one);
    expect(problem?.names).toEqual(["waistGirth"]);
    const after = apply(one, { does: "reread", slipped: { whose: "body", names: ["waistGirth"], unit: "cm" } });
    expect(after.body).toEqual({ bustGirth: "35", waistGirth: "76 cm", fullHipGirth: "38" });
    expect(after.unit).toBe("in");
  });

  test("undo takes it back in one step", () => {
    const store = fittingStore(typed);
    store.dispatch({
      does: "reread",
      slipped: { whose: "body", names: ["bustGirth", "waistGirth", "fullHipGirth"], unit: "cm" },
    });
    expect(store.getState().fitting.body).not.toEqual(typed.body);
    store.undo();
    expect(store.getState().fitting).toEqual(typed);
  });
});

test("inches typed as centimetres are read again as inches", () => {
  const inches = { ...newFitting("cm"), body: { bustGirth: 34.5, waistGirth: "28", fullHipGirth: "37 in" } };
  const after = apply(inches, {
    does: "reread",
    slipped: { whose: "body", names: ["bustGirth", "waistGirth"], unit: "in" },
  });
  expect(after.body).toEqual({ bustGirth: "34.5 in", waistGirth: "28 in", fullHipGirth: "37 in" });
});

test("nothing to read again gives the very same fitting back", () => {
  expect(apply(typed, { does: "reread", slipped: { whose: "body", names: ["highHipGirth"], unit: "cm" } })).toBe(typed);
});
