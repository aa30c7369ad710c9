import { expect, type Locator, test } from "@playwright/test";
import { leftToGo, openDemo, readingField } from "./support/workroom";
import { sampleBody } from "../tests/support/sample";

const waist = (more: number): string => sampleBody("waistGirth", more);
const waistFront = (more: number): string => sampleBody("waistFrontArc", more);

test.beforeEach(async ({ page }) => {
  await openDemo(page, "padding");
});

test("what is left to go moves with every letter, in front and behind apart @phone @portrait", async ({ page }) => {
  await page.getByRole("tab", { name: "waist" }).click();
  await readingField(page, "all around").fill(waist(-6.75));
  await expect(leftToGo(page, "all around")).toHaveText("6 3/4 in to go all around");
  await readingField(page, "all around").fill(waist(0));
  await expect(leftToGo(page, "all around")).toHaveText("on target");
  // What the bare form can read: the back follows from the two others.
  await readingField(page, "all around").fill(waist(-6.75));
  await readingField(page, "front").fill(waistFront(-4.5));
  await expect(leftToGo(page, "front")).toHaveText("4 1/2 in to go in front");
  await expect(leftToGo(page, "back")).toHaveText("2 1/4 in to go in back");
  await readingField(page, "front").fill(waistFront(0.375));
  await expect(leftToGo(page, "front")).toHaveText("3/8 in over in front");
});

test("with a piece on, over says how much and where", async ({ page }) => {
  await page.getByRole("button", { name: "It is pinned" }).click();
  await page.getByRole("tab", { name: "waist" }).click();
  await readingField(page, "all around").fill(waist(0.375));
  await expect(leftToGo(page, "all around")).toHaveText("3/8 in over all around");
});

test("a kept reading stays until a piece goes over it, and undo takes it back", async ({ page }) => {
  await page.getByRole("tab", { name: "waist" }).click();
  const before = await leftToGo(page, "all around").textContent();
  await readingField(page, "all around").fill(waist(-6.25));
  await readingField(page, "all around").press("Enter");
  await expect(leftToGo(page, "all around")).toHaveText("6 1/4 in to go all around");
  await expect(readingField(page, "all around")).toHaveValue(waist(-6.25));
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(leftToGo(page, "all around")).toHaveText(before ?? "");
});

test("piece after piece is pinned, counted, and can be taken off again", async ({ page }) => {
  await expect(page.getByRole("link", { name: /Padding 0 of \d+ pinned/ })).toBeVisible();
  const first = await page.getByRole("main").getByRole("heading", { level: 2 }).first().textContent();
  await page.getByRole("button", { name: "It is pinned" }).click();
  await expect(page.getByRole("link", { name: /Padding 1 of \d+ pinned/ })).toBeVisible();
  await expect(page.getByText(/Piece 1 of \d+ is pinned/)).toBeAttached();
  await expect(page.getByRole("main").getByRole("heading", { level: 2 }).first()).not.toHaveText(first ?? "");
  await page.getByRole("button", { name: /^1\. .*: pinned$/ }).click();
  await page.getByRole("button", { name: "Take this piece off again" }).click();
  await expect(page.getByRole("link", { name: /Padding 0 of \d+ pinned/ })).toBeVisible();
});

