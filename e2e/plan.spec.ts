import { expect, type Locator, type Page, test } from "@playwright/test";
import { heading, openDemo, screens } from "./support/workroom";

/** How many screens the page is long. */
const screensLong = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollHeight / window.innerHeight);

/** How high the smallest letters of its drawing stand, in px. */
const smallestLetters = (dialog: Locator): Promise<number> =>
  dialog.evaluate((it) => {
    const heights = [...it.querySelectorAll<SVGTextElement>(".drawing text")].map(
      (words) => Number.parseFloat(getComputedStyle(words).fontSize) * (words.getCTM()?.a ?? 0),
    );
    return Math.min(...heights);
  });

/** Broken on purpose: every level line shown at once. Seen to fail. */
test("the plan is two screens long, on every screen", async ({ page }) => {
  await openDemo(page);
  for (const screen of screens) {
    await page.setViewportSize(screen);
    await expect(heading(page, "The plan")).toBeVisible();
    await expect.poll(() => screensLong(page), { message: `${screen.width} wide` }).toBeLessThanOrEqual(2);
  }
});

test("every piece is one press from the drawing it is cut from, over the whole screen", async ({ page }) => {
  await openDemo(page);
  for (const screen of screens) {
    await page.setViewportSize(screen);
    const isPhone = screen.width < 640;
    const tiles = page.locator(".piece-tile");
    for (let i = 0; i < (await tiles.count()); i += 1) {
      const name = await tiles.nth(i).locator(".piece-tile-name").textContent();
      await tiles.nth(i).click();
      if (!isPhone) await page.getByRole("button", { name: "Larger drawing" }).click();
      const dialog = page.getByRole("dialog", { name: `${i + 1}. ${name}` });
      const picture = await dialog.locator(".drawing").boundingBox();
      expect(picture?.width).toBeGreaterThan(screen.width * 0.9);
      expect(await smallestLetters(dialog)).toBeGreaterThanOrEqual(isPhone ? 11 : 18);
      expect(await dialog.evaluate((it) => it.scrollHeight - it.clientHeight)).toBeLessThanOrEqual(1);
      await page.getByRole("button", { name: "Back to the plan" }).click();
      await expect(dialog).toBeHidden();
    }
  }
});
