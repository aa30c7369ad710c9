import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import {
  fineStep,
  formatLength,
  type LengthStep,
  type LengthUnit,
  lengthFromNumber,
  lengthSteps,
  lengthUnits,
  parseLength,
  roundLength,
  tapeStep,
} from "../../src/core/lengthText";
import { mm } from "../../src/core/units";

const steps = Object.keys(lengthSteps) as LengthStep[];
// Hundreds of cases on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const random = { seed: 20260101, numRuns: 2000 };

describe("lengths as people write them", () => {
  test.each([
    ["38 1/2", "in", 977.9],
    ["38½", "in", 977.9],
    ["38 ½", "in", 977.9],
    ['38-1/2"', "cm", 977.9],
    ["38 - 1/2 in", "cm", 977.9],
    ["38–1⁄2 in.", "cm", 977.9],
    ["38.5 in", "cm", 977.9],
    ["38.5 Inches", "cm", 977.9],
    ["38″", "cm", 965.2],
    ["38''", "cm", 965.2],
    ["38”", "cm", 965.2],
    ["38.", "in", 965.2],
    ["38.125", "in", 968.375],
    ["38,125 in", "cm", 968.375],
    ["3/8", "in", 9.525],
    ["⅜ in", "cm", 9.525],
    ["77/2", "in", 977.9],
    ["97,8 cm", "in", 978],
    ["97.8cm", "in", 978],
    ["0.635 cm", "in", 6.35],
    ["38 1/2 cm", "in", 385],
    ["978 mm", "in", 978],
    ["978", "mm", 978],
    [".5", "cm", 5],
    ["  97,8\u00a0centimetres ", "in", 978],
    ["３８", "in", 965.2],
  ] as const)("%s (a bare number in %s) is %f mm", (text, unit, length) => {
    expect(parseLength(text, unit)).toEqual({ ok: true, value: length });
  });

  test.each([
    ["", "empty"],
    ["   ", "empty"],
    ["waist", "notALength"],
    ["NaN", "notALength"],
    ["1e9", "notALength"],
    ["Infinity", "notALength"],
    ["38 1/2 1/2", "notALength"],
    ["38.5 1/2", "notALength"],
    ["1.234,5", "notALength"],
    ["1 005", "notALength"],
    ["5'10\"", "notALength"],
    ["38 in 5", "notALength"],
    ["38 -", "notALength"],
    ["--38", "notALength"],
    ["38 1/0", "badFraction"],
    ["38 9/8", "badFraction"],
    ["38 0/8", "badFraction"],
    ["38 1/100", "badFraction"],
    ["0", "notPositive"],
    ["0.00001", "notPositive"],
    ["-38", "notPositive"],
    ["−38 cm", "notPositive"],
    ["5 ft", "unknownUnit"],
    ["38 cmm", "unknownUnit"],
    ["99999999999", "tooLong"],
    ["394 in", "tooLong"],
    ["1,005 mm", "ambiguous"],
    ["1.005 mm", "ambiguous"],
  ])("%s is refused: %s", (text, code) => {
    const read = parseLength(text, "in");
    expect(read).toMatchObject({ ok: false, problem: { code, unit: "in", read: text } });
  });

  test("an ambiguous text says both readings", () => {
    expect(parseLength("1,005", "mm")).toMatchObject({ problem: { either: 1.005, or: 1005 } });
  });

  test("what was read is shortened, and a novel is not searched", () => {
    const read = parseLength("9".repeat(1_000_000), "cm");
    expect(read).toMatchObject({ ok: false, problem: { code: "notALength" } });
    expect(!read.ok && read.problem.read.length).toBeLessThan(50);
  });

  test("any text gives a length or a code, never a throw, and a length in range", () => {
    const seen = { lengths: 0, problems: 0 };
    const nearly = fc
      .tuple(
        fc.nat(2000),
        fc.constantFrom("", ".5", ",25", " 1/2", "-3/8", "½", " 7/0"),
        fc.constantFrom("", " cm", '"', "in", " mm", "m"),
      )
      .map((parts) => parts.join(""));
    const hostile = fc.oneof(
      nearly,
      fc.string(),
      fc.stringMatching(/^[0-9 ./,½¼⅛"'inchcm-]{0,14}$/),
      fc.double().map(String),
    );
    fc.assert(
      fc.property(hostile, fc.constantFrom(...lengthUnits), (text, unit) => {
        const read = parseLength(text, unit);
        seen[read.ok ? "lengths" : "problems"] += 1;
        return read.ok ? read.value > 0 && read.value <= 10_000 : read.problem.code.length > 0;
      }),
      random,
    );
    expect(Math.min(seen.lengths, seen.problems)).toBeGreaterThan(50);
  });
});

describe("bare numbers", () => {
  test.each([
    [38.5, "in", 977.9],
    [97.79, "cm", 977.9],
    [977.9, "mm", 977.9],
  ] as const)("%f %s is %f mm", (value, unit, length) => {
    expect(lengthFromNumber(value, unit)).toEqual({ ok: true, value: length });
  });

  test.each([
    [Number.NaN, "notALength"],
    [0, "notPositive"],
    [-3, "notPositive"],
    [Number.NEGATIVE_INFINITY, "notPositive"],
    [1e9, "tooLong"],
    [Number.POSITIVE_INFINITY, "tooLong"],
  ])("%f is refused: %s", (value, code) => {
    expect(lengthFromNumber(value, "cm")).toMatchObject({ ok: false, problem: { code } });
  });
});

describe("writing", () => {
  test.each([
    [977.9, "1/8 in", "38 1/2 in"],
    [965.2, "1/8 in", "38 in"],
    [12.7, "1/8 in", "1/2 in"],
    [1.5875, "1/16 in", "1/16 in"],
    [978, "0.5 cm", "98 cm"],
    [977, "0.5 cm", "97.5 cm"],
    [977.9, "0.1 cm", "97.8 cm"],
    [977.9, "1 mm", "978 mm"],
    [0, "1/8 in", "0 in"],
    [0.4, "1 mm", "0 mm"],
    [-38.1, "1/8 in", "-1 1/2 in"],
    [-0.1, "0.1 cm", "0 cm"],
  ] as const)("%f to %s is %s", (length, step, text) => {
    expect(formatLength(mm(length), step)).toBe(text);
  });

  test("bare leaves the unit to the field", () => {
    expect(formatLength(mm(977.9), "1/8 in", "bare")).toBe("38 1/2");
  });
});

describe("laws", () => {
  const length = fc.double({ min: 0.8, max: 3000, noNaN: true }).map(mm);
  const step = fc.constantFrom(...steps);

  test("parse(format(x)) is x rounded to the step, with and without its unit, whatever unit is chosen", () => {
    let seen = 0;
    fc.assert(
      fc.property(length, step, fc.constantFrom(...lengthUnits), (x, by, chosen) => {
        const rounded = roundLength(x, by);
        fc.pre(rounded > 0);
        seen += 1;
        expect(parseLength(formatLength(x, by), chosen)).toEqual({ ok: true, value: rounded });
        expect(parseLength(formatLength(x, by, "bare"), lengthSteps[by].unit)).toEqual({ ok: true, value: rounded });
      }),
      random,
    );
    expect(seen).toBeGreaterThan(1500);
  });

  test("rounding moves a length by half a step at most, and once only", () => {
    const half: { readonly [unit in LengthUnit]: number } = { in: 12.7, cm: 5, mm: 0.5 };
    fc.assert(
      fc.property(length, step, (x, by) => {
        const { unit, parts } = lengthSteps[by];
        const rounded = roundLength(x, by);
        return Math.abs(rounded - x) <= half[unit] / parts + 0.001 && roundLength(rounded, by) === rounded;
      }),
      random,
    );
  });

  test("the same length in inches and in centimetres is the same length (law 7)", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1600 }), (sixteenths) => {
        const inches = parseLength(`${sixteenths}/16 in`, "cm");
        const centimetres = parseLength(`${(sixteenths * 2.54) / 16} cm`, "in");
        expect(inches).toEqual(centimetres);
      }),
      random,
    );
  });

  test("every unit has its steps", () => {
    for (const unit of lengthUnits) {
      expect(lengthSteps[tapeStep[unit]].unit).toBe(unit);
      expect(lengthSteps[fineStep[unit]].unit).toBe(unit);
    }
  });
});

