import { expect, type Page, test } from "@playwright/test";
import { rulesBroken } from "./support/rulesBroken";
import { heading, screens, typeGirths } from "./support/workroom";

/** The German build beside the English one: the same tool, the same saved fittings, other words. */

/** English words that are no German ones, wherever they would stand. */
const english = /\b(?:the|and|with|from|your|pieces?|measure[ds]?|layers?|of)\b/i;

/** What stands on the page and what is said of its pictures, line by line, where it is still English. */
const stillEnglish = (page: Page): Promise<readonly string[]> =>
  page.evaluate((pattern) => {
    const pictures = [...document.querySelectorAll("title, desc")].map(({ textContent }) => textContent ?? "");
    const named = [...document.querySelectorAll("[aria-label]")].map(({ ariaLabel }) => ariaLabel ?? "");
    // biome-ignore lint/performance/useDomNodeTextContent: only what is seen counts
    const lines = [...document.body.innerText.split("\n"), ...pictures, ...named];
    // What a size chart is called stays as it was published.
    return lines.filter((line) => !line.includes("keine Norm: ") && new RegExp(pattern, "i").test(line));
  }, english.source);

/** Each page as it is arrived at: no word of English, nothing over the edge, and no rule of access broken. */
async function look(page: Page, name: string): Promise<void> {
  expect.soft(await stillEnglish(page), name).toEqual([]);
  for (const screen of screens.filter(({ width }) => width < 1900)) {
    await page.setViewportSize(screen);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect.soft(over, `${name}, ${screen.width} wide`).toBeLessThanOrEqual(0);
  }
  // So tall that nothing lies under the bar at the foot, where it would be too small to press.
  await page.setViewportSize({ width: 390, height: 2000 });
  expect.soft(await rulesBroken(page), name).toEqual([]);
}

test("in German from Home to the first pin, in centimeters, on a phone", async ({ page }) => {
  test.slow();
  await page.setViewportSize(screens[0]);
  await page.goto("/de/");
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  await expect(page.getByText("Diese Übersetzung ist ein Entwurf")).toBeVisible();
  await page.getByRole("radio", { name: "Zentimeter" }).check({ force: true });
  await look(page, "Start");

  await page.getByRole("button", { name: "Mit Brust, Taille und Hüfte beginnen" }).click();
  for (const [name, text] of [
    ["Brustumfang", "91.5"],
    ["Taillenumfang", "78,5"],
    ["Hüftumfang", "99 cm"],
  ] as const) {
    const field = page.getByRole("textbox", { name });
    await field.fill(text);
    await field.press("Enter");
  }
  // A point that was typed is read as a comma.
  await expect(page.locator("button[data-measurement=bustGirth]")).toContainText("91,5 cm");
  await expect(page.getByText("Das genügt für einen Plan")).toBeVisible();
  await look(page, "Person");

  await page.goto("/de/#form");
  await expect(heading(page, "Die Büste")).toBeVisible();
  await look(page, "Büste");

  await page.goto("/de/#plan");
  await expect(heading(page, "Der Plan")).toBeVisible();
  await expect(page.getByText(/^\d+ Polster aus Vlies, \d+ Zuschnitte\. /)).toBeVisible();
  await look(page, "Plan");

  await page.goto("/de/#padding");
  const slab = page.locator(".stop-slab");
  for (let i = 0; i < 20; i += 1) {
    await page.waitForFunction(() => document.querySelector(".padding-page")?.ariaBusy === "false");
    const title = (await page.getByRole("heading", { level: 1 }).textContent()) ?? "";
    await look(page, title);
    const way = page.getByRole("button", { name: /^(?:Den Rest auslassen|Die Probe auslassen)$/ });
    const isPin = (await slab.count()) > 0 && ((await slab.textContent()) ?? "").trim() === "Aufgesteckt";
    await ((await way.count()) > 0 ? way : slab).first().click();
    if (isPin) break;
    await page.waitForFunction((before) => document.querySelector("h1")?.textContent !== before, title, {
      timeout: 20_000,
    });
  }
  await expect(page.getByRole("heading", { name: /^Die Linien nach außen übertragen/, level: 1 })).toBeVisible();
});

test("one link leads from either language to the other, on the same page and to the same fitting", async ({ page }) => {
  await typeGirths(page, ["36", "31", "39"]);
  await page.getByRole("textbox", { name: "Whose fitting this is" }).fill("Ilse");
  await page.keyboard.press("Tab");
  await page.goto("/#fittings");
  await expect(page.locator(".tag-on-table")).toContainText("Ilse");
  await page.getByRole("main").getByRole("link", { name: "Deutsch (Entwurf)" }).click();
  await expect(page).toHaveURL(/\/de\/#fittings$/);
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  await expect(page.locator(".tag-on-table")).toContainText("Ilse");
  await page.getByRole("main").getByRole("link", { name: "English" }).click();
  await expect(page).toHaveURL(/[^e]\/#fittings$/);
  await expect(page.locator(".tag-on-table")).toContainText("Ilse");
});
