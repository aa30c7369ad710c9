import { chromium, expect, type Page, test } from "@playwright/test";
import { browserLaunch } from "../tests/support/browser";
import { rulesBroken } from "./support/rulesBroken";
import { openDemo, pinNext, row, typeGirths, unfoldPlan } from "./support/workroom";

const at = (place: string) => async (page: Page) => {
  await page.goto(`/#${place}`);
  await expect(page.getByRole("main").getByRole("heading", { level: 1 })).toBeVisible();
};

/** Each story is walked through on one page, from state to state. */
const stories: { readonly [story: string]: { readonly [state: string]: (page: Page) => Promise<void> } } = {
  "a new fitting": {
    home: at(""),
    "empty body": at("body"),
    "no plan yet": at("plan"),
    fittings: at("fittings"),
    "body with a text that cannot be read": async (page) => {
      await page.goto("/#body");
      await page.getByRole("textbox", { name: "Bust, all around" }).fill("wide");
      await page.keyboard.press("Enter");
    },
    "body with readings that cannot both be right": async (page) => {
      await row(page, "bustGirth").click();
      await typeGirths(page, ["35", "24 1/2", "38"]);
      await row(page, "waistFrontArc").click();
      await page.getByRole("textbox", { name: "Front waist" }).fill("27");
      await page.keyboard.press("Enter");
      await row(page, "waistFrontArc").click();
    },
  },
  "the demo": {
    plan: async (page) => {
      await openDemo(page);
      await unfoldPlan(page);
      await page.locator(".piece-tile").nth(2).click();
      const back = page.getByRole("button", { name: "Back to the plan" });
      if (await back.isVisible()) await back.click();
      await page.getByRole("button", { name: "Change the batting" }).click();
    },
    body: at("body"),
    form: at("form"),
    "the form made ready": async (page) => {
      await at("padding/lines")(page);
      expect.soft(await smallTargets(page)).toEqual([]);
    },
    "a line to be marked": async (page) => {
      await page.locator(".stop-slab").click();
      await expect(page.getByRole("heading", { name: "Mark the person’s bust line." })).toBeVisible();
    },
    "a line to be measured, and what the measurement before changed": async (page) => {
      for (let i = 0; i < 5; i += 1) await page.locator(".stop-slab").click();
      await page.locator(".line-field").getByRole("textbox").fill("30");
      await page.locator(".stop-slab").click();
      await expect(page.locator(".stop-news")).toBeVisible();
      await expect(page.locator(".line-parts button")).toHaveCount(4);
      expect.soft(await smallTargets(page)).toEqual([]);
    },
    padding: async (page) => {
      await page.goto("/#padding");
      await pinNext(page);
    },
    finishing: at("finishing"),
    turning: async (page) => {
      await at("3d")(page);
      await expect(page.getByRole("slider", { name: "Turn the figure" })).toBeVisible();
    },
    print: at("print"),
  },
};

for (const [story, states] of Object.entries(stories)) {
  test(`nothing stands in the way in ${story}, on a tablet and on a phone, and a thumb finds its targets`, async ({
    page,
  }) => {
    test.slow();
    const tablet = page.viewportSize() ?? { width: 1180, height: 820 };
    for (const [state, open] of Object.entries(states)) {
      await page.setViewportSize(tablet);
      await open(page);
      expect.soft(await rulesBroken(page), state).toEqual([]);
      await page.setViewportSize({ width: 390, height: 844 });
      await unfoldPlan(page);
      expect.soft(await rulesBroken(page), `${state}, on a phone`).toEqual([]);
    }
  });
}

const colourRules = ["color-contrast", "link-in-text-block"];
const schemes = {
  dark: { colorScheme: "dark" },
  "more contrast": { colorScheme: "light", contrast: "more" },
  "forced colours": { contrast: "no-preference", forcedColors: "active" },
} as const;

test("nor in the dark, with more contrast or in forced colours", async ({ page }) => {
  await openDemo(page);
  for (const place of ["plan", "padding", "padding/lines", "body", "3d"]) {
    await at(place)(page);
    for (const [scheme, media] of Object.entries(schemes)) {
      await page.emulateMedia(media);
      expect.soft(await rulesBroken(page, { only: colourRules }), `${place}, ${scheme}`).toEqual([]);
    }
  }
});

const places = ["", "body", "form", "plan", "padding", "padding/lines", "finishing", "print", "fittings", "3d"];

/** What reaches beyond the right edge of the page, in pixels, place by place and width by width. */
async function runsOff(page: Page, widths: readonly number[]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const place of places) {
    await page.goto(`/#${place}`);
    await page.getByRole("main").getByRole("heading").first().waitFor();
    for (const width of widths) {
      await page.setViewportSize({ width, height: 800 });
      const over = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      if (over > 0) found.push(`${place}, ${String(width)} pixels wide: ${String(over)} pixels`);
    }
  }
  return found;
}

test("320 pixels wide, nothing runs off the side", async ({ page }) => {
  test.slow();
  await openDemo(page);
  expect(await runsOff(page, [320])).toEqual([]);
});

test("letters twice as large, nothing runs off the side", async ({ baseURL }) => {
  test.slow();
  const browser = await chromium.launch(browserLaunch("--blink-settings=defaultFontSize=32"));
  const page = await browser.newPage({
    ...(baseURL === undefined ? {} : { baseURL }),
    viewport: { width: 640, height: 800 },
  });
  await openDemo(page);
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe("32px");
  expect(await runsOff(page, [640, 390, 320])).toEqual([]);
  await browser.close();
});

/** What is smaller than the 44 pixels of a thumb. */
async function smallTargets(page: Page): Promise<readonly string[]> {
  const small = await page.locator("main button, main input").evaluateAll((elements) =>
    elements
      .map((element) => ({
        name: element.textContent || element.getAttribute("aria-label") || "",
        box: element.getBoundingClientRect(),
      }))
      .filter(({ box }) => box.width > 0 && (box.width < 44 || box.height < 44))
      .map(({ name, box }) => `${name} ${String(Math.round(box.width))}×${String(Math.round(box.height))}`),
  );
  return small.filter((one) => !/^ ?2[0-9]×2[0-9]$/.test(one));
}
