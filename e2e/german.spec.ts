import { readFileSync } from "node:fs";
import { expect, type Page, test } from "@playwright/test";
import { expectReadable, rooms, viewSeen } from "./support/backRow";
import { pdfPages } from "./support/pdfText";
import { toolServer } from "../src/command/toolServer";
import { freePort } from "../tests/support/freePort";
import { rulesBroken } from "./support/rulesBroken";
import { heading, screens, typeGirths } from "./support/workroom";

/** The German build beside the English one: the same tool, the same saved fittings, other words. */

/** English words that are no German ones, wherever they would stand. */
const english =
  /\b(?:the|and|with|from|your|pieces?|measure[ds]?|layers?|of|cut|sewn?|steps?|next|fabric|seam|batting|is|to|for|sample)\b/i;

/** What stands on the page and what is said of its pictures, line by line, where it is still English. */
const stillEnglish = (page: Page): Promise<readonly string[]> =>
  page.evaluate((pattern) => {
    const pictures = [...document.querySelectorAll("title, desc")].map(({ textContent }) => textContent ?? "");
    const named = [...document.querySelectorAll("[aria-label]")].map(({ ariaLabel }) => ariaLabel ?? "");
    // biome-ignore lint/performance/useDomNodeTextContent: only what is seen counts
    const lines = [...document.body.innerText.split("\n"), ...pictures, ...named];
    // What a size chart is called stays as it was published.
    return lines.filter((line) => !line.includes("keine Norm: ") && new RegExp(pattern, "i").test(line));
  }, english.source);

/** Each page as it is arrived at: no word of English, nothing over the edge, and no rule of access broken. */
async function look(page: Page, name: string): Promise<void> {
  expect.soft(await stillEnglish(page), name).toEqual([]);
  for (const screen of screens.filter(({ width }) => width < 1900)) {
    await page.setViewportSize(screen);
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect.soft(over, `${name}, ${screen.width} wide`).toBeLessThanOrEqual(0);
  }
  // So tall that nothing lies under the bar at the foot, where it would be too small to press.
  await page.setViewportSize({ width: 390, height: 2000 });
  expect.soft(await rulesBroken(page), name).toEqual([]);
}

test("in German from Home to the first pin, in centimeters, on a phone", async ({ page }) => {
  test.slow();
  await page.setViewportSize(screens[0]);
  await page.goto("/de/");
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  await expect(page.getByText("Diese Übersetzung ist ein Entwurf")).toBeVisible();
  await page.getByRole("radio", { name: "Zentimeter" }).check({ force: true });
  await look(page, "Start");

  await page.getByRole("button", { name: "Mit Brust, Taille und Hüfte beginnen" }).click();
  for (const [name, text] of [
    ["Brustumfang", "91.5"],
    ["Taillenumfang", "78,5"],
    ["Hüftumfang", "99 cm"],
  ] as const) {
    const field = page.getByRole("textbox", { name });
    await field.fill(text);
    await field.press("Enter");
  }
  // A point that was typed is read as a comma.
  await expect(page.locator("button[data-measurement=bustGirth]")).toContainText("91,5 cm");
  await expect(page.getByText("Das genügt für einen Plan")).toBeVisible();
  await look(page, "Person");

  await page.goto("/de/#form");
  await expect(heading(page, "Die Büste")).toBeVisible();
  await look(page, "Büste");

  await page.goto("/de/#plan");
  await expect(heading(page, "Der Plan")).toBeVisible();
  await expect(page.getByText(/^\d+ Polster aus Vlies, \d+ Zuschnitte\. /)).toBeVisible();
  await look(page, "Plan");

  await page.goto("/de/#padding");
  const slab = page.locator(".stop-slab");
  for (let i = 0; i < 20; i += 1) {
    await page.waitForFunction(() => document.querySelector(".padding-page")?.ariaBusy === "false");
    const title = (await page.getByRole("heading", { level: 1 }).textContent()) ?? "";
    await look(page, title);
    const way = page.getByRole("button", { name: /^(?:Den Rest auslassen|Die Probe auslassen)$/ });
    const isPin = (await slab.count()) > 0 && ((await slab.textContent()) ?? "").trim() === "Aufgesteckt";
    await ((await way.count()) > 0 ? way : slab).first().click();
    if (isPin) break;
    await page.waitForFunction((before) => document.querySelector("h1")?.textContent !== before, title, {
      timeout: 20_000,
    });
  }
  await expect(page.getByRole("heading", { name: /^Die Linien nach außen übertragen/, level: 1 })).toBeVisible();
});

