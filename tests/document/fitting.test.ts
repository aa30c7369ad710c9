import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { measurementNames } from "../../src/core/body/vocabulary";
import { lengthUnits } from "../../src/core/lengthText";
import {
  entryLength,
  type Fitting,
  fittingStep,
  newestVersion,
  withUnit,
  writeFitting,
} from "../../src/document/fitting";
import { readFitting, readFittingText } from "../../src/document/readFitting";
import { fittingMeasurements } from "../../src/document/fittingMeasurements";
import { mostAtOnce } from "../../src/document/fittingLimits";
import { jsonLimits } from "../../src/document/jsonLimits";

// Hundreds of cases on a busy machine.
vi.setConfig({ testTimeout: 60_000 });

const folder = (name: string) => resolve(import.meta.dirname, "../..", name);
const frozen = readFileSync(folder("tests/fixtures/fitting-1.json"), "utf8");
const demos = readdirSync(folder("shared/demo")).map((name) => readFileSync(folder(`shared/demo/${name}`), "utf8"));
const handWritten = {
  version: 1,
  unit: "in",
  body: { bustGirth: "35 1/2", waistGirth: 30, fullHipGirth: "98 cm" },
  form: { table: "misses", size: 8 },
  batting: { name: "wadding", layerThickness: "6 mm" },
};

const readOrThrow = (text: string): Fitting => {
  const read = readFittingText(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problem));
  return read.value;
};
const problemsOf = (file: unknown) => {
  const read = readFitting(file);
  return read.ok ? [] : read.problem;
};

describe("files that open", () => {
  test("the frozen file of version 1 opens and is written back key for key", () => {
    const fitting = readOrThrow(frozen);
    expect(fitting.body.waistGirth).toBe(31);
    expect(fitting.body.napeToWaist).toBe("16½");
    expect(fitting.work.map(({ did }) => did)).toEqual(["trial", "pinned", "measured", "unpinned"]);
    expect(fitting.drafts.body).toEqual({ apexToApex: "7 and a bit" });
    expect(fitting.extra).toEqual({ choir: { row: 2 } });
    expect(writeFitting(fitting)).toEqual(JSON.parse(frozen));
  });

  test("the demos open and are written back key for key", () => {
    expect(demos.length).toBeGreaterThanOrEqual(4);
    for (const demo of demos) expect(writeFitting(readOrThrow(demo))).toEqual(JSON.parse(demo));
  });

  test("a hand-written file needs five keys, and gets the rest", () => {
    const fitting = readOrThrow(JSON.stringify(handWritten));
    expect(fitting).toMatchObject({
      title: "",
      notes: "",
      work: [],
      drafts: { body: {}, form: {}, other: {} },
      settings: { roundInches: "1/8" },
    });
    expect(fittingStep(fitting)).toBe("1/8 in");
    expect(writeFitting(fitting)).toEqual(handWritten);
  });
});

test("lengths are written as finely as their unit is read off a tape", () => {
  const fitting = readOrThrow(frozen);
  expect(lengthUnits.map((unit) => fittingStep({ ...fitting, unit }))).toEqual(["0.5 cm", "1/16 in", "1 mm"]);
});

