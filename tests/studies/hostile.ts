import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { builtHarness } from "../../e2e/savingHarness/builtHarness";
import { folderServer } from "../../e2e/savingHarness/folderServer";
import { checkHostileLogs } from "../tools/hostileCheck";
import { machine } from "./benchMachine";
import { hostileFiles } from "./hostileFiles";
import { hostileTabs } from "./hostileTabs";
import { fuzzedReaders, isSound } from "./savingFuzz";
import { killedRounds } from "./savingKill";

/**
 * `npm run study:hostile`: random logs of work, files, links, storage that fails, clocks that jump, two tabs and killed
 * browsers. It prints what was done, what was thrown, which messages were untrue and what was lost; anything but none of
 * these is a failure. A number on the command line does everything so many times over, a second one is the seed;
 * `-- 50 1 logs` takes ten thousand logs and nothing else.
 */
const times = Number(process.argv[2] ?? 1);
const seed = Number(process.argv[3] ?? Date.now() % 1_000_000);
const counts = { logs: 200, files: 400, texts: 3_000, rounds: 400, kills: 6 };
const totals = { thrown: 0, untrue: 0, lost: 0, other: 0 };
print(`Hostile campaign ${times} times over, seed ${seed}, on ${machine()}.\n`);

const logs = checkHostileLogs(counts.logs * times, seed);
print(
  `Logs of work: ${logs.logs}; ${logs.planned} planned, ${logs.learned} learned from, ${logs.waiting} waiting with a reason, ${logs.refused} refused with a reason.`,
);
print(`  ${logs.slips} slips of the hand, ${logs.marked} readings marked; the slowest took ${logs.slowestMs} ms.`);
count(logs.faults, { threw: "thrown", notReadBack: "lost", known: "untrue", unsaid: "untrue" });

if (process.argv[4] === "logs") end();

const files = await hostileFiles(counts.files * times, seed);
print(
  `Files: ${files.files}; ${files.added} added, ${files.refused} refused with a reason; the slowest ${files.slowestMs} ms.`,
);
count(files.faults, { threw: "thrown", untrue: "untrue", unsaid: "untrue" });

const readers = await fuzzedReaders(counts.texts * times, seed);
const cases = readers.reduce((sum, reader) => sum + reader.cases, 0);
const refused = readers.reduce((sum, reader) => sum + reader.refused, 0);
print(
  `Damaged texts and links: ${cases} at ${readers.length} readers; ${refused} refused, none of the others half read.`,
);
count(
  readers.filter((reader) => !isSound(reader)).map(({ name }) => ({ seed, what: "unsound", detail: name })),
  {},
);

const tabs = await hostileTabs(counts.rounds * times, seed);
const deeds = Object.values(tabs.done).reduce((sum, one) => sum + one, 0);
print(
  `Two tabs: ${tabs.rounds} rounds, ${deeds} deeds; “saved” held against the drawers ${tabs.savedChecked} times; ${tabs.lost} fittings taken away under the tabs, none of these losses untold.`,
);
const some = (...names: readonly string[]) => names.map((name) => `${tabs.done[name] ?? 0} ${name}`).join(", ");
print(
  `  ${some("storage fails", "killed", "clock", "taken away", "damaged", "link", "file", "taken over", "erased")}.`,
);
count(tabs.faults, { threw: "thrown", untrue: "untrue", untold: "untrue", lost: "lost" });

const kept = await killedBrowsers(counts.kills * times);
print(`Browsers killed while they save: ${counts.kills * times}; kept in ${kept}.`);
totals.lost += counts.kills * times - kept;

end();

function end(): never {
  const other = totals.other > 0 ? `, ${totals.other} other faults` : "";
  print(`\n${totals.thrown} throws, ${totals.untrue} untrue messages, ${totals.lost} lost${other}.`);
  process.exit(Object.values(totals).some((total) => total > 0) ? 1 : 0);
}

async function killedBrowsers(rounds: number): Promise<number> {
  const folder = await builtHarness();
  const userFolder = mkdtempSync(join(tmpdir(), "padwright-hostile-"));
  const server = await folderServer(folder);
  const delays = Array.from({ length: rounds }, (_, i) => 300 + ((seed + i * 733) % 2_000));
  const found = await killedRounds({ address: server.address, userFolder }, delays);
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
  rmSync(userFolder, { recursive: true, force: true });
  return found.filter(({ isKept }) => isKept).length;
}

interface Fault {
  readonly seed: number;
  readonly what: string;
  readonly detail: string;
}

/** Adds up faults under what they are, and prints the first of them with the seed that brings them back. */
function count(faults: readonly Fault[], sorts: { readonly [what: string]: keyof typeof totals }): void {
  for (const { what } of faults) totals[sorts[what] ?? "other"] += 1;
  for (const one of faults.slice(0, 10)) print(`  FAULT, seed ${one.seed}: ${one.what}, ${one.detail.slice(0, 300)}`);
}

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
