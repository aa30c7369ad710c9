import { describe, expect, test } from "vitest";
import { contradictionCodes, type MeasurementProblem, pleaseCheckCodes } from "../../../src/core/body/plausibility";
import { type LengthProblem, parseLength } from "../../../src/core/lengthText";
import { mm } from "../../../src/core/units";
import type { FittingProblem } from "../../../src/document/fittingProblem";
import { fittingProblemText, lengthProblemText, measurementProblemText } from "../../../src/text/problems";

const sentence = /^[A-Z“].*[.?]$/;
const expectSentence = (text: string) => {
  expect(text).toMatch(/[.?]$/);
  expect(text).not.toMatch(/undefined|NaN|\[object|\s\s/);
};

describe("lengths", () => {
  test.each([
    ["", "Nothing was typed. Type a length, such as 34 3/4."],
    ["wide", "“wide” cannot be read as a length. Type one number, such as 34 3/4."],
    ["5 ft", "“ft” is not a unit this tool reads. Use in, cm or mm, such as 34 3/4."],
    ["-3", "“-3” is not more than zero. Type what the tape shows, such as 34 3/4."],
    ["1,005 mm", "“1,005 mm” can mean 1.005 mm or 1005 mm. Type it without the mark, or with another unit."],
    ["38 9/8", "The fraction in “38 9/8” cannot be read. Type a proper fraction, such as 34 3/4."],
    ["400", "“400” is longer than any tape; the most is 393 3/4 in. Check the unit."],
  ])("%s", (typed, text) => {
    const read = parseLength(typed, "in");
    expect(lengthProblemText((read as { problem: LengthProblem }).problem, "1/8 in")).toBe(text);
  });
});

describe("measurements", () => {
  /** What may be a slip names no range that a person lies outside of: it says what slip it would be. */
  const offersIt = new Set<string>([...pleaseCheckCodes, "impossible", "inchesAsCentimetres", "centimetresAsInches"]);
  /** Two or three that cannot all be right say so, and which to measure again; no range tells the person to lie in it. */
  const apart = new Set<string>([
    "arcDoesNotFitGirth",
    "arcsMissGirth",
    "quartersMissArc",
    "breadthDoesNotFitGirth",
    "heightDoesNotFitNape",
    "linesOutOfOrder",
  ]);
  const names = ["waistFrontArc", "waistBackArc", "waistGirth"] as const;
  const all = [...contradictionCodes, ...pleaseCheckCodes].map((code) => {
    const numbers = code === "missing" ? {} : { got: mm(812.8), expected: { least: mm(825.5), most: mm(838.2) } };
    return { whose: "body", severity: "contradiction", code, names, ...numbers } as unknown as MeasurementProblem;
  });

  test.each(all.map((problem) => [problem.code, problem] as const))(
    "%s: names the measurement, what was read and what it can be or what slip it would be, in either unit",
    (code, problem) => {
      const [inches, centimetres] = [
        measurementProblemText(problem, "1/8 in"),
        measurementProblemText(problem, "0.1 cm"),
      ];
      for (const text of [inches, centimetres]) {
        expect(text).toMatch(sentence);
        expectSentence(text);
        expect(text).toContain("front waist");
        expect(text.toLowerCase()).toContain("the person’s");
        expect(text).not.toMatch(/expected|\bshe\b|most lie/);
      }
      if (code === "missing" || code === "notALength") return;
      expect(inches).toContain("32 in");
      if (offersIt.has(code)) {
        if (code === "impossible") return expect(inches).toMatch(/no tape can read there\. Check the unit/);
        expect(inches).toMatch(/reads like (inches|centimeters) typed as|would read like this/);
        if (!code.includes("As")) expect(inches).toMatch(/it is right/);
        return;
      }
      if (apart.has(code))
        return expect(inches).toMatch(
          /(not go (together )?with the|where it cannot lie|not below the line).*\. .*[Mm]easure /,
        );
      expect(inches).toContain("33 in");
      expect(centimetres).toContain("81.3 cm");
      expect(centimetres).toContain("83.8 cm");
    },
  );

  test("no two problems share a sentence", () => {
    const texts = all.map((problem) => measurementProblemText(problem, "1/8 in"));
    expect(new Set(texts).size).toBe(texts.length);
  });
});

describe("files", () => {
  const all: readonly FittingProblem[] = [
    { path: [], code: "notJson" },
    { path: [], code: "tooLarge", what: "depth", most: 16 },
    { path: ["version"], code: "newerVersion", got: 2, newest: 1 },
    { path: [], code: "missing", key: "batting" },
    { path: ["body"], code: "unknownKey", key: "waist", nearest: "waistGirth" },
    { path: ["body"], code: "unknownKey", key: "xyzzy", nearest: null },
    { path: ["body", "waistGirth"], code: "wrongKind", got: "array", expected: ["number", "string"] },
    { path: ["work", 2, "plies"], code: "wrongKind", got: "number 0.5", expected: ["whole number"] },
    { path: ["unit"], code: "notAllowed", got: "ft", expected: ["cm", "in", "mm"] },
    { path: ["batting", "spread"], code: "outOfRange", got: "9", limit: "2", side: "atMost" },
    { path: ["body", "waistGirth"], code: "unreadableLength", problem: { code: "empty", read: "", unit: "cm" } },
    { path: ["form", "size"], code: "sizeWithoutTable", got: "8" },
    { path: ["form", "table"], code: "unknownTable", got: "x", expected: ["misses", "petite"] },
    { path: ["form", "size"], code: "unknownSize", got: "13", expected: ["14", "16"] },
    { path: ["form"], code: "tableLacks", got: "d5585-11-curvy", names: ["fullHipGirth"] },
  ];

  test.each(all.map((problem) => [problem.code, problem] as const))("%s says where and what", (_code, problem) => {
    const text = fittingProblemText(problem, "0.1 cm");
    expectSentence(text);
    if (problem.path.length > 0 && problem.code !== "newerVersion" && problem.code !== "tableLacks")
      expect(text).toContain(String(problem.path[0]));
  });

  test.each([
    [4, "body has “waist”, which this tool does not know. Did you mean “waistGirth”?"],
    [6, "body.waistGirth is a list; expected a number or a text."],
    [7, "work[2].plies is a number 0.5; expected a whole number."],
    [8, "unit is “ft”; expected “cm”, “in” or “mm”."],
    [14, "The size chart “d5585-11-curvy” does not give the full hip all around. Measure it on the form and add it."],
  ])("%#", (i, text) => {
    expect(fittingProblemText(all[i] as FittingProblem, "0.1 cm")).toBe(text);
  });
});
