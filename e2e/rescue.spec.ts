import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { rulesBroken } from "./support/rulesBroken";
import { sampleTitle } from "../tests/support/sample";

/** A page that fails, and a part that does not arrive: nothing else may be locked by it. */
const demo = sampleTitle;
const failedTitle = "This page cannot be shown";
const saved = (page: Page) => expect(page.getByRole("link", { name: /Fittings.*Saved/ })).toBeVisible();
const heading = (page: Page, name: string) => page.getByRole("heading", { level: 1, name });

/** The padding page throws whenever it is drawn. */
const plantFailure = (page: Page) =>
  page.route(/\/assets\/PaddingPage-[^/]*\.js$/, (route) =>
    route.fulfill({
      contentType: "text/javascript",
      body: "export const PaddingPage = () => { throw new Error('planted') };",
    }),
  );

/** The sample person, kept on this device, with a copy beside her. */
async function demoAndCopy(page: Page): Promise<void> {
  await page.goto("/#demo");
  await page.waitForURL(/#plan$/);
  await page.goto("/#fittings");
  await page.getByRole("button", { name: "Save it here" }).first().click();
  await saved(page);
  await page.getByRole("button", { name: `More for ${demo}` }).click();
  await page.getByRole("button", { name: "Copy", exact: true }).click();
  await expect(page.getByRole("heading", { name: `${demo} (copy)` })).toBeVisible();
}

test("a page that fails says so, and keeps the fitting and all others in reach", async ({ page }) => {
  await plantFailure(page);
  await demoAndCopy(page);
  await page.goto("/#padding");
  await expect(heading(page, failedTitle)).toBeVisible();
  await expect(page.getByRole("alert")).toContainText(`The fitting “${demo}” is as you left it.`);
  expect(await rulesBroken(page)).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await rulesBroken(page)).toEqual([]);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save this fitting to a file" }).click(),
  ]);
  expect(JSON.parse(readFileSync(await download.path(), "utf8"))).toMatchObject({ version: 1, title: demo });

  await page.getByRole("main").getByRole("link", { name: "Fittings" }).click();
  await expect(heading(page, "Fittings")).toBeVisible();
  await page.goto("/#padding");
  await page.getByRole("button", { name: `Open ${demo} (copy)` }).click();
  await expect(page).toHaveURL(/#plan$/);
  await expect(heading(page, failedTitle)).toBeHidden();
  await page.goto("/#fittings");
  await expect(page.locator(".tag-on-table")).toContainText("(copy)");
});

test("after a start that failed the next one comes to Home, and the fitting opens when it is asked for", async ({
  page,
}) => {
  await plantFailure(page);
  await demoAndCopy(page);
  await page.goto("/#padding");
  await page.reload();
  await page.reload();
  await expect(heading(page, "Make a dress form stand in for one body")).toBeVisible();
  await expect(page.getByText("The fitting that was open last made a page fail", { exact: false })).toBeVisible();
  await page.goto("/#fittings");
  const tag = page.getByRole("listitem").filter({ has: page.getByRole("heading", { name: demo, exact: true }) });
  await tag.getByRole("button", { name: /^Open/ }).click();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await page.waitForTimeout(2_500);
  await page.reload();
  await page.goto("/#fittings");
  await expect(tag).toContainText("open now");
  await expect(page.getByText("made a page fail", { exact: false })).toBeHidden();
});

test("a page that is left at once after it was opened is opened again as ever", async ({ page }) => {
  await demoAndCopy(page);
  await page.goto("/#plan");
  for (let i = 0; i < 3; i += 1) await page.reload();
  await expect(heading(page, "The plan")).toBeVisible();
  await page.goto("/#fittings");
  await expect(page.locator(".tag-on-table")).toContainText(demo);
});

test("a part that does not arrive is said and asked for again, wherever it belongs", async ({ page }) => {
  const parts = /\/assets\/(TurningPage|PageState)-[^/]*\.js$/;
  await page.route(parts, (route) => route.abort());
  await page.goto("/");
  await expect(page.getByText("Parts of the tool could not be loaded", { exact: false })).toBeVisible();
  await page.goto("/#turning");
  await expect(heading(page, "This page did not arrive")).toBeVisible();
  await expect(page.getByText("Parts of the tool could not be loaded", { exact: false })).toBeHidden();
  expect(await rulesBroken(page)).toEqual([]);
  await page.getByRole("button", { name: "Try again" }).click();
  await expect(page.getByRole("button", { name: "Load the page again" })).toBeVisible();
  await page.unroute(parts);
  await page.getByRole("button", { name: "Try again" }).click();
  await expect(heading(page, "This page did not arrive")).toBeHidden();
  await expect(page.getByRole("link", { name: /^The person/ })).toContainText("of the first");
});
