import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { builtHarness } from "../../e2e/savingHarness/builtHarness";
import { folderServer } from "../../e2e/savingHarness/folderServer";
import { fuzzedReaders, isSound } from "./savingFuzz";
import { machine } from "./benchMachine";
import { killedRounds } from "./savingKill";
import { longestToDisk, typedToDisk } from "./savingTyping";
import { builtTool } from "./smokeBuild";

/**
 * `npm run study:saving`: every reader against twenty thousand damaged texts, then how long a letter takes to the disk
 * while somebody writes without a rest, then twenty browsers killed while they save, and what was there afterwards. Two
 * numbers on the command line ask for other counts, a third for a seed.
 */
const rounds = Number(process.argv[2] ?? 20);
const cases = Number(process.argv[3] ?? 20_000);

print("reader              cases  refused  whole  other  thrown  slowest");
const seed = Number(process.argv[4] ?? Date.now() % 1_000_000);
const readers = await fuzzedReaders(cases, seed);
for (const reader of readers) {
  const { name, refused, whole, other, thrown, slowestMilliseconds } = reader;
  const counts = [
    String(reader.cases).padStart(7),
    String(refused).padStart(7),
    String(whole).padStart(5),
    String(other).padStart(5),
    String(thrown).padStart(6),
    `${slowestMilliseconds} ms`.padStart(7),
  ];
  print([name.padEnd(17), ...counts].join("  "));
}

print(`\nWritten without a rest, on ${machine()}:`);
print("keys every  processor  letters  saves  median to disk  worst to disk  lost");
const tool = await builtTool();
const typing = await typedToDisk(tool.server.address, (hand) => {
  const cells = [
    `${hand.betweenKeysMs} ms`.padStart(10),
    (hand.slower === 1 ? "as it is" : `${hand.slower} × slower`).padStart(9),
    String(hand.letters).padStart(7),
    String(hand.saves).padStart(5),
    `${hand.medianMs} ms`.padStart(14),
    `${hand.worstMs} ms`.padStart(13),
    String(hand.lost).padStart(4),
  ];
  print(cells.join("  "));
});
await tool.remove();
const isSoonKept = typing.every(({ worstMs, lost }) => worstMs <= longestToDisk && lost === 0);

const folder = await builtHarness();
const userFolder = mkdtempSync(join(tmpdir(), "padwright-killed-"));
const server = await folderServer(folder);

print("\nround  killed after  saves said  last said  found  steps  kept");
const delays = Array.from({ length: rounds }, () => Math.round(200 + Math.random() * 2_300));
const results = await killedRounds({ address: server.address, userFolder }, delays, (round, number) => {
  const cells = [
    String(number).padStart(5),
    `${round.afterMilliseconds} ms`.padStart(12),
    String(round.saves).padStart(10),
    String(round.lastSaid).padStart(9),
    String(round.found).padStart(5),
    String(round.stepsToUndo).padStart(5),
    round.isKept ? "yes" : "NO",
  ];
  print(cells.join("  "));
});

await server.stop();
rmSync(folder, { recursive: true, force: true });
rmSync(userFolder, { recursive: true, force: true });
print(`\nSeed of the damaged texts: ${seed}.`);
const kept = results.filter(({ isKept }) => isKept).length;
print(`Kept after ${kept} of ${rounds} killed browsers.`);
process.exitCode = kept === rounds && isSoonKept && readers.every(isSound) ? 0 : 1;

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
