import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCsv, writeCsv } from "../../../src/app/share/csvText";
import { readSheet, writeSheet } from "../../../src/app/share/measurementSheet";
import { measurementNames } from "../../../src/core/body/vocabulary";
import { type LengthUnit, lengthUnits } from "../../../src/core/lengthText";
import { type Entries, entryLength } from "../../../src/document/fitting";
import { fittingFrom, sampleFitting } from "../storage/sampleFittings";

const millimetres = (entries: Entries, unit: LengthUnit) =>
  Object.fromEntries(
    measurementNames.flatMap((name) => {
      const entry = entries[name];
      if (entry === undefined) return [];
      const length = entryLength(entry, unit);
      return [[name, length.ok ? Math.round(length.value * 1_000) : length.problem]];
    }),
  );

describe("tables of text", () => {
  const twoRows = [
    ["aaa", "bbb", "ccc"],
    ["zzz", "yyy", "xxx"],
  ];
  // Shafranovich 2005, RFC 4180, section 2, the examples of rules 1 to 7 (from memory).
  it.each([
    ["aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", twoRows],
    ["aaa,bbb,ccc\r\nzzz,yyy,xxx", twoRows],
    ['"aaa","bbb","ccc"\r\nzzz,yyy,xxx', twoRows],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
    [
      "a;b\n1,5;2",
      [
        ["a", "b"],
        ["1,5", "2"],
      ],
    ],
    [
      "a\tb\r1\t2\r",
      [
        ["a", "b"],
        ["1", "2"],
      ],
    ],
  ])("are read: %j", (text, cells) => {
    const rows = readCsv(text);
    expect(rows.ok && rows.value.map((row) => row.cells)).toEqual(cells);
  });

  it.each([
    ['a,"b', { code: "openQuote", line: 1 }],
    ['a\n"b"c', { code: "afterQuote", line: 2 }],
    ["x".repeat(200_001), { code: "tooLong" }],
    [",".repeat(30_000), { code: "tooManyCells" }],
  ])("say what is wrong: %.20j", (text, problem) => {
    expect(readCsv(text)).toMatchObject({ ok: false, problem });
  });

  it("come back as they were written, whatever is in the cells, and no cell begins a formula", () => {
    const cell = fc.oneof(
      fc.string(),
      fc.constantFrom("=1+1", "'=2", "@x", "-3", "+4", "''-", "\t", '"', "a;b", " x "),
    );
    let formulas = 0;
    fc.assert(
      fc.property(fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 6 }), (rows) => {
        fc.pre(rows.every((row) => row.some((text) => text !== "")));
        const table = [["measurement", "unit"], ...rows];
        const text = writeCsv(table);
        const read = readCsv(text);
        expect(read.ok && read.value.map((row) => row.cells)).toEqual(table);
        for (const cell of rows.flat()) {
          const written = writeCsv([[cell]]);
          if (/^"?'/.test(written)) formulas += 1;
          expect(written).not.toMatch(/^"?[=+\-@\t\r](?!\n)/);
        }
      }),
      { numRuns: 500 },
    );
    expect(formulas).toBeGreaterThan(50);
  });
});

describe("measurements as a table", () => {
  it("has one row for each measurement, in the words of the vocabulary", () => {
    expect(writeSheet(sampleFitting)).toBe(
      [
        "measurement,unit,body,form",
        "bustGirth,cm,89.8,84",
        'waistGirth,cm,"76,5 cm",64',
        "waistFrontArc,cm,41.2,",
        "fullHipGirth,cm,38 1/2 in,90",
        "",
      ].join("\r\n"),
    );
  });

  it("comes back as the same lengths, in any unit and under any unit of the reader", () => {
    const entry = fc.oneof(
      fc.integer({ min: 20, max: 1_500 }).map((tenths) => tenths / 10),
      fc.constantFrom("38 1/2 in", "97,8 cm", "978 mm", "38½ in", "41.5"),
    );
    const entries = fc.dictionary(fc.constantFrom(...measurementNames), entry, { maxKeys: 12 });
    const unit = fc.constantFrom(...lengthUnits);
    let rows = 0;
    fc.assert(
      fc.property(entries, entries, unit, unit, (body, form, written, readUnit) => {
        const fitting = fittingFrom({
          version: 1,
          unit: written,
          body,
          form,
          batting: { name: "x", layerThickness: "6 mm" },
        });
        const sheet = readSheet(writeSheet(fitting), readUnit);
        if (Object.keys({ ...body, ...form }).length === 0) {
          expect(sheet).toEqual({ ok: false, problem: [{ code: "noLengths" }] });
          return;
        }
        if (!sheet.ok) throw new Error(JSON.stringify(sheet.problem));
        rows += Object.keys(sheet.value.body).length;
        expect(millimetres(sheet.value.body, readUnit)).toEqual(millimetres(fitting.body, written));
        expect(millimetres(sheet.value.form, readUnit)).toEqual(millimetres(fitting.form, written));
      }),
      { numRuns: 300 },
    );
    expect(rows).toBeGreaterThan(300);
  });

  it("is read as people and spreadsheets write it", () => {
    const sheet = readSheet('\uFEFFBody;Measurement\n"89,8";Bust girth\n27 1/2 in;WAIST-GIRTH\n;\n', "cm");
    expect(sheet).toEqual({
      ok: true,
      value: { body: { bustGirth: "89,8", waistGirth: "27 1/2 in" }, form: {} },
    });
  });

  it.each([
    ["", [{ code: "empty" }]],
    ["name,value\nbustGirth,90", [{ code: "noColumns" }]],
    ["measurement,body\nbutsGirth,90", [{ code: "unknownMeasurement", line: 2, nearest: "bustGirth" }]],
    ["measurement,body\nbustGirth,90\n\nbust girth,91", [{ code: "twice", line: 4, name: "bustGirth" }]],
    ["measurement,unit,body\nbustGirth,furlong,90", [{ code: "unknownUnit", line: 2, got: "furlong" }]],
    ["measurement,body\nbustGirth,97,8", [{ code: "tooManyColumns", line: 2, got: 3, expected: 2 }]],
    [
      "measurement,body,form\nbustGirth,ninety,-3\nwaistGirth,80,",
      [
        { code: "unreadableLength", line: 2, whose: "body", problem: { code: "notALength" } },
        { code: "unreadableLength", line: 2, whose: "form", problem: { code: "notPositive" } },
      ],
    ],
  ])("says every problem with its line, and gives no part: %j", (text, problem) => {
    expect(readSheet(text, "cm")).toMatchObject({ ok: false, problem });
  });

  it("never crashes, hangs or half-reads", { timeout: 60_000 }, () => {
    const longest = `measurement,body\n${`${"girthwaist".repeat(6)},90\n`.repeat(950)}`;
    const start = performance.now();
    expect(readSheet(longest, "cm")).toMatchObject({ ok: false, problem: { length: 950 } });
    expect(performance.now() - start).toBeLessThan(5_000);
    const sheet = writeSheet(sampleFitting);
    const whole = readSheet(sheet, "cm");
    expect(whole.ok).toBe(true);
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 400 }), (text) => !readSheet(text, "in").ok));
    const piece = fc.constantFrom(
      "measurement",
      "body",
      "bustGirth",
      "90",
      ",",
      ";",
      '"',
      "\r\n",
      "\n",
      "cm",
      "=",
      "'",
    );
    const soup = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(""));
    fc.assert(
      fc.property(soup, (text) => {
        const read = readSheet(text, "cm");
        return read.ok || read.problem.length > 0;
      }),
      { numRuns: 2_000 },
    );
  });
});