test("one link leads from either language to the other, on the same page and to the same fitting", async ({ page }) => {
  await typeGirths(page, ["36", "31", "39"]);
  await page.getByRole("textbox", { name: "Whose fitting this is" }).fill("Ilse");
  await page.keyboard.press("Tab");
  await page.goto("/#fittings");
  await expect(page.locator(".tag-on-table")).toContainText("Ilse");
  await page.getByRole("main").getByRole("link", { name: "Deutsch (Entwurf)" }).click();
  await expect(page).toHaveURL(/\/de\/#fittings$/);
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  await expect(page.locator(".tag-on-table")).toContainText("Ilse");
  await page.getByRole("main").getByRole("link", { name: "English" }).click();
  await expect(page).toHaveURL(/[^e]\/#fittings$/);
  await expect(page.locator(".tag-on-table")).toContainText("Ilse");
});

const classTitle = (page: Page) => page.getByRole("heading", { level: 1 });

/** Seen to fail on one English word at the foot, and on words in a column too long for it, which cut off what is below. */
for (const room of rooms)
  test(`the class view in German: every step and panel without an English word, read from the back row at ${room.width} × ${room.height}`, async ({
    page,
  }) => {
    test.slow();
    await page.setViewportSize(room);
    await page.goto("/de/#class");
    await expect(classTitle(page)).toHaveText("Die Büste vorbereiten.");
    // The second sample person: halves of their own, and the longest names.
    await page.keyboard.press("m");
    await expect(page.locator(".class-whose")).toContainText("Tess (Beispielperson)");
    const count = page.locator(".class-count");
    const steps = Number(/von (\d+)/.exec((await count.textContent()) ?? "")?.[1]);
    expect(steps).toBeGreaterThan(40);
    for (let step = 1; step <= steps; step += 1) {
      await expect(count).toContainText(`Schritt ${step} von`);
      const said = `${(await classTitle(page).textContent()) ?? ""} ${step}`;
      expect.soft(await stillEnglish(page), said).toEqual([]);
      expectReadable(await viewSeen(page), room, said);
      await page.keyboard.press("PageDown");
    }
    await expect(classTitle(page)).toHaveText("Das Ebenbild ist fertig.");
    await page.keyboard.press("Home");
    for (const [key, panel] of [
      ["k", "Tasten und Klicker"],
      ["s", "An diesem Kurstag"],
      ["n", "Notiz"],
      ["t", "Zum Mitnehmen für den Kurs"],
    ] as const) {
      await page.keyboard.press(key);
      await expect(page.getByRole("region", { name: panel })).toBeVisible();
      expect.soft(await stillEnglish(page), panel).toEqual([]);
      expect.soft(await rulesBroken(page), panel).toEqual([]);
      await page.keyboard.press("Escape");
    }
  });

/** Seen to fail where the server answered the English page alone, and where the address led the phone to that page. */
test("a phone moves the German class view from the German page", async ({ page, browser }) => {
  const server = await toolServer({ isShared: true, port: await freePort() });
  await page.goto(new URL("de/#class", server.local).href);
  await expect(classTitle(page)).toHaveText("Die Büste vorbereiten.");
  await page.getByRole("button", { name: "Fernbedienung" }).click();
  const panel = page.getByRole("region", { name: "Ein Handy als Fernbedienung" });
  const [network] = server.network;
  if (network === undefined) await expect(panel).toContainText("in keinem Netz");
  else {
    await expect(panel.locator(".class-address")).toHaveText(`${network}de/#remote`);
    const code = (await page.locator(".class-code").textContent()) ?? "";
    const phone = await browser.newPage({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
    await phone.goto(`${network}de/#remote`);
    await phone.getByRole("textbox", { name: "Der Code aus der Kursansicht" }).fill(code);
    expect.soft(await stillEnglish(phone)).toEqual([]);
    await phone.getByRole("button", { name: "Verbinden" }).click();
    await expect(phone.locator(".remote-act")).toHaveText("Die Büste vorbereiten.");
    await phone.getByRole("button", { name: "Nächster Schritt" }).click();
    await expect(classTitle(page)).toHaveText("Die Linien der Person auf der Büste anzeichnen.");
    await expect(panel).toBeHidden();
    for (const screen of [page, phone]) expect.soft(await stillEnglish(screen)).toEqual([]);
    expect(await phone.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    expect.soft(await rulesBroken(phone)).toEqual([]);
    await phone.close();
  }
  await server.close();
});

/** A sample person's fitting under a name of its own, opened in German. */
async function openSample(page: Page, file: string): Promise<void> {
  const sample = JSON.parse(readFileSync(`shared/demo/${file}.json`, "utf8")) as object;
  const buffer = Buffer.from(JSON.stringify({ ...sample, title: "Ilse" }));
  await page.goto("/de/#fittings");
  await page.locator('input[type="file"]').setInputFiles({ name: "ilse.json", mimeType: "application/json", buffer });
  await page
    .locator(".tag", { hasText: "Ilse" })
    .getByRole("button", { name: /^Öffnen/ })
    .click();
  await expect(heading(page, "Der Plan")).toBeVisible();
}

/** Seen to fail where the name of the batting was English, and on an English sentence planted on a part of the arm. */
test("patterns in German: the parts of an arm, of a cover and every layer say in German what they are, on pages and in a drawing", async ({
  page,
}) => {
  await openSample(page, "whole-job");
  await page.goto("/de/#print");
  const handedOut = async (button: string): Promise<Buffer> => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: button, exact: true }).click(),
    ]);
    return readFileSync(await download.path());
  };
  const svg = (await handedOut("Zeichnung (SVG)")).toString("utf8");
  const pages = (await pdfPages(await handedOut("Seiten zum Zusammenkleben, A4"))).flatMap(({ words }) =>
    words.map((each) => each.words),
  );
  const drawn = [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map(([, words]) => words ?? "");
  expect(drawn.length).toBeGreaterThan(60);
  expect(pages.length).toBeGreaterThan(100);
  for (const words of [drawn, pages]) {
    const whole = words.join(" ");
    for (const said of ["Gepolsterter linker Arm", "Schulterscheibe", "Bezug,", "mittleres Rückenteil rechts", "Vlies"])
      expect.soft(whole).toContain(said);
    expect(words.filter((line) => english.test(line))).toEqual([]);
  }
  await page.getByRole("button", { name: "Auf den Tisch projizieren" }).click();
  await expect(page.getByText(/^Teil 1 von \d+\./)).toBeVisible();
  expect(await stillEnglish(page)).toEqual([]);
});

/** Seen to fail on one English word among its heads. */
test("the session plan in German is one sheet of paper on both papers, with where to stop, and says nothing in English", async ({
  page,
}) => {
  await openSample(page, "first");
  await page.goto("/de/#print");
  await page.getByRole("checkbox", { name: /^Kursplan/ }).check();
  for (const other of ["Linien auf der Büste", "Das Polsterblatt", "Kleine Zuschneidezeichnungen"])
    await page.getByRole("checkbox", { name: new RegExp(`^${other}`) }).uncheck();
  await expect(page.locator(".session-rows tbody tr").nth(20)).toBeAttached();
  for (const format of ["Letter", "A4"] as const) {
    const printed = await pdfPages(await page.pdf({ format, printBackground: true }));
    expect(printed, format).toHaveLength(1);
    const [{ text, words }] = printed as [(typeof printed)[number]];
    expect(text).toContain("Kursplan für Ilse");
    expect(text.match(/Hier aufhören\./g)?.length).toBeGreaterThan(8);
    expect(words.filter(({ size }) => size < 9.9)).toEqual([]);
    expect(words.filter((each) => english.test(each.words))).toEqual([]);
  }
});
