import { expect, test } from "@playwright/test";
import { openDemo, row } from "./support/workroom";
import { sampleBody, sampleInches } from "../tests/support/sample";

/** To half a centimeter, as the tape is read. */
const centimeters = String(Math.round(sampleInches("waistGirth") * 2.54 * 2) / 2);

test("another unit shows the same lengths, and going back shows them as they were typed", async ({ page }) => {
  await openDemo(page, "body");
  await expect(row(page, "waistGirth")).toContainText(`${sampleBody("waistGirth")} in`);
  await page.getByRole("radio", { name: "centimeters" }).check();
  await expect(row(page, "waistGirth")).toContainText(`${centimeters} cm`);
  await row(page, "waistGirth").click();
  await expect(page.getByRole("textbox", { name: "Waist, all around" })).toHaveValue(centimeters);
  await page.getByRole("radio", { name: "inches" }).check();
  await expect(page.getByRole("textbox", { name: "Waist, all around" })).toHaveValue(sampleBody("waistGirth"));
  await expect(row(page, "waistGirth")).toContainText(`${sampleBody("waistGirth")} in`);
});

test("a length typed in another unit is understood, said back and kept", async ({ page }) => {
  await page.goto("/#body");
  const field = page.getByRole("textbox", { name: "Bust, all around" });
  await field.fill("88,9 cm");
  await expect(page.getByText("that is 35 in")).toBeVisible();
  await field.press("Enter");
  await expect(row(page, "bustGirth")).toContainText("35 in");
  await page.getByRole("radio", { name: "centimeters" }).check();
  await row(page, "bustGirth").click();
  await expect(page.getByRole("textbox", { name: "Bust, all around" })).toHaveValue("88,9");
});

test("the plan does not change with the unit", async ({ page }) => {
  await openDemo(page);
  const pieces = page.getByRole("navigation").getByRole("link", { name: /The plan/ });
  const before = await pieces.textContent();
  await page.getByRole("radio", { name: "centimeters" }).check();
  await expect(page.getByText(/m of a roll 150.cm wide/)).toBeVisible();
  expect(await pieces.textContent()).toBe(before);
});
