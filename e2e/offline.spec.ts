import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, expect, type Page, test } from "@playwright/test";
import { layList } from "../src/app/offline/build/offlineFiles";
import { builtHarness } from "./savingHarness/builtHarness";
import { folderServer } from "./savingHarness/folderServer";
import { watchedContext } from "./support/watchedContext";

test.use({ serviceWorkers: "allow" });
const patiently = { timeout: 30_000 };

/** The tool with its server dead, with a new release, and with a server that hands out something else. */
const built = process.env.E2E_BUILT ?? "dist";
const folders: string[] = [];

test.afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

async function harness(): Promise<string> {
  const folder = await builtHarness();
  folders.push(folder);
  return folder;
}

/** The same build with another title on its page: a newer release. */
function newerRelease(folder: string, title: string): string {
  const newer = mkdtempSync(join(tmpdir(), "padwright-newer-"));
  folders.push(newer);
  cpSync(folder, newer, { recursive: true });
  const page = join(newer, "index.html");
  writeFileSync(page, readFileSync(page, "utf8").replace("</title>", ` ${title}</title>`));
  layList(newer);
  return newer;
}

const kept = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (!navigator.serviceWorker.controller) await new Promise((resolve) => setTimeout(resolve, 50));
  });
/** The page without screens from a server of its own, all of it kept for working offline. */
async function keptHarness(context: BrowserContext, folder: string) {
  const server = await folderServer(folder);
  const page = await context.newPage();
  await page.goto(server.address);
  await page.evaluate(() => window.harness.offline());
  await kept(page);
  return { server, page };
}

/** The same for the tool itself, as it was built. */
async function keptTool(context: BrowserContext) {
  const server = await folderServer(built);
  const page = await context.newPage();
  await page.goto(server.address);
  await kept(page);
  return { server, page };
}

const state = (page: Page): Promise<string> => page.evaluate(() => window.harness.offline().state().kind);
const release = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const text = await (await fetch("./index.html")).text();
    return /<title>.*? (one|two|three)<\/title>/.exec(text)?.[1] ?? "none";
  });

test("the tool opens with its server dead after one visit, asks nothing of anybody and breaks no policy", async ({
  context,
}) => {
  const server = await folderServer(built);
  const wrong = await watchedContext(context, server.address);
  const page = await context.newPage();
  await page.goto(server.address);
  await kept(page);
  await page.close();
  await server.stop();

  const later = await context.newPage();
  await later.goto(`${server.address}#demo`);
  await expect(later.getByRole("heading", { name: "The plan", level: 1 })).toBeVisible();
  for (const place of ["body", "form", "plan", "padding", "finishing", "print", "class", "3d", "fittings", ""]) {
    await later.goto(`${server.address}#${place}`);
    await expect(later.getByRole("heading", { level: 1 }).first()).toBeVisible();
  }
  const manifest = await later.evaluate(async () => {
    const address = document.querySelector<HTMLLinkElement>("link[rel=manifest]")?.href ?? "";
    const { icons } = (await (await fetch(address)).json()) as { icons: readonly { src: string; sizes: string }[] };
    const found = icons.map(async ({ src, sizes }) => `${sizes} ${(await fetch(new URL(src, address))).status}`);
    return Promise.all(found);
  });
  expect(manifest).toEqual(["192x192 200", "512x512 200", "512x512 200", "any 200"]);
  expect(wrong).toEqual([]);
});

/** Puts other bytes in the place of every kept file that matches, as a damaged disk does; says how many those are. */
const damage = (page: Page, pattern: string): Promise<number> =>
  page.evaluate(async (wanted) => {
    let count = 0;
    for (const name of await window.caches.keys()) {
      const cache = await window.caches.open(name);
      for (const request of await cache.keys()) {
        if (!new RegExp(wanted).test(new URL(request.url).pathname)) continue;
        const headers = { "content-type": (await cache.match(request))?.headers.get("content-type") ?? "" };
        await cache.put(request, new Response("}damaged(", { headers }));
        count += 1;
      }
    }
    return count;
  }, pattern);

test("kept files that were damaged are fetched anew, and the tool opens", async ({ context }) => {
  const { server, page } = await keptTool(context);
  expect(await damage(page, "(\\.js|\\.css|\\.html)$")).toBeGreaterThan(5);
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 }).first()).toBeVisible();
  await page.goto(`${server.address}#fittings`);
  await expect(page.getByText("Opens without a network.", { exact: true })).toBeVisible();
  await server.stop();

  await page.goto(`${server.address}#padding`);
  await page.reload();
  await expect(page.getByRole("heading", { level: 1 }).first()).toBeVisible();
});

test("a damaged part with the server dead is never handed out, and is asked for again", async ({ context }) => {
  const { server, page } = await keptTool(context);
  // The page asks its worker once whether everything is there; damage that is found then is mended at once.
  await page.goto(`${server.address}#fittings`);
  await expect(page.getByText("Opens without a network.", { exact: true })).toBeVisible();
  expect(await damage(page, "TurningPage.*\\.js$")).toBe(1);
  await page.close();
  await server.stop();

  const later = await context.newPage();
  const errors: string[] = [];
  later.on("pageerror", (error) => errors.push(String(error)));
  await later.goto(`${server.address}#turning`);
  const again = later.getByRole("button", { name: "Try again" });
  await expect(again).toBeVisible();
  await expect(later.getByRole("banner").getByRole("link", { name: /Fittings/ })).toBeVisible();
  expect(errors.filter((error) => error.includes("SyntaxError"))).toEqual([]);

  const revived = await folderServer(built, Number(new URL(server.address).port));
  await again.click();
  await expect(later.getByRole("heading", { level: 1 }).first()).toBeVisible();
  await expect(again).toBeHidden();
  await revived.stop();
});

