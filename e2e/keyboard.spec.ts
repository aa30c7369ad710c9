import { expect, type Page, test } from "@playwright/test";
import { heading, row } from "./support/workroom";

/** Tabs on until the thing with that name has the focus; a person would do no other. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let i = 0; i < 160; i += 1) {
    await page.keyboard.press("Tab");
    const focused = await page.evaluate(() => {
      const element = document.activeElement;
      const label = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : null;
      return label ?? element?.getAttribute("aria-label") ?? element?.textContent ?? "";
    });
    if (name.test(focused.trim())) return;
  }
  throw new Error(`nothing called ${String(name)} could be reached with the Tab key`);
}

test("the whole job from the door to the printed sheet with the keyboard alone", async ({ page }) => {
  test.slow();
  await page.goto("/");
  await expect(page.getByRole("button", { name: "Start with three girths" })).toBeVisible();
  await tabTo(page, /^Start with three girths/);
  await page.keyboard.press("Enter");
  await expect(heading(page, "The body")).toBeVisible();

  await tabTo(page, /^Bust girth/);
  await page.keyboard.press("Enter");
  for (const text of ["41", "36 1/2", "44"]) {
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
  }
  await page.keyboard.type("20");
  await page.keyboard.press("Enter");
  await expect(row(page, "waistFrontArc")).toContainText("20 in");
  await page.keyboard.press("Escape");
  await expect(row(page, "fullHipFrontArc")).toBeFocused();

  await page.keyboard.press("Home");
  await tabTo(page, /^The form|^Size table/).catch(() => {});
  await page.goto("/#form");
  await expect(heading(page, "The form")).toBeVisible();
  await tabTo(page, /Whichever suits best/);
  await page.keyboard.press("ArrowDown");
  await expect(page.getByRole("radio", { name: /^Size \d+/ }).first()).toBeChecked();

  await page.goto("/#padding");
  await expect(page.getByRole("button", { name: "It is pinned" })).toBeVisible();
  await tabTo(page, /^It is pinned/);
  await page.keyboard.press("Enter");
  await expect(page.getByRole("link", { name: /Padding 1 of \d+ pinned/ })).toBeVisible();

  await tabTo(page, /^(bust|underbust|waist|high hip|full hip)$/);
  await page.keyboard.press("ArrowRight");
  await tabTo(page, /, all round/);
  await page.keyboard.type("30 1/2");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("tabpanel").getByRole("textbox").first()).toHaveValue("30 1/2");
  await page.keyboard.press("Escape");
  await page.locator("body").press("Control+z");

  await page.goto("/#print");
  await expect(heading(page, "On paper")).toBeVisible();
  await tabTo(page, /^Print it/);
});

test("one press skips the band, and arriving somewhere puts the focus at its beginning", async ({ page }) => {
  await page.goto("/#body");
  await expect(heading(page, "The body")).toBeVisible();
  await page.keyboard.press("Tab");
  await expect(page.getByRole("button", { name: "Skip to the work" })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("main")).toBeFocused();
  await page.getByRole("link", { name: /The form/ }).press("Enter");
  await expect(heading(page, "The form")).toBeVisible();
  await expect(page.getByRole("main")).toBeFocused();
});
