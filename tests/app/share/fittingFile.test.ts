// @vitest-environment node
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { importFile } from "../../../src/app/share/fileImport";
import { fileName } from "../../../src/app/share/fileOffer";
import { largestFile, readFile, writeBundle, writeFittingFile } from "../../../src/app/share/fittingFile";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import { fittingText } from "../../../src/app/storage/fittingText";
import { readFittingText } from "../../../src/document/fitting";
import { keptText, memoryDrawers } from "../storage/memoryDrawers";
import { sampleFitting, sampleTitled, sampleWithWaist } from "../storage/sampleFittings";

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const read = (text: string) => readFile(bytesOf(text));
const textsOf = (result: ReturnType<typeof readFile>): readonly string[] | null =>
  result.ok ? result.value.map(fittingText) : null;

const people = [sampleTitled("Odile", "odile-0001"), sampleTitled("Ines", "ines-00001"), sampleWithWaist(88)];
const peopleTexts = people.map(fittingText);
const single = writeFittingFile(sampleFitting);
const bundle = writeBundle(people, "2026-05-01T08:00:00.000Z");

describe("files that go out", () => {
  it("come back as they were, one or many", () => {
    expect(textsOf(read(single))).toEqual([fittingText(sampleFitting)]);
    expect(textsOf(read(bundle))).toEqual(peopleTexts);
    expect(textsOf(read(writeBundle([], "2026-05-01T08:00:00.000Z")))).toEqual([]);
  });

  it("are, for one fitting, the plain fitting file that anything may read", () => {
    expect(readFittingText(single).ok).toBe(true);
    expect(JSON.parse(single)).toMatchObject({ version: 1, unit: "cm", body: { bustGirth: 97.8 } });
  });

  it("come back the same after going round twice", () => {
    const once = readFile(bytesOf(single));
    if (!once.ok) throw new Error("not read");
    expect(once.value.map(writeFittingFile)).toEqual([single]);
  });

  it("get a name that every file system takes", () => {
    expect(fileName("fitting", 'Odile / "spring"\\..\u0000 <b>', "2026-05-01T08:00:00Z", "json")).toBe(
      "fitting Odile spring b 2026-05-01.json",
    );
    expect(fileName("fitting", "…", "2026-05-01T08:00:00Z", "csv")).toBe("fitting 2026-05-01.csv");
    expect(fileName("fitting", "Zoë Łuć", "2026-05-01T08:00:00Z", "json")).toBe("fitting Zoë Łuć 2026-05-01.json");
  });
});

describe("files that come in", () => {
  it("may be written by hand, with no check", () => {
    const { check: _check, ...plain } = JSON.parse(single);
    expect(textsOf(read(JSON.stringify(plain)))).toEqual([fittingText(sampleFitting)]);
  });

  it.each([
    ["", "empty"],
    [" \n", "empty"],
    ["{", "notJson"],
    ["just words", "notJson"],
    ["[]", "badFitting"],
    ["null", "badFitting"],
    ["7", "badFitting"],
    ["{}", "badFitting"],
    [single.replace("84,5 cm", "84,5 furlongs"), "damaged"],
    [bundle.replace('"version": 1', '"version": 2'), "newerBundle"],
    [bundle.replace("2026-05-01", "2026-06-01"), "damaged"],
    [JSON.stringify({ ...JSON.parse(bundle), fittings: JSON.parse(bundle).fittings.slice(1) }), "damaged"],
    [JSON.stringify({ ...JSON.parse(bundle), fittings: "none" }), "damaged"],
    [JSON.stringify({ ...JSON.parse(bundle), fittings: Array(2_001).fill(null) }), "tooMany"],
    [`${"[".repeat(200_000)}${"]".repeat(200_000)}`, "badFitting"],
    [`${`{"a":`.repeat(100_000)}1${"}".repeat(100_000)}`, "badFitting"],
  ])("say why they are refused (case %#)", (text, code) => {
    const result = read(text);
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.problem.map((problem) => problem.code)).toEqual([code]);
  });

  it("name every fitting of a bundle that is wrong, and take none", async () => {
    const wrong = { version: 1, unit: "furlong" };
    const { check: _check, ...file } = JSON.parse(writeBundle([], "2026-05-01T08:00:00.000Z"));
    const result = read(JSON.stringify({ ...file, fittings: [wrong] }));
    expect(result).toMatchObject({ ok: false, problem: [{ code: "damaged" }] });
    const changed = JSON.parse(bundle);
    changed.fittings[1].body.waistGirth = 1;
    expect(read(JSON.stringify(changed))).toMatchObject({ ok: false, problem: [{ code: "damaged", number: 2 }] });
  });

  it("must be text, and of a size", () => {
    expect(readFile(new Uint8Array([0x7b, 0xff, 0xfe]))).toMatchObject({ problem: [{ code: "notText" }] });
    expect(readFile(new Uint8Array(largestFile + 1))).toMatchObject({ problem: [{ code: "tooLarge" }] });
  });

  it("may begin with a byte order mark", () => {
    expect(textsOf(read(`\uFEFF${single}`))).toEqual([fittingText(sampleFitting)]);
  });
});

