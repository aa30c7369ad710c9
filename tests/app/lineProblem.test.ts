import { describe, expect, test } from "vitest";
import { lineProblem, slippedUnit } from "../../src/app/progress/lineProblem";
import { mm } from "../../src/core/units";

const form = { bustGirth: mm(920), waistGirth: mm(720), fullHipGirth: mm(980) };
const at = { level: "waist", depth: mm(400) } as const;

describe("a reading of the bare form before it is saved", () => {
  test("is let through where it can be, at whatever height it was read", () => {
    expect(lineProblem(form, {}, { ...at, part: "girth", length: mm(745) })).toBeNull();
    expect(lineProblem(form, {}, { ...at, part: "girth", length: mm(690) })).toBeNull();
  });

  test("is stopped where no form can read so, and where it contradicts what was read on its line", () => {
    const tiny = lineProblem(form, {}, { ...at, part: "girth", length: mm(41) });
    expect(tiny).toMatchObject({ severity: "contradiction", names: ["waistGirth"] });
    const lines = { waist: { depthBelowNape: mm(400), readings: { Girth: mm(745) } } };
    const front = lineProblem(form, lines, { ...at, part: "frontArc", length: mm(760) });
    expect(front).toMatchObject({ severity: "contradiction", code: "arcNotShorterThanGirth" });
    const breadth = lineProblem(form, lines, { ...at, part: "breadth", length: mm(420) });
    expect(breadth).toMatchObject({ severity: "contradiction", code: "breadthDoesNotFitGirth" });
    expect(lineProblem(form, lines, { ...at, part: "frontArc", length: mm(370) })).toBeNull();
  });
});

describe("the unit a length was taken in", () => {
  test("is the other one where it misses what is expected by the factor between them", () => {
    expect(slippedUnit(mm(74.5 * 25.4), mm(760), "in")).toBe("cm");
    expect(slippedUnit(mm(29.5 * 10), mm(760), "cm")).toBe("in");
  });

  test("is the one at hand where the length is near what is expected, or nowhere", () => {
    expect(slippedUnit(mm(800), mm(760), "in")).toBeNull();
    expect(slippedUnit(mm(690), mm(760), "cm")).toBeNull();
    expect(slippedUnit(mm(10 * 25.4), mm(760), "in")).toBeNull();
  });
});
