import { mkdirSync, readdirSync, rmSync, statSync, writeFileSync } from "node:fs";
import { type BrowserContext, type CDPSession, chromium, type Page } from "@playwright/test";
import { browserLaunch } from "../tests/support/browser";
import { builtTool } from "../tests/studies/smokeBuild";
import { pinNext } from "./support/workroom";
import { paperPictures } from "./support/paperPictures";
import { sampleBody } from "../tests/support/sample";

/**
 * `npm run screens`: a picture of every screen at the four sizes it is used at, a few of them in the dark as well, and
 * the printed sheets on Letter and A4. A full run replaces all of e2e/pictures; words narrow it down to what they name
 * (`npm run screens -- padding phone`), and `--whole` takes pages in their full length, into screenshots/.
 */
const sizes = {
  tablet: { width: 1180, height: 820, touch: true },
  portrait: { width: 820, height: 1180, touch: true },
  projector: { width: 1920, height: 1080, touch: false },
  phone: { width: 390, height: 844, touch: true },
} as const;
type SizeName = keyof typeof sizes;

const inTheDark: readonly string[] = ["padding", "class-open"];
const darkSizes: readonly SizeName[] = ["tablet", "phone"];

interface Screen {
  readonly name: string;
  /** The way there from the screen before it: one walk passes them all. */
  readonly reach: (page: Page) => Promise<void>;
}

const walk: readonly Screen[] = [
  { name: "home", reach: (page) => openPlace(page, "", heading("Make a dress form")) },
  { name: "person-empty", reach: (page) => openPlace(page, "person", heading("The person")) },
  { name: "plan", reach: (page) => openPlace(page, "demo", ".piece-strip svg") },
  {
    name: "person",
    reach: async (page) => {
      await openPlace(page, "person", heading("The person"));
      await page.locator('[data-measurement="waistFrontArc"]').click();
    },
  },
  { name: "form", reach: (page) => openPlace(page, "form", heading("The form")) },
  { name: "lines-prepare", reach: (page) => openPlace(page, "padding/lines", heading("Make the form ready")) },
  {
    name: "lines-mark",
    reach: async (page) => {
      await page.locator(".stop-slab").click();
      for (let i = 0; i < 2; i += 1) await page.locator(".stop-slab").click();
      await page.locator(heading("Mark the person’s waistline")).waitFor();
    },
  },
  {
    name: "lines-read",
    reach: async (page) => {
      for (let i = 0; i < 3; i += 1) await page.locator(".stop-slab").click();
      await page.getByRole("button", { name: "waist", exact: true }).click();
      await page.locator(".line-field input").fill(sampleBody("waistGirth", -5.5));
      await page.locator(".stop-slab").click();
      await page.locator(".stop-news").waitFor();
    },
  },
  {
    name: "lines-width",
    reach: async (page) => {
      await page.getByRole("button", { name: "waist", exact: true }).click();
      await page.getByRole("button", { name: /^width straight across/ }).click();
      await page.locator(heading("Measure the width straight across on the waistline")).waitFor();
    },
  },
  {
    name: "padding-fresh",
    reach: async (page) => {
      // The walk goes on from the draft, as it stood before the lines.
      while (await page.getByRole("button", { name: "Undo" }).isEnabled()) {
        await page.getByRole("button", { name: "Undo" }).click();
      }
      await openPlace(page, "padding", ".stop-slab");
    },
  },
  {
    name: "padding",
    reach: async (page) => {
      await pinNext(page);
      await page.locator(".stop-at-carry-lines").waitFor();
    },
  },
  {
    name: "padding-cut",
    reach: async (page) => {
      await page.locator(".stop-slab").click();
      await page.locator(".stop-at-cut").waitFor();
    },
  },
  { name: "finishing", reach: (page) => openPlace(page, "finishing", heading("First the padding")) },
  { name: "3d", reach: (page) => openPlace(page, "3d", "canvas") },
  {
    name: "fittings",
    reach: async (page) => {
      await openPlace(page, "fittings", ".tag");
      for (const name of ["first", "long-back", "two-sides"]) {
        const before = await page.locator(".tag").count();
        await page.locator('input[type="file"]').setInputFiles(`shared/demo/${name}.json`);
        await page.locator(".tag").nth(before).waitFor();
      }
    },
  },
  {
    name: "print",
    reach: async (page) => {
      await openPlace(page, "print", ".sheet");
      await page.getByRole("checkbox", { name: /A blank measuring sheet/ }).check();
      await page.getByRole("checkbox", { name: /Cut drawings/ }).check();
    },
  },
  {
    name: "projection",
    reach: async (page) => {
      await page.getByRole("button", { name: "Project onto the table" }).click();
      await page.locator('.projection path[data-line="outline"]').waitFor();
      // On a table a pixel is larger than on a screen: so large that a panel fits.
      await page.getByRole("textbox", { name: "The bar reads" }).fill("20 in");
      await page.getByRole("button", { name: "Set" }).click();
      for (let i = 0; i < 13; i += 1) await page.keyboard.press("PageDown");
    },
  },
  {
    name: "class-lines",
    reach: async (page) => {
      await openPlace(page, "class", ".class-action");
      await page.keyboard.press("Home");
      await page.keyboard.press("PageDown");
      await page.locator(".class-lines").waitFor();
    },
  },
  {
    name: "class",
    reach: async (page) => {
      await page.keyboard.press("c");
      for (let i = 0; i < 12 && !(await page.locator(".class-table").isVisible()); i += 1) {
        await page.keyboard.press("PageDown");
      }
      await page.locator(".class-table").waitFor();
    },
  },
  {
    name: "class-open",
    reach: async (page) => {
      await page.keyboard.press("c");
      await page.locator(".class-figure").first().waitFor();
    },
  },
];

