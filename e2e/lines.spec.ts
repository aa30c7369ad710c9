import { expect, type Page, test } from "@playwright/test";
import { heading, openDemo, screens, typeGirths } from "./support/workroom";

const lineNames = ["bust line", "underbust line", "waistline", "high hip line", "full hip line"] as const;

const title = (page: Page, name: string | RegExp) => page.getByRole("heading", { level: 1, name });
const slab = (page: Page) => page.locator(".stop-slab");

const tablet = [{ width: 1180, height: 820 }] as const;

/** Through the marking: the form made ready, then every line from the top down, its one button always in sight. */
async function markAll(page: Page, seenOn: readonly (typeof screens)[number][] = tablet): Promise<void> {
  await expect(title(page, "Make the form ready.")).toBeVisible();
  await page.getByRole("button", { name: "The form is ready" }).click();
  for (const line of lineNames) {
    await expect(title(page, `Mark the person’s ${line}.`)).toBeFocused();
    await expect(slab(page)).toHaveText(`The ${line} is marked`);
    for (const screen of seenOn) {
      await page.setViewportSize(screen);
      await expect(slab(page)).toBeInViewport();
    }
    await slab(page).click();
  }
}

/** Saves what the field asks for, as it is estimated, and so many inches more. */
async function measure(page: Page, text: string): Promise<void> {
  await page.locator(".line-field").getByRole("textbox").fill(text);
  await slab(page).click();
}

test("three girths give a draft, and the draft leads to the lines and from them to a firm plan", async ({ page }) => {
  await typeGirths(page, ["35", "30 1/2", "38"]);
  await page.goto("/#plan");
  await expect(page.getByText(/This plan is a draft: measurements may come out up to .* off/)).toBeVisible();
  await page.getByRole("link", { name: "Mark the lines and measure the bare form" }).click();
  await markAll(page, screens);
  // What is left is done on a phone.
  await page.setViewportSize(screens[0]);
  await expect(title(page, "Measure the bare form on the bust line, all around.")).toBeVisible();
  await expect(slab(page)).toBeDisabled();
  await page.locator(".line-field").getByRole("textbox").fill("33 1/2");
  await expect(slab(page)).toHaveText(/Save 33\s1\/2\sin, then the front/);
  await slab(page).click();
  // The reading is in the plan at once, and what it changed is said.
  await expect(page.locator(".stop-news")).toContainText("The plan is updated.");
  await expect(page.locator(".stop-news")).toContainText(/At the bust line it now adds .* all around, instead of/);
  await expect(page.locator(".line-parts")).toContainText("33 1/2 in");
  for (const girth of ["33 1/2", "29 1/4", "26 1/2", "32 1/4", "36"]) {
    if (girth !== "33 1/2") await measure(page, girth);
    await expect(title(page, /^Measure the front on/)).toBeVisible();
    await page.getByRole("button", { name: "Leave it out" }).click();
    await expect(title(page, /^Measure the width straight across/)).toBeVisible();
    await page.getByRole("button", { name: "Leave it out" }).click();
  }
  await expect(title(page, "The bare form is measured.")).toBeVisible();
  await expect(page.locator(".stop-news")).toContainText("no draft any more");
  await expect(slab(page)).toHaveText("Go on to the first piece");
  await page.getByRole("button", { name: "Measure what was left out" }).click();
  await expect(title(page, "Measure the front on the bust line, side seam to side seam.")).toBeVisible();
  // What is left out once more is not asked for again, and the work goes on.
  await page.getByRole("button", { name: "Leave the rest out" }).click();
  await expect(title(page, "Try the batting.")).toBeVisible();
  await page.goto("/#plan");
  await expect(heading(page, "The plan")).toBeVisible();
  await expect(page.getByText(/This plan is a draft/)).toBeHidden();
});

test("a slip of unit is asked about and nothing typed is lost; any reading can be taken again or out of turn and undone; a height corrected asks for its line again", async ({
  page,
}) => {
  await openDemo(page, "padding/lines");
  await markAll(page);
  const field = page.locator(".line-field").getByRole("textbox");
  await field.fill("76");
  await page.getByRole("button", { name: "It is in centimeters" }).click();
  await expect(field).toHaveValue("76 cm");
  await expect(slab(page)).toHaveText(/Save 29\s7\/8\sin/);
  await field.fill("4");
  await expect(slab(page)).toBeDisabled();
  await expect(page.locator(".field-problem")).toContainText("4");
  await page.goto("/#plan");
  await page.goto("/#padding/lines");
  await expect(field).toHaveValue("4");
  await measure(page, "30");

  // The depth front to back is there as well.
  await page.getByRole("button", { name: "waist", exact: true }).click();
  await expect(title(page, "Measure the bare form on the waistline, all around.")).toBeVisible();
  await measure(page, "27 1/2");
  await page.getByRole("button", { name: "waist", exact: true }).click();
  await page.getByRole("button", { name: /^depth front to back/ }).click();
  await expect(title(page, "Measure the depth front to back on the waistline.")).toBeVisible();
  await measure(page, "8 1/8");
  await page.getByRole("button", { name: "waist", exact: true }).click();
  await expect(page.locator(".line-parts")).toContainText("8 1/8 in");
  await page.getByRole("button", { name: /^all around/ }).click();
  await measure(page, "27 5/8");
  await page.getByRole("button", { name: "waist", exact: true }).click();
  await expect(page.locator(".line-parts")).toContainText("27 5/8 in");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.locator(".line-parts")).toContainText("27 1/2 in");

  // A height is corrected on the person: what was read stays.
  await page.goto("/#body/fullHipBelowNape");
  const hip = page.getByRole("textbox", { name: "Full hip, below the nape" });
  await hip.fill("23 5/8");
  await hip.press("Enter");
  await page.goto("/#padding/lines");
  await expect(title(page, "Mark the person’s full hip line.")).toBeVisible();
  await expect(page.getByText(/23\s5\/8/).first()).toBeVisible();
  await slab(page).click();
  await expect(page.getByRole("button", { name: "bust", exact: true })).toBeVisible();
  await page.getByRole("button", { name: "bust", exact: true }).click();
  await expect(page.locator(".line-parts")).toContainText("30 in");
});

test("heights above the floor are typed for the person and the form, and ask for the nape they are counted from", async ({
  page,
}) => {
  await openDemo(page, "body");
  await page.goto("/#body/waistHeight");
  const waist = page.getByRole("textbox", { name: "Waist, above the floor" });
  await waist.fill("40 1/4");
  await waist.press("Enter");
  await page.goto("/#body/napeHeight");
  await expect(page.getByText(/nape above the floor is missing/i).first()).toBeVisible();
  const nape = page.getByRole("textbox", { name: "Nape, above the floor" });
  await nape.fill("56 3/8");
  await nape.press("Enter");
  await expect(page.getByText(/nape above the floor is missing/i)).toBeHidden();
  for (const name of ["underbustHeight", "apexToUnderbust", "lowerBreastGirth", "waistDepth", "bustBreadth"]) {
    await page.goto(`/#body/${name}`);
    await expect(page.locator(`[data-measurement="${name}"]`)).toHaveAttribute("aria-expanded", "true");
    await expect(page.locator(".guide svg")).toBeVisible();
  }
  await page.goto("/#padding/lines");
  const ofForm = page.getByRole("textbox", { name: "The form’s nape above the floor" });
  await ofForm.fill("58");
  await page.getByRole("button", { name: "The form is ready" }).click();
  await expect(page.getByText(/58\sin above the floor; less .* is /)).toBeVisible();
});
