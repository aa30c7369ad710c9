import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, type Page, test } from "@playwright/test";
import { killedRounds } from "../tests/studies/savingKill";
import { builtHarness } from "./savingHarness/builtHarness";
import { type FolderServer, folderServer } from "./savingHarness/folderServer";

const patiently = { timeout: 30_000 };

/** The real storage in a real browser, looked at from a page without screens. */
let folder = "";
let server: FolderServer;

test.beforeAll(async () => {
  folder = await builtHarness();
  server = await folderServer(folder);
});

test.afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

async function opened(page: Page): Promise<Page> {
  await page.goto(server.address);
  await page.waitForFunction(() => "harness" in window);
  return page;
}

const newFitting = async (page: Page, waist: number): Promise<string> => {
  const id = await page.evaluate((girth) => window.harness.openNew(girth), waist);
  await expect.poll(() => saving(page), patiently).toContain('"saved"');
  return id;
};
const saving = (page: Page): Promise<string> => page.evaluate(() => window.harness.settledSaving());
const access = (page: Page): Promise<string> => page.evaluate(() => window.harness.current().state().access);
const lastWaist = (page: Page): Promise<unknown> => page.evaluate(() => window.harness.lastWaist());
const keptWaist = (page: Page, id: string): Promise<unknown> =>
  page.evaluate(async (wanted) => {
    const loaded = await window.harness.storage.load(wanted);
    return loaded.kind === "loaded" ? loaded.fitting.body.waistGirth : loaded.kind;
  }, id);
const keep = async (page: Page, waist: number): Promise<string> => {
  await page.evaluate((girth) => window.harness.keepWaist(girth), waist);
  return saving(page);
};

test("asks for strict durability and says saved only after the transaction is complete", async ({ page }) => {
  await page.addInitScript(() => {
    const events: string[] = [];
    Object.assign(window, { events });
    const original = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...args) {
      const transaction = original.apply(this, args);
      if (transaction.mode === "readwrite") {
        events.push(`asked ${transaction.durability}`);
        transaction.addEventListener("complete", () => events.push("complete"));
      }
      return transaction;
    };
    Object.assign(window, { savedWaist: () => events.push("said saved") });
  });
  await opened(page);
  await newFitting(page, 80);
  expect(await page.evaluate(() => Reflect.get(window, "events"))).toEqual(["asked strict", "complete", "said saved"]);
});

test("keeps a fitting and its steps to undo across a reload", async ({ page }) => {
  await opened(page);
  const id = await newFitting(page, 80);
  await keep(page, 81);
  await page.reload();
  expect(await page.evaluate((wanted) => window.harness.open(wanted), id)).toBe("open, writing");
  expect(await lastWaist(page)).toBe(81);
  const steps = await page.evaluate(async (wanted) => {
    const loaded = await window.harness.storage.load(wanted);
    return loaded.kind === "loaded" ? loaded.history.past.map(({ body }) => body.waistGirth) : loaded.kind;
  }, id);
  expect(steps).toEqual([80]);
});

test("two tabs: one writes, the other follows, and the write lock goes over when asked or when a tab closes", async ({
  page,
  context,
}) => {
  await opened(page);
  const id = await newFitting(page, 80);
  const second = await opened(await context.newPage());
  expect(await second.evaluate((wanted) => window.harness.open(wanted), id)).toBe("open, elsewhere");
  await keep(page, 83);
  await expect.poll(() => lastWaist(second), patiently).toBe(83);
  expect(await keep(second, 99)).toContain("changedElsewhere");
  expect(await keptWaist(second, id)).toBe(83);

  await second.evaluate(() => window.harness.takeOver());
  await expect.poll(() => access(second), patiently).toBe("writing");
  expect(await access(page)).toBe("elsewhere");
  expect(await keep(second, 84)).toContain('"saved"');
  await expect.poll(() => lastWaist(page), patiently).toBe(84);

  await second.close();
  await expect.poll(() => access(page), patiently).toBe("writing");
  expect(await keep(page, 85)).toContain('"saved"');
});

