import { expect, test } from "@playwright/test";
import { openDemo } from "./support/workroom";

/** Broken on purpose: what was chosen left out of what is laid. Seen to fail. */
test("what is bought is chosen once, and the plan, the page and the printed sheet say the same", async ({ page }) => {
  await openDemo(page, "finishing");
  const supplies = page.locator("#supplies");
  await supplies.getByRole("combobox", { name: "Bought as" }).selectOption("packet-72x90-in");
  await expect(supplies.getByText(/1 packet of 72 × 90.in/)).toBeVisible();
  await expect(supplies.getByText(/The 8 panels lie side by side in one row/)).toBeVisible();
  await expect(supplies.getByRole("img", { name: /^Layout of/ })).toHaveCount(2);
  await supplies.getByRole("textbox", { name: /^Price of bonded batting, for one packet/ }).fill("24.50");
  await supplies.getByRole("textbox", { name: /^Price of all notions/ }).fill("10");
  await supplies.getByRole("textbox", { name: /^Price of knit/ }).click();
  await expect(supplies.getByText("Together 34.50, without what has no price yet.")).toBeVisible();
  await page.goto("/#plan");
  await expect(page.getByText(/1 packet of 72 × 90.in/)).toBeVisible();
  await page.goto("/#print");
  await page.getByRole("checkbox", { name: /^Supplies/ }).check();
  const sheet = page.getByRole("region", { name: /^Supplies for/ });
  await expect(sheet.getByText(/1 packet of 72 × 90.in/)).toBeVisible();
  await expect(sheet.locator(".layout-pictures svg")).toHaveCount(2);
});

/** Broken on purpose: who is not ticked counted all the same. Seen to fail. */
test("the supplies of several fittings are added up for who is ticked", async ({ page }) => {
  await page.goto("/#fittings");
  for (const [i, name] of ["first", "long-back", "two-sides"].entries()) {
    await page.locator('input[type="file"]').setInputFiles(`shared/demo/${name}.json`);
    await expect(page.locator(".tag")).toHaveCount(i + 1);
  }
  const part = page.locator("section", { has: page.getByRole("heading", { name: "A class" }) }).last();
  await part.getByRole("button", { name: "Add up 3 fittings" }).click();
  await expect(part.getByText(/for 3 covers/)).toBeVisible({ timeout: 90_000 });
  const all = Number(/about (\d+)/.exec((await part.getByText(/^Pins: about/).textContent()) ?? "")?.[1]);
  await part.getByRole("checkbox").first().uncheck();
  await expect(part.getByText(/for 3 covers/)).toBeHidden();
  await part.getByRole("button", { name: "Add up 2 fittings" }).click();
  await expect(part.getByText(/for 2 covers/)).toBeVisible({ timeout: 90_000 });
  const two = Number(/about (\d+)/.exec((await part.getByText(/^Pins: about/).textContent()) ?? "")?.[1]);
  expect(two).toBeGreaterThan(0);
  expect(two).toBeLessThan(all);
});
