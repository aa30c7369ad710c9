import { readFileSync } from "node:fs";
import { type Download, expect, type Locator, type Page, test } from "@playwright/test";
import { pinNext } from "./support/workroom";
import { sealedRecord } from "../src/app/storage/fittingRecord";
import { rulesBroken } from "./support/rulesBroken";
import { watchedContext } from "./support/watchedContext";
import { sampleBody, sampleTitle } from "../tests/support/sample";

/** Keeping, files, links and tabs as a person meets them on the screens. */

// Two cores may be busy with other tests as well.
test.describe.configure({ timeout: 120_000 });
const patiently = { timeout: 30_000 };

const saved = (page: Page) => expect(page.getByRole("link", { name: /Fittings.*Saved/ })).toBeVisible(patiently);
const tag = (page: Page, title: string) =>
  page.getByRole("listitem").filter({ has: page.getByRole("heading", { name: title, exact: true }) });

async function visit(page: Page, place: string): Promise<void> {
  await page.goto(`/#${place}`);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible(patiently);
}

const sampleFile = JSON.parse(readFileSync(new URL("../shared/demo-fitting.json", import.meta.url), "utf8"));
const prepared = { did: "prepared", what: "form", at: "2026-02-03T04:05:06.000Z" };

/** The made-up person with her first step noted, as a fitting of this device that is open. */
async function demoKept(page: Page): Promise<void> {
  await page.goto("/#fittings");
  const buffer = Buffer.from(JSON.stringify({ ...sampleFile, work: [prepared] }));
  await page.locator("input[type=file]").setInputFiles({ name: "kept.json", mimeType: "application/json", buffer });
  await page.getByRole("button", { name: `Open ${demo}` }).click();
  // Opening leads to where its work stands once the fitting is there.
  await page.waitForURL(/#padding$/);
  await saved(page);
}

/** The step after the form is ready. */
const firstLine = (page: Page) => page.getByRole("heading", { level: 1, name: "Mark the person’s bust line." });

/** The same with her first piece pinned. */
async function demoPinned(page: Page): Promise<void> {
  await demoKept(page);
  await visit(page, "padding");
  await expect(firstLine(page)).toBeVisible(patiently);
  await pinNext(page);
  await saved(page);
}

async function more(page: Page, title: string, action: string): Promise<void> {
  await tag(page, title)
    .getByRole("button", { name: `More for ${title}` })
    .click();
  await tag(page, title).getByRole("button", { name: action, exact: true }).click();
}

/** The field with the link of the made-up person, who is kept on this device for it. */
async function demoLink(page: Page): Promise<Locator> {
  await demoKept(page);
  await visit(page, "fittings");
  await more(page, demo, "Share");
  const link = page.getByRole("textbox", { name: "Link", exact: true });
  await expect(link).toHaveValue(/#fitting=1z/);
  return link;
}

async function downloaded(
  page: Page,
  press: () => Promise<void>,
): Promise<{ name: string; text: string; path: string }> {
  const [download] = await Promise.all([page.waitForEvent("download") as Promise<Download>, press()]);
  const path = await download.path();
  return { name: download.suggestedFilename(), text: readFileSync(path, "utf8"), path };
}

const demo = sampleTitle;

test("what was done is there after a reload, with undo and redo", async ({ page }) => {
  await demoPinned(page);
  await page.reload();
  const rail = page.getByRole("link", { name: /^Padding/ });
  await expect(rail).toContainText("1 of", patiently);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(rail).toContainText("0 of");
  await saved(page);
  await page.reload();
  await expect(rail).toContainText("0 of", patiently);
  await page.getByRole("button", { name: "Redo" }).click();
  await expect(rail).toContainText("1 of");
});

test("the shelf lists, copies, names, removes and puts back, and breaks no rule of access", async ({ page }) => {
  await demoPinned(page);
  await visit(page, "fittings");
  await expect(tag(page, demo)).toContainText("open now");
  await expect(tag(page, demo)).toContainText(/1 of \d+ pieces pinned/, patiently);

  await more(page, demo, "Copy");
  const copy = tag(page, `${demo} (copy)`);
  await expect(copy).toBeVisible();
  await copy.getByRole("button", { name: /^More/ }).click();
  await copy.getByRole("textbox", { name: "Name" }).fill("Ruth");
  await copy.getByRole("textbox", { name: "Name" }).press("Enter");
  await expect(tag(page, "Ruth")).toBeVisible();
  await page.getByText("Named Ruth.").getByRole("button", { name: "Undo" }).click();
  await expect(copy).toBeVisible();
  await copy.getByRole("textbox", { name: "Name" }).fill("Ruth");
  await copy.getByRole("textbox", { name: "Name" }).press("Enter");
  await expect(tag(page, "Ruth")).toBeVisible();

  const panel = tag(page, "Ruth");
  await panel.getByRole("button", { name: "Compare" }).click();
  await expect(panel.getByRole("table")).toContainText("the same");
  expect(await rulesBroken(page)).toEqual([]);
  await panel.getByRole("button", { name: /^More/ }).click();

  await more(page, "Ruth", "Archive");
  await expect(tag(page, "Ruth")).toBeHidden();
  await page.getByText("Archived Ruth.").getByRole("button", { name: "Undo" }).click();
  await more(page, "Ruth", "Delete");
  await expect(tag(page, "Ruth")).toBeHidden();
  await page.getByText("Deleted Ruth.").getByRole("button", { name: "Undo" }).click();
  await expect(tag(page, "Ruth")).toBeVisible();
  await more(page, "Ruth", "Delete");
  await page.getByText("Deleted (1)").click();
  await tag(page, "Ruth").getByRole("button", { name: "Delete permanently" }).click();
  await expect(page.getByText("Deleted (1)")).toBeHidden();
});

test("a body measured again: the rounds are compared, and only the change is planned", async ({ page }) => {
  await demoPinned(page);
  const padding = page.getByRole("link", { name: /^Padding/ });
  await visit(page, "fittings");
  await more(page, demo, "Measure again");
  const again = page.getByRole("listitem").filter({ has: page.getByRole("heading", { name: /^Marta.*, \w+ \d/ }) });
  await again.getByRole("button", { name: /^Open/ }).click();
  // Nothing of the old measurements stands beside the new ones: the person is measured anew.
  await visit(page, "body");
  for (const [name, label, more] of [
    ["bustGirth", /^bust, all around/i, 0],
    ["waistGirth", /^waist, all around/i, 1.75],
    ["fullHipGirth", /^full hip, all around/i, 0],
  ] as const) {
    await page.locator(`[data-measurement="${name}"]`).first().click();
    const field = page.getByRole("textbox", { name: label }).first();
    await expect(field).toHaveValue("");
    await field.fill(sampleBody(name, more));
    await field.press("Enter");
  }
  await saved(page);
  // The piece that is pinned stays pinned, although the plan for the bare form is another one now.
  await expect(padding).toContainText("1 of", patiently);
  await visit(page, "fittings");
  await expect(again).toContainText(/1 of \d+ pieces pinned, \d+ to go/, patiently);
  await again.getByRole("button", { name: /^More/ }).click();
  await again.getByRole("button", { name: "Compare" }).click();
  await expect(again.getByText(/^\d+ of \d+ measurements changed\./)).toBeVisible();
  await expect(again.getByRole("row", { name: /^Waist, all around/ })).toContainText("+ 1 3/4 in");
  await expect(again.getByText("not measured now").first()).toBeVisible();
});

test("everything goes out in one file and comes back on another device, and nothing leaves the origin", async ({
  page,
  browser,
  context,
  baseURL,
}) => {
  const wrong = await watchedContext(context, baseURL ?? "");
  await demoKept(page);
  await visit(page, "fittings");
  const file = await downloaded(page, () => page.getByRole("button", { name: "Save it to a file" }).click());
  expect(file.name).toMatch(/^fittings \d{4}-\d\d-\d\d\.json$/);
  await expect(page.getByText(/Last file made .*; nothing has changed since/)).toBeVisible();
  await tag(page, demo).getByRole("button", { name: /^More/ }).click();
  const table = await downloaded(page, () => page.getByRole("button", { name: "Save measurements as CSV" }).click());
  expect(table.text).toMatch(/^measurement,unit,body,form\r\n/);

  const other = await (await browser.newContext(baseURL === undefined ? {} : { baseURL })).newPage();
  await visit(other, "fittings");
  await other.locator("input[type=file]").setInputFiles(file.path);
  await expect(other.getByRole("main").getByText(`${demo}: added.`)).toBeVisible(patiently);
  await other.locator("input[type=file]").setInputFiles(file.path);
  await expect(other.getByRole("main").getByText(/already here, the same/)).toBeVisible();
  const csv = { name: "Ines.csv", mimeType: "text/csv", buffer: Buffer.from(table.text) };
  await other.locator("input[type=file]").setInputFiles(csv);
  await expect(tag(other, "Ines")).toContainText("planned", patiently);
  const bad = {
    name: "bad.json",
    mimeType: "application/json",
    buffer: Buffer.from(file.text.replace("Marta", "Berta")),
  };
  await other.locator("input[type=file]").setInputFiles(bad);
  await expect(other.getByRole("main").getByText("Nothing was taken from the file.")).toBeVisible();
  await other.context().close();
  expect(wrong).toEqual([]);
});

test("a link takes a fitting to another device without its name, and leaves no trace in the address", async ({
  page,
  browser,
  baseURL,
}) => {
  const link = await demoLink(page);
  await page.getByRole("button", { name: "Show as a code" }).click();
  await expect(page.getByRole("img", { name: "QR code of the link" })).toBeVisible();
  await page.getByRole("button", { name: "As large as the screen" }).click();
  const large = page.getByRole("dialog").getByRole("img");
  expect((await large.boundingBox())?.height).toBeGreaterThan(0.8 * (page.viewportSize()?.height ?? 0));
  await page.getByRole("button", { name: "Smaller" }).click();
  await expect(large).toBeHidden();

  const other = await (await browser.newContext(baseURL === undefined ? {} : { baseURL })).newPage();
  const asked: string[] = [];
  other.on("request", (request) => asked.push(request.url()));
  await other.goto(await link.inputValue());
  await expect(other.getByText("This fitting came in a link.", { exact: false })).toBeVisible(patiently);
  expect(other.url()).not.toContain("fitting=");
  expect(asked.filter((url) => url.includes("fitting="))).toEqual([]);
  await visit(other, "fittings");
  await expect(other.getByText("There is nothing here yet.", { exact: false })).toBeVisible();
  await other.getByRole("button", { name: "Save it here" }).first().click();
  await expect(tag(other, "No name yet")).toBeVisible(patiently);
  await other.goto(`${(await link.inputValue()).slice(0, -9)}`);
  await expect(other.getByText("The link was cut short or changed", { exact: false })).toBeVisible(patiently);
  await other.context().close();
});

test("a second tab follows, says so, and takes over when asked", async ({ page, context }) => {
  await demoKept(page);
  await visit(page, "padding");
  const second = await context.newPage();
  await visit(second, "padding");
  await expect(second.getByText("Another tab is writing in this fitting.", { exact: false })).toBeVisible(patiently);
  await page.getByRole("button", { name: "The bust line is marked" }).click();
  const secondLine = "Mark the person’s underbust line.";
  await expect(second.getByRole("heading", { level: 1 })).toHaveText(secondLine, patiently);
  await second.getByRole("button", { name: "Work here instead" }).click();
  await expect(page.getByText("Another tab is writing in this fitting.", { exact: false })).toBeVisible(patiently);
  await second.getByRole("button", { name: "The underbust line is marked" }).click();
  await expect(page.getByRole("heading", { level: 1 })).not.toHaveText(secondLine, patiently);
});

test("a full disk is said at once, with the file as the way out", async ({ page }) => {
  await page.goto("/#demo");
  await page.waitForURL(/#plan$/);
  const devtools = await page.context().newCDPSession(page);
  const origin = new URL(page.url()).origin;
  await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
  await visit(page, "padding");
  await page.getByRole("button", { name: "The form is ready" }).click();
  await expect(page.getByText("There is no room left", { exact: false })).toBeVisible(patiently);
  await expect(page.getByRole("link", { name: /Fittings.*Not saved/ })).toBeVisible();
  const file = await downloaded(page, () => page.getByRole("button", { name: "Save to a file" }).click());
  expect(JSON.parse(file.text)).toMatchObject({ title: demo, work: [{ did: "prepared" }] });
  await devtools.send("Storage.overrideQuotaForOrigin", { origin });
  await saved(page);
  await expect(page.getByText("There is no room left", { exact: false })).toBeHidden();
});

const deleteDatabase = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const deleting = indexedDB.deleteDatabase("padwright");
        deleting.onsuccess = () => resolve();
        deleting.onerror = () => reject(deleting.error);
      }),
  );