test("a tab that has stopped answering loses its write lock, and nothing is merged", async ({ page, context }) => {
  await opened(page);
  const id = await newFitting(page, 80);
  const second = await opened(await context.newPage());
  await second.evaluate((wanted) => window.harness.open(wanted), id);
  // A busy tab hears nothing and answers nothing, as one that the system has put to sleep.
  const busy = page.evaluate(() => {
    const end = performance.now() + 6_000;
    while (performance.now() < end);
  });
  await second.evaluate(() => window.harness.takeOver());
  await expect.poll(() => access(second), patiently).toBe("writing");
  expect(await keep(second, 90)).toContain('"saved"');
  await busy;
  await expect.poll(() => access(page), patiently).toBe("elsewhere");
  await expect.poll(() => lastWaist(page), patiently).toBe(90);
});

test("a full disk is told, and what was not saved is saved once there is room", async ({ page }) => {
  await opened(page);
  const devtools = await page.context().newCDPSession(page);
  const origin = new URL(server.address).origin;
  await devtools.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
  const id = await page.evaluate(() => window.harness.openNew(80));
  expect(await saving(page)).toContain("noRoom");
  expect(await keptWaist(page, id)).toBe("missing");
  await devtools.send("Storage.overrideQuotaForOrigin", { origin });
  await expect.poll(() => saving(page), patiently).toContain('"saved"');
  expect(await keptWaist(page, id)).toBe(80);
});

test("a browser that lets pages keep nothing is told, and nothing is called saved", async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, "indexedDB", {
      get: () => {
        throw new DOMException("The user has denied it.", "SecurityError");
      },
    });
  });
  await opened(page);
  await page.evaluate(() => window.harness.openNew(80));
  expect(await saving(page)).toContain('"blocked"');
  expect((await page.evaluate(() => window.harness.storage.list())).kind).toBe("notRead");
});

test("an old tab lets a newer release have the database, is told, and says not saved", async ({ page, context }) => {
  await opened(page);
  await newFitting(page, 80);
  const newer = await opened(await context.newPage());
  await newer.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open("padwright", 1_000);
        opening.onsuccess = () => resolve();
        opening.onerror = () => reject(opening.error);
      }),
  );
  await expect.poll(() => page.evaluate(() => window.harness.told), patiently).toEqual(["outdated"]);
  expect(await keep(page, 81)).toContain("newerApp");
});

test("data that was cleared under an open fitting is there again with the next change, and that is told", async ({
  page,
}) => {
  await opened(page);
  const id = await newFitting(page, 80);
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("Storage.clearDataForOrigin", { origin: new URL(server.address).origin, storageTypes: "all" });
  await expect.poll(() => keptWaist(page, id), patiently).toBe("missing");
  expect(await keep(page, 81)).toContain('"saved"');
  expect(await keptWaist(page, id)).toBe(81);
});

test("damage in the database is quarantined raw, shown, and not overwritten by looking at it", async ({ page }) => {
  await opened(page);
  const id = await newFitting(page, 80);
  await page.evaluate(
    (key) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open("padwright");
        opening.onsuccess = () => {
          const transaction = opening.result.transaction("fittings", "readwrite");
          transaction.objectStore("fittings").put({ half: "a record", bytes: new Uint8Array(3) }, key);
          transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    id,
  );
  const loaded = await page.evaluate((wanted) => window.harness.storage.load(wanted), id);
  expect(loaded).toMatchObject({ kind: "unreadable", quarantined: true });
  const items = await page.evaluate(() => window.harness.storage.quarantined());
  expect(items).toMatchObject({ items: [{ source: "fitting", rawText: expect.stringContaining("half") }] });
  expect(await page.evaluate(() => window.harness.storage.list())).toMatchObject({
    fittings: [{ kind: "unreadable" }],
  });
});

test("a browser killed in a stream of saves has the last value it called saved", async () => {
  const userFolder = mkdtempSync(join(tmpdir(), "padwright-killed-"));
  const rounds = await killedRounds({ address: server.address, userFolder }, [700, 1_300]);
  rmSync(userFolder, { recursive: true, force: true });
  expect(rounds).toMatchObject([{ isKept: true }, { isKept: true }]);
});