const words = process.argv.slice(2).filter((word) => !word.startsWith("--"));
const isWhole = process.argv.includes("--whole");
const folder = isWhole ? "screenshots" : "e2e/pictures";
const mostBytes = 4_000_000;

const taken: string[] = [];
const tool = await builtTool();
const browser = await chromium.launch(browserLaunch());
mkdirSync(folder, { recursive: true });
const begun = performance.now();
const sizeNames = Object.keys(sizes) as SizeName[];
// Two at a time: that is what a small machine has processors for.
await Promise.all([walkSizes(sizeNames.slice(0, 2)), walkSizes(sizeNames.slice(2))]);
await browser.close();
await tool.remove();
report();

async function walkSizes(names: readonly SizeName[]): Promise<void> {
  for (const name of names) {
    if (words.some((word) => word in sizes && word !== name)) continue;
    const { width, height, touch } = sizes[name];
    const context = await browser.newContext({
      baseURL: tool.server.address,
      viewport: { width, height },
      hasTouch: touch,
      isMobile: touch,
      locale: "en-US",
      reducedMotion: "reduce",
      serviceWorkers: "block",
    });
    await walkThrough(context, name);
    await context.close();
  }
}

async function walkThrough(context: BrowserContext, size: SizeName): Promise<void> {
  const page = await context.newPage();
  const camera = await context.newCDPSession(page);
  for (const { name, reach } of walk) {
    await reach(page).catch((problem: unknown) => {
      throw new Error(`The way to ${name} at the size ${size} is blocked.`, { cause: problem });
    });
    await keepPicture(page, camera, `${name}-${size}`);
    if (name === "print" && size === "tablet" && isWanted("paper")) await keepPapers(page);
    if (!inTheDark.includes(name) || !darkSizes.includes(size)) continue;
    await page.emulateMedia({ colorScheme: "dark" });
    await keepPicture(page, camera, `${name}-dark-${size}`);
    await page.emulateMedia({ colorScheme: "light" });
  }
}

async function keepPicture(page: Page, camera: CDPSession, name: string): Promise<void> {
  if (!isWanted(name)) return;
  await page.evaluate(async () => {
    await document.fonts.ready;
    await new Promise((shown) => requestAnimationFrame(() => requestAnimationFrame(shown)));
  });
  const { data } = await camera.send("Page.captureScreenshot", {
    format: "webp",
    quality: 18,
    captureBeyondViewport: isWhole,
  });
  keep(name, Buffer.from(data, "base64"));
}

/** The three sheets as they come out of a printer. */
async function keepPapers(page: Page): Promise<void> {
  for (const paper of ["Letter", "A4"] as const) {
    const pages = await paperPictures(page, paper);
    // The other paper differs in its breaks: its first pages show them.
    (paper === "Letter" ? pages : pages.slice(0, 6)).forEach((picture, i) => {
      keep(`paper-${paper.toLowerCase()}-${i + 1}`, picture);
    });
  }
}

function keep(name: string, picture: Uint8Array): void {
  writeFileSync(`${folder}/${name}.webp`, picture);
  taken.push(`${name}.webp`);
}

/** Every word must be a part of the name; without words everything is wanted. */
function isWanted(name: string): boolean {
  return words.every((word) => name.split("-").includes(word));
}

/** The first heading of a place, so that the place before it is not taken for it. */
function heading(words: string): string {
  return `h1:has-text("${words}"):visible`;
}

/** Goes there by the address, as the links do, and waits until the place is filled. */
async function openPlace(page: Page, place: string, sign: string): Promise<void> {
  await page.goto(`/#${place}`);
  // A phone folds some of it away, so being there has to do.
  await page.locator("main").locator(sign).first().waitFor({ state: "attached" });
  if (place === "demo") await page.waitForURL(/#plan$/);
}

function report(): void {
  const isFull = words.length === 0 && !isWhole;
  for (const name of isFull ? readdirSync(folder) : []) {
    if (!taken.includes(name)) rmSync(`${folder}/${name}`);
  }
  const bytes = readdirSync(folder).reduce((sum, name) => sum + statSync(`${folder}/${name}`).size, 0);
  const seconds = ((performance.now() - begun) / 1000).toFixed(0);
  console.log(`${taken.length} pictures into ${folder} in ${seconds} s; ${(bytes / 1e6).toFixed(2)} MB in all.`);
  if (taken.length === 0) console.log(`Nothing has the name ${words.join(" and ")}.`);
  if (isFull && bytes > mostBytes) console.log(`That is more than the ${mostBytes / 1e6} MB these pictures may take.`);
  process.exitCode = taken.length === 0 || (isFull && bytes > mostBytes) ? 1 : 0;
}
