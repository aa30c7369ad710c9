import { fork } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { JobWalk } from "../tools/jobWalk";
import { loopRows, walkOf } from "./loopRows";

/**
 * Whole jobs walked with the next step alone, for made-up people and true shapes whose batting, form, hands and tape are
 * not what the tool takes them for, and how near they end. Two processes walk; each row is printed once its jobs are done.
 *
 *   npm run study:loop -- [how many jobs a row] [first job]
 */
const [count = "16", first = "0", part] = process.argv.slice(2);
const processes = 2;
const say = (line = "") => process.stdout.write(`${line}\n`);

/** What a row needs to know of a job: it goes from process to process. */
type Walked = Omit<JobWalk, "steps" | "last"> & { readonly steps: number };
interface Told {
  readonly row: number;
  readonly walked: Walked;
}

if (part === undefined) await lead();
else walkPart(Number(part));

function walkPart(mine: number): void {
  for (const [row, kind] of loopRows.entries()) {
    for (let job = mine; job < Number(count); job += processes) {
      const { steps, last: _, ...walk } = walkOf(kind, Number(first) + job);
      process.send?.({ row, walked: { ...walk, steps: steps.length } } satisfies Told);
    }
  }
}

async function lead(): Promise<void> {
  say(
    "| job | within 6 mm | within 12 | p95 | worst | intervals hold | layer's holds | readings over the padding | of the bare form and trial | steps | pieces | excused | the form does not allow |",
  );
  say("|---|---|---|---|---|---|---|---|---|---|---|---|---|");
  const walks = loopRows.map((): Walked[] => []);
  const parts = Array.from({ length: processes }, (_, i) => {
    const child = fork(fileURLToPath(import.meta.url), [count, first, String(i)]);
    child.on("message", (message) => {
      const { row, walked } = message as Told;
      const own = walks[row] as Walked[];
      own.push(walked);
      if (own.length === Number(count)) say(line(loopRows[row]?.title ?? "", own));
    });
    return new Promise<void>((done, failed) => {
      child.on("exit", (code) => (code === 0 ? done() : failed(new Error(`a walker ended with ${String(code)}`))));
    });
  });
  await Promise.all(parts);
}

function line(title: string, walks: readonly Walked[]): string {
  const misses = walks.flatMap((walk) => walk.misses.map(({ miss }) => Math.abs(miss)));
  const sum = (of: (walk: Walked) => number) => walks.reduce((total, walk) => total + of(walk), 0);
  const all = misses.length + sum(({ excused }) => excused);
  const share = (part: number) => `${((100 * part) / Math.max(1, all)).toFixed(1)} %`;
  const middle = (of: (walk: Walked) => number) => `${at(walks.map(of), 0.5)}, ${at(walks.map(of), 1)}`;
  const cells = [
    title,
    percent(misses.map((miss) => miss <= 6)),
    percent(misses.map((miss) => miss <= 12)),
    at(misses, 0.95).toFixed(1),
    at(misses, 1).toFixed(1),
    percent(walks.flatMap(({ held }) => held)),
    percent(walks.map(({ heldLayer }) => heldLayer)),
    middle(({ readings }) => readings),
    middle(({ bareReadings }) => bareReadings),
    middle(({ steps }) => steps),
    middle(({ pieces }) => pieces),
    share(sum(({ excused }) => excused)),
    share(sum(({ impossible }) => impossible)),
  ];
  return `| ${cells.join(" | ")} |`;
}

function at(values: readonly number[], share: number): number {
  const sorted = values.toSorted((p, q) => p - q);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

function percent(values: readonly boolean[]): string {
  return `${((100 * values.filter(Boolean).length) / Math.max(1, values.length)).toFixed(1)} %`;
}
