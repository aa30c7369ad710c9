import { expect, test } from "@playwright/test";
import { row } from "./support/workroom";

const typed = "thirty and a bit";

test("what cannot be read yet is kept to the letter, through other rows, places and a reload", async ({ page }) => {
  await page.goto("/#body");
  const waist = page.getByRole("textbox", { name: "Waist, all around" });
  await row(page, "waistGirth").click();
  await waist.fill(typed);
  await waist.press("Enter");
  await expect(page.getByRole("main").getByText(/cannot be read as a length/)).toBeVisible();
  await row(page, "fullHipGirth").click();
  await expect(row(page, "waistGirth")).toContainText(typed);
  await page.getByRole("link", { name: /The form/ }).click();
  await page.getByRole("link", { name: /The person/ }).click();
  await expect(row(page, "waistGirth")).toContainText(typed);
  await row(page, "waistGirth").click();
  await expect(waist).toHaveValue(typed);
  await expect(page.getByText(/^saved/i).first()).toBeVisible();
  await page.reload();
  await expect(row(page, "waistGirth")).toContainText(typed);
});

test("letters typed and not finished are there again after the tablet went to sleep and forgot the page", async ({
  page,
}) => {
  await page.goto("/#body");
  await page.getByRole("textbox", { name: "Bust, all around" }).pressSequentially("35 1");
  await expect(page.getByText(/^saved/i).first()).toBeVisible();
  await page.reload();
  await row(page, "bustGirth").click();
  await expect(page.getByRole("textbox", { name: "Bust, all around" })).toHaveValue(/^35 1/);
});

test("and when the page is loaded anew the very moment it says they are saved", async ({ page }) => {
  await page.goto("/#body");
  const field = page.getByRole("textbox", { name: "Bust, all around" });
  await field.pressSequentially("35 1");
  const loaded = page.waitForEvent("load");
  await page.evaluate(() => {
    const look = () => {
      if (/Saved \d/.test(document.body.textContent ?? "")) window.location.reload();
    };
    new MutationObserver(look).observe(document.body, { subtree: true, childList: true, characterData: true });
    // It may say so already.
    setTimeout(look);
  });
  await loaded;
  await expect(row(page, "bustGirth")).toContainText("35 1");
});