/** Empties the store of the fittings behind the back of the tool, which no event tells. */
const emptyStores = (page: Page): Promise<void> =>
  page.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("padwright");
        opening.onsuccess = () => {
          const names = [...opening.result.objectStoreNames];
          const transaction = opening.result.transaction(names, "readwrite");
          for (const name of names) transaction.objectStore(name).clear();
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
          transaction.onerror = () => reject(transaction.error);
        };
      }),
  );

test("a cleared origin is noticed and told by name, with the file as the way back", async ({ page }) => {
  await demoKept(page);
  await page.goto("about:blank");
  await page.goto("/fitting.schema.json");
  await deleteDatabase(page);
  await page.goto("/");
  await expect(page.getByText(`“${demo}” is no longer in this browser.`, { exact: false })).toBeVisible(patiently);
  await expect(page.getByText("No file was saved from this browser.", { exact: false })).toBeVisible();
  await page.getByRole("button", { name: "Continue without" }).click();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  await visit(page, "fittings");
  await expect(page.getByText("is no longer in this browser", { exact: false })).toBeHidden();
});

for (const [how, lose] of [
  ["deleted", deleteDatabase],
  ["emptied", emptyStores],
] as const) {
  test(`a database ${how} under the page: what else was in it is told, with its file, and comes back`, async ({
    page,
  }) => {
    await demoKept(page);
    await visit(page, "fittings");
    const file = await downloaded(page, () => page.getByRole("button", { name: "Save it to a file" }).click());
    await page.getByRole("button", { name: "New fitting" }).click();
    const name = page.locator(".name-field input");
    await name.fill("Ruth");
    await saved(page);
    await lose(page);
    await name.fill("Ruth, blue coat");
    const lost = page.getByText(`“${demo}” is no longer in this browser.`, { exact: false });
    await expect(lost).toBeVisible(patiently);
    await expect(page.getByText(`Look for the file “${file.name}”`, { exact: false })).toBeVisible();
    await saved(page);
    await page.locator(".notices input[type=file]").setInputFiles(file.path);
    await expect(lost).toBeHidden(patiently);
    await visit(page, "fittings");
    await expect(tag(page, demo)).toBeVisible(patiently);
    await expect(tag(page, "Ruth, blue coat")).toBeVisible();
  });
}