describe("damaged files", () => {
  it.each([
    ["one fitting", single, [fittingText(sampleFitting)], [0, 1, 2, 3, 4, 5, 6, 7]],
    ["a bundle", bundle, peopleTexts, [2, 5]],
  ])(
    "are refused or give exactly what was written, whichever bit went: %s",
    { timeout: 60_000 },
    (_, text, whole, bits) => {
      const bytes = bytesOf(text);
      let refused = 0;
      for (let offset = 0; offset < bytes.length; offset += 1) {
        for (const bit of bits) {
          const wrong = bytes.with(offset, (bytes[offset] ?? 0) ^ (1 << bit));
          const result = readFile(wrong);
          if (result.ok) expect(textsOf(result)).toEqual(whole);
          else refused += 1;
        }
      }
      expect(refused).toBeGreaterThan(bytes.length * bits.length * 0.7);
    },
  );

  it("are refused at every length they can be cut to", { timeout: 60_000 }, () => {
    for (const text of [single, bundle]) {
      const bytes = bytesOf(text);
      for (let length = 0; length < bytes.length - 2; length += 1) {
        expect(readFile(bytes.slice(0, length)).ok).toBe(false);
      }
    }
  });

  it("never crash or half-read, whatever is in them", { timeout: 60_000 }, () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => !readFile(bytes).ok));
    fc.assert(fc.property(fc.json(), (text) => !read(text).ok));
    const lines = bundle.split("\n");
    const shuffled = fc.shuffledSubarray(lines, { minLength: 1 }).map((some) => some.join("\n"));
    fc.assert(
      fc.property(shuffled, (text) => {
        const texts = textsOf(read(text));
        return texts === null || JSON.stringify(texts) === JSON.stringify(peopleTexts);
      }),
    );
  });
});

describe("importing", () => {
  const tools = { now: () => "2026-05-02T08:00:00.000Z", newId: () => "fresh-0001" };

  it("takes up the whole file, or leaves everything as it was", async () => {
    const drawers = memoryDrawers();
    const storage = fittingStorage(drawers, tools);
    expect(await importFile(new Blob([bundle]), storage)).toMatchObject({
      kind: "imported",
      fittings: [{ kind: "added" }, { kind: "added" }, { kind: "added" }],
    });
    const before = keptText(drawers);
    const changed = JSON.parse(bundle);
    changed.fittings[2].title = "Somebody else";
    expect(await importFile(new Blob([JSON.stringify(changed)]), storage)).toMatchObject({ kind: "refused" });
    expect(keptText(drawers)).toBe(before);
    drawers.failFrom((_call, name) => (name === "write" ? { reason: "noRoom", when: "before" } : null));
    const other = writeBundle([sampleTitled("New", "new-000001")], "2026-05-01T08:00:00.000Z");
    expect(await importFile(new Blob([other]), storage)).toMatchObject({ kind: "notSaved", reason: "noRoom" });
    expect(keptText(drawers)).toBe(before);
  });
});
