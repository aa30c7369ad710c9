import { expect, test, type Page } from "@playwright/test";
import { rulesBroken } from "./support/rulesBroken";
import { heading, openDemo } from "./support/workroom";

/** Past the marking of the lines, which comes first, to the bare form. */
const openWall = async (page: Page) => {
  await page.goto("/#wall");
  await expect(page.locator(".wall-lines")).toBeVisible();
  await page.keyboard.press("PageDown");
  await expect(page.locator(".wall-table")).toBeVisible();
};

test("the class sees how a line is marked first, from the back row, and no distance of a covered person @projector", async ({
  page,
}) => {
  await page.goto("/#wall");
  await expect(page.getByRole("heading", { level: 1, name: "Mark the person’s lines on the form" })).toBeVisible();
  const { words, overflow } = await page.evaluate(async () => {
    await document.fonts.ready;
    const stage = document.querySelector(".wall");
    const sizes = [...document.querySelectorAll(".wall-lines svg text")].map(
      (word) => word.getBoundingClientRect().height,
    );
    const steps = [...document.querySelectorAll(".wall-lines-steps li")].map((step) =>
      Number.parseFloat(getComputedStyle(step).fontSize),
    );
    return {
      words: [...sizes, ...steps],
      overflow: Math.max(
        document.documentElement.scrollHeight - innerHeight,
        (stage?.scrollHeight ?? 0) - (stage?.clientHeight ?? 0),
        ...[...document.querySelectorAll(".wall-stage > *")].map((part) => part.scrollHeight - part.clientHeight),
      ),
    };
  });
  expect(words.length).toBeGreaterThan(10);
  for (const height of words) expect(height).toBeGreaterThan((page.viewportSize()?.height ?? 0) / 40);
  expect(overflow).toBeLessThanOrEqual(1);
  const picture = page.locator(".wall-lines svg");
  await expect(picture).toContainText(/\d\sin/);
  await page.keyboard.press("4");
  await expect(picture).toHaveAccessibleName("Marking the high hip line");
  await page.keyboard.press("c");
  await expect(picture).not.toContainText(/\d/);
});

test("without a fitting a made-up person stands on the wall, readable from the back row @projector", async ({
  page,
}) => {
  await openWall(page);
  await page.keyboard.press("PageDown");
  await expect(page.getByText("Piece 1 of")).toBeVisible();
  // Digits of the figures' face are seven tenths of the type size high; ask the browser rather than trust it.
  const heights = await page.evaluate(async () => {
    await document.fonts.ready;
    const pen = document.createElement("canvas").getContext("2d");
    return [...document.querySelectorAll(".wall-figure, .wall-fraction")].map((figure) => {
      const { fontSize, fontFamily } = getComputedStyle(figure);
      if (pen === null) return 0;
      pen.font = `600 ${fontSize} ${fontFamily}`;
      return pen.measureText("8").actualBoundingBoxAscent;
    });
  });
  const size = page.viewportSize();
  expect(heights.length).toBeGreaterThan(5);
  for (const height of heights) expect(height).toBeGreaterThan((size?.height ?? 0) / 20);
  const overflow = await page.evaluate(() => {
    const wall = document.querySelector(".wall");
    return [
      document.documentElement.scrollHeight - window.innerHeight,
      document.documentElement.scrollWidth - window.innerWidth,
      (wall?.scrollHeight ?? 0) - (wall?.clientHeight ?? 0),
      (wall?.scrollWidth ?? 0) - (wall?.clientWidth ?? 0),
    ];
  });
  expect(Math.max(...overflow)).toBeLessThanOrEqual(0);
});

test("nothing lies over anything else at any step @projector", async ({ page }) => {
  await openWall(page);
  for (let step = 0; step < 4; step += 1) {
    const [head, table, controls] = await Promise.all(
      [".wall-pins", ".wall-table", ".wall-controls"].map((part) => page.locator(part).boundingBox()),
    );
    expect((head?.y ?? 0) + (head?.height ?? 0)).toBeLessThanOrEqual(table?.y ?? 0);
    expect((table?.y ?? 0) + (table?.height ?? 0)).toBeLessThanOrEqual(controls?.y ?? 0);
    await page.keyboard.press("ArrowRight");
  }
});

