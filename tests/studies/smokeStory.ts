import type { FolderServer } from "../../e2e/savingHarness/folderServer";
import { chooseAll, isThere, placeOf, type SmokeBrowser, wordsOf } from "./smokeBrowser";

/** One thing that happens in the story; it gives what was seen, and throws when that is not what should be. */
export interface SmokeStep {
  readonly title: string;
  readonly run: (browser: SmokeBrowser, server: FolderServer) => Promise<string>;
}

/** From the made-up person to a fitting of one's own, through a reload, to a server that is no longer there. */
export const smokeStory: readonly SmokeStep[] = [
  {
    title: "the demo shows its plan",
    run: async (browser, { address }) => {
      await openPlace(browser, address, "demo");
      await see(browser, title("The plan"));
      const pieces = await wordsWhen(browser, piecesSentence, /^\d+ pieces of batting/);
      const paths = await browser.ask<number>('document.querySelectorAll(".piece-strip svg path").length');
      expectThat(paths > 5, `the figures have only ${paths} lines`);
      return `${pieces} ${paths} lines drawn.`;
    },
  },
  {
    title: "three girths of a new fitting, and a plan",
    run: async (browser, { address }) => {
      await openPlace(browser, address, "fittings");
      await pressWhenThere(browser, '//button[normalize-space(.)="Begin a new fitting"]');
      await see(browser, title("The person"));
      for (const [name, text] of girths) {
        const field = fieldOf(name);
        await write(browser, field, text);
        await browser.pressEnter(field);
      }
      await pressWhenThere(browser, '//a[normalize-space(.)="See the plan"]');
      await see(browser, title("The plan"));
      return wordsWhen(browser, piecesSentence, /^\d+ pieces of batting/);
    },
  },
  {
    title: "a reading typed shows what is left to go",
    run: async (browser, { address }) => {
      await openPlace(browser, address, "padding");
      await chooseWaist(browser);
      const field = fieldOf("waist, all around");
      await write(browser, field, "24");
      const left = await wordsWhen(browser, leftToGo, /^6 1\/2 in to go all around$/);
      await browser.pressEnter(field);
      await see(browser, '//*[contains(@class,"saved-mark-state")][starts-with(normalize-space(.),"Saved")]');
      return `wanted 30 1/2, read 24: ${left}.`;
    },
  },
  {
    title: "all of it is there after a reload",
    run: async (browser) => {
      await collectTroubles(browser);
      await browser.reload();
      return seeFittingAgain(browser);
    },
  },
  {
    title: "and with the server gone, from what the browser kept",
    run: async (browser, server) => {
      await until("the service worker is in charge", () =>
        browser.ask<boolean>("navigator.serviceWorker?.controller != null"),
      );
      await server.stop();
      const answers = await fetch(server.address).then(
        () => true,
        () => false,
      );
      expectThat(!answers, "the server still answers");
      await browser.open("about:blank");
      await openPlace(browser, server.address, "padding");
      const seen = await seeFittingAgain(browser);
      const from = await browser.ask<number>('performance.getEntriesByType("navigation")[0]?.workerStart ?? -1');
      return `${seen} Page handed out by the worker: ${from > 0 ? "yes" : "this browser does not say"}.`;
    },
  },
  {
    title: "no error and no broken policy on any page",
    run: async (browser) => {
      await collectTroubles(browser);
      expectThat(earlierTroubles.length === 0, earlierTroubles.join("; "));
      return "none heard";
    },
  },
];

const girths = [
  ["Bust, all around", "35"],
  ["Waist, all around", "30 1/2"],
  ["Full hip, all around", "38"],
] as const;

const title = (words: string): string => `//main//h1[normalize-space(.)="${words}"]`;
const piecesSentence = '//main//*[contains(normalize-space(text()[1]),"pieces of batting")]';
const fieldOf = (label: string): string =>
  `//input[@id=//label[starts-with(normalize-space(.),"${label}")]/@for][not(@placeholder="")]`;
const leftToGo = '(//*[@role="tabpanel"]//*[contains(@class,"reading-left")])[1]';

/** A fresh load every time: another part after `#` alone would not be one. */
async function openPlace(browser: SmokeBrowser, address: string, place: string): Promise<void> {
  await collectTroubles(browser);
  await browser.open(`${address}?${place}#${place}`);
  await browser.ask(listening);
}

const earlierTroubles: string[] = [];

async function collectTroubles(browser: SmokeBrowser): Promise<void> {
  earlierTroubles.push(...(await browser.ask<readonly string[]>("window.smokeTroubles ?? []")));
}

/** Listens from when the page is loaded; what went wrong before, the steps themselves would stumble over. */
const listening = `(() => {
  const heard = (window.smokeTroubles = []);
  addEventListener("error", (event) => heard.push(String(event.message)));
  addEventListener("unhandledrejection", (event) => heard.push(String(event.reason)));
  addEventListener("securitypolicyviolation", (event) => heard.push(event.violatedDirective + " " + event.blockedURI));
  return true;
})()`;

async function seeFittingAgain(browser: SmokeBrowser): Promise<string> {
  await browser.ask(listening);
  await chooseWaist(browser);
  const left = await wordsWhen(browser, leftToGo, /^6 1\/2 in to go all around$/);
  const value = await browser.ask<string>(
    `document.evaluate(${JSON.stringify(fieldOf("waist, all around"))}, document, null, 9).singleNodeValue?.value`,
  );
  expectThat(value === "24", `the reading kept is "${value}"`);
  return `Reading 24, ${left}.`;
}

const see = (browser: SmokeBrowser, path: string): Promise<void> =>
  until(`there is ${path}`, () => browser.ask<boolean>(isThere(path)));

/** Presses what lies still: what comes late may push it away from under the finger. */
async function pressWhenThere(browser: SmokeBrowser, path: string): Promise<void> {
  await see(browser, path);
  let [place, since] = ["", performance.now()];
  await until(`${path} lies still`, async () => {
    const now = await browser.ask<string>(placeOf(path));
    if (now !== place) [place, since] = [now, performance.now()];
    return performance.now() - since > stillMs;
  });
  await browser.press(path);
}

async function chooseWaist(browser: SmokeBrowser): Promise<void> {
  const tab = '//button[@role="tab"][normalize-space(.)="waist"]';
  await pressWhenThere(browser, tab);
  await see(browser, `${tab}[@aria-selected="true"]`);
}

async function write(browser: SmokeBrowser, path: string, text: string): Promise<void> {
  await see(browser, path);
  await browser.ask(chooseAll(path));
  await browser.type(path, text);
}

async function wordsWhen(browser: SmokeBrowser, path: string, wanted: RegExp): Promise<string> {
  let words = "";
  await until(
    () => `${path} says ${wanted}, and not "${words}"`,
    async () => {
      words = await browser.ask<string>(wordsOf(path));
      return wanted.test(words);
    },
  );
  return words;
}

async function until(what: string | (() => string), isSo: () => Promise<boolean>): Promise<void> {
  const latest = performance.now() + patienceMs;
  while (!(await isSo())) {
    if (performance.now() > latest)
      throw new Error(`Waited in vain until ${typeof what === "string" ? what : what()}.`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

/** A busy machine is no failure; a hang still is. */
const patienceMs = 20_000;
/** Ten looks and more at a page that settles. */
const stillMs = 600;

function expectThat(holds: boolean, otherwise: string): void {
  if (!holds) throw new Error(otherwise);
}
