import { type Browser, chromium, type Page } from "@playwright/test";
import { browserLaunch } from "../support/browser";

/**
 * How long a letter is only on the screen: somebody writes a name without a rest in the built tool, and every letter is
 * timed from its key to the end of the transaction that keeps it, strictly durable as all of them are.
 */
export interface TypedToDisk {
  readonly betweenKeysMs: number;
  readonly slower: number;
  readonly letters: number;
  readonly saves: number;
  readonly medianMs: number;
  readonly worstMs: number;
  /** Letters that no save had kept when the writing was over and the tool said "saved". */
  readonly lost: number;
}

/** From a key to the disk, however steadily somebody writes. */
export const longestToDisk = 1_000;

/** Quick, usual and slow hands; the slow ones rest for nearly as long as a save waits. */
export const hands: readonly { readonly betweenKeysMs: number; readonly slower: number }[] = [
  { betweenKeysMs: 60, slower: 1 },
  { betweenKeysMs: 130, slower: 4 },
  { betweenKeysMs: 300, slower: 1 },
  { betweenKeysMs: 450, slower: 1 },
];

export async function typedToDisk(
  address: string,
  told: (row: TypedToDisk) => void = () => {},
  milliseconds = 12_000,
): Promise<readonly TypedToDisk[]> {
  const browser = await chromium.launch(browserLaunch());
  const rows: TypedToDisk[] = [];
  for (const hand of hands) {
    const row = await typedBy(browser, address, hand, milliseconds);
    rows.push(row);
    told(row);
  }
  await browser.close();
  return rows;
}

async function typedBy(
  browser: Browser,
  address: string,
  { betweenKeysMs, slower }: (typeof hands)[number],
  milliseconds: number,
): Promise<TypedToDisk> {
  const context = await browser.newContext({ baseURL: address, locale: "en-US", serviceWorkers: "block" });
  const page = await context.newPage();
  await page.addInitScript(watchSaves);
  await page.goto("/#demo");
  await page.waitForURL(/#plan$/);
  await page.goto("/#body");
  const field = page.locator(".name-field input");
  await field.fill("n");
  await saved(page);
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
  const letters = Math.min(190, Math.round(milliseconds / betweenKeysMs));
  await field.focus();
  for (let i = 0; i < letters; i += 1) {
    await page.keyboard.press("a");
    await page.waitForTimeout(betweenKeysMs);
  }
  await saved(page);
  const { keys, kept } = await page.evaluate(() => window.watchedSaves());
  await context.close();
  const times = keys.map(({ at, length }) => kept.find((save) => save.length >= length && save.at >= at));
  const waited = times
    .flatMap((save, i) => (save === undefined ? [] : [save.at - (keys[i]?.at ?? 0)]))
    .sort((a, b) => a - b);
  return {
    betweenKeysMs,
    slower,
    letters,
    saves: kept.length,
    medianMs: Math.round(waited[waited.length >> 1] ?? Number.NaN),
    worstMs: Math.round(waited.at(-1) ?? Number.NaN),
    lost: times.filter((save) => save === undefined).length,
  };
}

async function saved(page: Page): Promise<void> {
  await page.waitForFunction(() => /saved/i.test(document.querySelector(".saved-mark-state")?.textContent ?? ""));
}

declare global {
  interface Window {
    watchedSaves: () => { readonly keys: readonly Seen[]; readonly kept: readonly Seen[] };
  }
}

/** A moment, and how many letters the name had then: on the screen for a key, on the disk for a save. */
interface Seen {
  readonly at: number;
  readonly length: number;
}

/** Runs in the page, before anything of the tool does. */
function watchSaves(): void {
  const keys: Seen[] = [];
  const kept: Seen[] = [];
  const put = IDBObjectStore.prototype.put;
  IDBObjectStore.prototype.put = function (this: IDBObjectStore, value: unknown, key?: IDBValidKey) {
    const { title } = value as { readonly title?: unknown };
    if (this.name === "fittings" && typeof title === "string") {
      const { length } = title;
      this.transaction.addEventListener("complete", () => kept.push({ at: performance.now(), length }));
    }
    return key === undefined ? put.call(this, value) : put.call(this, value, key);
  };
  document.addEventListener("input", ({ target, timeStamp }) => {
    if (target instanceof HTMLInputElement) keys.push({ at: timeStamp, length: target.value.length });
  });
  window.watchedSaves = () => ({ keys: keys.slice(1), kept });
}
