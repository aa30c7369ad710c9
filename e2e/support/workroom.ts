import type { Locator, Page } from "@playwright/test";

/** Ways through the workroom that several stories share, in the words a person reads there. */
export async function openDemo(page: Page, place = "plan"): Promise<void> {
  await page.goto("/#demo");
  await heading(page, "The plan").waitFor();
  if (place === "plan") return;
  await page.goto(`/#${place}`);
  await heading(page, "The plan").waitFor({ state: "hidden" });
  await page.getByRole("main").getByRole("heading").first().waitFor();
}

/** The screens that the work is done at: the phone, the projector, the tablet upright and on its side, as it is at first. */
export const screens = [
  { width: 390, height: 844 },
  { width: 1920, height: 1080 },
  { width: 820, height: 1180 },
  { width: 1180, height: 820 },
] as const;

export const heading = (page: Page, name: string): Locator =>
  page.getByRole("main").getByRole("heading", { name, exact: true, level: 1 });

/** On a phone the parts of the plan are folded; elsewhere there is nothing to open. */
export async function unfoldPlan(page: Page): Promise<void> {
  const folded = page.locator(".plan-fold:not([open]) > summary");
  while ((await folded.count()) > 0) await folded.first().click();
}

/** A line of the measuring chart. */
export const row = (page: Page, measurement: string): Locator =>
  page.locator(`button[data-measurement="${measurement}"]`);

const girthNames = ["bustGirth", "waistGirth", "fullHipGirth"] as const;

/** Types the three girths the way the bench asks for them: each with Enter. */
export async function typeGirths(
  page: Page,
  girths: readonly [bust: string, waist: string, hip: string],
): Promise<void> {
  await page.goto("/#body");
  for (const [i, name] of ["Bust, all around", "Waist, all around", "Full hip, all around"].entries()) {
    const field = page.getByRole("textbox", { name });
    // A reading that cannot be keeps the bench where it is; whoever goes on all the same picks the next one.
    if (!(await field.isVisible())) await row(page, girthNames[i] ?? "").click();
    await field.fill(girths[i] ?? "");
    await field.press("Enter");
  }
}

/** A stock form of the table, by its size. */
export async function chooseSize(page: Page, size: number): Promise<void> {
  await page.goto("/#form");
  await page.getByText("All sizes").click();
  await page.getByRole("radio", { name: new RegExp(`Size ${size} `) }).check();
  await page.goto("/#plan");
}

/** The field for what the tape reads at the level at hand. */
export const readingField = (page: Page, part: "all around" | "front" | "back"): Locator =>
  page.getByRole("tabpanel").getByRole("textbox", { name: new RegExp(`, ${part} `) });

/** Presses on from step to step until one more piece is pinned: the lines are marked and left unread, the trial is skipped. */
export async function pinNext(page: Page): Promise<void> {
  for (let i = 0; i < 40; i += 1) {
    const { title, way, slab } = await settledStop(page);
    await (way === null ? page.locator(".stop-slab") : page.getByRole("button", { name: way, exact: true })).click();
    if (slab === "It is pinned" || slab === "It is slipped in") return;
    await page.waitForFunction((before) => document.querySelector("h1")?.textContent !== before, title);
  }
  throw new Error("no piece came to be pinned");
}

/** What a stop says and offers, once it is worked out: a press before that counts for nothing. */
async function settledStop(page: Page) {
  await page.waitForFunction(() => document.querySelector(".padding-page")?.ariaBusy === "false");
  return page.evaluate(() => {
    const said = [...document.querySelectorAll("button")].map(({ textContent }) => textContent ?? "");
    return {
      title: document.querySelector("h1")?.textContent ?? "",
      way: said.find((words) => words === "Leave the rest out" || words === "Skip the trial") ?? null,
      slab: document.querySelector(".stop-slab")?.textContent ?? "",
    };
  });
}
