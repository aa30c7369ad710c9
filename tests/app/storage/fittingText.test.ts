import { describe, expect, it } from "vitest";
import { fittingText, isReadBack, sortedText } from "../../../src/app/storage/fittingText";
import { type Fitting, type WorkEntry, writeFitting } from "../../../src/document/fitting";
import { sampleFitting } from "./sampleFittings";

const at = "2026-05-02T08:00:00.000Z";
const read = (girth: string): WorkEntry => ({ did: "measured", readings: { waistGirth: girth }, at });
const withWork = (work: readonly WorkEntry[], more: Partial<Fitting> = {}): Fitting => ({
  ...sampleFitting,
  ...more,
  work,
});
const typed = (text: string): Partial<Fitting> => ({
  drafts: { body: {}, form: {}, other: { "padded waistGirth": text } },
});

describe("the text of a fitting", () => {
  it.each([
    ["nothing done", withWork([])],
    ["a log", withWork([{ did: "prepared", what: "form", at }, read("70"), read("70,5")])],
    ["texts that are typed", withWork([read("70")], typed("7"))],
    [
      "keys of others, numbers among them",
      withWork([read("70")], { extra: { b: [2, { z: 1, a: null }], "10": 1, "9": 2, a: '\u2028"' } }),
    ],
    ["parts that are left out", withWork([read("70")], { createdAt: undefined } as unknown as Partial<Fitting>)],
  ])("is the sorted text of its value, whole or part by part: %s", (_, fitting) => {
    expect(fittingText(fitting)).toBe(sortedText(writeFitting(fitting)));
    // Once more, with every part written before.
    expect(fittingText({ ...fitting, title: "another" })).toBe(
      sortedText(writeFitting({ ...fitting, title: "another" })),
    );
  });
});

/** Seen to fail where what followed the entries read back before was not looked at, nor the unit, nor how long it is as a whole. */
describe("a fitting is read back although most of its log was read back before", () => {
  const before = [read("900"), ...Array.from({ length: 100 }, () => read("70"))];
  const begin = () => expect(isReadBack(withWork(before))).toBe(true);

  it("with a letter more, with an entry more, and with one entry less", () => {
    begin();
    expect(isReadBack(withWork(before, typed("7")))).toBe(true);
    expect(isReadBack(withWork([...before, read("72")]))).toBe(true);
    expect(isReadBack(withWork(before.slice(0, 1)))).toBe(true);
  });

  it.each([
    ["a draft too long", withWork(before, typed("7".repeat(201)))],
    ["a title too long", withWork(before, { title: "x".repeat(201) })],
    ["an entry of the log that is no length", withWork([...before, read("wide")])],
    ["such an entry before the others", withWork([read("wide"), ...before])],
    ["bare numbers that are no lengths in the unit of now", withWork(before, { unit: "in" })],
    [
      "more characters than a file may have, its log counted",
      withWork(before, { extra: { big: "x".repeat(3_997_000) } }),
    ],
    ["more of the log than is read", withWork([...before, ...Array.from({ length: 10_001 }, () => read("70"))])],
  ])("and not with %s", (_, fitting) => {
    begin();
    expect(isReadBack(fitting)).toBe(false);
    // Nothing of what could not be read back counts as read back.
    expect(isReadBack(fitting)).toBe(false);
  });
});
