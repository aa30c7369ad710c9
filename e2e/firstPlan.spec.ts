import { expect, test } from "@playwright/test";
import { heading, row, screens, typeGirths } from "./support/workroom";

test("a newcomer gets from Home to a plan with three girths typed on a phone, and sees it on every screen", async ({
  page,
}) => {
  await page.setViewportSize(screens[0]);
  await page.goto("/");
  await expect(page.getByText("Nothing leaves this device")).toBeVisible();
  await page.getByRole("button", { name: "Start with bust, waist and hip" }).click();
  await expect(heading(page, "The person")).toBeVisible();
  for (const [name, text] of [
    ["Bust, all around", "35"],
    ["Waist, all around", "30 1/2"],
    ["Full hip, all around", "38"],
  ] as const) {
    const field = page.getByRole("textbox", { name });
    await field.fill(text);
    await field.press("Enter");
  }
  await expect(page.getByText("that is enough for a plan")).toBeVisible();
  await page.getByRole("link", { name: "See the plan" }).first().click();
  for (const screen of screens) {
    await page.setViewportSize(screen);
    await expect(heading(page, "The plan")).toBeVisible();
    await expect(page.getByText(/^\d+ pieces of batting, \d+ shapes to cut\. /)).toBeVisible();
    await expect(page.getByText(/measurements are estimated and drawn dashed/)).toBeVisible();
  }
});

test("the same with a thumb alone, on the pad", async ({ page }) => {
  await page.goto("/#body");
  const press = async (...keys: readonly string[]) => {
    for (const key of keys) await page.getByRole("button", { name: key, exact: true }).tap();
  };
  await press("3", "5", "1/2", "Next: Waist, all around");
  await press("3", "0", "3/4", "Next: Full hip, all around");
  await press("3", "8", "Next: Nape, above the floor");
  await expect(row(page, "bustGirth")).toContainText("35 1/2 in");
  await expect(row(page, "waistGirth")).toContainText("30 3/4 in");
  await expect(row(page, "fullHipGirth")).toContainText("38 in");
  await expect(page.getByRole("navigation").getByRole("link", { name: /The plan \d+ pieces/ })).toBeVisible();
});

test("the place of the plan says what is missing; a guess is shown as one, with its spread, and gives way to a reading", async ({
  page,
}) => {
  await page.goto("/#plan");
  await expect(page.getByText("It needs bust all around, waist all around and full hip all around.")).toBeVisible();
  await page.getByRole("link", { name: "Go and measure" }).click();
  await expect(heading(page, "The person")).toBeVisible();
  await typeGirths(page, ["35", "30 1/2", "38"]);
  await expect(row(page, "waistFrontArc")).toContainText("estimated");
  await row(page, "waistFrontArc").click();
  await expect(page.getByText(/Estimated for now: about .* give or take/)).toBeVisible();
  await page.getByRole("textbox", { name: "Front waist" }).fill("17");
  await page.keyboard.press("Enter");
  await expect(row(page, "waistFrontArc")).toContainText("17 in");
  await expect(row(page, "waistFrontArc")).not.toContainText("estimated");
});
