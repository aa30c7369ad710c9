import { expect, test, type Page } from "@playwright/test";
import { rulesBroken } from "./support/rulesBroken";
import { heading, openDemo } from "./support/workroom";

/** Past what comes before, to the trial: the first step with the tape on the form. */
const openClassView = async (page: Page) => {
  await page.goto("/#wall");
  await expect(page.locator(".wall-lines")).toBeVisible();
  for (let i = 0; i < 3; i += 1) await page.keyboard.press("PageDown");
  await expect(page.locator(".wall-table")).toBeVisible();
};

test("the class sees how a line is marked, from the back row, and no distance of a covered person @projector", async ({
  page,
}) => {
  await page.goto("/#wall");
  await expect(page.getByRole("heading", { level: 1, name: "Make the form ready." })).toBeVisible();
  await page.keyboard.press("PageDown");
  await expect(
    page.getByRole("heading", { level: 1, name: "Mark the person’s level lines on the form." }),
  ).toBeVisible();
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

test("without a fitting a made-up person stands in the class view, readable from the back row @projector", async ({
  page,
}) => {
  await openClassView(page);
  await expect(page.getByText("Step 4 of")).toBeVisible();
  // Digits of the figures' face are seven tenths of the type size high; ask the browser rather than trust it.
  const heights = await page.evaluate(async () => {
    await document.fonts.ready;
    const lock = document.createElement("canvas").getContext("2d");
    return [...document.querySelectorAll(".wall-figure, .wall-fraction")].map((figure) => {
      const { fontSize, fontFamily } = getComputedStyle(figure);
      if (lock === null) return 0;
      lock.font = `600 ${fontSize} ${fontFamily}`;
      return lock.measureText("8").actualBoundingBoxAscent;
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

test("at every step nothing lies over anything else, nothing is cut off, and all of it is read from the back row @projector", async ({
  page,
}) => {
  await page.goto("/#wall");
  await expect(page.locator(".wall-lines")).toBeVisible();
  const steps = Number(/of (\d+)/.exec((await page.locator(".wall-count").textContent()) ?? "")?.[1]);
  expect(steps).toBeGreaterThan(20);
  const headlines: string[] = [];
  for (let step = 0; step < steps; step += 1) {
    headlines.push((await page.getByRole("heading", { level: 1 }).textContent()) ?? "");
    const [head, stage, foot] = await Promise.all(
      [".wall-head", ".wall-stage", ".wall-foot"].map((part) => page.locator(part).boundingBox()),
    );
    const said = headlines.at(-1) ?? "";
    expect((head?.y ?? 0) + (head?.height ?? 0), said).toBeLessThanOrEqual(stage?.y ?? 0);
    expect((stage?.y ?? 0) + (stage?.height ?? 0), said).toBeLessThanOrEqual(foot?.y ?? 0);
    const { small, over } = await page.evaluate(() => {
      const shown = [...document.querySelectorAll(".wall-head *, .wall-stage *, .wall-foot *")].filter(
        (part) =>
          !["title", "desc"].includes(part.tagName) &&
          part.closest(".unseen") === null &&
          [...part.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim() !== ""),
      );
      const sizeOf = (part: Element) =>
        part.closest("svg") === null
          ? Number.parseFloat(getComputedStyle(part).fontSize)
          : part.getBoundingClientRect().height;
      return {
        small: shown.filter((part) => sizeOf(part) < innerHeight / 40).map(({ textContent }) => textContent),
        over: Math.max(
          document.documentElement.scrollHeight - innerHeight,
          ...[...document.querySelectorAll(".wall, .wall-stage > *")].map(
            (part) => part.scrollHeight - part.clientHeight,
          ),
        ),
      };
    });
    const isProjector = (page.viewportSize()?.width ?? 0) === 1920;
    if (isProjector) expect(small, said).toEqual([]);
    if (isProjector) expect(over, said).toBeLessThanOrEqual(1);
    await page.keyboard.press("ArrowRight");
  }
  expect(headlines.at(-1)).toBe("The padding is done.");
  for (const act of [
    "Cut the",
    "Stack the",
    "Pin the",
    "Carry the lines",
    "Measure every",
    "Slip in the",
    "Baste what",
  ])
    expect(
      headlines.some((headline) => headline.startsWith(act)),
      act,
    ).toBe(true);
});

test("the clicker moves it, step by step, and at the last measurement the tape says there", async ({ page }) => {
  await openClassView(page);
  const title = page.getByRole("heading", { level: 1 });
  const next = await page.locator(".wall-next strong").textContent();
  await page.getByRole("button", { name: "Next step" }).click();
  await expect(title).toHaveText(next ?? "");
  await expect(page.locator(".wall-facts")).toContainText(/in (long|wide), [\d\s/]+in high/);
  await expect(page.locator(".wall-foot")).toContainText(/should read/);
  await page.keyboard.press(" ");
  await expect(title).toHaveText(/^(Stack|Pin) the/);
  await page.keyboard.press("Home");
  await expect(title).toHaveText("Make the form ready.");
  await page.keyboard.press("End");
  await expect(title).toHaveText("The padding is done.");
  for (let i = 0; i < 3; i += 1) await page.keyboard.press("PageUp");
  await page.keyboard.press("3");
  await expect(page.getByRole("row", { name: /^around/ })).toContainText("on target");
});

test("an own fitting comes on covered and is left as it was; a made-up person is one key away", async ({ page }) => {
  await openDemo(page, "padding");
  await openClassView(page);
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

test("the class view breaks no rule of access, covered, open and with its keys shown @projector", async ({ page }) => {
  await openDemo(page);
  await openClassView(page);
  for (const key of ["PageDown", "c", "k"]) {
    await page.keyboard.press(key);
    await page.waitForTimeout(500);
    expect(await rulesBroken(page)).toEqual([]);
  }
});

test("what is taken home is seen whole, and its keys leave the class view alone @projector", async ({ page }) => {
  await openClassView(page);
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