describe("files that do not, and why", () => {
  test.each([
    ["no object", null, { code: "wrongKind", got: "null", expected: ["object"] }],
    ["a list", [], { code: "wrongKind", got: "array" }],
    [
      "a newer version",
      { ...handWritten, version: 2 },
      { path: ["version"], code: "newerVersion", got: 2, newest: newestVersion },
    ],
    [
      "a version of letters",
      { ...handWritten, version: "1" },
      { path: ["version"], code: "notAllowed", got: "1", expected: ["1"] },
    ],
    [
      "a unit nobody knows",
      { ...handWritten, unit: "ft" },
      { path: ["unit"], code: "notAllowed", got: "ft", expected: ["cm", "in", "mm"] },
    ],
    ["a form forgotten", { ...handWritten, form: undefined }, { path: [], code: "missing", key: "form" }],
    [
      "a thickness forgotten",
      { ...handWritten, batting: { name: "wadding" } },
      { path: ["batting"], code: "missing", key: "layerThickness" },
    ],
    [
      "a slip at the top",
      { ...handWritten, finshingBatting: {} },
      { path: [], code: "unknownKey", key: "finshingBatting", nearest: "finishingBatting" },
    ],
    [
      "another case",
      { ...handWritten, body: { ...handWritten.body, WaistFrontArc: 1 } },
      { path: ["body"], code: "unknownKey", nearest: "waistFrontArc" },
    ],
    [
      "half a name",
      { ...handWritten, body: { ...handWritten.body, underbust: 30 } },
      { path: ["body"], code: "unknownKey", nearest: "underbustGirth" },
    ],
    [
      "another word",
      { ...handWritten, form: { ...handWritten.form, hipGirth: 40 } },
      { path: ["form"], code: "unknownKey", nearest: "fullHipGirth" },
    ],
    [
      "nothing like it",
      { ...handWritten, body: { ...handWritten.body, xyzzy: 1 } },
      { path: ["body"], code: "unknownKey", key: "xyzzy", nearest: null },
    ],
    [
      "a text nobody can read",
      { ...handWritten, body: { ...handWritten.body, bustGirth: "wide" } },
      { path: ["body", "bustGirth"], code: "unreadableLength", problem: { code: "notALength", read: "wide" } },
    ],
    [
      "a length below nothing",
      { ...handWritten, body: { ...handWritten.body, bustGirth: -38 } },
      { path: ["body", "bustGirth"], code: "unreadableLength", problem: { code: "notPositive" } },
    ],
    [
      "a length to the moon",
      { ...handWritten, body: { ...handWritten.body, bustGirth: 1e9 } },
      { path: ["body", "bustGirth"], code: "unreadableLength", problem: { code: "tooLong" } },
    ],
    [
      "a length of no kind",
      { ...handWritten, body: { ...handWritten.body, bustGirth: [38] } },
      { path: ["body", "bustGirth"], code: "wrongKind", got: "array", expected: ["number", "string"] },
    ],
    [
      "a reading in the work",
      { ...handWritten, work: [{ did: "measured", readings: { waistGirth: "?" } }] },
      { path: ["work", 0, "readings", "waistGirth"], code: "unreadableLength" },
    ],
    [
      "a trial's reading",
      { ...handWritten, work: [{ did: "trial", batting: "", level: "waist", plies: 1, before: 30, after: "" }] },
      { path: ["work", 0, "after"], code: "unreadableLength" },
    ],
    [
      "work of no kind",
      { ...handWritten, work: [{ did: "rested" }] },
      { path: ["work", 0, "did"], code: "notAllowed", got: "rested" },
    ],
    [
      "half a ply",
      { ...handWritten, work: [{ did: "trial", batting: "", level: "waist", plies: 0.5, before: 30, after: 31 }] },
      { path: ["work", 0, "plies"], code: "wrongKind", expected: ["whole number"] },
    ],
    [
      "a spread beyond belief",
      { ...handWritten, batting: { ...handWritten.batting, spread: 9 } },
      { path: ["batting", "spread"], code: "outOfRange", limit: "2", side: "atMost" },
    ],
    [
      "more pieces basted at once than there are",
      { ...handWritten, work: [{ did: "basted", pieceIds: Array(mostAtOnce + 1).fill("front-1") }] },
      { path: ["work", 0, "pieceIds"], code: "tooMany", got: mostAtOnce + 1, most: mostAtOnce },
    ],
    [
      "a title without end",
      { ...handWritten, title: "x".repeat(201) },
      { path: ["title"], code: "outOfRange", got: `${"x".repeat(40)}…`, limit: "200", side: "atMost" },
    ],
  ] as const)("%s", (_what, file, problem) => {
    expect(problemsOf(file)).toHaveLength(1);
    expect(problemsOf(file)[0]).toMatchObject(problem);
  });

  test("every problem is told, not only the first", () => {
    const file = { ...handWritten, unit: "ft", body: { waist: 1, bust: 2 } };
    expect(problemsOf(file).map(({ code }) => code)).toEqual(["notAllowed", "unknownKey", "unknownKey"]);
  });

  test("of names that nobody knows, as many are told as anyone reads", () => {
    const unknown = Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`xyzzy${i}`, 1]));
    expect(problemsOf({ ...handWritten, body: unknown })).toHaveLength(50);
  });

  test("no JSON, and text beyond the limit", () => {
    expect(readFittingText("{")).toEqual({ ok: false, problem: [{ path: [], code: "notJson" }] });
    expect(readFittingText(`"${"x".repeat(jsonLimits.characters)}"`)).toMatchObject({
      problem: [{ code: "tooLarge", what: "characters" }],
    });
  });

  test("white space between values counts for nothing", () => {
    const text = JSON.stringify(handWritten);
    const spaced = text.replaceAll(",", `,${" ".repeat(jsonLimits.characters / 4)}`);
    expect(spaced.length).toBeGreaterThan(jsonLimits.characters);
    expect(readFittingText(spaced)).toEqual(readFittingText(text));
    expect(readFittingText(text).ok).toBe(true);
  });

  test.each([
    ["depth", `${"[".repeat(50_000)}${"]".repeat(50_000)}`],
    ["depth", `{"version":1,"extra":${'{"a":'.repeat(20)}1${"}".repeat(20)}}`],
    ["values", `[${"0,".repeat(jsonLimits.values)}0]`],
    ["names", `{${Array.from({ length: jsonLimits.names + 1 }, (_, i) => `"n${i}":0`).join()}}`],
  ])("too much %s stops before anything else reads it", (what, text) => {
    expect(readFittingText(text)).toEqual({
      ok: false,
      problem: [expect.objectContaining({ code: "tooLarge", what })],
    });
  });
});

