import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { outlinesOfSvg, readPdf } from "../tests/tools/readPatterns";
import { openDemo } from "./support/workroom";

/** The file that a press of a button hands out, and what it is called. */
async function handedOut(page: Page, button: string): Promise<{ readonly name: string; readonly bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: button }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** Broken on purpose: the cloth that was chosen left out. Seen to fail. */
test("patterns are handed out at true size: layers and panels, as pages and as a drawing, for the chosen fabric", async ({
  page,
}) => {
  await openDemo(page, "print");
  const knit = await handedOut(page, "Drawing (SVG)");
  expect(knit.name).toMatch(/^patterns \d{4}-\d\d-\d\d\.svg$/);
  const outlines = outlinesOfSvg(knit.bytes.toString("utf8"));
  const panels = [...outlines.keys()].filter((id) => id.startsWith("cover-"));
  expect(panels).toHaveLength(8);
  expect(outlines.size).toBeGreaterThan(panels.length + 4);

  await page.getByRole("radio", { name: "woven fabric" }).check();
  const woven = outlinesOfSvg((await handedOut(page, "Drawing (SVG)")).bytes.toString("utf8"));
  const widths = (all: typeof outlines) =>
    panels.reduce((sum, id) => {
      const across = (all.get(id) ?? []).map(([x]) => x);
      return sum + Math.max(...across) - Math.min(...across);
    }, 0);
  expect(widths(woven) / widths(outlines)).toBeGreaterThan(1.06);

  const { name, bytes } = await handedOut(page, "Pages to tape together, A4");
  expect(name).toMatch(/\.pdf$/);
  const pages = await readPdf(new Uint8Array(bytes));
  expect(pages.length).toBeGreaterThan(20);
  expect(pages.map(({ width }) => Math.round(width)).every((width) => width === 210)).toBe(true);
  await expect(page.getByText(`The patterns are drawn: ${pages.length} pages to tape together.`)).toBeVisible();

  await page.getByRole("checkbox", { name: "the cover" }).uncheck();
  const batting = outlinesOfSvg((await handedOut(page, "Drawing (SVG)")).bytes.toString("utf8"));
  expect([...batting.keys()]).toEqual([...outlines.keys()].filter((id) => !id.startsWith("cover-")));
});

/** The points of a drawn path, in pixels of the page. */
const pointsOf = (path: string): readonly (readonly [number, number])[] =>
  path
    .replace(/[MZ]/g, "")
    .split("L")
    .map((pair) => pair.split(" ").map(Number) as [number, number]);

const apart = (points: readonly (readonly [number, number])[], scale = 1): readonly number[] => {
  const [first] = points;
  return points.map(([x, y]) => scale * Math.hypot(x - (first?.[0] ?? 0), y - (first?.[1] ?? 0)));
};

/** Broken on purpose: the reading of the bar used upside down; the part drawn at the scale before it. Seen to fail. */
test("a part thrown onto the table is as large as planned once the bar has been measured, mirrored and turned as well", async ({
  page,
}) => {
  await openDemo(page, "print");
  const planned = outlinesOfSvg((await handedOut(page, "Drawing (SVG)")).bytes.toString("utf8"));
  await page.getByRole("button", { name: "Project onto the table" }).click();
  const view = page.getByRole("dialog", { name: "Projection at true size" });
  const outline = view.locator('path[data-line="outline"]');
  await expect(outline).toBeVisible();

  // The table is so far away that a pixel measures more than on a screen: the bar reads longer than it says.
  const mmPerPixel = 0.41;
  const bar = view.locator(".projection-bar-body");
  const barPixels = (await bar.boundingBox())?.width ?? 0;
  const reads = barPixels * mmPerPixel;
  await view.getByRole("textbox", { name: "The bar reads" }).fill(`${reads.toFixed(2)} mm`);
  await view.getByRole("button", { name: "Set" }).click();
  const said = await view.getByText(/^Lay your tape on the bar/).textContent();
  const inches = Number(/: (\d+).in/.exec(said ?? "")?.[1]);
  expect(((await bar.boundingBox())?.width ?? 0) * mmPerPixel).toBeCloseTo(inches * 25.4, 0);

  const expectTrue = async () => {
    const points = pointsOf((await outline.getAttribute("d")) ?? "");
    const table = apart(points, mmPerPixel);
    const agrees = [...planned.values()].some((one) => {
      const open = one.length > points.length ? one.slice(0, -1) : one;
      return open.length === points.length && apart(open).every((away, i) => Math.abs(away - (table[i] ?? 0)) < 0.2);
    });
    expect(agrees).toBe(true);
  };
  await expectTrue();
  await page.keyboard.press("m");
  await expect(view.getByText(/Mirrored/)).toBeVisible();
  await expectTrue();
  await page.keyboard.press("t");
  await expectTrue();
  await page.keyboard.press("PageDown");
  await expect(view.getByText(/^Part 2 of/)).toBeVisible();
  await expectTrue();
  await page.keyboard.press("b");
  await expect(bar).toBeHidden();
  const scale = await view.locator(".projection-stage").getAttribute("data-mm-per-pixel");
  await page.keyboard.press("Escape");
  await expect(view).toBeHidden();

  // Kept on this device.
  await page.reload();
  await openDemo(page, "print");
  await page.getByRole("button", { name: "Project onto the table" }).click();
  await expect(view.locator(".projection-stage")).toHaveAttribute("data-mm-per-pixel", scale ?? "");
});
