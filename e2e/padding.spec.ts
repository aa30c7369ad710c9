import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { openDemo } from "./support/workroom";
import { rulesBroken } from "./support/rulesBroken";
import { tsImport } from "tsx/esm/api";
import type * as Derived from "../src/app/session/derived";
import type * as Written from "../src/document/fitting";
import type * as Fittings from "../src/document/readFitting";
import type * as Next from "../src/command/nextOfText";
import type * as Command from "../tests/tools/commandWalk";
import type * as Walk from "../tests/tools/stopWalk";

/** The tool beside the browser: its modules read tables as the tool does, which the runner of these stories does not. */
const beside = async <Module>(path: string) => (await tsImport(path, import.meta.url)) as Module;
const besides = async () => {
  const { derivation } = await beside<typeof Derived>("../src/app/session/derived.ts");
  const { writeFitting } = await beside<typeof Written>("../src/document/fitting.ts");
  const { readFitting } = await beside<typeof Fittings>("../src/document/readFitting.ts");
  const { nextOfFitting } = await beside<typeof Next>("../src/command/nextOfText.ts");
  const { walkStops } = await beside<typeof Walk>("../tests/tools/stopWalk.ts");
  const fittingOf = (path: string): Written.Fitting => {
    const read = readFitting(JSON.parse(readFileSync(path, "utf8")));
    if (!read.ok) throw new Error(`${path} cannot be read`);
    return read.value;
  };
  const { commandWalk } = await beside<typeof Command>("../tests/tools/commandWalk.ts");
  return { derivation, nextOfFitting, walkStops, commandWalk, fittingOf, writeFitting };
};

const title = (page: Page) => page.getByRole("heading", { level: 1 });
const slab = (page: Page) => page.locator(".stop-slab");

const withoutTime = (work: Written.Fitting["work"]) =>
  work.map(({ at: _, ...entry }: { readonly at?: unknown }) => entry);

/** The file of the fitting as the page gives it out. */
async function savedFile(page: Page): Promise<string> {
  await page.goto("/#fittings");
  const onTable = page.locator(".tag-on-table");
  await onTable.getByRole("button", { name: /^More for/ }).tap();
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    onTable.getByRole("button", { name: "Save to a file" }).tap(),
  ]);
  return download.path();
}

/** The page while it is shown; else nobody presses. A press counts once the step before it is worked out, as for anybody who reads first. */
function inBrowser(page: Page, isShown: () => boolean): Walk.StopScreen & { readonly words: () => string } {
  let latest = "";
  const shown = async (act: () => Promise<void>) => (isShown() ? act() : undefined);
  return {
    words: () => latest,
    headline: (words) => {
      latest = words;
      return shown(async () => {
        await expect(title(page)).toHaveText(words);
        await expect(page.locator(".padding-page")).toHaveAttribute("aria-busy", "false");
      });
    },
    slab: () => shown(() => slab(page).tap()),
    type: (text) => shown(() => page.locator(".stop").getByRole("textbox").first().fill(text)),
    press: (name) => shown(() => page.getByRole("button", { name, exact: true }).tap()),
  };
}

/** What one looks at and presses is on the screen whole, and nothing has to be scrolled for it. */
async function inSight(page: Page, step: string): Promise<void> {
  const seen = await page.evaluate(() => {
    const boxOf = (name: string) => document.querySelector(name)?.getBoundingClientRect() ?? null;
    const place = document.querySelector(".place");
    return {
      height: window.innerHeight,
      page: document.querySelector(".padding-page")?.getBoundingClientRect().height ?? 1e9,
      room: place?.clientHeight ?? 0,
      wide: document.documentElement.scrollWidth - window.innerWidth,
      boxes: [".stop-title", ".stop-picture", ".tape, .hand-steps", ".stop-slab"].map((name) => boxOf(name)),
    };
  });
  expect(seen.page, `${step}: the stop is no taller than its room`).toBeLessThanOrEqual(seen.room + 1);
  expect(seen.wide, `${step}: nothing runs off the side`).toBeLessThanOrEqual(0);
  for (const box of seen.boxes) {
    if (box === null) continue;
    expect(box.height, step).toBeGreaterThan(20);
    expect(box.top, step).toBeGreaterThanOrEqual(0);
    expect(box.bottom, step).toBeLessThanOrEqual(seen.height + 1);
  }
}

/** On its side as it is held, upright, and on a phone. */
async function inSightEverywhere(page: Page, step: string): Promise<void> {
  for (const [width, height] of [
    [820, 1180],
    [390, 844],
    [1180, 820],
  ] as const) {
    await page.setViewportSize({ width, height });
    await expect(async () => inSight(page, `${step} at ${width} × ${height}`)).toPass({ timeout: 10_000 });
  }
}

/** Brings a fitting to the page as a file, and goes on with it at its next step. */
async function openFile(page: Page, file: object, name: string): Promise<void> {
  const buffer = Buffer.from(JSON.stringify({ ...file, id: undefined, title: name }));
  await page.goto("/#fittings");
  await page.locator("input[type=file]").setInputFiles({ name: "job.json", mimeType: "application/json", buffer });
  await page.getByRole("button", { name: `Open ${name}` }).tap();
  await expect(page.locator(".tag-on-table")).toHaveCount(0);
  await page.goto("/#padding");
}

