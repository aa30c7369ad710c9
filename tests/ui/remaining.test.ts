import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tapeAgreement } from "../../src/core/tolerances";
import { mm } from "../../src/core/units";
import { formatRemaining, remaining } from "../../src/ui/readout/remaining";
import { remainingSentence } from "../../src/ui/text/padding";

describe("what is left to go", () => {
  test("in words, for each way a reading can stand", () => {
    const say = (wanted: number, now: number) => {
      const { kind, amount } = remaining(mm(wanted), mm(now));
      return remainingSentence(kind, formatRemaining(amount, "cm"), "frontArc", true);
    };
    expect(say(500, 484)).toBe("16 mm to go in front");
    expect(say(500, 502)).toBe("there");
    expect(say(500, 503)).toBe("3 mm over: ease the last layer");
  });
  test("in eighths beside inches", () => {
    expect(formatRemaining(mm(16), "in")).toBe("5/8 in");
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
    );
    expect(Math.min(...Object.values(seen))).toBeGreaterThan(0);
  });
});