test("every piece on and nothing read is nowhere called on target; the tape is asked for, and one level read is one level there", async ({
  page,
}) => {
  const pinned = page.getByRole("button", { name: "It is pinned" });
  const count = await page
    .getByRole("main")
    .getByRole("button", { name: /not pinned yet/ })
    .count();
  for (let i = 0; i < count; i += 1) await pinned.click();
  await expect(page.getByRole("heading", { name: "Every piece is on. Now measure every level line." })).toBeVisible();
  const cells = page.getByRole("region", { name: "Every level line" }).locator(".overview-left");
  await expect(cells).toHaveCount(15);
  for (const words of await cells.allTextContents()) expect(words).toBe("should be on target");
  await expect(leftToGo(page, "all around")).toHaveText("should be on target");
  for (const words of await page.locator(".done-state").allTextContents()) expect(words).toBe("should be on target");
  await expect(page.getByText("not measured over the padding yet")).toHaveCount(5);

  await page.getByRole("tab", { name: "waist", exact: true }).click();
  for (const [part, text] of [
    ["all around", waist(0)],
    ["front", waistFront(0)],
  ] as const) {
    await readingField(page, part).fill(text);
    await readingField(page, part).press("Enter");
  }
  await expect(page.locator(".done-state").filter({ hasText: /^on target$/ })).toHaveCount(1);
  await expect(page.getByText("not measured over the padding yet")).toHaveCount(4);

  await page.goto("/#finishing");
  await expect(page.getByText("not measured over the cover yet")).toHaveCount(5);
  await page.getByRole("tab", { name: "waist", exact: true }).click();
  for (const [part, text] of [
    ["all around", waist(-0.125)],
    ["front", waistFront(0)],
  ] as const) {
    await readingField(page, part).fill(text);
    await readingField(page, part).press("Enter");
  }
  await expect(page.getByText("not measured over the cover yet")).toHaveCount(4);
});

test("cautions, lines and bra stand above the first piece; after it the pins are counted out, the long words a tap away", async ({
  page,
}) => {
  const dust = page.getByText(/^Count the pins in, .* Wear a dust mask\./);
  const first = page.getByRole("heading", { name: /^Pin the waist wrap, all the way around/ });
  await expect(
    page.getByText(/^Mark five level lines on the form, straight down from the nape: bust\s[\d/\s]+\sin/),
  ).toBeVisible();
  await expect(page.getByText(/^If a bra is worn under the clothes, put it on the form/)).toBeVisible();
  const [above, below] = [await dust.boundingBox(), await first.boundingBox()];
  expect((above?.y ?? 1e9) + (above?.height ?? 0)).toBeLessThanOrEqual(below?.y ?? 0);
  await page.getByRole("button", { name: "It is pinned" }).click();
  await expect(page.getByText(/^Mark five level lines/)).toBeHidden();
  await expect(dust).toBeHidden();
  const out = page.getByText("Count the pins out. One missing: stop.");
  await expect(out.first()).toBeVisible();
  await out.first().click();
  await expect(page.getByText(/Do not go on until it is found/)).toBeVisible();
});

test("the cautions are in sight on every size of screen, before the step @phone @portrait @projector", async ({
  page,
}) => {
  const inSight = (words: RegExp) => page.getByText(words).first();
  await expect(inSight(/^Count the pins in, none between the lips\./)).toBeInViewport();
  await page.getByRole("button", { name: "It is pinned" }).click();
  await expect(inSight(/^Count the pins out\. One missing: stop\./)).toBeVisible();
  await page.goto("/#body");
  await expect(inSight(/^Ask first, and stop when the person says so\./)).toBeInViewport();
  await inSight(/^Ask first/).click();
  await expect(page.getByText(/only with a parent or guardian there/)).toBeVisible();
});

test("on a phone the next action, the reading it should give and the pad stand together on the first screen @phone", async ({
  page,
}) => {
  for (let i = 0; i < 4; i += 1) await page.getByRole("button", { name: "It is pinned" }).click();
  await page.evaluate(() => window.scrollTo(0, 0));
  const pad = page.getByRole("region", { name: "Number pad for the measurement" });
  const foot = async (what: Locator) => {
    const box = await what.boundingBox();
    return (box?.y ?? 1e9) + (box?.height ?? 0);
  };
  const height = page.viewportSize()?.height ?? 0;
  expect(await foot(page.locator(".next-sentence"))).toBeLessThan(height);
  expect(await foot(page.locator(".next-then"))).toBeLessThan(height);
  expect(await foot(pad.getByRole("button", { name: "7/8" }))).toBeLessThanOrEqual(height);
});

test("the screen is kept awake, and the browser’s answer is shown", async ({ page }) => {
  await expect(page.getByRole("checkbox", { name: /Leave the screen on while I pin/ })).toBeChecked();
});
