import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { builtHarness } from "../../e2e/savingHarness/builtHarness";
import { folderServer } from "../../e2e/savingHarness/folderServer";
import { killedRounds } from "./savingKill";

/** `npm run study:saving`: twenty browsers killed while they save, and what was there afterwards, as a table. */
const rounds = Number(process.argv[2] ?? 20);
const folder = await builtHarness();
const userFolder = mkdtempSync(join(tmpdir(), "padwright-killed-"));
const server = await folderServer(folder);

print("round  killed after  saves said  last said  found  steps  kept");
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
const kept = results.filter(({ isKept }) => isKept).length;
print(`\nKept after ${kept} of ${rounds} killed browsers.`);
process.exitCode = kept === rounds ? 0 : 1;

function print(line: string): void {
  process.stdout.write(`${line}\n`);
}