test("the tool in two languages is kept side by side, and neither answers for the other", async ({ context }) => {
  const { server, page } = await keptTool(context);
  await page.goto(`${server.address}de/`);
  await expect(page.locator("html")).toHaveAttribute("lang", "de");
  // The German worker takes its page over from nobody: only then is all of it kept.
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.scriptURL ?? ""), patiently)
    .toBe(`${server.address}de/sw.js`);
  // The English worker gave way: that is no newer release.
  await expect(page.getByText("In einem anderen Tab")).toHaveCount(0);
  await server.stop();
  for (const [path, language] of [
    ["de/", "de"],
    ["", "en"],
    ["de/", "de"],
  ] as const) {
    await page.goto(`${server.address}${path}#plan`);
    await expect(page.locator("html")).toHaveAttribute("lang", language);
    await expect(page.getByRole("heading", { level: 1 }).first()).toBeVisible();
  }
});

test("every path in scope leads to the page, with the server dead", async ({ context }) => {
  const { server, page } = await keptTool(context);
  await server.stop();
  for (const path of ["plan", "a/deep/path", "a/deep/path/?x=1"]) {
    await page.goto(`${server.address}${path}#body`);
    await expect(page.getByRole("heading", { level: 1 }).first()).toBeVisible();
    expect(page.url()).toBe(`${server.address}#body`);
  }
});

test("ready is said only when everything is kept, and what was lost is kept again first", async ({ context }) => {
  const { server, page } = await keptHarness(context, await harness());
  await expect.poll(() => state(page), patiently).toBe("ready");
  const count = () =>
    page.evaluate(async () => {
      const [name] = await window.caches.keys();
      return (await (await window.caches.open(name ?? "")).keys()).length;
    });
  const all = await count();
  await page.evaluate(async () => {
    const [name] = await window.caches.keys();
    const cache = await window.caches.open(name ?? "");
    for (const request of await cache.keys()) if (request.url.endsWith(".js")) await cache.delete(request);
  });
  const lost = await count();
  expect(lost).toBeLessThan(all);
  await page.evaluate(() => window.harness.offline().state());
  await page.reload();
  await page.evaluate(() => window.harness.offline());
  await expect.poll(() => state(page), patiently).toBe("ready");
  expect(await count()).toBe(all);
  await server.stop();
});

test("a page that was never visited does not open with its server dead", async ({ page }) => {
  const server = await folderServer(built);
  await server.stop();
  await expect(page.goto(server.address)).rejects.toThrow(/ERR_CONNECTION_REFUSED/);
});

test("what was kept is there again with the server dead, and can go on", async ({ context }) => {
  const { server, page } = await keptHarness(context, await harness());
  const id = await page.evaluate(() => window.harness.openNew(80));
  await page.evaluate(() => window.harness.settledSaving());
  await page.close();
  await server.stop();

  const later = await context.newPage();
  await later.goto(server.address);
  expect(await later.evaluate((wanted) => window.harness.open(wanted), id)).toBe("open, writing");
  await later.evaluate(() => window.harness.keepWaist(81));
  expect(await later.evaluate(() => window.harness.settledSaving())).toContain('"saved"');
});

test("a newer release waits until it is asked for, and other tabs keep theirs and are told", async ({ context }) => {
  const one = newerRelease(await harness(), "one");
  const { server, page } = await keptHarness(context, one);
  await expect.poll(() => state(page), patiently).toBe("ready");
  const other = await context.newPage();
  await other.goto(server.address);
  await expect.poll(() => state(other), patiently).toBe("ready");

  server.serve(newerRelease(one, "two"));
  await page.evaluate(() => window.harness.offline().lookForRelease());
  await expect.poll(() => state(page), patiently).toBe("newReleaseWaits");
  await page.reload();
  expect(await release(page)).toBe("one");
  await expect.poll(() => state(page), patiently).toBe("newReleaseWaits");

  const loadedAnew = page.waitForEvent("load");
  await page.evaluate(() => window.harness.offline().takeNewRelease());
  await loadedAnew;
  await expect.poll(() => release(page), patiently).toBe("two");
  await expect.poll(() => state(other), patiently).toBe("newReleaseElsewhere");
  await server.stop();
});

test("files of two releases are never mixed, and a server that changes a file is not believed", async ({ context }) => {
  const one = newerRelease(await harness(), "one");
  const two = newerRelease(one, "two");
  // As half way through an upload: the new worker is there, the new page is not.
  cpSync(join(one, "index.html"), join(two, "index.html"));
  const { server, page } = await keptHarness(context, one);
  server.serve(two);
  await page.evaluate(() => window.harness.offline().lookForRelease());
  await page.waitForTimeout(1_000);
  expect(await state(page)).toBe("ready");
  expect(await release(page)).toBe("one");
  const caches = await page.evaluate(() => window.caches.keys());
  expect(caches).toHaveLength(1);
  await server.stop();
});

test("where the files cannot be kept the tool says so and works on", async ({ page }) => {
  const folder = newerRelease(await harness(), "one");
  writeFileSync(
    join(folder, "index.html"),
    `${readFileSync(join(folder, "index.html"), "utf8")}<!-- added on the way -->`,
  );
  const server = await folderServer(folder);
  await page.goto(server.address);
  await expect.poll(() => state(page), patiently).toBe("failed");
  await server.stop();
});
