import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, type Page, test } from "@playwright/test";
import { writeBundle } from "../src/app/share/fittingFile";
import { sampleFitting } from "../tests/app/storage/sampleFittings";

/** Large files at the page: it refuses or takes them, and goes on answering meanwhile. */
test.describe.configure({ timeout: 120_000 });

let folder = "";
test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "padwright-intake-"));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

interface Opened {
  /** From choosing the file to what is said of it. */
  readonly told: number;
  /** The longest time in which the page answered nothing. */
  readonly silent: number;
}

async function opened(page: Page, text: string, sentence: RegExp): Promise<Opened> {
  const path = join(folder, "chosen.json");
  writeFileSync(path, text);
  await page.goto("/#fittings");
  await expect(page.getByRole("button", { name: /^Save it|^Save all/ })).toBeVisible({ timeout: 30_000 });
  await page.evaluate((wanted) => {
    const times = { start: 0, told: 0, last: 0, silent: 0 };
    Object.assign(window, { times });
    const tick = (): void => {
      const now = performance.now();
      if (times.start > 0 && times.told === 0) times.silent = Math.max(times.silent, now - times.last);
      times.last = now;
      setTimeout(tick, 5);
    };
    tick();
    document.addEventListener("change", () => Object.assign(times, { start: performance.now() }), { capture: true });
    const isWanted = new RegExp(wanted);
    new MutationObserver(() => {
      if (times.start > 0 && times.told === 0 && isWanted.test(document.body.textContent ?? ""))
        times.told = performance.now();
    }).observe(document.body, { childList: true, subtree: true, characterData: true });
  }, sentence.source);
  await page.locator("input[type=file]").setInputFiles(path);
  await expect(page.getByRole("main").getByText(sentence).first()).toBeVisible({ timeout: 100_000 });
  const { start, told, silent } = await page.evaluate(
    () => Reflect.get(window, "times") as { readonly start: number; readonly told: number; readonly silent: number },
  );
  return { told: Math.round(told - start), silent: Math.round(silent) };
}

// The page froze for over a minute when the limits were held against what had been built from the text.
test("30 MB of ones are refused, and the page does not stand still", async ({ page }) => {
  const { told, silent } = await opened(page, `[${"1,".repeat(15_000_000)}1]`, /holds more than any file of this tool/);
  console.log(`30 MB of ones: refused after ${told} ms, the page silent for at most ${silent} ms`);
  // A second on a machine of its own; the bound leaves room for one that runs other tests as well.
  expect(told).toBeLessThan(4_000);
  expect(silent).toBeLessThan(1_000);
});

test("six hundred fittings of one file are taken, and the page does not stand still while it is read", async ({
  page,
}) => {
  const fittings = Array.from({ length: 600 }, (_, i) => ({ ...sampleFitting, title: `Person ${i}` }));
  const bundle = writeBundle(fittings, "2026-05-01T08:00:00.000Z");
  const { told, silent } = await opened(page, bundle, /Person 0: added\./);
  console.log(`600 fittings: taken after ${told} ms, the page silent for at most ${silent} ms`);
  expect(silent).toBeLessThan(3_000);
});
