import { importFile } from "../../src/app/share/fileImport";
import { bundleFormat, largestFile, writeBundle, writeFittingFile } from "../../src/app/share/fittingFile";
import { importSheet } from "../../src/app/share/sheetImport";
import { fittingStorage } from "../../src/app/storage/fittingStorage";
import { fittingText } from "../../src/app/storage/fittingText";
import { writeFitting } from "../../src/document/fitting";
import { importSentences, sheetSentences } from "../../src/text/fileSentences";
import { memoryStores } from "../app/storage/memoryStores";
import { sampleFitting, sampleTitled } from "../app/storage/sampleFittings";
import { hostileLog } from "../tools/hostileLogs";
import { type Chance, chance } from "../tools/peopleChance";
import type { HostileFault } from "./hostileFault";

/**
 * Files as anybody may make them, opened as the list opens them: whatever was added is there again word for word, whatever
 * was refused has its sentences, and neither takes longer than a person waits.
 */
export interface FilesCounts {
  readonly files: number;
  readonly added: number;
  readonly refused: number;
  readonly slowestMs: number;
  readonly faults: readonly FileFault[];
}

export type FileFault = HostileFault<"threw" | "untrue" | "unsaid" | "slow">;

/** The processor's own time, so that a busy machine is no fault. Three seconds are for what is read; a page refuses sooner. */
const mostMs = 3_000;

