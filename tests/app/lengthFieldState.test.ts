import { describe, expect, test, vi } from "vitest";
import type { LengthUnit } from "../../src/core/lengthText";
import { tapeStep } from "../../src/core/lengthText";
import { entryText, lengthFieldState } from "../../src/app/session/lengthFieldState";

const field = (entry: string | number | undefined, draft: string | undefined, unit: LengthUnit = "in") => {
  const onDraft = vi.fn();
  const onCommit = vi.fn();
  return { ...lengthFieldState({ entry, draft, unit, step: tapeStep[unit], onDraft, onCommit }), onDraft, onCommit };
};

describe("what a field shows", () => {
  test("an entry of the unit at hand as it was typed", () => {
    expect(entryText("36 3/4", "in", "1/8 in")).toBe("36 3/4");
    expect(entryText("36.7 in", "in", "1/8 in")).toBe("36.7");
    expect(entryText('36 3/4"', "in", "1/8 in")).toBe("36 3/4");
    expect(entryText(93.2, "cm", "0.5 cm")).toBe("93.2");
    expect(entryText("93,2 cm", "cm", "0.5 cm")).toBe("93,2");
  });
  test("an entry of another unit written anew", () => {
    expect(entryText("36 3/4 in", "cm", "0.5 cm")).toBe("93.5");
    expect(entryText("93.5 cm", "in", "1/8 in")).toBe("36 3/4");
    expect(entryText("978 mm", "in", "1/8 in")).toBe("38 1/2");
  });
  test("nothing for nothing", () => {
    expect(entryText(undefined, "in", "1/8 in")).toBe("");
    expect(field(undefined, undefined).meaning).toBeNull();
    expect(field(undefined, "  ").meaning).toBeNull();
  });
  test("a draft before an entry", () => {
    const state = field("36", "37 1");
    expect(state.text).toBe("37 1");
    expect(state.isDraft).toBe(true);
  });
});

describe("what a field understands", () => {
  test("a length, and that it is in another unit", () => {
    const state = field(undefined, "93,5 cm");
    expect(state.meaning).toEqual({ ok: true, value: 935 });
    expect(state.isForeign).toBe(true);
    expect(field(undefined, "36 3/4").isForeign).toBe(false);
    expect(field(undefined, "36 3/4 in").isForeign).toBe(false);
  });
  test("that a text is none", () => {
    expect(field(undefined, "as before").meaning?.ok).toBe(false);
  });
});

describe("committing", () => {
  test("hands over the draft, and nothing where nothing was typed", () => {
    const typed = field("36", "37");
    typed.commit();
    expect(typed.onCommit).toHaveBeenCalledWith("37");
    const untouched = field("36", undefined);
    untouched.commit();
    expect(untouched.onCommit).not.toHaveBeenCalled();
  });
});