test("the sample’s job from the bare form to the end, each headline as the command says it, and every kind of step in sight on every screen", async ({
  page,
}) => {
  test.setTimeout(420_000);
  const { derivation, nextOfFitting, walkStops, fittingOf, writeFitting } = await besides();
  await openDemo(page, "padding");
  const seen = new Set<string>();
  const derive = derivation();
  // The page walks to the first time that all is measured, slips in the first tuning layer, and walks on from the basting; what
  // lies between are the same kinds of steps again, and the tool walks them without a screen.
  let isShown = true;
  const screen = inBrowser(page, () => isShown);
  const { steps, taps, last } = await walkStops(
    fittingOf("shared/demo-fitting.json"),
    screen,
    (_, expected) => expected + 1,
    async (step, fitting) => {
      const kind = screen.words().startsWith("Slip in") ? "slip in" : step;
      if (!isShown && (kind === "slip in" || kind === "baste") && !seen.has(kind)) {
        isShown = true;
        await openFile(page, writeFitting(fitting), `at the ${kind}`);
        await screen.headline(screen.words());
      }
      if (!isShown) return;
      const next = nextOfFitting(fitting, derive);
      // Before the first piece a stop of the command is several here, one for each line.
      if (next.ok && !["prepare", "mark", "read-line", "read", "read-all", "padded", "read-cover"].includes(step))
        expect(next.value.step.say).toContain((await title(page).textContent()) ?? "nothing");
      // Readings between the lines are eight fields at once, each of them optional: these scroll.
      if (!seen.has(kind) && kind !== "read-between") await inSightEverywhere(page, kind);
      seen.add(kind);
      if (seen.has("slip in") ? kind === "cut" && !seen.has("baste") : seen.has("read") && kind === "plan-anew") {
        expect(withoutTime(fittingOf(await savedFile(page)).work)).toEqual(withoutTime(fitting.work));
        isShown = false;
      }
    },
  );
  expect(steps.at(-1)).toBe("done");
  expect([...seen]).toEqual(
    expect.arrayContaining(["prepare", "mark", "read-line", "trial", "cut", "stack", "pin", "carry-lines", "read"]),
  );
  expect([...seen]).toEqual(expect.arrayContaining(["slip in", "baste", "look", "padded", "choose-cover"]));
  expect([...seen]).toEqual(expect.arrayContaining(["cut-cover", "fit-cover", "read-cover", "waist-tape", "done"]));
  expect(last.work.filter(({ did }) => did === "basted")).toHaveLength(1);
  expect(await rulesBroken(page)).toEqual([]);
  const firstPin = taps.findIndex(({ step }) => step === "pin");
  expect(taps.slice(0, firstPin + 1).reduce((sum, { count }) => sum + count, 0)).toBeLessThanOrEqual(6);
  for (const piece of new Set(taps.flatMap((tap) => tap.piece ?? [])))
    expect(taps.filter((tap) => tap.piece === piece).length).toBeLessThanOrEqual(3);
  const end = (await title(page).textContent()) ?? "nothing";
  await page.getByRole("button", { name: "Undo" }).tap();
  await expect(title(page)).toHaveText(/^Pull a dust bag/);
  await page.getByRole("button", { name: "Redo" }).tap();
  await expect(title(page)).toHaveText(end);
  expect(withoutTime(fittingOf(await savedFile(page)).work)).toEqual(withoutTime(last.work));
});

test("what is built above the bust is read, and takes one layer more, in sight on every screen", async ({ page }) => {
  const { commandWalk, fittingOf, writeFitting } = await besides();
  const { last } = commandWalk(fittingOf("shared/demo/whole-job.json"), { until: "build-above" });
  await openFile(page, writeFitting(last), "above the bust");
  // Opening may lead to its own page a moment after this one was asked for.
  await expect(async () => {
    await page.goto("/#padding");
    await expect(title(page)).toHaveText(/^Pin the upper back panel/, { timeout: 3_000 });
  }).toPass({ timeout: 30_000 });
  const isAt = async (words: RegExp, step: string) => {
    await expect(title(page)).toHaveText(words);
    await expect(page.locator(".padding-page")).toHaveAttribute("aria-busy", "false");
    await inSightEverywhere(page, step);
  };
  await isAt(/^Pin the upper back panel/, "build");
  expect(await rulesBroken(page)).toEqual([]);
  await slab(page).tap();
  await isAt(/^Measure over the upper back panel/, "measure");
  expect(await rulesBroken(page)).toEqual([]);
  await page.getByLabel("Back waist length").fill("40");
  await page.getByLabel("Upper back width").fill("33.5");
  await slab(page).tap();
  await isAt(/^Add one layer to the upper back panel/, "add");
  await slab(page).tap();
  await isAt(/^Measure over the upper back panel/, "measure again");
  await slab(page).tap();
  await isAt(/^Pin the upper chest panels/, "build two stacks");
  await slab(page).tap();
  await isAt(/^Measure over the upper chest panels/, "measure two stacks");
});
