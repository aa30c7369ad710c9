import { expect, type Page, test } from "@playwright/test";
import { heading, openDemo, row } from "./support/workroom";
import { sampleForm } from "../tests/support/sample";

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

test("the whole job from Home to the printed sheet with the keyboard alone", async ({ page }) => {
  test.slow();
  await page.goto("/");
  await expect(page.getByRole("button", { name: "Start with bust, waist and hip" })).toBeVisible();
  await tabTo(page, /^Start with bust, waist and hip/);
  await page.keyboard.press("Enter");
  await expect(heading(page, "The person")).toBeVisible();

  await tabTo(page, /^Bust, all around/);
  await page.keyboard.press("Enter");
  for (const text of ["35", "30 1/2", "38"]) {
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
  }
  await page.keyboard.type("55");
  await page.keyboard.press("Enter");
  await expect(row(page, "napeHeight")).toContainText("55 in");
  await page.keyboard.press("Escape");
  await expect(row(page, "bustHeight")).toBeFocused();

  await page.keyboard.press("Home");
  await tabTo(page, /^The form|^Size chart/).catch(() => {});
  await page.goto("/#form");
  await expect(heading(page, "The form")).toBeVisible();
  await tabTo(page, /Worked out from the measurements/);
  await page.keyboard.press("ArrowDown");
  await expect(page.getByRole("radio", { name: /^Size \d+/ }).first()).toBeChecked();

  await page.goto("/#padding");
  await tabTo(page, /^The form is ready/);
  await page.keyboard.press("Enter");
  for (const line of ["bust line", "underbust line", "waistline", "high hip line", "full hip line"]) {
    await expect(page.getByRole("heading", { level: 1, name: `Mark the person’s ${line}.` })).toBeFocused();
    await tabTo(page, new RegExp(`^The ${line} is marked`));
    await page.keyboard.press("Enter");
  }
  await tabTo(page, /^Leave the rest out/);
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 1, name: "Try the batting." })).toBeFocused();
  // A figure goes to the reading that is asked, wherever the focus is.
  await page.keyboard.type(sampleForm("waistGirth"));
  await page.keyboard.press("Enter");
  await page.keyboard.type(sampleForm("waistGirth", 4.5));
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 1, name: /^(Update the remaining pieces|Cut )/ })).toBeVisible();
  await page.locator("body").press("Control+z");
  await expect(page.getByRole("heading", { level: 1, name: "Try the batting." })).toBeVisible();

  await page.goto("/#print");
  await expect(heading(page, "Print")).toBeVisible();
  await tabTo(page, /^Print$/);
});

test("one press skips the band, and arriving somewhere puts the focus at its beginning", async ({ page }) => {
  await page.goto("/#body");
  await expect(heading(page, "The person")).toBeVisible();
  await page.keyboard.press("Tab");
  await expect(page.getByRole("button", { name: "Skip to the work" })).toBeFocused();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("main")).toBeFocused();
  await page.getByRole("link", { name: /The form/ }).press("Enter");
  await expect(heading(page, "The form")).toBeVisible();
  await expect(page.getByRole("main")).toBeFocused();
});

test("whatever goes away at a press leaves the focus near it, and never at the top of the page", async ({ page }) => {
  const pressed = async (name: string | RegExp, within = page.locator("body")) => {
    const button = within.getByRole("button", { name }).first();
    await button.focus();
    await button.press("Enter");
    const tag = await page.evaluate(async () => {
      // The browser forgets a thing that cannot be pressed any more a frame after it.
      await new Promise((shown) => requestAnimationFrame(() => requestAnimationFrame(shown)));
      return document.activeElement?.tagName;
    });
    expect(tag, String(name)).not.toBe("BODY");
  };
  await openDemo(page, "3d");
  await pressed("The bare form");
  await pressed("Every piece");

  await page.goto("/#padding");
  await pressed("The form is ready");
  for (const line of ["bust line", "underbust line", "waistline", "high hip line", "full hip line"]) {
    await pressed(`The ${line} is marked`);
  }
  await pressed("Leave the rest out");
  await pressed("Skip the trial");
  await pressed("Update the remaining pieces");
  await pressed(/^(All layers are cut|It is cut)$/);
  await page.locator(".route-pieces button").nth(3).click();
  await pressed("Back to the next step");

  await page.goto("/#body");
  await row(page, "waistGirth").click();
  const waist = page.getByRole("textbox", { name: "Waist, all around" });
  await waist.fill("78");
  await waist.press("Enter");
  await pressed("It is in centimeters");
  for (let i = 0; i < 200 && (await page.getByRole("button", { name: "Undo" }).isEnabled()); i += 1) {
    await pressed("Undo");
  }
  await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
});
