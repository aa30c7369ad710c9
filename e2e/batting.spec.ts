import { expect, type Page, test } from "@playwright/test";
import { rulesBroken } from "./support/rulesBroken";
import { openDemo, unfoldPlan } from "./support/workroom";

const second = (page: Page) => page.getByRole("group", { name: "A second batting to finish with" });

/** On a phone it lies folded, with what comes before the cutting. */
async function changeBatting(page: Page): Promise<void> {
  await page.locator(".piece-tile").first().waitFor();
  await unfoldPlan(page);
  await page.getByRole("button", { name: "Change the batting" }).click();
}

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
  await changeBatting(page);
  await expect(layer).toHaveValue("thin");
  await layer.fill("3 mm");
  await layer.press("Enter");
  await expect(page.getByText(/finished with cotton felt, one layer about/)).toBeVisible();

  const tiles = page.locator(".piece-tile");
  const all = await tiles.count();
  expect(all).toBeGreaterThan(4);
  for (let i = 0; i < all; i += 1) {
    await tiles.nth(i).click();
    const open = page.getByRole("dialog");
    await expect(open).toContainText(/from (cotton felt|high-loft batting)[:,]/);
    await open.getByRole("button", { name: "Back to the plan" }).click();
  }
  await page.goto("/#print");
  await expect(page.locator(".sheet-head").first()).toContainText("To finish: cotton felt");

  await page.goto("/#plan");
  await changeBatting(page);
  await page.getByRole("button", { name: "Remove the second batting" }).click();
  await expect(second(page)).toBeHidden();
  await expect(page.getByRole("button", { name: "Add a second batting" })).toBeFocused();
  await tiles.first().click();
  await expect(page.getByRole("dialog")).toContainText("Cut");
  await expect(page.getByRole("dialog")).not.toContainText("from high-loft batting");
});