export async function hostileFiles(count: number, firstSeed: number): Promise<FilesCounts> {
  const faults: FileFault[] = [];
  let [added, refused, slowestMs] = [0, 0, 0];
  for (let seed = firstSeed; seed < firstSeed + count; seed += 1) {
    const luck = chance(seed * 40_503 + 3);
    const kind = luck.pick(kinds);
    const text = made[kind](luck, seed);
    const start = process.cpuUsage();
    const found = await opened(text, luck.happens(0.2)).catch((thrown: unknown) => ({ threw: String(thrown) }));
    const { user, system } = process.cpuUsage(start);
    const ms = Math.round((user + system) / 1_000);
    slowestMs = Math.max(slowestMs, ms);
    const fault = (what: FileFault["what"], detail: string) =>
      faults.push({ seed, what, detail: `${kind}: ${detail}` });
    if (ms > mostMs) fault("slow", `${ms} ms`);
    if ("threw" in found) fault("threw", found.threw);
    else {
      if (found.isAdded) added += 1;
      else refused += 1;
      if (found.untrue !== null) fault("untrue", found.untrue);
      const bad = found.sentences.find((sentence) => sentence.length < 5 || /undefined|NaN|\[object/.test(sentence));
      if (found.sentences.length === 0 || bad !== undefined) fault("unsaid", bad ?? "no sentence");
    }
  }
  return { files: count, added, refused, slowestMs, faults };
}

interface Opened {
  readonly isAdded: boolean;
  readonly sentences: readonly string[];
  readonly untrue: string | null;
}

async function opened(text: string, isTable: boolean): Promise<Opened> {
  let ids = 0;
  const stores = memoryStores();
  const newId = () => `made-${String(++ids).padStart(6, "0")}`;
  const storage = fittingStorage(stores, { now: () => "2026-01-01T00:00:00.000Z", newId });
  const file = new File([text], isTable ? "table.csv" : "file.json");
  const outcome = isTable ? await importSheet(file, storage, sampleFitting) : await importFile(file, storage);
  if (outcome.kind === "refusedSheet")
    return { isAdded: false, sentences: sheetSentences(outcome.problems, "cm"), untrue: null };
  const sentences = importSentences(outcome, "cm");
  const read = await storage.read("all");
  const there = read.kind === "read" ? read.fittings : [];
  if (outcome.kind !== "imported") {
    return { isAdded: false, sentences, untrue: there.length > 0 ? "refused, and something was added" : null };
  }
  const ids2 = new Set(outcome.fittings.map(({ id }) => id));
  const isAllThere =
    there.length === ids2.size && there.every((one) => one.kind === "fitting" && ids2.has(one.entry.id));
  const isSame = there.every((one) => {
    const record = stores.kept.get(`fittings/${one.kind === "fitting" ? one.entry.id : one.id}`) as { text?: string };
    return one.kind === "fitting" && fittingText(one.fitting) === record.text;
  });
  return { isAdded: true, sentences, untrue: isAllThere && isSame ? null : "added, and not there as it was" };
}

const kinds = ["nested", "wide", "long", "bytes", "bundle", "spliced", "log", "twins", "marks", "huge"] as const;

const made: { readonly [kind in (typeof kinds)[number]]: (luck: Chance, seed: number) => string } = {
  nested: (luck) => {
    const depth = Math.round(luck.between(1, 200_000));
    const inside = `${"[".repeat(depth)}${"]".repeat(depth)}`;
    return luck.happens(0.5) ? inside : withPart(luck.pick(["work", "body", "extra", "drafts"]), inside);
  },
  wide: (luck) => {
    const count = Math.round(luck.between(1, 50_000));
    const value = luck.pick(["1", '"38 1/2 in"', "{}", "null", "[]", '"x"']);
    const name = luck.pick(["waistGirth", "k", "__proto__", "constructor", "toString", ""]);
    const names = `{${Array.from({ length: count }, (_, i) => `"${name}${i === 0 ? "" : i}":${value}`).join()}}`;
    return withPart(luck.pick(["body", "form", "drafts", "extra", "work"]), names);
  },
  long: (luck) => {
    const text = luck.pick(["x", "9", "1/", " ", "\\ud800", "👗", "\\n"]).repeat(Math.round(luck.between(1, 200_000)));
    const name = luck.pick(["title", "notes", "id", "unit", "createdAt"]);
    return withPart(name, `"${text}"`);
  },
  bytes: (luck) =>
    Array.from({ length: Math.round(luck.between(0, 3_000)) }, () =>
      String.fromCharCode(Math.round(luck.between(0, 65_535))),
    ).join(""),
  bundle: (luck) => {
    const count = Math.round(luck.between(0, 40));
    const people = Array.from({ length: count }, (_, i) =>
      sampleTitled(`Person ${luck.happens(0.3) ? 0 : i}`, luck.happens(0.5) ? `person-${1_000 + (i % 7)}` : undefined),
    );
    const bundle = writeBundle(people, luck.pick(["2026-01-01T00:00:00.000Z", "", "yesterday", "9".repeat(1_000)]));
    return luck.happens(0.4) ? spliced(luck, bundle) : bundle;
  },
  spliced: (luck) => spliced(luck, writeFittingFile(sampleFitting)),
  log: (_luck, seed) => JSON.stringify(hostileLog(seed).file),
  twins: (luck) => {
    const text = JSON.stringify(writeFitting(sampleFitting));
    const twin = `"${luck.pick(["version", "unit", "body", "work", "title"])}":${luck.pick(["1", '"cm"', "{}", "[]", "null"])}`;
    return luck.happens(0.5) ? `{${twin},${text.slice(1)}` : `${text.slice(0, -1)},${twin}}`;
  },
  marks: (luck) => {
    const text = writeFittingFile(
      sampleTitled(luck.pick(["\u202eevil", "<b>x</b>", "\u0000", "=1+1", "a".repeat(200)])),
    );
    return luck.pick(["\ufeff", "\ufeff\ufeff", "", "\n\n", "\u00a0"]) + text;
  },
  huge: (luck) => {
    if (luck.happens(0.7)) return withPart("work", "[]");
    const bytes = Math.round(luck.between(1_000_000, largestFile * 1.05));
    const item = luck.pick(["1,", "{},", '"",', "[1,1],"]);
    const list = `[${item.repeat(bytes / item.length)}1]`;
    return luck.happens(0.5) ? list : `{"format":"${bundleFormat}","version":1,"fittings":${list}}`;
  },
};

function withPart(name: string, text: string): string {
  const { [name]: _part, ...rest } = writeFitting(sampleFitting) as { readonly [name: string]: unknown };
  return `${JSON.stringify(rest).slice(0, -1)},"${name}":${text}}`;
}

function spliced(luck: Chance, text: string): string {
  const at = () => Math.round(luck.between(0, text.length));
  const [from, to, into] = [at(), at(), at()];
  return (
    text.slice(0, into) +
    text.slice(Math.min(from, to), Math.max(from, to)) +
    text.slice(luck.happens(0.5) ? into : at())
  );
}
