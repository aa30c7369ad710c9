import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { ensureBrowser } from "./support/browser";
import { firstLoad, firstLoadBudgetBytes } from "./support/firstLoad";
import { browserTally, type Tally, unitTally } from "./support/testReports";

/**
 * `npm test`: installs what the tests need, then runs every check, each one even when an earlier one failed. The last
 * line is plain: the tests of both runners and the other steps, one each, added up.
 */
const steps: readonly Step[] = [
  { name: "browser", run: async () => ({ passed: 0, failed: 0, note: ensureBrowser() }) },
  { name: "types", run: () => commandStep("tsc", ["-b", "--pretty", "false"]) },
  { name: "lint", run: () => commandStep("biome", ["ci", ...plainLog, "--error-on-warnings", "."]) },
  { name: "unit tests", run: unitTests },
  { name: "build", run: freshBuild },
  { name: "budget", run: async () => budget() },
  { name: "end-to-end tests", run: browserTests },
];

interface Step {
  readonly name: string;
  readonly run: () => Promise<Tally>;
}

interface Outcome extends Tally {
  readonly name: string;
  readonly seconds: number;
}

/** In a log that is kept, the linter's colours would bury its words. */
const plainLog: readonly string[] = process.stdout.isTTY ? [] : ["--colors=off"];
const builtFolder = "dist";
const reportFolder = "reports";

const outcomes: Outcome[] = [];
for (const step of steps) outcomes.push(await outcomeOf(step));
report(outcomes);

async function outcomeOf({ name, run }: Step): Promise<Outcome> {
  console.log(`\n== ${name}`);
  const start = performance.now();
  const tally = await run().catch((problem: unknown) => ({ passed: 0, failed: 1, note: String(problem) }));
  return { name, ...tally, seconds: (performance.now() - start) / 1000 };
}

async function commandStep(command: string, args: readonly string[]): Promise<Tally> {
  const code = await exitCode(command, args);
  return code === 0 ? { passed: 1, failed: 0, note: "" } : { passed: 0, failed: 1, note: `ended with code ${code}` };
}

async function unitTests(): Promise<Tally> {
  const file = freshReport("unit.json");
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${file}`];
  const code = await exitCode("vitest", ["run", "--allowOnly=false", ...reporters]);
  return unitTally(JSON.parse(readFileSync(file, "utf8")), code);
}

async function freshBuild(): Promise<Tally> {
  // An older build must not stand in for one that failed.
  rmSync(builtFolder, { recursive: true, force: true });
  return commandStep("vite", ["build"]);
}

function budget(): Tally {
  requireBuild();
  const { scripts, gzipBytes } = firstLoad(builtFolder);
  for (const script of scripts) console.log(`${kilobytes(script.gzipBytes)}  ${script.path}`);
  const note = `first load ${kilobytes(gzipBytes)} of ${kilobytes(firstLoadBudgetBytes)} after gzip`;
  return gzipBytes <= firstLoadBudgetBytes ? { passed: 1, failed: 0, note } : { passed: 0, failed: 1, note };
}

async function browserTests(): Promise<Tally> {
  if (!hasBrowserTests()) return { passed: 0, failed: 0, note: "there are none yet" };
  requireBuild();
  const file = freshReport("browser.json");
  const code = await exitCode("playwright", ["test", "--reporter=list,json"], { PLAYWRIGHT_JSON_OUTPUT_FILE: file });
  return browserTally(JSON.parse(readFileSync(file, "utf8")), code);
}

function hasBrowserTests(): boolean {
  return existsSync("e2e") && readdirSync("e2e", { recursive: true }).some((name) => String(name).endsWith(".spec.ts"));
}

function requireBuild(): void {
  if (!existsSync(join(builtFolder, "index.html"))) throw new Error("There is no build to look at.");
}

/** The path of a report that is still to be written; one left over from an earlier run is gone. */
function freshReport(name: string): string {
  const path = join(reportFolder, name);
  mkdirSync(reportFolder, { recursive: true });
  rmSync(path, { force: true });
  return path;
}

function exitCode(command: string, args: readonly string[], env: Record<string, string> = {}): Promise<number> {
  return new Promise((resolve, reject) => {
    const shell = process.platform === "win32";
    const child = spawn(command, args, { stdio: "inherit", env: { ...process.env, ...env }, shell });
    child.once("error", reject);
    child.once("exit", (code) => resolve(code ?? 1));
  });
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} KB`;
}

function report(results: readonly Outcome[]): void {
  console.log("\n== summary");
  for (const { name, passed, failed, note, seconds } of results) {
    console.log(
      `${name.padEnd(18)}${String(passed).padStart(6)} passed${String(failed).padStart(6)} failed  ${seconds.toFixed(1).padStart(6)} s  ${note}`,
    );
  }
  const sum = (pick: (outcome: Outcome) => number) => results.reduce((total, outcome) => total + pick(outcome), 0);
  const failed = sum((outcome) => outcome.failed);
  process.exitCode = failed === 0 ? 0 : 1;
  console.log(`\n${sum((outcome) => outcome.passed)} passed, ${failed} failed`);
}
