import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { firstLoad, firstLoadBudgetBytes } from "./firstLoad";

let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "first-load-"));
  mkdirSync(join(folder, "assets"));
});

afterEach(() => rmSync(folder, { recursive: true }));

/** Text that gzip cannot shrink much: the digits of a simple generator of pseudo-random numbers. */
function noise(characters: number): string {
  let state = 1;
  let text = "";
  while (text.length < characters) {
    state = (state * 48271) % 2147483647;
    text += state.toString(36);
  }
  return text.slice(0, characters);
}

function write(files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) writeFileSync(join(folder, path), text);
}

test("weighs the page's scripts and preloaded modules, each once, and nothing that comes later", () => {
  write({
    "index.html": `<script type="module" crossorigin src="./assets/main.js"></script>
      <link rel="modulepreload" crossorigin href="./assets/shared.js">
      <link rel="modulepreload" crossorigin href="./assets/main.js">
      <link rel="stylesheet" crossorigin href="./assets/main.css">`,
    "assets/main.js": noise(2000),
    "assets/shared.js": noise(1000),
    "assets/later.js": noise(9000),
    "assets/main.css": noise(9000),
  });
  const { scripts, gzipBytes } = firstLoad(folder);
  expect(scripts.map(({ path }) => path)).toEqual(["./assets/main.js", "./assets/shared.js"]);
  expect(gzipBytes).toBeGreaterThan(1500);
  expect(gzipBytes).toBeLessThan(3100);
});

test("a first load over the budget is seen as such", () => {
  write({
    "index.html": '<script type="module" src="./assets/main.js"></script>',
    "assets/main.js": noise(2 * firstLoadBudgetBytes),
  });
  expect(firstLoad(folder).gzipBytes).toBeGreaterThan(firstLoadBudgetBytes);
});

test("a page without a script is no light page but a mistake", () => {
  write({ "index.html": "<p>Nothing</p>" });
  expect(() => firstLoad(folder)).toThrow("names no script");
});

test("a script that was not built is a mistake", () => {
  write({ "index.html": '<script src="./assets/gone.js"></script>' });
  expect(() => firstLoad(folder)).toThrow("gone.js");
});
