import { expect, test } from "@playwright/test";
import { leftToGo, openDemo, readingField } from "./support/workroom";

test.beforeEach(async ({ page }) => {
  await openDemo(page, "padding");
});

test("what is left to go moves with every letter, in front and behind apart @phone @portrait", async ({ page }) => {
  await page.getByRole("tab", { name: "waist" }).click();
  await readingField(page, "all round").fill("30");
  await expect(leftToGo(page, "all round")).toHaveText("6 3/4 in to go all round");
  await readingField(page, "all round").fill("36 3/4");
  await expect(leftToGo(page, "all round")).toHaveText("there");
  await readingField(page, "front").fill("18 1/8");
  await expect(leftToGo(page, "front")).toHaveText("2 in to go in front");
  await expect(leftToGo(page, "back")).toHaveText("2 in over behind");
  await readingField(page, "front").fill("20 1/2");
  await expect(leftToGo(page, "front")).toHaveText("3/8 in over in front");
});

test("with a piece on, over says which layer to ease", async ({ page }) => {
  await page.getByRole("button", { name: "It is pinned" }).click();
  await page.getByRole("tab", { name: "waist" }).click();
  await readingField(page, "all round").fill("37 1/8");
  await expect(leftToGo(page, "all round")).toHaveText("3/8 in over: ease the last layer");
});

test("a kept reading stays until a piece goes over it, and undo takes it back", async ({ page }) => {
  await page.getByRole("tab", { name: "waist" }).click();
  const before = await leftToGo(page, "all round").textContent();
  await readingField(page, "all round").fill("30 1/2");
  await readingField(page, "all round").press("Enter");
  await expect(leftToGo(page, "all round")).toHaveText("6 1/4 in to go all round");
  await expect(readingField(page, "all round")).toHaveValue("30 1/2");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(leftToGo(page, "all round")).toHaveText(before ?? "");
});

test("piece after piece is pinned, counted, and can be taken off again", async ({ page }) => {
  await expect(page.getByRole("link", { name: /Padding 0 of \d+ pinned/ })).toBeVisible();
  const first = await page.getByRole("main").getByRole("heading", { level: 2 }).first().textContent();
  await page.getByRole("button", { name: "It is pinned" }).click();
  await expect(page.getByRole("link", { name: /Padding 1 of \d+ pinned/ })).toBeVisible();
  await expect(page.getByText(/Piece 1 of \d+ is pinned/)).toBeAttached();
  await expect(page.getByRole("main").getByRole("heading", { level: 2 }).first()).not.toHaveText(first ?? "");
  await page.getByRole("button", { name: /1: pinned$/ }).click();
  await page.getByRole("button", { name: "Take this piece off again" }).click();
  await expect(page.getByRole("link", { name: /Padding 0 of \d+ pinned/ })).toBeVisible();
});

test("the whole padding, with readings as the plan expects them, ends there at every level", async ({ page }) => {
  const pinned = page.getByRole("button", { name: "It is pinned" });
  const count = await page
    .getByRole("main")
    .getByRole("button", { name: /not pinned yet/ })
    .count();
  for (let i = 0; i < count; i += 1) await pinned.click();
  await expect(page.getByRole("heading", { name: "Every piece is on" })).toBeVisible();
  const cells = page.getByRole("region", { name: "Every level" }).locator(".overview-left");
  await expect(cells).toHaveCount(15);
  for (const words of await cells.allTextContents()) expect(words).toBe("there");
});

test("the screen is kept awake, and the browser’s answer is shown", async ({ page }) => {
  await expect(page.getByRole("checkbox", { name: /Keep the screen awake/ })).toBeChecked();
});
