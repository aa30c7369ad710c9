import puppeteer from "puppeteer-core";
import type { SmokeBrowser } from "./smokeBrowser";
import { installedProgram } from "./smokeInstall";
import { smokeRun } from "./smokeRun";

/** `npm run smoke:firefox`: the smoke story in Firefox, driven over WebDriver BiDi. */
await smokeRun(firefox).catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});

async function firefox(): Promise<SmokeBrowser> {
  const browser = await puppeteer.launch({
    browser: "firefox",
    executablePath: installedProgram(["firefox", "firefox-esr"], ["firefox-esr"]),
    headless: true,
    extraPrefsFirefox: { "intl.accept_languages": "en-US" },
  });
  const page = await browser.newPage();
  await page.setViewport({ width: 1180, height: 820 });
  const element = async (path: string) => {
    const found = await page.$(`::-p-xpath(${path})`);
    if (found === null) throw new Error(`There is no ${path}.`);
    return found;
  };
  return {
    name: (await browser.version()).replace("/", " "),
    open: async (address) => {
      await page.goto(address);
    },
    reload: async () => {
      await page.reload();
    },
    ask: (expression) => page.evaluate(expression) as Promise<never>,
    press: async (path) => (await element(path)).click(),
    type: async (path, text) => (await element(path)).type(text),
    pressEnter: async (path) => (await element(path)).press("Enter"),
    picture: () => page.screenshot(),
    close: () => browser.close(),
  };
}
