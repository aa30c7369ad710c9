import { expect, test, type Page } from "@playwright/test";
import { openDemo } from "./support/workroom";

const figure = (page: Page) => page.getByRole("slider", { name: "Turn the figure" });

/** What is on the canvas, as one number that changes with it. */
const painted = (page: Page) =>
  page.evaluate(async () => {
    // While it turns it is painted with fewer points; once it stands, with all of them.
    await new Promise((done) => setTimeout(done, 300));
    await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
    const canvas = document.querySelector("canvas");
    const data = canvas?.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
    let sum = 0;
    let inked = 0;
    for (let i = 0; i < data.length; i += 4) {
      if ((data[i + 3] ?? 0) > 0) inked += 1;
      sum = (sum * 31 + (data[i] ?? 0) * 7 + (data[i + 1] ?? 0) * 3 + (data[i + 2] ?? 0)) % 1_000_003;
    }
    return { sum, inked };
  });

test("it is fetched only when asked for, from the plan, and the pieces go on one by one", async ({ page }) => {
  const scripts: string[] = [];
  page.on("request", (request) => {
    if (/TurningPage.*\.js/.test(request.url()) && request.serviceWorker() === null) scripts.push(request.url());
  });
  await openDemo(page);
  await expect(page.locator(".piece-strip")).toBeVisible();
  expect(scripts).toEqual([]);
  await page.getByRole("link", { name: "See it in 3-D" }).click();
  await expect(figure(page)).toBeVisible();
  expect(scripts).toHaveLength(1);
  await page.getByRole("button", { name: "The bare form" }).click();
  await expect(page.getByText(/^0 of \d+ pieces on/)).toBeVisible();
  const bare = await painted(page);
  await page.getByRole("button", { name: "Next piece" }).click();
  await expect(page.getByText(/^1 of \d+ pieces on/)).toBeVisible();
  expect(await painted(page)).not.toEqual(bare);
  await page.getByRole("button", { name: "Show them one by one" }).click();
  await expect(page.getByText(/^3 of \d+ pieces on/)).toBeVisible();
  await page.getByRole("button", { name: "Stop" }).click();
  await page.getByRole("link", { name: "Front, side and back pictures" }).click();
  await expect(page.locator(".piece-strip")).toBeVisible();
});

test("keys, buttons and drag turn it, a whole turn brings it back, and it never turns by itself", async ({ page }) => {
  await openDemo(page, "3d");
  const first = await painted(page);
  expect(first.inked).toBeGreaterThan(10_000);
  await page.waitForTimeout(800);
  expect(await painted(page)).toEqual(first);
  await figure(page).focus();
  for (let i = 0; i < 6; i += 1) await page.keyboard.press("ArrowRight");
  await expect(figure(page)).toHaveAttribute("aria-valuetext", /from the wearer’s left side/);
  expect(await painted(page)).not.toEqual(first);
  for (let i = 0; i < 18; i += 1) await page.getByRole("button", { name: "Turn right" }).click();
  await expect(figure(page)).toHaveAttribute("aria-valuenow", "0");
  await page.mouse.move(0, 0);
  expect(await painted(page)).toEqual(first);
  const box = await figure(page).boundingBox();
  const middle = { x: (box?.x ?? 0) + (box?.width ?? 0) / 2, y: (box?.y ?? 0) + (box?.height ?? 0) / 2 };
  await page.mouse.move(middle.x, middle.y);
  await page.mouse.down();
  await page.mouse.move(middle.x - 180, middle.y, { steps: 6 });
  await page.mouse.up();
  await expect(figure(page)).toHaveAttribute("aria-valuetext", /from the wearer’s left side/);
});
