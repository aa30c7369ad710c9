import { readdirSync, readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "@playwright/test";
import { build } from "vite";
import { fileURLToPath } from "node:url";
import { levelNames } from "../../src/core/body/vocabulary";
import { readFittingText } from "../../src/document/readFitting";
import { browserLaunch } from "../support/browser";
import { largestFittingFile } from "./benchLargest";
import { unreadSteps } from "../tools/unreadSteps";
import { machine } from "./benchMachine";
import { keyWatch, type WatchedKey } from "./benchTypingWatch";
import { builtTool } from "./smokeBuild";

/**
 * `npm run bench:typing`: how long a letter of a reading takes, from the press of the key to the frame that shows what it
 * makes of it (whether it is on target, and the words to go on with), on a processor made four times slower. The built
 * tool on a tablet on its side, at the step that reads every level over the finished structure: each level in turn, all
 * around and front, one letter every 130 ms as a quick hand types, Enter to keep it, and a second for the tape between
 * them; what the tape taught and the next step are worked out meanwhile. The p95 of three parts say where the time goes:
 * in the queue behind other work, in our code with the browser's own editing, and in styles, layout and paint; `late`
 * counts letters whose change missed the first frame, and `waited` is the longest that any key, Enter too, stood in the
 * queue. The first row is a page with nothing but one controlled field of React and a line of words, typed into in the
 * same way: what no tool can be quicker than on this machine as it is just now. `--trace` writes reports/typing.json for
 * the performance panel of a browser; `-- 1` leaves the processor as quick as it is.
 */
const budgetMs = 50;
const mostTimes = 2;
const slower = Number(process.argv.slice(2).find((word) => !word.startsWith("-")) ?? 4);
const pauseMs = 130;
/** The tape is laid somewhere else before the next reading: nobody does that within a second. */
const tapeMs = 1_000;

const demos = [...readdirSync("shared/demo").map((name) => `shared/demo/${name}`), "shared/demo-fitting.json"].map(
  (path) => atReading(readFileSync(path, "utf8")),
);
const [demo] = demos.sort((a, b) => b.pieces - a.pieces);
if (demo === undefined) throw new Error("There is no demo.");

const tool = await builtTool();
const browser = await chromium.launch(browserLaunch());
console.log(`Typing in ms from key to frame, processor ${slower} times slower, chromium ${browser.version()},`);
console.log(`on ${machine()}.\n`);
const heads = ["letters", "changing", "late", "p50", "p95", "worst", "in queue", "our code", "drawing", "waited"];
console.log(`${"".padEnd(42)}${heads.map((head) => head.padStart(9)).join("")}`);
const alone = printed("A controlled field and a line of words", await typedAlone(browser));
const ours = { p95: 0, waited: 0 };
for (const { title, pieces, text } of [demo, atReading(largestFittingFile())]) {
  const { p95, waited } = printed(`${title}, ${pieces} pieces`, await typed(browser, title, text));
  ours.p95 = Math.max(ours.p95, p95);
  ours.waited = Math.max(ours.waited, waited);
}
await browser.close();
await tool.remove();
const times = ours.p95 / alone.p95;
console.log(
  `\n95 letters in 100 within ${ours.p95.toFixed(1)} ms, ${times.toFixed(1)} times the bare field (goal ${mostTimes}).`,
);
console.log(`No key waited longer than ${ours.waited.toFixed(1)} ms (goal ${budgetMs}).`);
process.exitCode = times > mostTimes || ours.waited > budgetMs ? 1 : 0;

/** Prints a row, and gives what 95 in 100 letters took at most, and how long a key waited at most. */
function printed(name: string, keys: readonly WatchedKey[]): { readonly p95: number; readonly waited: number } {
  const changing = keys.filter(({ changed }) => changed);
  if (changing.length < 20) throw new Error(`Only ${changing.length} keys changed a difference.`);
  const p95 = (part: (key: WatchedKey) => number) => quantile(changing.map(part), 0.95);
  const whole = changing.map(({ queued, worked, drawn }) => queued + worked + drawn);
  const times = [
    ...[0.5, 0.95, 1].map((share) => quantile(whole, share)),
    p95(({ queued }) => queued),
    p95(({ worked }) => worked),
    p95(({ drawn }) => drawn),
    Math.max(...keys.map(({ queued }) => queued)),
  ];
  const counts = [keys, changing, changing.filter(({ isLate }) => isLate)].map(({ length }) => String(length));
  const cells = [...counts, ...times.map((time) => time.toFixed(1))];
  console.log(`${name.padEnd(42)}${cells.map((cell) => cell.padStart(9)).join("")}`);
  return { p95: quantile(whole, 0.95), waited: Math.max(...keys.map(({ queued }) => queued)) };
}

/** All letters typed; only those after which the screen says otherwise count. */
async function typed(inside: Browser, title: string, text: string): Promise<readonly WatchedKey[]> {
  const page = await tabletPage(inside);
  await openFile(page, title, text);
  await page.goto("/#padding");
  await page.locator(".reading-input input").waitFor();
  await watch(page);
  const isTraced = process.argv.includes("--trace");
  if (isTraced) await inside.startTracing(page, { path: "reports/typing.json" });
  for (let i = 0; i < 2 * levelNames.length; i += 1) await typeReading(page);
  if (isTraced) await inside.stopTracing();
  return await keysOf(page);
}

/** As many letters into a page that does nothing but count them. */
async function typedAlone(inside: Browser): Promise<readonly WatchedKey[]> {
  const page = await tabletPage(inside);
  await page.setContent(
    `<!doctype html><meta name="viewport" content="width=device-width"><style>input { font-size: 2rem }</style><div id="root"></div>`,
  );
  await page.addScriptTag({ content: await bareField() });
  await page.locator("input").waitFor();
  await watch(page);
  for (let i = 0; i < 2 * levelNames.length; i += 1) {
    await page.locator("input").fill("");
    await page.waitForTimeout(tapeMs);
    await pressLetters(page, "98.4");
  }
  return await keysOf(page);
}

async function tabletPage(inside: Browser): Promise<Page> {
  const context = await inside.newContext({
    baseURL: tool.server.address,
    viewport: { width: 1180, height: 820 },
    hasTouch: true,
    isMobile: true,
    locale: "en-US",
    serviceWorkers: "block",
  });
  return await context.newPage();
}

/** From here on the page watches its keys, and is slow. */
async function watch(page: Page): Promise<void> {
  // The runner of this script wraps functions that have names, and the page does not know its wrapper.
  await page.evaluate("window.__name = (named) => named");
  await page.evaluate(keyWatch);
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: slower });
}