/** Seen to be refused before digits of other scripts were read. */
describe("digits of other scripts", () => {
  test.each(["٣٨", "۳۸", "३८", "３８", "๓๘", "𑛓𑛘", "𑛝𑛢", "٣٨٫٠"])("%s is 38", (text) => {
    expect(parseLength(text, "mm")).toEqual({ ok: true, value: 38 });
  });

  test("with a fraction beside them, and with a unit", () => {
    expect(parseLength("٣٨ ١/٢", "in")).toEqual(parseLength("38 1/2", "in"));
    expect(parseLength("३८½ in", "cm")).toEqual(parseLength("38 1/2 in", "cm"));
    expect(parseLength("٩٧٫٨", "cm")).toEqual(parseLength("97.8", "cm"));
  });

  test("every decimal digit there is has a value of its own", () => {
    const digits = Array.from({ length: 0x20000 }, (_, code) => String.fromCodePoint(code)).filter((one) =>
      /^\p{Nd}$/u.test(one),
    );
    expect(digits.length).toBeGreaterThan(600);
    const values = digits.map((digit) => {
      const read = parseLength(`1${digit}`, "mm");
      return read.ok ? read.value - 10 : -1;
    });
    expect(values).toEqual(digits.map((_, i) => i % 10));
  });
});
