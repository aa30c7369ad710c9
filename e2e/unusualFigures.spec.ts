import { expect, test } from "@playwright/test";
import { chooseSize, heading, row, typeGirths } from "./support/workroom";

test("a form larger than the body somewhere: said by place and amount, with what can be done", async ({ page }) => {
  await typeGirths(page, ["34", "33", "31 1/2"]);
  await chooseSize(page, 8);
  await expect(page.getByRole("heading", { name: "What padding cannot do" })).toBeVisible();
  await expect(page.getByText(/The form is .*\sin larger than the person at the full hip/)).toBeVisible();
  await page.getByRole("link", { name: "Look at other sizes" }).click();
  await expect(heading(page, "The form")).toBeVisible();
});

test("readings that cannot both be right are named at the reading, and the plan says why it waits", async ({
  page,
}) => {
  await typeGirths(page, ["35", "24 1/2", "38"]);
  await row(page, "waistFrontArc").click();
  await page.getByRole("textbox", { name: "Front waist" }).fill("27");
  await page.keyboard.press("Enter");
  await expect(row(page, "waistFrontArc")).toContainText("Please check");
  await row(page, "waistFrontArc").click();
  const sentence = page.getByText(/The person’s front waist reads 27\sin, which is not less than/);
  await expect(sentence.first()).toBeVisible();
  await expect(page.getByText("enough for a plan")).toBeHidden();
  await page.goto("/#plan");
  await expect(page.getByText("Some measurements cannot both be right")).toBeVisible();
  await expect(sentence).toBeVisible();
});

test("centimetres typed while inches are chosen are noticed, and one tap puts them right", async ({ page }) => {
  await typeGirths(page, ["89", "77", "97"]);
  await row(page, "bustGirth").click();
  await expect(page.getByText(/centimeters typed as inches/).first()).toBeVisible();
  await page.getByRole("button", { name: "They are centimeters" }).first().click();
  await expect(page.getByText("enough for a plan")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText(/centimeters typed as inches/).first()).toBeVisible();
});

test("a body of the form’s own size needs nothing, and is told so", async ({ page }) => {
  await typeGirths(page, ["31 1/2", "24", "33 1/2"]);
  await chooseSize(page, 8);
  await expect(heading(page, "The plan")).toBeVisible();
  await expect(page.getByText(/nothing to add|pieces? of batting/).first()).toBeVisible();
});

test("a form bust of 97 typed in inches is asked about on the form, and one tap puts it right; a larger form is told first", async ({
  page,
}) => {
  await typeGirths(page, ["36", "30", "39"]);
  await page.goto("/#form");
  for (const [name, label, text] of [
    ["bustGirth", "Bust, all around", "97"],
    ["waistGirth", "Waist, all around", "26"],
    ["fullHipGirth", "Full hip, all around", "36"],
  ] as const) {
    const field = page.getByRole("textbox", { name: label });
    if (!(await field.isVisible())) await row(page, name).click();
    await field.fill(text);
    await field.press("Enter");
  }
  await expect(page.getByText(/97\sin reads like centimeters typed as inches/).first()).toBeVisible();
  await page
    .getByRole("button", { name: /centimeters/ })
    .first()
    .click();
  await page.goto("/#plan");
  const cannot = page.getByText(/The form is .*\sin larger than the person at the bust/);
  await expect(cannot).toBeVisible();
  const [limit, lead] = [await cannot.boundingBox(), await page.locator(".lead").first().boundingBox()];
  expect(limit?.y ?? 1e9).toBeLessThan(lead?.y ?? 0);
});
