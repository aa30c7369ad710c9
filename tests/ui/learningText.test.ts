import { describe, expect, test } from "vitest";
import { levelNames } from "../../src/core/body/vocabulary";
import { pieceZones } from "../../src/core/padding/piece";
import { mm } from "../../src/core/units";
import {
  correctionSentence,
  doneKinds,
  doneSentence,
  layerSentence,
  levelList,
  madeOfSentence,
  newsSentence,
  overSentence,
  restSentence,
} from "../../src/ui/text/learning";

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

describe("news", () => {
  test("says how many, where and why in one sentence", () => {
    const change = { kind: "fewer", layers: 2, zone: "front", level: "waist", because: "thicker" } as const;
    expect(newsSentence(change)).toBe("Two fewer front layers at the waist: your batting is thicker than expected.");
    expect(newsSentence({ ...change, kind: "more", layers: 1, zone: "around", because: "thinner" })).toBe(
      "One more layer all the way around at the waist: your batting is thinner than expected.",
    );
  });

  test("of every kind is one sentence without gaps", () => {
    const all = pieceZones.flatMap((zone) =>
      levelNames.flatMap((level) =>
        (["fewer", "more"] as const).flatMap((kind) =>
          (["thicker", "thinner", "tape"] as const).flatMap((because) =>
            [1, 2, 14].map((layers) => newsSentence({ kind, layers, zone, level, because })),
          ),
        ),
      ),
    );
    expect(all).toHaveLength(pieceZones.length * 5 * 2 * 3 * 3);
    for (const sentence of all) expect(sentence).toMatch(/^[A-Z0-9][^#]*layers? ?[^#]*: [a-z][^#.]*\.$/);
  });
});

describe("where to rest", () => {
  test("pin so far and measure there; measure at once; the last time through", () => {
    const levels = levelList(["waist", "highHip"], 5);
    expect(restSentence({ upTo: "front panel 2", isLast: false, levels })).toBe(
      "Pin up to front panel 2, then measure the waist and the high hip.",
    );
    expect(restSentence({ upTo: null, isLast: false, levels })).toBe(
      "Measure the waist and the high hip now, before you pin any more.",
    );
    expect(restSentence({ upTo: "the back panel", isLast: true, levels: levelList(levelNames, 5) })).toBe(
      "Pin the remaining pieces, up to the back panel, then measure every level line.",
    );
    expect(restSentence({ upTo: null, isLast: true, levels: levelList(levelNames, 5) })).toBe(
      "Every piece is on: measure every level line once more.",
    );
  });
});

describe("corrections", () => {
  const told = { part: "front", over: "1 cm" } as const;
  const base = { level: "waist", half: "front", told, piece: "front panel 2" } as const;
  test("say how far over, and which piece to take off, narrow or leave", () => {
    expect(overSentence({ ...base, how: { kind: "peel" } })).toBe("Padding 1 cm over at the waist, in front.");
    const allRound = { part: "girth", over: "1.5 cm" } as const;
    expect(overSentence({ ...base, told: allRound, how: { kind: "peel" } })).toBe("Padding 1.5 cm over at the waist.");
    expect(overSentence({ ...base, told: null, how: { kind: "peel" } })).toBe(
      "The padding at the waist may be over in front.",
    );
    expect(correctionSentence({ ...base, how: { kind: "peel" } })).toBe("Take front panel 2 off again.");
    expect(correctionSentence({ ...base, how: { kind: "trim", eachSide: "12 mm", reach: "60 mm" } })).toBe(
      "Narrow front panel 2 by 12 mm at each side at the waistline, running out to nothing 60 mm above and below it.",
    );
    expect(correctionSentence({ ...base, how: { kind: "pullThin" } })).toContain(
      "leave that on, and narrow a panel in front that crosses the waistline",
    );
  });
});

describe("what a piece can be made of", () => {
  test("a new one, its own, or another trimmed", () => {
    expect(madeOfSentence("Front panel 3", null)).toBe("Front panel 3: cut a new one.");
    expect(madeOfSentence("Front panel 3", { name: "Front panel 3", fit: "asItIs" })).toBe(
      "Front panel 3: the one you have cut, as it is.",
    );
    expect(madeOfSentence("Front panel 3", { name: "Front panel 2", fit: "trim" })).toBe(
      "Front panel 3: the front panel 2 you have cut, cut down to the new outline.",
    );
  });
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
