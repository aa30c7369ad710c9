import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseLength } from "../../src/core/lengthText";
import { type digitKeys, eighthKeys, type PadKey, pressKey } from "../../src/ui/kit/field/FractionPad";

const pressed = (...keys: readonly PadKey[]): string =>
  keys.reduce((text, key, i) => pressKey(text, key, i === 0), "30 1/2");

describe("pressing keys one after the other", () => {
  test("whole inches, then eighths", () => {
    expect(pressed("3", "4", "3/4")).toBe("34 3/4");
  });
  test("centimetres, then a half", () => {
    expect(pressed("8", "7", ".5")).toBe("87.5");
  });
  test("another part takes the place of the first, the same one takes itself back", () => {
    expect(pressed("3", "4", "3/4", "7/8")).toBe("34 7/8");
    expect(pressed("3", "4", "3/4", "3/4")).toBe("34");
  });
  test("a digit after the part starts anew", () => {
    expect(pressed("3", "4", "3/4", "2")).toBe("2");
  });
  test("a part alone is a length as well", () => {
    expect(pressKey("", "5/8", true)).toBe("5/8");
    expect(pressKey("", ".5", true)).toBe("0.5");
  });
});

describe("taking back", () => {
  test("takes the whole part first, then a digit at a time, and nothing from nothing", () => {
    expect(pressKey("34 3/4", "back", false)).toBe("34");
    expect(pressKey("34", "back", false)).toBe("3");
    expect(pressKey("3", "back", false)).toBe("");
    expect(pressKey("", "back", false)).toBe("");
  });
  test("takes one letter from what was typed some other way", () => {
    expect(pressKey("93,5 cm", "back", false)).toBe("93,5 c");
  });
});

test("an untouched field starts anew at the first digit; a touched one goes on", () => {
  expect(pressKey("34", "2", true)).toBe("2");
  expect(pressKey("3", "4", false)).toBe("34");
  expect(pressKey("34.", "5", false)).toBe("34.5");
});

test("whatever digits and part are pressed, the text is that length", () => {
  let seen = 0;
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99 }), fc.constantFrom(...eighthKeys), (whole, part) => {
      const digits = String(whole).split("") as (typeof digitKeys)[number][];
      const text = pressed(...digits, part);
      const [over = 0, under = 1] = part.split("/").map(Number);
      const length = parseLength(text, "in");
      expect(length.ok && length.value).toBeCloseTo((whole + over / under) * 25.4, 2);
      seen += 1;
    }),
  );
  expect(seen).toBeGreaterThan(50);
});
