import { expect, test } from "@playwright/test";
import { openDemo, pinNext, readingField } from "./support/workroom";
import { sampleBody } from "../tests/support/sample";

test.beforeEach(async ({ page }) => {
  await openDemo(page, "padding");
});

test("piece after piece is pinned, counted, and can be taken off again", async ({ page }) => {
  await pinNext(page);
  await expect(page.getByRole("link", { name: /Padding 1 of \d+ pinned/ })).toBeVisible();
  await page.getByRole("button", { name: /^1\. .*: pinned$/ }).click();
  await page.getByRole("button", { name: "Take this piece off again" }).click();
  await expect(page.getByRole("link", { name: /Padding 0 of \d+ pinned/ })).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByRole("link", { name: /Padding 1 of \d+ pinned/ })).toBeVisible();
});

test("the cautions stand at their step, the long words a tap away @phone @portrait @projector", async ({ page }) => {
  await page.getByRole("button", { name: "The form is ready" }).click();
  await pinNext(page);
  const needles = page.getByText(/^Count the pins out\. One missing: stop\. Count the needles, too\./);
  await expect(needles).toBeInViewport();
  await needles.click();
  await expect(page.getByText(/Do not go on until it is found/)).toBeVisible();
});

test("the screen is kept awake, and every measurement is a fold below the step", async ({ page }) => {
  await expect(page.getByRole("checkbox", { name: /Leave the screen on while I pin/ })).toBeChecked();
  await page.getByText("All measurements, and what they show").click();
  await expect(page.getByRole("region", { name: "Every level line" }).locator(".overview-left")).toHaveCount(15);
});

test("a measurement over the cover is saved at its level, and undo takes it back", async ({ page }) => {
  await page.goto("/#finishing");
  await expect(page.getByText("not measured over the cover yet")).toHaveCount(5);
  await page.getByRole("tab", { name: "waist", exact: true }).click();
  await readingField(page, "all around").fill(sampleBody("waistGirth", -6.25));
  await readingField(page, "all around").press("Enter");
  await expect(page.getByText("front and back not measured over the cover yet")).toHaveCount(1);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("front and back not measured over the cover yet")).toHaveCount(0);
});

test("over the cover the same question has the same answer", async ({ page }) => {
  await page.goto("/#finishing");
  await expect(page.getByRole("heading", { name: "Is it done?" })).toBeVisible();
  await expect(page.getByText(/Not yet: \d+ pieces are still to be pinned/)).toBeVisible();
  await expect(page.getByText(/within 3\/8\sin all around, in front and in back/)).toBeVisible();
});
