import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatLength, roundLength, tapeStep } from "../../../src/core/lengthText";
import { tapeAgreement } from "../../../src/core/tolerances";
import { mm } from "../../../src/core/units";
import { amountText, remaining, remainingText } from "../../../src/text/remaining";
import { remainingSentence, type Standing } from "../../../src/text/padding";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const say = (wanted: number, now: number, standing: Standing = "read"): string => {
  const { kind } = remaining(mm(wanted), mm(now));
  const amount = remainingText(mm(wanted), mm(now), "0.5 cm");
  return plain(remainingSentence(kind, amount, "frontArc", standing));
};

describe("what is left to go", () => {
  test("in words, for each way a reading can stand", () => {
    expect(say(500, 485)).toBe("1.5 cm to go in front");
    expect(say(500, 502)).toBe("on target");
    expect(say(500, 503)).toBe("0.5 cm over in front");
  });

  test("what nobody measured is never called on target", () => {
    expect(say(500, 502, "expected")).toBe("should be on target");
    expect(say(500, 502, "bare")).toBe("should be on target");
    expect(say(500, 515, "expected")).toBe("perhaps 1.5 cm over: measure it");
    expect(say(500, 515, "bare")).toBe("1.5 cm over in front");
    expect(say(500, 485, "expected")).toBe("1.5 cm to go in front");
  });

  test("there is exactly what lies within the agreement of two tapes", () => {
    const seen = { toGo: 0, there: 0, over: 0 };
    fc.assert(
      fc.property(fc.double({ min: -40, max: 40, noNaN: true }), (off) => {
        const { kind, amount } = remaining(mm(900), mm(900 + off));
        seen[kind] += 1;
        expect(kind === "there").toBe(Math.abs(900 - (900 + off)) < tapeAgreement);
        if (kind !== "there") expect(kind).toBe(off < 0 ? "toGo" : "over");
        expect(amount).toBeGreaterThanOrEqual(0);
      }),
      // So many that each of the three kinds comes up in any run.
      { numRuns: 2000 },
    );
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0);
  });
});

describe("the amount", () => {
  test("is the difference of the two lengths as they are shown, and never nothing", () => {
    let same = 0;
    const length = fc.double({ min: 700, max: 760, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.constantFrom("in", "cm", "mm"), (wanted, now, unit) => {
        const step = tapeStep[unit];
        const shown = Math.abs(roundLength(mm(wanted), step) - roundLength(mm(now), step));
        const text = plain(remainingText(mm(wanted), mm(now), step));
        if (formatLength(mm(shown), step, "bare") === "0") {
          same += 1;
          expect(text).toBe({ in: "1/8 in", cm: "0.5 cm", mm: "1 mm" }[unit]);
        } else expect(text).toBe(formatLength(mm(shown), step));
      }),
    );
    expect(same).toBeGreaterThan(0);
  });

  test("is written at the step of every other length", () => {
    expect(plain(amountText(mm(16), "1/8 in"))).toBe("5/8 in");
    expect(plain(amountText(mm(16), "1/16 in"))).toBe("5/8 in");
    expect(plain(amountText(mm(2), "0.5 cm"))).toBe("0.5 cm");
  });
});