async function keysOf(page: Page): Promise<readonly WatchedKey[]> {
  // The last letter may still be on its way to the screen.
  await page.waitForTimeout(1_000);
  const keys = await page.evaluate(() => window.watchedKeys());
  await page.context().close();
  return keys;
}

async function openFile(page: Page, title: string, text: string): Promise<void> {
  await page.goto("/#fittings");
  const file = { name: "fitting.json", mimeType: "application/json", buffer: Buffer.from(text) };
  await page.locator('input[type="file"]').setInputFiles(file);
  await page.getByRole("button", { name: new RegExp(`^(Open|Go on).*${title.slice(0, 4)}`) }).click();
  await page.waitForURL(/#padding$/);
}

/** Types what the tool expects the tape to read, letter by letter, as a decimal so that nearly every letter counts; Enter keeps it. */
async function typeReading(page: Page): Promise<void> {
  const told = (await page.locator(".reading-figure").textContent()) ?? "";
  const whole = /\d+/.exec(told)?.[0];
  if (whole === undefined) throw new Error(`Nothing is expected: ${told}.`);
  await page.waitForTimeout(tapeMs);
  await pressLetters(page, `${whole}.4`);
  await page.keyboard.press("Enter");
  await page.waitForTimeout(pauseMs);
}

/** The page of one controlled field, bundled as the tool is. */
async function bareField(): Promise<string> {
  const bundle = await build({
    logLevel: "error",
    configFile: false,
    define: { "process.env.NODE_ENV": '"production"' },
    build: {
      write: false,
      lib: { entry: fileURLToPath(new URL("bareField.tsx", import.meta.url)), formats: ["iife"], name: "field" },
    },
  });
  const [built] = [bundle].flat();
  if (built === undefined || !("output" in built)) throw new Error("The bare field was not bundled.");
  return built.output[0].code;
}

async function pressLetters(page: Page, letters: string): Promise<void> {
  for (const letter of letters) {
    await page.keyboard.press(letter);
    await page.waitForTimeout(pauseMs);
  }
}

/** The file with the work done as planned, to the step that reads the tape over the structure. */
function atReading(text: string) {
  const start = readFittingText(text);
  if (!start.ok) throw new Error("A fitting of the bench cannot be read.");
  for (const { fitting, next } of unreadSteps(start.value)) {
    if (next.step.do !== "read") continue;
    const file = JSON.stringify({ ...(JSON.parse(text) as object), work: fitting.work });
    return { title: fitting.title, pieces: next.rest.pieces.length, text: file };
  }
  throw new Error("The bench has nothing to read.");
}

function quantile(values: readonly number[], share: number): number {
  return [...values].sort((a, b) => a - b)[Math.ceil(share * values.length) - 1] ?? Number.NaN;
}
