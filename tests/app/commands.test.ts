import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { apply, type Command, readingDraftKey } from "../../src/app/session/commands";
import { measurementNames } from "../../src/core/body/vocabulary";
import { battingRoles } from "../../src/core/material";
import { type Fitting, writeFitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import { newFitting } from "../../src/app/session/newFitting";

const at = "2026-01-02T03:04:05.000Z";
const empty = newFitting("in");

const measure = (text: string, from: Fitting = empty): Fitting =>
  apply(from, { does: "measure", whose: "body", name: "waistGirth", text });

describe("a length as it was typed", () => {
  test("that can be read becomes an entry, trimmed and otherwise as typed", () => {
    expect(measure(" 36 3/4 ").body.waistGirth).toBe("36 3/4");
    expect(measure("93,5 cm").body.waistGirth).toBe("93,5 cm");
  });

  test("that cannot be read is kept as a draft, to the letter, and leaves the entry alone", () => {
    const before = measure("36 3/4");
    const after = measure(" 36 3/ 4 or so", before);
    expect(after.body.waistGirth).toBe("36 3/4");
    expect(after.drafts.body.waistGirth).toBe(" 36 3/ 4 or so");
  });

  test("that is empty takes the entry away, and the draft with it", () => {
    const after = measure("  ", measure("thirty", measure("36")));
    expect(after.body.waistGirth).toBeUndefined();
    expect(after.drafts.body).toEqual({});
  });

  test("that is the same again gives the very same fitting back", () => {
    const before = measure("36 3/4");
    expect(measure("36 3/4", before)).toBe(before);
  });

  test("of the form lies beside its table", () => {
    const after = apply(empty, { does: "measure", whose: "form", name: "waistGirth", text: "28" });
    expect(after.form).toEqual({ table: "misses", waistGirth: "28" });
  });
});

describe("a reading of the padded form", () => {
  test("is added to the work with its moment; one that cannot be read waits as a draft", () => {
    const kept = apply(empty, { does: "read", name: "waistGirth", text: "30 1/2", at });
    expect(kept.work).toEqual([{ did: "measured", readings: { waistGirth: "30 1/2" }, at }]);
    const waiting = apply(kept, { does: "read", name: "waistGirth", text: "30 1/", at });
    expect(waiting.work).toBe(kept.work);
    expect(waiting.drafts.other[readingDraftKey("waistGirth")]).toBe("30 1/");
  });
});

describe("the form", () => {
  test("keeps what was typed of it when another table or no table is chosen", () => {
    const typed = apply(empty, { does: "measure", whose: "form", name: "bustGirth", text: "36" });
    const sized = apply(typed, { does: "chooseForm", table: "petite", size: "10" });
    expect(sized.form).toEqual({ bustGirth: "36", table: "petite", size: "10" });
    expect(apply(sized, { does: "chooseForm", table: null, size: "10" }).form).toEqual({ bustGirth: "36" });
  });
});

describe("a second batting", () => {
  const thin = { name: "needled cotton", layerThickness: "2.5 mm" } as const;
  const two = apply(empty, { does: "changeFinishingBatting", batting: thin });
  const typed = (from: Fitting, text: string): Fitting => apply(from, { does: "setLayer", role: "finishing", text });

  test("is named and measured for itself, and the first stays as it is", () => {
    const named = apply(two, { does: "nameBatting", role: "finishing", name: "felt" });
    expect(typed(named, " 3 mm ").finishingBatting).toEqual({ name: "felt", layerThickness: "3 mm" });
    expect(typed(named, "3 mm").batting).toBe(empty.batting);
  });

  test("keeps what cannot be read as a draft, and drops the draft once it is read, chosen anew or taken away", () => {
    const draft = typed(two, "thin ish");
    expect(draft.finishingBatting).toEqual(thin);
    expect(Object.values(draft.drafts.other)).toEqual(["thin ish"]);
    expect(typed(draft, "3 mm").drafts.other).toEqual({});
    expect(apply(draft, { does: "changeFinishingBatting", batting: thin }).drafts.other).toEqual({});
    expect(apply(draft, { does: "changeFinishingBatting", batting: null })).toEqual(empty);
  });

  test("that is not there cannot be changed", () => {
    expect(apply(empty, { does: "nameBatting", role: "finishing", name: "felt" })).toEqual(empty);
    expect(typed(empty, "3 mm")).toEqual(empty);
  });

  test("does not mix its draft with that of the first", () => {
    const first = apply(two, { does: "setLayer", role: "building", text: "thick" });
    expect(Object.values(typed(first, "thin").drafts.other).toSorted()).toEqual(["thick", "thin"]);
    expect(apply(first, { does: "changeFinishingBatting", batting: null }).drafts.other).toEqual(first.drafts.other);
  });
});

describe("whatever is done", () => {
  const commands = fc.oneof<fc.Arbitrary<Command>[]>(
    fc.record({
      does: fc.constant("measure" as const),
      whose: fc.constantFrom("body" as const, "form" as const),
      name: fc.constantFrom(...measurementNames),
      text: fc.oneof(fc.string({ maxLength: 60 }), fc.constantFrom("36", "36 3/4", "93,5 cm", "", "36 3/")),
    }),
    fc.record({
      does: fc.constant("read" as const),
      name: fc.constantFrom(...measurementNames),
      text: fc.oneof(fc.string({ maxLength: 60 }), fc.constantFrom("36", "36 3/4", "x")),
      at: fc.constant(at),
    }),
    fc.record({ does: fc.constant("changeUnit" as const), unit: fc.constantFrom("in" as const, "cm" as const) }),
    fc.record({
      does: fc.constant("setLayer" as const),
      role: fc.constantFrom(...battingRoles),
      text: fc.constantFrom("6 mm", "1/4", "thick", ""),
    }),
    fc.record({
      does: fc.constant("changeFinishingBatting" as const),
      batting: fc.constantFrom({ name: "needled cotton", layerThickness: "2.5 mm" }, null),
    }),
    fc.record({ does: fc.constant("rename" as const), title: fc.string({ maxLength: 50 }) }),
    fc.record({
      does: fc.constant("chooseForm" as const),
      table: fc.constantFrom("misses", "petite", null),
      size: fc.constantFrom("8", null),
    }),
  );

  test("the fitting can be written and read again, to the last draft", () => {
    let kept = 0;
    fc.assert(
      fc.property(fc.array(commands, { maxLength: 12 }), (list) => {
        const fitting = list.reduce(apply, empty);
        kept += Object.keys(fitting.body).length + Object.keys(fitting.drafts.body).length + fitting.work.length;
        const again = readFitting(JSON.parse(JSON.stringify(writeFitting(fitting))));
        expect(again).toEqual({ ok: true, value: fitting });
      }),
    );
    expect(kept).toBeGreaterThan(20);
  });
});
