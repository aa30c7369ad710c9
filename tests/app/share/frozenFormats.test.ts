import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readFile, writeFittingFile } from "../../../src/app/share/fittingFile";
import { readSheet } from "../../../src/app/share/measurementSheet";
import { readLink } from "../../../src/app/share/shareLink";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { memoryStores } from "../storage/memoryStores";

/**
 * One file of every format as its first release wrote it. They are never made anew: a release that cannot open them
 * has lost somebody's work.
 */
const frozen = (name: string): Buffer => readFileSync(new URL(`../frozen/${name}`, import.meta.url));

const odile = {
  title: "Odile, spring jacket",
  notes: "Breathes high; “stands straight”.",
  unit: "cm",
  body: { bustGirth: 89.8, waistGirth: "76,5 cm", fullHipGirth: "38 1/2 in", waistFrontArc: 41.2 },
  form: { table: "misses", size: "10", waistGirth: 63 },
  work: [{ did: "measured" }, { did: "trial", plies: 1 }],
};

const thea = {
  title: "Thea, everything",
  notes: "Every kind of entry once.",
  unit: "in",
  body: {
    bustGirth: "41 1/2",
    waistGirth: 36.75,
    fullHipGirth: "112,4 cm",
    waistFrontArc: "20⅛",
    napeToWaist: "415 mm",
  },
  form: { table: "misses", size: 14, waistGirth: "29 1/2" },
  batting: { name: "bonded wadding", layerThickness: "6 mm", spread: 0.4 },
  finishingBatting: { name: "thin wadding", layerThickness: "1/8" },
  readingError: "5 mm",
  drafts: { body: { bustGirth: "41 1/" }, form: {}, other: { "reading.waistGirth": "thirty" } },
  settings: { roundInches: "1/16" },
  extra: { fromAnotherProgram: { kept: [1, "two", null] } },
};
const theasWork = ["trial", "pinned", "pinned", "unpinned", "measured", "trimmed", "replanned", "replanned"];

