import { expect, test } from "@playwright/test";
import { openDemo, row } from "./support/workroom";

test("another unit shows the same lengths, and going back shows them as they were typed", async ({ page }) => {
  await openDemo(page, "body");
  await expect(row(page, "waistGirth")).toContainText("36 3/4 in");
  await page.getByRole("radio", { name: "centimetres" }).check();
  await expect(row(page, "waistGirth")).toContainText("93.5 cm");
  await row(page, "waistGirth").click();
  await expect(page.getByRole("textbox", { name: "Waist girth" })).toHaveValue("93.5");
  await page.getByRole("radio", { name: "inches" }).check();
  await expect(page.getByRole("textbox", { name: "Waist girth" })).toHaveValue("36 3/4");
  await expect(row(page, "waistGirth")).toContainText("36 3/4 in");
});

test("a length typed in another unit is understood, said back and kept", async ({ page }) => {
  await page.goto("/#body");
  const field = page.getByRole("textbox", { name: "Bust girth" });
  await field.fill("97,8 cm");
  await expect(page.getByText("that is 38 1/2 in")).toBeVisible();
  await field.press("Enter");
  await expect(row(page, "bustGirth")).toContainText("38 1/2 in");
  await page.getByRole("radio", { name: "centimetres" }).check();
  await row(page, "bustGirth").click();
  await expect(page.getByRole("textbox", { name: "Bust girth" })).toHaveValue("97,8");
});

test("the plan does not change with the unit", async ({ page }) => {
  await openDemo(page);
  const pieces = page.getByRole("navigation").getByRole("link", { name: /The plan/ });
  const before = await pieces.textContent();
  await page.getByRole("radio", { name: "centimetres" }).check();
  await expect(page.getByText(/m², which is the pieces/)).toBeVisible();
  expect(await pieces.textContent()).toBe(before);
});