describe("laws", () => {
  const random = { seed: 20260103, numRuns: 150 };
  const text = fc.string({ maxLength: 12 });
  const entry = fc.oneof(
    fc.integer({ min: 1, max: 390 }),
    fc.integer({ min: 1, max: 3000 }).map((eighths) => eighths / 8),
    fc
      .tuple(
        fc.integer({ min: 1, max: 99 }),
        fc.constantFrom("", " 1/2", "½", "-3/8", ",5", ".25"),
        fc.constantFrom("", " in", " cm", '"', "mm"),
      )
      .map((parts) => parts.join("")),
  );
  const entries = fc.dictionary(fc.constantFrom(...measurementNames), entry, { maxKeys: 8 });
  const texts = fc.dictionary(fc.string({ minLength: 1, maxLength: 8 }), text, { maxKeys: 2 });
  const maybe = <Value>(key: string, value: fc.Arbitrary<Value>) =>
    fc.option(value, { nil: undefined }).map((found) => (found === undefined ? {} : { [key]: found }));
  const batting = fc
    .tuple(
      fc.record({ name: text, layerThickness: entry }),
      maybe("spread", fc.double({ min: 0.01, max: 2, noNaN: true })),
    )
    .map(([own, more]) => ({ ...own, ...more }));
  const work = fc.oneof(
    fc.record({ did: fc.constant("measured"), readings: entries }),
    fc.record({ did: fc.constant("unpinned"), pieceId: fc.string({ minLength: 1, maxLength: 9 }), at: text }),
    fc.record({
      did: fc.constant("trial"),
      batting: text,
      level: fc.constantFrom("waist", "bust"),
      plies: fc.integer({ min: 1, max: 20 }),
      before: entry,
      after: entry,
    }),
  );
  const file = fc
    .tuple(
      fc.record({
        version: fc.constant(1),
        unit: fc.constantFrom(...lengthUnits),
        body: entries,
        form: fc.tuple(entries, maybe("table", text), maybe("size", text)).map((parts) => Object.assign({}, ...parts)),
        batting,
      }),
      maybe("id", text),
      maybe("title", text),
      maybe("notes", text),
      maybe("finishingBatting", batting),
      maybe("readingError", entry),
      maybe("drafts", fc.record({ body: texts, form: texts, other: texts })),
      maybe("settings", fc.record({ roundInches: fc.constantFrom("1/8", "1/16") })),
      maybe("work", fc.array(work, { maxLength: 4 })),
      maybe("xyzzyx", fc.json()),
    )
    .map((parts) => Object.assign({}, ...parts) as unknown);
  const readable = file
    .map(readFitting)
    .filter((read) => read.ok)
    .map((read) => read.value);

  test("what is written is read back as it was, through text", () => {
    fc.assert(
      fc.property(readable, (fitting) => {
        expect(readFittingText(JSON.stringify(writeFitting(fitting)))).toEqual({ ok: true, value: fitting });
      }),
      random,
    );
  });

  test("writing is stable, and most random files are readable", () => {
    let seen = 0;
    fc.assert(
      fc.property(file, (made) => {
        const read = readFitting(made);
        fc.pre(read.ok);
        seen += 1;
        const written = writeFitting(read.value);
        const again = readFitting(written);
        expect(again.ok && writeFitting(again.value)).toEqual(written);
      }),
      random,
    );
    expect(seen).toBeGreaterThan(125);
  });

  test("changing the unit changes no length, there and back again", () => {
    const lengths = (fitting: Fitting) => {
      const { table: _table, size: _size, ...form } = fitting.form;
      const read = fittingMeasurements({ ...fitting, form });
      return read.ok ? read.value : read.problem;
    };
    const logged = ({ work: entries, unit }: Fitting) =>
      entries
        .flatMap((did) =>
          did.did === "measured"
            ? Object.values(did.readings)
            : did.did === "trial"
              ? [did.before ?? 0, did.after ?? 0]
              : [],
        )
        .map((typed) => entryLength(typed, unit));
    let bare = 0;
    fc.assert(
      fc.property(readable, fc.constantFrom(...lengthUnits), (fitting, unit) => {
        const changed = withUnit(fitting, unit);
        if (Object.values(fitting.body).some((typed) => typeof typed === "number")) bare += 1;
        expect(changed.unit).toBe(unit);
        expect(lengths(changed)).toEqual(lengths(fitting));
        expect(logged(changed)).toEqual(logged(fitting));
        expect(lengths(withUnit(changed, fitting.unit))).toEqual(lengths(fitting));
      }),
      random,
    );
    expect(bare).toBeGreaterThan(30);
  });

  test("a number that would look grouped as text keeps its length", () => {
    const fitting = {
      ...readOrThrow(JSON.stringify(handWritten)),
      unit: "mm",
      body: { bustGirth: 1.005, waistGirth: "5000" },
    } as const;
    const changed = withUnit(fitting, "cm");
    expect(entryLength(changed.body.bustGirth ?? 0, "cm")).toEqual({ ok: true, value: 1.005 });
    expect(entryLength(changed.body.waistGirth ?? 0, "cm")).toEqual({ ok: true, value: 5000 });
  });

  test("anything at all gives a fitting or problems, never a throw", () => {
    const seen = { ok: 0, refused: 0 };
    const broken = fc
      .tuple(
        file,
        fc.constantFrom("body", "form", "batting", "work", "drafts", "unit", "version", "__proto__", "extra"),
        fc.anything(),
      )
      .map(([made, key, value]) => Object.assign({}, made, { [key]: value }));
    fc.assert(
      fc.property(
        fc.oneof(
          broken,
          fc.anything({
            withNullPrototype: true,
            withSparseArray: true,
            withBigInt: true,
            withDate: true,
            withMap: true,
          }),
        ),
        (made) => {
          const read = readFitting(made);
          seen[read.ok ? "ok" : "refused"] += 1;
          if (!read.ok) expect(read.problem.length).toBeGreaterThan(0);
        },
      ),
      random,
    );
    expect(seen.refused).toBeGreaterThan(60);
  });

  test("any slice or scramble of a file's text gives a fitting or problems, never a throw", () => {
    const damaged = fc
      .tuple(fc.nat(frozen.length - 1), fc.nat(frozen.length - 1), fc.string({ maxLength: 3 }))
      .map(([from, to, put]) => frozen.slice(0, Math.min(from, to)) + put + frozen.slice(Math.max(from, to)));
    fc.assert(
      fc.property(fc.oneof(damaged, fc.json(), fc.string()), (made) => typeof readFittingText(made).ok === "boolean"),
      random,
    );
  });
});
