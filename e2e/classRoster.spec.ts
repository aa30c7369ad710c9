import { expect, type Page, test } from "@playwright/test";
import { pdfPages } from "./support/pdfText";

/** How often a page asked for the printer: a browser without a window has none to open. */
interface Asked {
  asked?: number;
}

const asked = (page: Page): Promise<number> => page.evaluate(() => (window as Asked).asked ?? 0);

const papers = ["Letter", "A4"] as const;

const pagesOn = async (page: Page, format: (typeof papers)[number]) =>
  pdfPages(await page.pdf({ format, printBackground: true }));

/** Two people on the list, taken in at once. */
async function openClass(page: Page): Promise<void> {
  await page.addInitScript(() => {
    window.print = () => {
      (window as Asked).asked = ((window as Asked).asked ?? 0) + 1;
    };
  });
  await page.goto("/#fittings");
  await page.locator('input[type="file"]').setInputFiles(names.map(({ file }) => `shared/demo/${file}.json`));
  await expect(page.locator(".tag")).toHaveCount(names.length);
}

/** Alphabetically, as they are printed. */
const names = [
  { file: "long-back", name: "Nora (sample person)" },
  { file: "first", name: "Orla (sample person)" },
] as const;

/** Seen to fail on a table of measurements wider than its page, on cut drawings higher than theirs, and on pages without the name. */
test("everyone’s padding sheets print at one press: each page is one that prints for that person alone, with the name at its foot", async ({
  page,
}) => {
  await openClass(page);
  await page.getByRole("button", { name: "Print the padding sheets of 2 people" }).click();
  await expect(page.getByText(/^The padding sheets of .* go to the printer/)).toBeVisible();
  await expect.poll(() => asked(page)).toBe(1);
  const together = { Letter: await pagesOn(page, "Letter"), A4: await pagesOn(page, "A4") };
  await page.getByRole("button", { name: "Done printing" }).click();
  const alone: { readonly [paper in (typeof papers)[number]]: string[] } = { Letter: [], A4: [] };
  for (const { name } of names) {
    await page.goto("/#fittings");
    await page
      .locator(".tag", { hasText: name })
      .getByRole("button", { name: /^(Open|Continue)/ })
      .click();
    await expect(page.getByRole("heading", { name: "The plan", level: 1 })).toBeVisible();
    for (const paper of papers)
      alone[paper].push(...(await pagesOn(page, paper)).map(({ text }) => withFoot(text, name)));
  }
  for (const paper of papers) {
    // Nothing that was meant for the page before goes over.
    for (const { text } of together[paper]) expect(text.length).toBeGreaterThan(600);
    // One sheet that sticks out of its page makes the browser print everybody's smaller.
    const steps = together[paper].flatMap(({ words }) =>
      words.filter((each) => each.words.includes("Carry the lines")),
    );
    expect(steps.length).toBeGreaterThan(4);
    for (const { size } of steps) expect(size).toBeGreaterThan(9.9);
    expect(alone[paper].length).toBeGreaterThan(7);
    expect(together[paper].map(({ text }) => text.trim())).toEqual(alone[paper]);
  }
});

/** At the foot of one person's own sheets stand their numbers, and of a stack for a class the name in their place. */
const withFoot = (text: string, name: string): string => text.trim().replace(/^\d+ \/ \d+/, name);

/** Broken on purpose: cells too high for one page. Seen to fail. */
test("blank measuring sheets take a page each on both papers, named or by numbers, in letters of ten points", async ({
  page,
}) => {
  await openClass(page);
  await page.getByRole("button", { name: "Print 2 blank measuring sheets" }).click();
  await expect.poll(() => asked(page)).toBe(1);
  for (const paper of papers) {
    const pages = await pagesOn(page, paper);
    expect(pages.map(({ text }) => names.flatMap(({ name }) => (text.includes(`For ${name}`) ? [name] : [])))).toEqual(
      names.map(({ name }) => [name]),
    );
    for (const { words } of pages) {
      expect(words.length).toBeGreaterThan(60);
      expect(words.filter(({ size }) => size < 9.9)).toEqual([]);
    }
  }
  await page.getByRole("checkbox", { name: /^Without names/ }).check();
  await page.getByRole("button", { name: "Print 2 blank measuring sheets" }).click();
  await expect.poll(() => asked(page)).toBe(2);
  const texts = (await pagesOn(page, "A4")).map(({ text }) => text);
  expect(texts.map((text) => /For Person \d/.exec(text)?.[0])).toEqual(["For Person 1", "For Person 2"]);
  for (const { name } of names) expect(texts.join(" ")).not.toContain(name);
  await page.emulateMedia({ media: "print" });
  for (const height of await page
    .locator(".sheet-short [data-measurement]")
    .evaluateAll((cells) => cells.map((cell) => (cell.getBoundingClientRect().height * 25.4) / 96)))
    expect(height).toBeGreaterThan(7.9);
});

/** Seen to fail where the press printed the padding sheets. */
test("session plans print at one press, each person’s from a page of their own with the name at its foot", async ({
  page,
}) => {
  await openClass(page);
  await page.getByRole("button", { name: "Print the session plans of 2 people" }).click();
  await expect.poll(() => asked(page)).toBe(1);
  for (const paper of papers) {
    const pages = await pagesOn(page, paper);
    const whose = pages.map(({ text }) => names.filter(({ name }) => text.includes(name)).map(({ name }) => name));
    for (const here of whose) expect(here).toHaveLength(1);
    expect([...new Set(whose.flat())]).toEqual(names.map(({ name }) => name));
    for (const { name } of names) {
      const own = pages.filter(({ text }) => text.trim().startsWith(name));
      expect(own.length).toBeLessThanOrEqual(2);
      expect(own[0]?.text).toContain(`Session plan for ${name}`);
      expect(own.map(({ text }) => text).join(" ")).toContain("Baste what is pinned. Stop here.");
    }
  }
});
