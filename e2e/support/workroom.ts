import { expect, type Locator, type Page } from "@playwright/test";

/** Ways through the workroom that several stories share, in the words a person reads there. */
export async function openDemo(page: Page, place = "plan"): Promise<void> {
  await page.goto("/#demo");
  await expect(heading(page, "The plan")).toBeVisible();
  if (place === "plan") return;
  await page.goto(`/#${place}`);
  await expect(page.getByRole("main").getByRole("heading").first()).toBeVisible();
  await expect(heading(page, "The plan")).toBeHidden();
}

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

/** The field for what the tape reads at the level at hand. */
export const readingField = (page: Page, part: "all around" | "front" | "back"): Locator =>
  page.getByRole("tabpanel").getByRole("textbox", { name: new RegExp(`, ${part} `) });

/** Presses on from step to step until one more piece is pinned: the lines are marked and left unread, the trial is skipped. */
export async function pinNext(page: Page): Promise<void> {
  const slab = page.locator(".stop-slab");
  for (let i = 0; i < 40; i += 1) {
    const way = page.getByRole("button", { name: /^(Leave the rest out|Skip the trial)$/ });
    // A press before the last one is worked out counts for nothing.
    await expect(page.locator(".padding-page")).toHaveAttribute("aria-busy", "false");
    const title = (await page.getByRole("heading", { level: 1 }).first().textContent()) ?? "";
    const words = (await slab.textContent()) ?? "";
    await ((await way.isVisible()) ? way : slab).click();
    if (words === "It is pinned" || words === "It is slipped in") return;
    await expect(page.getByRole("heading", { level: 1 }).first()).not.toHaveText(title);
  }
  throw new Error("no piece came to be pinned");
}
