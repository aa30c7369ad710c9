import { expect, test } from "@playwright/test";

/** From the draft to the person's lines: the form made ready, every line marked, and the first one measured. */
test("the draft leads to the lines, where each stop has one act and one button @portrait @phone", async ({ page }) => {
  await page.goto("/#demo");
  await page.goto("/#padding");
  await expect(page.getByText(/This plan is a draft/)).toBeVisible();
  await page.getByRole("link", { name: "Mark the lines and measure the bare form" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Make the form ready." })).toBeVisible();
  await page.getByRole("button", { name: "The form is ready" }).click();
  for (const line of ["bust line", "underbust line", "waistline", "high hip line", "full hip line"]) {
    await expect(page.getByRole("heading", { level: 1, name: `Mark the person’s ${line}.` })).toBeVisible();
    const slab = page.getByRole("button", { name: `The ${line} is marked` });
    await expect(slab).toBeInViewport();
    await slab.click();
  }
  await expect(page.getByRole("heading", { level: 1, name: /bare form on the bust line/ })).toBeVisible();
  const slab = page.locator(".stop-slab");
  await expect(slab).toBeDisabled();
  await page.getByRole("textbox", { name: /bust line, all around/ }).fill("41 1/2");
  await expect(slab).toHaveText(/Save 41 1\/2 in/);
  await slab.click();
  await expect(page.getByRole("heading", { level: 1, name: /front on the bust line/ })).toBeVisible();
  await expect(page.locator(".line-parts")).toContainText("41 1/2 in");
  await page.getByRole("button", { name: "Not now: look at the draft plan" }).click();
  await expect(page.getByText(/This plan is a draft/)).toBeVisible();
});
