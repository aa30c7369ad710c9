import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { ObjectStores } from "../../../src/app/storage/objectStores";
import { readRecord } from "../../../src/app/storage/fittingRecord";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { fittingText } from "../../../src/app/storage/fittingText";
import { readHistory } from "../../../src/app/storage/historyRecord";
import { type MemoryStores, memoryStores } from "./memoryStores";
import { sampleWithWaist } from "./sampleFittings";

/** Every single bit and every length of everything that is stored: the damage is found, told, and nothing is lost. */
const tools = { now: () => "2026-03-01T10:00:00.000Z", newId: () => "fresh-0001" };
const present = sampleWithWaist(82);
const past = [sampleWithWaist(80), sampleWithWaist(81)];

async function savedStores(): Promise<MemoryStores> {
  const stores = memoryStores();
  const saved = await fittingStorage(stores, tools).save({
    id: "one",
    baseRevision: 0,
    mark: "a",
    earlierMarks: [],
    fitting: present,
    history: { past, future: [] },
  });
  expect(saved.kind).toBe("saved");
  return stores;
}

type Fields = { readonly [name: string]: unknown };

/** The same fields with one bit of one text flipped, or one text cut short, at every offset there is. */
function* damaged(fields: Fields): Generator<Fields> {
  for (const [name, value] of Object.entries(fields)) {
    if (typeof value !== "string") continue;
    for (let offset = 0; offset < value.length; offset += 1) {
      yield { ...fields, [name]: value.slice(0, offset) };
      for (let bit = 0; bit < 16; bit += 1) {
        const flipped = String.fromCharCode(value.charCodeAt(offset) ^ (1 << bit));
        yield { ...fields, [name]: value.slice(0, offset) + flipped + value.slice(offset + 1) };
      }
    }
  }
}

describe("a damaged record", () => {
  it("is never taken for a fitting, whichever bit or length went", { timeout: 60_000 }, async () => {
    const stores = await savedStores();
    const record = stores.kept.get("fittings/one") as Fields;
    let cases = 0;
    for (const wrong of damaged(record)) {
      cases += 1;
      expect(readRecord("one", wrong).kind).toBe("damaged");
    }
    expect(cases).toBeGreaterThan(6_000);
  });

  it("is laid in quarantine and left alone, and the next save loses neither", { timeout: 60_000 }, async () => {
    const pristine = await savedStores();
    const record = pristine.kept.get("fittings/one") as { readonly text: string };
    await fc.assert(
      fc.asyncProperty(fc.nat(record.text.length - 1), fc.integer({ min: 0, max: 15 }), async (offset, bit) => {
        const stores = await savedStores();
        const flipped = String.fromCharCode(record.text.charCodeAt(offset) ^ (1 << bit));
        const wrong = { ...record, text: record.text.slice(0, offset) + flipped + record.text.slice(offset + 1) };
        stores.kept.set("fittings/one", wrong);
        const storage = fittingStorage(stores, tools);
        expect(await storage.load("one")).toMatchObject({ kind: "unreadable", quarantined: true });
        expect(stores.kept.get("fittings/one")).toEqual(wrong);
        const request = { id: "one", baseRevision: 1, mark: "b", earlierMarks: [], history: { past, future: [] } };
        expect(await storage.save({ ...request, fitting: present })).toMatchObject({ kind: "saved" });
        const raws = [...stores.kept].filter(([place]) => place.startsWith("quarantine/fitting"));
        expect(raws).toMatchObject([[expect.any(String), { raw: wrong }]]);
      }),
      { numRuns: 200 },
    );
  });

  it("is found damaged when a value that is no text was changed", async () => {
    const record = (await savedStores()).kept.get("fittings/one") as Fields;
    const changes: readonly Fields[] = [
      { revision: 2 },
      { revision: 0 },
      { archived: true },
      { deletedAt: "2026-01-01" },
      { format: 0 },
      { format: "1" },
      { text: null },
    ];
    for (const change of changes) expect(readRecord("one", { ...record, ...change }).kind).toBe("damaged");
    for (const name of Object.keys(record)) {
      expect(readRecord("one", { ...record, [name]: undefined }).kind).toBe("damaged");
    }
    expect(readRecord("other", record).kind).toBe("damaged");
    expect(readRecord("one", record).kind).toBe("whole");
  });

  it("can be anything at all", { timeout: 60_000 }, async () => {
    await fc.assert(
      fc.asyncProperty(fc.anything({ withTypedArray: true, withDate: true, withMap: true }), async (junk) => {
        fc.pre(junk !== undefined);
        const kind = readRecord("one", junk).kind;
        expect(["damaged", "newer"]).toContain(kind);
        const stores: ObjectStores = {
          look: (work) =>
            work({
              read: async () => junk,
              readAll: async () => [{ key: "one", value: junk }],
              readKeys: async () => ["one"],
            }),
          change: async () => {
            throw new Error("the disk is full");
          },
          close: () => {},
        };
        const storage = fittingStorage(stores, tools);
        expect((await storage.load("one")).kind).toBe(kind === "newer" ? "newer" : "unreadable");
        expect(await storage.list()).toMatchObject({ fittings: [{ kind: kind === "newer" ? "newer" : "unreadable" }] });
        expect(await storage.quarantined()).toMatchObject({ items: { length: 1 } });
        expect(await storage.settings()).toEqual({});
      }),
      { numRuns: 500 },
    );
  });
});

describe("damaged steps to undo", () => {
  const text = fittingText({ ...present, id: "one" });

  it("are never taken for steps, whichever bit went", async () => {
    const steps = (await savedStores()).kept.get("histories/one") as { readonly past: readonly Fields[] };
    expect(readHistory(steps, text, 1)?.past).toHaveLength(2);
    let cases = 0;
    for (const i of steps.past.keys()) {
      const delta = steps.past[i] as { readonly start: number; readonly end: number } & Fields;
      const others = [
        { ...delta, start: delta.start + 1 },
        { ...delta, end: delta.end - 1 },
        { ...delta, start: -1 },
      ];
      for (const wrong of [...damaged(delta), ...others]) {
        cases += 1;
        expect(readHistory({ ...steps, past: steps.past.with(i, wrong) }, text, 1)).toBeNull();
      }
    }
    expect(cases).toBeGreaterThan(20);
    expect(readHistory(steps, `${text} `, 1)).toBeNull();
    expect(readHistory(steps, text, 2)).toBeNull();
  });

  it("can be anything at all", () => {
    fc.assert(fc.property(fc.anything(), (junk) => readHistory(junk, text, 1) === null));
  });
});
