import { readFileSync } from "node:fs";
import { chromium, type Page } from "@playwright/test";
import { readFitting } from "../../src/document/readFitting";
import { browserLaunch } from "../support/browser";
import { walkStops } from "../tools/stopWalk";
import { builtTool } from "./smokeBuild";

/**
 * How many presses the work takes beside the figures that are typed. The walks from Home are pressed with a thumb in the built
 * tool, on a phone; the presses of a whole job are those of the screen's own stops, walked without a browser over every
 * sample of shared/demo. Goals: 6 from the lines read to the first pin, 3 a piece, 2 a reading, 1 from Home to the plan of a made-up
 * person, 8 to a plan of one's own.
 *
 *   npm run study:taps
 */
const say = (line = "") => process.stdout.write(`${line}\n`);
let isMissed = false;
const row = (what: string, goal: number, most: number, more = "") => {
  isMissed ||= most > goal;
  say(`| ${what} | ${goal} | ${most}${most > goal ? " (missed)" : ""} | ${more} |`);
};

say("| presses | goal | most | |");
say("|---|---|---|---|");
const tool = await builtTool();
const browser = await chromium.launch(browserLaunch());

/** A page on a phone that counts what is pressed. */
async function counted(walk: (page: Page, tap: (name: RegExp) => Promise<void>) => Promise<void>): Promise<number> {
  const page = await (
    await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, baseURL: tool.server.address })
  ).newPage();
  let taps = 0;
  await page.goto("/");
  await walk(page, async (name) => {
    taps++;
    await page.getByRole("button", { name }).or(page.getByRole("link", { name })).first().tap();
  });
  await page.getByRole("heading", { level: 1, name: "The plan" }).waitFor({ timeout: 20_000 });
  await page.context().close();
  return taps;
}

row("Home to the plan of a made-up person", 1, await counted((_, tap) => tap(/sample person/)));
row(
  "Home to a plan of one's own, three girths on the pad, without their digits",
  8,
  await counted(async (page, tap) => {
    await tap(/^Start with bust, waist and hip/);
    for (const [digits, next] of [
      ["35", /^Next: Waist/],
      ["30", /^Next: Full hip/],
      ["38", /^Next: /],
    ] as const) {
      for (const digit of digits) await page.getByRole("button", { name: digit, exact: true }).tap();
      await tap(next);
    }
    await tap(/^See the plan/);
  }),
);
await browser.close();
await tool.remove();

const samples = ["shared/demo-fitting.json", "shared/demo/two-sides.json", "shared/demo/whole-job.json"];
let [firstPin, piece, reading, all] = [0, 0, 0, 0];
let mostPieces = 0;
for (const path of samples) {
  const read = readFitting(JSON.parse(readFileSync(path, "utf8")));
  if (!read.ok) throw new Error(`${path} cannot be read`);
  const silent = async () => {};
  // What is pressed from the last digit of a reading to the next headline.
  let since: number | null = null;
  const pressed = async () => {
    if (since !== null) reading = Math.max(reading, ++since);
  };
  const screen = {
    headline: async () => {
      since = null;
    },
    type: async () => {
      since = 0;
    },
    slab: pressed,
    press: pressed,
  };
  const { taps } = await walkStops(read.value, screen, (_, expected) => expected, silent);
  const pinned = taps.findIndex(({ step }) => step === "pin");
  const count = (some: typeof taps) => some.reduce((sum, one) => sum + one.count, 0);
  firstPin = Math.max(firstPin, count(taps.slice(0, pinned + 1)));
  const pieces = [...new Set(taps.flatMap((one) => one.piece ?? []))];
  mostPieces = Math.max(mostPieces, pieces.length);
  for (const id of pieces) piece = Math.max(piece, count(taps.filter((one) => one.piece === id)));
  all = Math.max(all, count(taps));
}
row("From the lines read to the first pin", 6, firstPin);
row("A piece: cut, stacked, pinned", 3, piece, `up to ${mostPieces} pieces`);
row("A reading beside its digits", 2, reading);
say(`| A whole job of a sample | | ${all} | |`);
process.exitCode = isMissed ? 1 : 0;
