import { mkdirSync } from "node:fs";
import { chromium, type Page } from "@playwright/test";
import { preview } from "vite";
import { systemChromium } from "../tests/support/browser";
import { freePort } from "../tests/support/freePort";

/**
 * Takes a picture of every screen at the four sizes it is used at, into screenshots/, from the page as it was last
 * built. Words on the command line narrow it down: `npm run screens -- padding phone`.
 */
const sizes = {
  tablet: { width: 1180, height: 820, touch: true },
  portrait: { width: 820, height: 1180, touch: true },
  projector: { width: 1920, height: 1080, touch: false },
  phone: { width: 390, height: 844, touch: true },
} as const;

const screens: { readonly [name: string]: (page: Page) => Promise<void> } = {
  door: async (page) => {
    await page.goto("/");
  },
  "body-empty": async (page) => {
    await page.goto("/#body");
  },
  body: async (page) => {
    await openDemo(page, "body");
    await page.locator('[data-measurement="waistFrontArc"]').click();
  },
  form: (page) => openDemo(page, "form"),
  plan: (page) => openDemo(page, "plan"),
  padding: async (page) => {
    await openDemo(page, "padding");
    for (let i = 0; i < 5; i += 1) await page.getByRole("button", { name: "It is pinned" }).click();
  },
  "padding-typing": async (page) => {
    await openDemo(page, "padding");
    for (let i = 0; i < 8; i += 1) await page.getByRole("button", { name: "It is pinned" }).click();
    await page.getByRole("tab", { name: "waist" }).click();
    await page.getByRole("textbox", { name: /waist, all round/i }).fill("35 3/8");
    await page.getByRole("textbox", { name: /waist, front/i }).fill("20 1/2");
  },
  finishing: (page) => openDemo(page, "finishing"),
  print: (page) => openDemo(page, "print"),
};

async function openDemo(page: Page, place: string): Promise<void> {
  await page.goto("/#demo");
  await page.waitForURL(/#plan$/);
  await page.getByRole("main").getByRole("heading").first().waitFor();
  await page.goto(`/#${place}`);
  await page.getByRole("main").getByRole("heading").first().waitFor();
}

const wanted = process.argv.slice(2);
const isWanted = (...words: readonly string[]): boolean =>
  wanted.every((word) => words.includes(word) || word.startsWith("--"));
const isDark = wanted.includes("--dark");
const isWhole = wanted.includes("--whole");

const port = await freePort();
const server = await preview({ preview: { port, strictPort: true }, logLevel: "error" });
const executablePath = systemChromium();
const browser = await chromium.launch({
  ...(executablePath === undefined ? {} : { executablePath }),
  args: [...(process.getuid?.() === 0 ? ["--no-sandbox"] : []), "--disable-gpu", "--disable-quic"],
});
mkdirSync("screenshots", { recursive: true });
for (const [sizeName, { width, height, touch }] of Object.entries(sizes)) {
  for (const [screenName, open] of Object.entries(screens)) {
    if (!isWanted(sizeName, screenName)) continue;
    const context = await browser.newContext({
      baseURL: `http://127.0.0.1:${port}`,
      viewport: { width, height },
      hasTouch: touch,
      isMobile: touch,
      locale: "en-US",
      colorScheme: isDark ? "dark" : "light",
    });
    const page = await context.newPage();
    await open(page);
    await page.getByRole("main").getByRole("heading").first().waitFor();
    await page.screenshot({
      path: `screenshots/${screenName}-${sizeName}${isDark ? "-dark" : ""}.png`,
      fullPage: isWhole,
    });
    await context.close();
  }
}
await browser.close();
await server.close();
