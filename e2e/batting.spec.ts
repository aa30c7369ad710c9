import { expect, type Page, test } from "@playwright/test";
import { rulesBroken } from "./support/rulesBroken";
import { openDemo } from "./support/workroom";

const second = (page: Page) => page.getByRole("group", { name: "A second batting to finish with" });

test("a second batting: added, mistyped, kept over a reload, said of every piece, taken away", async ({ page }) => {
  await openDemo(page);
  await page.getByRole("button", { name: "Change the batting" }).click();
  await page
    .getByRole("group", { name: "The batting it is built with" })
    .getByRole("button", { name: "high-loft batting" })
    .click();
  await page.getByRole("button", { name: "Add a second batting" }).click();
  await second(page).getByRole("button", { name: "needled cotton" }).click();
  await second(page).getByRole("textbox", { name: "What it is called" }).fill("cotton felt");
  const layer = second(page).getByRole("textbox", { name: /one layer/i });
  // A layer that is no layer is put right where it was typed.
  await layer.fill("6 cm");
  await layer.press("Enter");
  await expect(page.getByRole("main").getByText("There is no plan yet")).toBeVisible();
  await expect(page.getByText(/under a snug tape a layer is/)).toBeVisible();
  await layer.fill("3 mm");
  await layer.press("Enter");
  await expect(page.getByRole("main").getByRole("heading", { name: "The plan", exact: true })).toBeVisible();
  await page.getByRole("button", { name: "Change the batting" }).click();
  await layer.fill("thin");
  await layer.press("Enter");
  await expect(second(page).getByText(/cannot be read as a length/)).toBeVisible();
  expect(await rulesBroken(page, { part: ".batting" })).toEqual([]);
  await expect(page.getByText(/Saved \d/).first()).toBeAttached();

  // From here on a phone.
  await page.setViewportSize({ width: 390, height: 844 });
  await page.reload();
  await page.getByRole("button", { name: "Change the batting" }).click();
  await expect(layer).toHaveValue("thin");
  await layer.fill("3 mm");
  await layer.press("Enter");
  await expect(page.getByText(/finished with cotton felt, one layer about/)).toBeVisible();

  const cards = page.locator(".pieces .piece");
  const all = await cards.count();
  expect(all).toBeGreaterThan(4);
  await expect(cards.filter({ hasText: /from (cotton felt|high-loft batting)[:,]/ })).toHaveCount(all);
  await page.goto("/#print");
  await expect(page.locator(".sheet-head").first()).toContainText("To finish: cotton felt");

  await page.goto("/#plan");
  await page.getByRole("button", { name: "Change the batting" }).click();
  await page.getByRole("button", { name: "Remove the second batting" }).click();
  await expect(second(page)).toBeHidden();
  await expect(page.getByRole("button", { name: "Add a second batting" })).toBeFocused();
  await expect(cards.filter({ hasText: /from high-loft batting[:,]/ })).toHaveCount(0);
});
