import { expect, test } from "@playwright/test";
import { openDemo, pinNext, screens } from "./support/workroom";

test.beforeEach(async ({ page }) => {
  await openDemo(page, "padding");
});

test("a piece is pinned: the cautions stand at their step on every screen, it is counted, ticked on paper, and can be taken off again", async ({
  page,
}) => {
  await pinNext(page);
  const needles = page.getByText(/^Count the pins out\. One missing: stop\. Count the needles, too\./);
  for (const size of screens) {
    await page.setViewportSize(size);
    await expect(needles).toBeInViewport();
  }
  await needles.click();
  await expect(page.getByText(/Do not go on until it is found/)).toBeVisible();
  await expect(page.getByRole("link", { name: /Padding 1 of \d+ pinned/ })).toBeVisible();
  await page.goto("/#print");
  await expect(page.locator('.sheet-piece [data-step="pin"] .sheet-box svg')).toHaveCount(1);
  await page.goto("/#padding");
  await page.getByRole("button", { name: /^1\. .*: pinned$/ }).click();
  await page.getByRole("button", { name: "Take this piece off again" }).click();
  await expect(page.getByRole("link", { name: /Padding 0 of \d+ pinned/ })).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByRole("link", { name: /Padding 1 of \d+ pinned/ })).toBeVisible();
});

test("every measurement is a fold below the step; finishing says what is left of the padding, and what was not measured over the cover", async ({
  page,
}) => {
  await expect(page.getByRole("checkbox", { name: /Leave the screen on while I pin/ })).toBeChecked();
  await page.getByText("All measurements, and what they show").click();
  await expect(page.getByRole("region", { name: "Every level line" }).locator(".overview-left")).toHaveCount(15);
  await page.goto("/#finishing");
  await expect(page.getByRole("heading", { name: "First the padding." })).toBeVisible();
  await expect(page.getByRole("heading", { name: "Is it done?" })).toBeVisible();
  await expect(page.getByText(/Not yet: \d+ pieces are still to be pinned/)).toBeVisible();
  await expect(page.getByText(/within 3\/8\sin all around, in front and in back/)).toBeVisible();
  await expect(page.getByText("not measured over the cover yet")).toHaveCount(5);
});
