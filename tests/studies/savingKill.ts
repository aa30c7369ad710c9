import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "@playwright/test";
import { chromiumWithWindows, quietly, systemChromium } from "../support/browser";

/**
 * Kills the whole browser with SIGKILL in the middle of a stream of saves, starts it again over the same folder, and
 * compares what is there with the last value that was said to be saved. The kernel outlives the browser, so this shows
 * that nothing is said too early by the browser or by us; only a power cut could show what the disk itself does.
 */
export interface KilledRound {
  readonly afterMilliseconds: number;
  /** How many saves were said to be saved in this round. */
  readonly saves: number;
  readonly lastSaid: number;
  /** The value found afterwards, or what was found instead of a fitting. */
  readonly found: number | string;
  readonly stepsToUndo: number;
  /** The last value said, or a later one; with its steps, and nothing in quarantine. */
  readonly isKept: boolean;
}

export interface KillPlace {
  readonly address: string;
  readonly userFolder: string;
}

export async function killedRounds(
  place: KillPlace,
  delays: readonly number[],
  told: (round: KilledRound, number: number) => void = () => {},
): Promise<readonly KilledRound[]> {
  const rounds: KilledRound[] = [];
  let fitting = noFitting;
  for (const delay of delays) {
    const killed = await killInStream(place, fitting, delay);
    const round = await whatIsThere(place, killed, delay);
    rounds.push(round);
    told(round, rounds.length);
    const last = typeof round.found === "number" ? round.found : killed.lastSaid;
    fitting = last > mostCounted ? noFitting : { id: killed.id, last };
  }
  return rounds;
}

/** The values are waists, and no tape is longer than a thousand; a quick machine saves some hundred in a round. */
const mostCounted = 600;
const noFitting = { id: "", last: 0 };

interface Killed {
  readonly id: string;
  readonly lastSaid: number;
  readonly saves: number;
}

async function killInStream(
  place: KillPlace,
  fitting: { readonly id: string; readonly last: number },
  delay: number,
): Promise<Killed> {
  const started = await startBrowser(place);
  let [lastSaid, saves] = [fitting.last, 0];
  await started.page.exposeFunction("savedWaist", (waist: number) => {
    if (waist <= lastSaid) return;
    lastSaid = waist;
    saves += 1;
  });
  await started.page.goto(place.address);
  const id = fitting.id || (await started.page.evaluate(() => window.harness.openNew(1)));
  if (fitting.id) await started.page.evaluate((known) => window.harness.open(known), id);
  await started.page.evaluate((from) => window.harness.stream(from), lastSaid + 1);
  await new Promise((resolve) => setTimeout(resolve, delay));
  await started.kill();
  return { id, lastSaid, saves };
}

async function whatIsThere(place: KillPlace, killed: Killed, delay: number): Promise<KilledRound> {
  const { page, kill } = await startBrowser(place);
  await page.goto(place.address);
  const { found, stepsToUndo, quarantined } = await page.evaluate(async (id) => {
    const loaded = await window.harness.storage.load(id);
    const items = await window.harness.storage.quarantined();
    return {
      found: loaded.kind === "loaded" ? Number(loaded.fitting.body.waistGirth) : loaded.kind,
      stepsToUndo: loaded.kind === "loaded" && !loaded.historyLost ? loaded.history.past.length : -1,
      quarantined: items.kind === "listed" ? items.items.length : -1,
    };
  }, killed.id);
  await kill();
  const { lastSaid, saves } = killed;
  // What was said reaches us a moment late, so a later value may be there, and no earlier one.
  const isLastOrLater = typeof found === "number" && found >= lastSaid;
  const isKept = saves > 0 && isLastOrLater && stepsToUndo >= 0 && quarantined === 0;
  return { afterMilliseconds: delay, saves, lastSaid, found, stepsToUndo, isKept };
}

interface StartedBrowser {
  readonly page: Page;
  kill(): Promise<void>;
}

async function startBrowser({ userFolder }: KillPlace): Promise<StartedBrowser> {
  const portFile = join(userFolder, "DevToolsActivePort");
  rmSync(portFile, { force: true });
  const args = [...quietly(), "--headless=new", "--remote-debugging-port=0", `--user-data-dir=${userFolder}`];
  // As people start it where that is at hand; the one without windows dies and keeps in the same way.
  const child = spawn(chromiumWithWindows() ?? systemChromium() ?? chromium.executablePath(), args, {
    detached: true,
    stdio: "ignore",
  });
  const browser = await connected(portFile);
  const [context] = browser.contexts();
  if (context === undefined) throw new Error("the browser came without a context");
  const page = await context.newPage();
  return { page, kill: () => killGroup(child, browser) };
}

async function connected(portFile: string): Promise<Browser> {
  for (let tries = 0; ; tries += 1) {
    try {
      const [port] = readFileSync(portFile, "utf8").split("\n");
      return await chromium.connectOverCDP(`http://127.0.0.1:${port}`);
    } catch (trouble) {
      if (tries > 150) throw trouble;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }
}

/** The browser and all its processes are one group, led by the process started here. */
async function killGroup(child: ChildProcess, browser: Browser): Promise<void> {
  const gone = new Promise<void>((resolve) => child.once("exit", () => resolve()));
  if (child.pid !== undefined) process.kill(-child.pid, "SIGKILL");
  await gone;
  await browser.close().catch(() => {});
}
