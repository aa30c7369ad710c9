import { expect, type Page, test } from "@playwright/test";
import { pdfText } from "./support/pdfText";
import { openDemo, typeGirths } from "./support/workroom";

const papers = ["Letter", "A4"] as const;

const printed = async (page: Page, format: (typeof papers)[number]): Promise<readonly string[]> =>
  pdfText(await page.pdf({ format, printBackground: true }));

const pieceNames = (page: Page): Promise<readonly string[]> =>
  page
    .locator(".sheet-pieces tbody th")
    .evaluateAll((cells) => cells.map((cell) => cell.firstElementChild?.textContent ?? ""));

for (const format of papers) {
  test(`the demo is one page on ${format}, with every piece, its size and the readings`, async ({ page }) => {
    await openDemo(page, "print");
    const names = await pieceNames(page);
    expect(names.length).toBeGreaterThan(7);
    const pages = await printed(page, format);
    expect(pages).toHaveLength(1);
    for (const name of names) expect(pages[0]).toContain(name);
    expect(pages[0]).toContain("Padding sheet for Marta Linde (made up)");
    expect(pages[0]).toContain("36 3/4 in");
    expect(pages[0]).toContain("Count the pins in and out");
    expect(pages[0]).not.toContain("The plan");
  });

  test(`the largest plan goes on overleaf on ${format} and nothing of it is cut off`, async ({ page }) => {
    await largestPlan(page);
    const names = await pieceNames(page);
    expect(names.length).toBeGreaterThan(12);
    const sheets = await page.locator(".sheet").count();
    const pages = await printed(page, format);
    expect(pages).toHaveLength(sheets);
    const all = pages.join(" ");
    for (const name of names) expect(all).toContain(name);
    if (sheets > 1) {
      expect(pages[0]).toContain("Continued on the next page.");
      expect(pages[1]).toContain("continued");
    }
    expect(pages.at(-1)).toContain("Count the pins in and out");
  });
}

test("printing from any other place prints the sheet as well", async ({ page }) => {
  await openDemo(page, "padding");
  const pages = await printed(page, "A4");
  expect(pages).toHaveLength(1);
  expect(pages[0]).toContain("Padding sheet for Marta Linde (made up)");
});

/** A very large body on the smallest form of the table, in a thin batting, with readings that ask for every kind of piece. */
async function largestPlan(page: Page): Promise<void> {
  await typeGirths(page, ["54", "52", "58"]);
  await page.goto("/#form");
  await page.getByText("All sizes").click();
  await page.getByRole("radio", { name: /Size 6 / }).check();
  await page.goto("/#plan");
  await page.getByRole("button", { name: "Change the batting" }).click();
  await page.getByRole("button", { name: "needled cotton" }).click();
  await page.goto("/#print");
  await expect(page.locator(".sheet").first()).toBeVisible();
}
