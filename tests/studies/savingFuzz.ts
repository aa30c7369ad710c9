import fc from "fast-check";
import { readFile, writeBundle, writeFittingFile } from "../../src/app/share/fittingFile";
import { readSheet, writeSheet } from "../../src/app/share/measurementSheet";
import { readLink, shared, shareLink } from "../../src/app/share/shareLink";
import { readRecord, sealedRecord } from "../../src/app/storage/fittingRecord";
import { fittingText } from "../../src/app/storage/fittingText";
import { parseLength } from "../../src/core/lengthText";
import { readFittingText } from "../../src/document/readFitting";
import { sampleFitting, sampleTitled } from "../app/storage/sampleFittings";

/**
 * Every reader against texts that were once good: cut, flipped, repeated and spliced at random, thousands of times. A
 * reader may refuse, or give exactly what was written; a different answer, a thrown error and a long wait are faults.
 */
export interface FuzzedReader {
  readonly name: string;
  readonly cases: number;
  readonly refused: number;
  readonly whole: number;
  readonly other: number;
  readonly thrown: number;
  readonly slowestMilliseconds: number;
}

type Answer = "refused" | "whole" | "other" | "thrown";

interface Reader {
  readonly name: string;
  readonly good: string;
  /** Whether a text that differs may read as something else: files and tables may be written by hand, seals may not. */
  readonly mayDiffer: boolean;
  readonly read: (text: string) => Promise<Answer> | Answer;
}

export async function fuzzedReaders(cases: number, seed: number): Promise<readonly FuzzedReader[]> {
  const results: FuzzedReader[] = [];
  for (const reader of await readers()) results.push(await fuzzed(reader, cases, seed));
  return results;
}

export const isSound = ({ other, thrown, slowestMilliseconds }: FuzzedReader): boolean =>
  other === 0 && thrown === 0 && slowestMilliseconds < 5_000;

async function fuzzed({ name, good, mayDiffer, read }: Reader, cases: number, seed: number): Promise<FuzzedReader> {
  const counts = { refused: 0, whole: 0, other: 0, thrown: 0 };
  let slowest = 0;
  for (const text of fc.sample(damaged(good), { numRuns: cases, seed })) {
    const start = performance.now();
    const answer = await Promise.resolve()
      .then(() => read(text))
      .catch(() => "thrown" as const);
    slowest = Math.max(slowest, performance.now() - start);
    counts[answer === "other" && mayDiffer ? "whole" : answer] += 1;
  }
  return { name, cases, ...counts, slowestMilliseconds: Math.round(slowest) };
}

/** One to four wounds: a cut, a flipped bit, a piece repeated, a piece moved, a piece of nonsense. */
function damaged(good: string): fc.Arbitrary<string> {
  const at = fc.nat(good.length);
  const wound = fc.oneof(
    at.map((end) => (text: string) => text.slice(0, end)),
    fc.tuple(at, fc.nat(15)).map(
      ([i, bit]) =>
        (text: string) =>
          flipped(text, i, bit),
    ),
    fc.tuple(at, at, at).map(
      ([a, b, to]) =>
        (text: string) =>
          text.slice(0, to) + text.slice(a, b) + text.slice(to),
    ),
    fc.tuple(at, at).map(
      ([a, b]) =>
        (text: string) =>
          text.slice(0, Math.min(a, b)) + text.slice(Math.max(a, b)),
    ),
    fc.tuple(at, fc.string({ unit: "binary", maxLength: 8 })).map(
      ([i, junk]) =>
        (text: string) =>
          text.slice(0, i) + junk + text.slice(i),
    ),
  );
  return fc
    .array(wound, { minLength: 1, maxLength: 4 })
    .map((wounds) => wounds.reduce((text, hurt) => hurt(text), good));
}

const flipped = (text: string, i: number, bit: number): string =>
  i < text.length ? text.slice(0, i) + String.fromCharCode(text.charCodeAt(i) ^ (1 << bit)) + text.slice(i + 1) : text;

async function readers(): Promise<readonly Reader[]> {
  const people = [sampleFitting, sampleTitled("Ines", "ines-00001")];
  const link = await shareLink(sampleFitting, { names: true, work: true }, "https://sewing.example/");
  if (link.kind !== "link") throw new Error("the sample fits into a link");
  const record = sealedRecord({
    id: "one",
    title: sampleFitting.title,
    changedAt: "2026-01-01T00:00:00.000Z",
    archived: false,
    deletedAt: null,
    revision: 3,
    saveMark: "mark",
    text: fittingText(sampleFitting),
  });
  const sameAs = (texts: readonly string[], wanted: readonly string[]): Answer =>
    JSON.stringify(texts) === JSON.stringify(wanted) ? "whole" : "other";
  const file = (text: string, wanted: readonly string[]): Answer => {
    const read = readFile(new TextEncoder().encode(text));
    return read.ok ? sameAs(read.value.map(fittingText), wanted) : "refused";
  };
  const sheet = readSheet(writeSheet(sampleFitting), "cm");
  return [
    ...["38 1/2 in", "97,8 cm", "1 m 2,5 cm", "-36⅜″"].map(
      (good): Reader => ({
        name: `length ${good}`,
        good,
        mayDiffer: true,
        read: (text) => {
          const read = parseLength(text, "in");
          if (!read.ok) return "refused";
          // Whatever is taken for a length is one number, and reads the same again.
          const again = parseLength(text, "in");
          return again.ok && Number.isFinite(read.value) && again.value === read.value ? "whole" : "thrown";
        },
      }),
    ),
    {
      name: "fitting by hand",
      good: fittingText(sampleFitting),
      mayDiffer: true,
      read: (text) => (readFittingText(text).ok ? "whole" : "refused"),
    },
    {
      name: "fitting file",
      good: writeFittingFile(sampleFitting),
      mayDiffer: false,
      // Two wounds can take the check out and then change a word: what is left is a file as written by hand.
      read: (text) => (text.includes("crc32:") ? file(text, [fittingText(sampleFitting)]) : "refused"),
    },
    {
      name: "bundle",
      good: writeBundle(people, "2026-01-01T00:00:00.000Z"),
      mayDiffer: false,
      read: (text) => file(text, people.map(fittingText)),
    },
    {
      name: "table",
      good: writeSheet(sampleFitting),
      mayDiffer: true,
      read: (text) => {
        const read = readSheet(text, "cm");
        return read.ok ? sameAs([JSON.stringify(read)], [JSON.stringify(sheet)]) : "refused";
      },
    },
    {
      name: "link",
      good: link.link.slice(link.link.indexOf("#")),
      mayDiffer: false,
      read: async (text) => {
        const read = await readLink(text);
        if (!read.ok) return "refused";
        return sameAs([fittingText(read.value)], [fittingText(shared(sampleFitting, { names: true, work: true }))]);
      },
    },
    {
      name: "stored text",
      good: record.text,
      mayDiffer: false,
      read: (text) => {
        const read = readRecord("one", { ...record, text });
        return read.kind === "whole" ? sameAs([read.record.text], [record.text]) : "refused";
      },
    },
  ];
}