test("the clicker moves it, and the difference shrinks until the tape says there", async ({ page }) => {
  await openWall(page);
  await page.keyboard.press("3");
  const bare = page.locator(".wall-strip-batting").first();
  const start = Number(await bare.getAttribute("width"));
  await page.keyboard.press("End");
  await expect(page.getByRole("row", { name: /^around/ })).toContainText("on target");
  expect(Number(await bare.getAttribute("width"))).toBeGreaterThan(start);
  await page.keyboard.press("PageUp");
  await page.keyboard.press("Home");
  await expect(page.getByRole("heading", { level: 1, name: "Mark the person’s lines on the form" })).toBeVisible();
  await page.getByRole("button", { name: "Next step" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "The bare form" })).toBeVisible();
  await page.getByRole("button", { name: "Next step" }).click();
  await page.keyboard.press(" ");
  await expect(page.getByText("Piece 2 of")).toBeVisible();
});

test("an own fitting comes on covered and is left as it was; a made-up person is one key away", async ({ page }) => {
  await openDemo(page, "padding");
  await openWall(page);
  const wall = page.locator(".wall");
  await expect(wall).toContainText("its figures covered");
  await expect(page.locator(".wall-figure")).toHaveCount(0);
  await page.keyboard.press("c");
  await expect(page.locator(".wall-figure").first()).toBeVisible();
  await page.keyboard.press("m");
  await expect(wall).toContainText("sample person");
  await page.keyboard.press("End");
  await page.keyboard.press("o");
  await expect(wall).toContainText("its figures covered");
  await page.getByRole("link", { name: /^Leave/ }).click();
  await expect(page.getByText(/0 of \d+ pinned/)).toBeVisible();
  await expect(page.getByRole("button", { name: "Undo" })).toBeDisabled();
});

test("the wall breaks no rule of access, covered, open and with its keys shown @projector", async ({ page }) => {
  await openDemo(page);
  await openWall(page);
  for (const key of ["PageDown", "c", "k"]) {
    await page.keyboard.press(key);
    await page.waitForTimeout(500);
    expect(await rulesBroken(page)).toEqual([]);
  }
});

test("what is taken home is seen whole, and its keys leave the wall alone @projector", async ({ page }) => {
  await openWall(page);
  await page.keyboard.press("t");
  const code = page.locator(".code svg");
  await expect(code).toBeVisible();
  const box = await code.boundingBox();
  expect((box?.y ?? 1e9) + (box?.height ?? 0)).toBeLessThanOrEqual(page.viewportSize()?.height ?? 0);
  const count = page.locator(".wall-count");
  const before = await count.textContent();
  await page.getByRole("textbox", { name: "Link" }).focus();
  for (const key of ["End", "ArrowRight", "Space", "c", "m"]) await page.keyboard.press(key);
  await page.getByRole("button", { name: "As large as the screen" }).press("Enter");
  for (const key of ["ArrowRight", "PageDown"]) await page.keyboard.press(key);
  expect(await count.textContent()).toBe(before);
  await page.keyboard.press("Escape");
  await expect(page.locator(".code-large")).toBeHidden();
  await expect(code).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(code).toBeHidden();
  await page.keyboard.press("PageDown");
  await expect(count).not.toHaveText(before ?? "");
});

test("a person whose figures were covered is not uncovered by leaving", async ({ page }) => {
  await openDemo(page);
  await page.goto("/#wall");
  await expect(page.getByText(/its figures covered/)).toBeVisible();
  await page.keyboard.press("m");
  await page.getByRole("link", { name: /^Leave/ }).click();
  await expect(heading(page, "Fittings")).toBeVisible();
});