/** Lays something in the store of the fittings behind the back of the tool. */
const layIn = (page: Page, key: string, value: unknown): Promise<void> =>
  page.evaluate(
    ([place, found]) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open("padwright");
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("fittings", "readwrite");
          transaction.objectStore("fittings").put(found, place);
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [key, value] as const,
  );

test("what a newer release kept can be looked at, and nothing of it changes", async ({ page }) => {
  await demoKept(page);
  await visit(page, "fittings");
  const newer = sealedRecord({
    id: "from-tomorrow",
    title: "Nadja",
    changedAt: "2027-01-01T00:00:00.000Z",
    archived: false,
    deletedAt: null,
    revision: 4,
    saveMark: "z",
    text: JSON.stringify({ ...sampleFile, id: "from-tomorrow", title: "Nadja", version: 2, tomorrow: "unheard of" }),
  });
  await layIn(page, "from-tomorrow", newer);
  await page.reload();
  await page.getByRole("button", { name: "View it" }).click();
  await expect(page.getByText("This fitting was saved by a newer release", { exact: false })).toBeVisible(patiently);
  await expect(page.getByRole("link", { name: /View only/ })).toBeVisible();
  const padding = page.getByRole("link", { name: /^Padding/ });
  await expect(padding).toContainText("0 of", patiently);
  await padding.click();
  await page.getByRole("button", { name: "The form is ready" }).click();
  await expect(firstLine(page)).toBeHidden();
  await visit(page, "fittings");
  const raw = await downloaded(page, () => page.getByRole("button", { name: "Save the raw text" }).click());
  expect(raw.text).toBe(newer.text);
  await tag(page, demo).getByRole("button", { name: "Open" }).click();
  // Opening leads to a page of its own once the fitting is there.
  await expect(page).not.toHaveURL(/#fittings/, patiently);
  await visit(page, "padding");
  await expect(firstLine(page)).toBeVisible(patiently);
});

test("what cannot be read is set aside on the shelf, raw, until the person erases it", async ({ page }) => {
  await demoKept(page);
  await visit(page, "fittings");
  await layIn(page, "somebody-else", { half: "of a record" });
  await page.reload();
  const found = page.getByRole("listitem").filter({ hasText: "A fitting that cannot be read." });
  const raw = await downloaded(page, () => found.getByRole("button", { name: "Save the raw text" }).click());
  expect(raw.text).toContain("of a record");
  await found.getByRole("button", { name: "Delete it" }).click();
  await expect(found).toBeHidden();
  await expect(page.getByText("A fitting, found", { exact: false })).toBeVisible();
  await expect(tag(page, demo)).toBeVisible();
});

test("a link that opens slowly never takes the place of what was typed meanwhile: both are kept when asked for", async ({
  page,
  browser,
  baseURL,
}) => {
  const address = await (await demoLink(page)).inputValue();

  const other = await (await browser.newContext(baseURL === undefined ? {} : { baseURL })).newPage();
  let arrive = () => {};
  const slow = new Promise<void>((resolve) => {
    arrive = resolve;
  });
  await other.route(/\/assets\/openShelf-[^/]*\.js$/, async (route) => {
    await slow;
    await route.continue();
  });
  await other.goto(address.replace("#fitting=", "#fitting%3D"));
  await other.getByRole("button", { name: "Start with bust, waist and hip" }).click();
  const bust = other.getByRole("textbox", { name: "Bust, all around" });
  await bust.fill("36");
  await bust.press("Enter");
  await other.getByRole("textbox", { name: "Waist, all around" }).fill("29 1/");
  arrive();
  await expect(other.getByText("A link brought a fitting while you were at work", { exact: false })).toBeVisible();
  await saved(other);
  await expect(other.getByRole("textbox", { name: "Waist, all around" })).toHaveValue("29 1/");
  await other.getByRole("button", { name: "Save it in the list" }).click();
  await expect(other.getByText("The fitting from the link is in the list", { exact: false })).toBeVisible();
  await visit(other, "fittings");
  await expect(other.locator(".tag:has(h2)")).toHaveCount(2);
  await expect(other.locator(".tag-on-table")).toContainText("left to measure");

  // A link that is opened later, in the same page: the same question.
  await other.evaluate((hash) => {
    window.location.hash = hash;
  }, new URL(address).hash);
  await other.getByRole("button", { name: "Open it" }).click();
  await expect(other.getByText("This fitting came in a link.", { exact: false })).toBeVisible();
  await expect(other.getByRole("heading", { name: "The plan", level: 1 })).toBeVisible();
  await visit(other, "fittings");
  await expect(other.getByText("left to measure", { exact: false })).toBeVisible();
  await other.context().close();
});