describe("formats of released versions open forever", () => {
  it("one fitting", () => {
    expect(readFile(frozen("fitting-1.json.txt"))).toMatchObject({ ok: true, value: [odile] });
  });

  it("a bundle", () => {
    const ines = { title: "Ines", unit: "in", body: { bustGirth: "34 1/2" } };
    expect(readFile(frozen("bundle-1.json.txt"))).toMatchObject({ ok: true, value: [odile, ines] });
  });

  it("a table of measurements", () => {
    expect(readSheet(frozen("sheet-1.csv").toString("utf8"), "in")).toEqual({
      ok: true,
      value: {
        body: { bustGirth: "89.8 cm", waistGirth: "76,5 cm", waistFrontArc: "41.2 cm", fullHipGirth: "38 1/2 in" },
        form: { waistGirth: "63 cm" },
      },
    });
  });

  it("a link", async () => {
    const link = frozen("link-1.txt").toString("utf8").trim();
    expect(await readLink(link.slice(link.indexOf("#")))).toMatchObject({ ok: true, value: odile });
  });

  it("what lies in the database, with its steps to undo", async () => {
    const stores = memoryStores();
    for (const [place, value] of Object.entries(JSON.parse(frozen("drawers-1.json.txt").toString("utf8")))) {
      stores.kept.set(place, value);
    }
    const storage = fittingStorage(stores, { now: () => "2030-01-01T00:00:00.000Z", newId: () => "x" });
    expect(await storage.load("frozen-0001")).toMatchObject({
      kind: "loaded",
      fitting: odile,
      historyLost: false,
      history: { past: [{ title: "Odile" }], future: [{ notes: "" }] },
      entry: { changedAt: "2026-02-02T09:00:00.000Z", revision: 1 },
    });
  });

  it("one fitting with every kind of entry there was", () => {
    const read = readFile(frozen("fitting-1-whole.json.txt"));
    expect(read).toMatchObject({ ok: true, value: [thea] });
    expect(read.ok && read.value[0]?.work.map(({ did }) => did)).toEqual(theasWork);
    expect(read.ok && read.value.map(writeFittingFile)).toEqual([frozen("fitting-1-whole.json.txt").toString("utf8")]);
  });

  it("one fitting with keys that have another name today", () => {
    const read = readFile(frozen("fitting-1-older-keys.json.txt"));
    expect(read).toMatchObject({
      ok: true,
      value: [
        {
          body: { bustGirth: "112", acrossShoulders: 39, sideNeckToWaistBack: "44.5" },
          form: { size: "18", acrossShoulders: "38 cm" },
          drafts: { form: { sideNeckToWaistBack: "43 and a bit" } },
          work: [{ readings: { waistGirth: 98, sideNeckToWaistBack: "44 cm" } }],
        },
      ],
    });
    expect(read.ok && read.value.map(writeFittingFile).join("")).not.toMatch(/acrossBack|backWaistLength/);
  });

  /** Seen to fail: while legs were a kind; with the kind kept beside them, which no form has any more. */
  it("legs that were the kind of a form stand beside what it is made of, which was not said", () => {
    const body = { bustGirth: 112, waistGirth: 104, fullHipGirth: 121 };
    const file = { version: 1, unit: "cm", body, batting: { name: "cotton", layerThickness: "3 mm" } };
    const read = (form: object) => readFile(new TextEncoder().encode(JSON.stringify({ ...file, form })));
    const legs = read({ kind: "legs", shared: true });
    expect(legs).toMatchObject({ ok: true, value: [{ form: { legs: true, shared: true } }] });
    expect(legs.ok && "kind" in (legs.value[0]?.form ?? {})).toBe(false);
    expect(read({ kind: "foam", legs: true })).toMatchObject({
      ok: true,
      value: [{ form: { kind: "foam", legs: true } }],
    });
  });

  it("a key of an earlier release beside its own of today drops neither figure", () => {
    const both = { body: { bustGirth: 112, waistGirth: 104, fullHipGirth: 121, acrossBack: 39, acrossShoulders: 40 } };
    const file = { version: 1, unit: "cm", ...both, form: {}, batting: { name: "cotton", layerThickness: "3 mm" } };
    expect(readFile(new TextEncoder().encode(JSON.stringify(file)))).toMatchObject({
      ok: false,
      problem: [{ problems: [{ code: "unknownKey", key: "acrossBack" }] }],
    });
  });

  it("a table of measurements with the older names", () => {
    const sheet = readSheet("measurement,body\nAcross back,39\nback waist length,44.5\n", "cm");
    expect(sheet).toMatchObject({ ok: true, value: { body: { acrossShoulders: "39", sideNeckToWaistBack: "44.5" } } });
  });

  it("a link with every kind of entry there was", async () => {
    const link = frozen("link-1-whole.txt").toString("utf8").trim();
    const read = await readLink(link.slice(link.indexOf("#")));
    const { title, body, form, batting, finishingBatting } = thea;
    expect(read).toMatchObject({ ok: true, value: { title, body, form, batting, finishingBatting } });
    expect(read.ok && read.value.work.map(({ did }) => did)).toEqual(theasWork);
  });

  it("the database with something put away, something set aside, and the settings of the device", async () => {
    const stores = memoryStores();
    for (const [place, value] of Object.entries(JSON.parse(frozen("drawers-1-whole.json.txt").toString("utf8")))) {
      stores.kept.set(place, value);
    }
    const storage = fittingStorage(stores, { now: () => "2030-01-01T00:00:00.000Z", newId: () => "x" });
    expect(await storage.list()).toMatchObject({ fittings: [{ kind: "fitting", entry: { archived: true } }] });
    expect(await storage.load("frozen-0002")).toMatchObject({
      kind: "loaded",
      fitting: thea,
      historyLost: false,
      history: { past: [{ work: [] }] },
    });
    expect(await storage.settings()).toEqual({ lastFitting: "frozen-0002", lastFileAt: "2026-02-02T09:00:00.000Z" });
    expect(await storage.quarantined()).toMatchObject({
      items: [{ source: "fitting", takenAt: "2026-02-02T09:00:00.000Z", rawText: expect.stringContaining("half") }],
    });
  });
});
