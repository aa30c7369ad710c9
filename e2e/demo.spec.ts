import { expect, test } from "@playwright/test";
import { heading, screens } from "./support/workroom";
import { sampleTitle } from "../tests/support/sample";

test("one tap on Home opens the plan of a made-up person, on every screen", async ({ page }) => {
  await page.goto("/");
  const see = page.getByRole("button", { name: "See a sample person’s plan" });
  for (const screen of screens) {
    await page.setViewportSize(screen);
    await expect(see).toBeVisible();
  }
  await page.setViewportSize(screens[0]);
  await see.click();
  for (const screen of screens) {
    await page.setViewportSize(screen);
    await expect(heading(page, "The plan")).toBeVisible();
    await expect(page.getByText(/^\d+ pieces of batting/)).toBeVisible();
  }
});

test.describe("with everything kept for working offline", () => {
  test.use({ serviceWorkers: "allow" });

  test("its own address opens it straight away, and the first screen asks no other place for anything and breaks no rule of its own", async ({
    page,
    baseURL,
  }) => {
    const wrong: string[] = [];
    page.on("request", (request) => {
      if (!request.url().startsWith(baseURL ?? "") && !/^(?:data|blob):/.test(request.url())) wrong.push(request.url());
    });
    page.on("console", (message) => {
      if (message.type() === "error") wrong.push(message.text());
    });
    page.on("pageerror", (error) => wrong.push(String(error)));
    await page.goto("/#demo");
    await expect(heading(page, "The plan")).toBeVisible();
    await page
      .getByRole("navigation")
      .getByRole("link", { name: /The person/ })
      .click();
    await expect(page.getByRole("textbox", { name: "Whose fitting this is" })).toHaveValue(sampleTitle);
    for (const place of ["body", "form", "padding", "finishing", "print"]) {
      await page.goto(`/#${place}`);
      await expect(page.getByRole("main").getByRole("heading").first()).toBeVisible();
    }
    expect(wrong).toEqual([]);
  });
});
