import { describe, expect, test } from "vitest";
import { levelNames } from "../../src/core/body/vocabulary";
import { pieceZones } from "../../src/core/padding/piece";
import { mm } from "../../src/core/units";
import {
  correctionSentence,
  doneKinds,
  doneSentence,
  levelList,
  madeOfSentence,
  newsSentence,
  overSentence,
  restSentence,
  worthSentence,
} from "../../src/ui/text/learning";

describe("the worth of a layer", () => {
  test("in tenths of a millimetre, and beside inches in sixteenths as well", () => {
    expect(worthSentence({ layer: mm(6.82), least: mm(6.2), most: mm(7.44) }, "cm", "read")).toBe(
      "One layer is worth about 6.8 mm: between 6.2 and 7.4, nine times in ten.",
    );
    expect(worthSentence({ layer: mm(7.54), least: mm(6.5), most: mm(8.7) }, "in", "read")).toBe(
      "One layer is worth about 5/16 in (7.5 mm): between 6.5 and 8.7 mm, nine times in ten.",
    );
  });
});

test("before anything was read a layer only may be worth it", () => {
  expect(worthSentence({ layer: mm(6), least: mm(3), most: mm(12) }, "cm", "guessed")).toMatch(
    /^One layer may be worth/,
  );
});

describe("news", () => {
  test("says how many, where and why in one sentence", () => {
    const change = { kind: "fewer", layers: 2, zone: "front", level: "waist", because: "thicker" } as const;
    expect(newsSentence(change)).toBe("Two fewer front layers at the waist: your batting is thicker than expected.");
    expect(newsSentence({ ...change, kind: "more", layers: 1, zone: "round", because: "thinner" })).toBe(
      "One more layer all the way round at the waist: your batting is thinner than expected.",
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
    expect(all).toHaveLength(7 * 5 * 2 * 3 * 3);
    for (const sentence of all) expect(sentence).toMatch(/^[A-Z0-9][^#]*layers? ?[^#]*: [a-z][^#.]*\.$/);
  });
});

describe("where to rest", () => {
  test("pin so far and read there; read at once; the last round", () => {
    const levels = levelList(["waist", "highHip"], 5);
    expect(restSentence({ upTo: 7, isLast: false, levels })).toBe(
      "Pin up to piece 7, then read the waist and the high hip.",
    );
    expect(restSentence({ upTo: null, isLast: false, levels })).toBe(
      "Read the waist and the high hip now, before you pin any more.",
    );
    expect(restSentence({ upTo: 12, isLast: true, levels: levelList(levelNames, 5) })).toBe(
      "Pin the rest, up to piece 12, then read every level.",
    );
    expect(restSentence({ upTo: null, isLast: true, levels: levelList(levelNames, 5) })).toBe(
      "Every piece is on: read every level once more.",
    );
  });
});

describe("corrections", () => {
  const told = { part: "front", over: "1 cm" } as const;
  const base = { level: "waist", half: "front", told, piece: "Front piece 5" } as const;
  test("say how far over, and which piece to peel, trim or pull thin", () => {
    expect(overSentence({ ...base, how: { kind: "peel" } })).toBe("The waist reads 1 cm over in front.");
    const allRound = { part: "girth", over: "1.5 cm" } as const;
    expect(overSentence({ ...base, told: allRound, how: { kind: "peel" } })).toBe("The waist reads 1.5 cm over.");
    expect(overSentence({ ...base, told: null, how: { kind: "peel" } })).toBe("The waist may be over in front.");
    expect(correctionSentence({ ...base, how: { kind: "peel" } })).toBe("Take front piece 5 off again.");
    expect(correctionSentence({ ...base, how: { kind: "trim", eachSide: "12 mm", reach: "60 mm" } })).toBe(
      "Trim front piece 5 by 12 mm on each side at the waist line, running out to nothing 60 mm above and below it.",
    );
    expect(correctionSentence({ ...base, how: { kind: "pullThin" } })).toContain(
      "Pull front piece 5 thin in front at the waist line",
    );
  });
});

describe("what a piece can be made of", () => {
  test("a new one, its own, or another trimmed", () => {
    expect(madeOfSentence("Front piece 9", null)).toBe("Front piece 9: cut a new one.");
    expect(madeOfSentence("Front piece 9", { name: "Front piece 9", fit: "asItIs" })).toBe(
      "Front piece 9: the one you have cut, as it is.",
    );
    expect(madeOfSentence("Front piece 9", { name: "Front piece 8", fit: "trim" })).toBe(
      "Front piece 9: the front piece 8 you have cut, trimmed to the new outline.",
    );
  });
});

test("each state of a level has words of its own, and what was not read never says that it is there", () => {
  for (const standing of ["read", "expected"] as const) {
    const sentences = doneKinds.map((kind) => doneSentence(kind, "12 mm", "frontArc", standing));
    expect(new Set(sentences).size).toBe(doneKinds.length);
  }
  expect(doneSentence("over", "12 mm", "frontArc", "read")).toBe("over: 12 mm too much in front");
  expect(doneSentence("there", "12 mm", "frontArc", "read")).toBe("there");
  expect(doneSentence("there", "12 mm", "frontArc", "expected")).toBe("should be there");
});
