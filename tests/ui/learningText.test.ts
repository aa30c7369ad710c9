import { describe, expect, test } from "vitest";
import { mm } from "../../src/core/units";
import { doneKinds, doneSentence, layerSentence } from "../../src/text/learning";

describe("how much a layer adds", () => {
  test("in tenths of a millimeter, or for who works in inches in inches alone", () => {
    expect(layerSentence({ layer: mm(6.82), least: mm(6.2), most: mm(7.44) }, "cm", "read")).toBe(
      "One layer adds about 6.8 mm under the tape: most likely 6.2 to 7.4 mm.",
    );
    expect(layerSentence({ layer: mm(7.54), least: mm(6.5), most: mm(8.7) }, "in", "read")).toBe(
      "One layer adds about 9/32 in under the tape: most likely 1/4 to 11/32 in.",
    );
  });
});

test("before anything was measured a layer only may add it", () => {
  expect(layerSentence({ layer: mm(6), least: mm(3), most: mm(12) }, "cm", "guessed")).toMatch(/^One layer may add/);
});

test("each state of a level has words of its own, and what was not read never says that it is on target", () => {
  for (const standing of ["read", "expected"] as const) {
    const sentences = doneKinds.map((kind) => doneSentence(kind, "12 mm", "frontArc", standing));
    expect(new Set(sentences).size).toBe(doneKinds.length);
  }
  expect(doneSentence("over", "12 mm", "frontArc", "read")).toBe("12 mm over in front");
  expect(doneSentence("there", "12 mm", "frontArc", "read")).toBe("on target");
  expect(doneSentence("there", "12 mm", "frontArc", "expected")).toBe("should be on target");
});
