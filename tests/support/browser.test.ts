import { chmodSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { chromiumWithWindows, ensureBrowser, systemChromium } from "./browser";

let empty = "";
let folder = "";

beforeEach(() => {
  empty = mkdtempSync(join(tmpdir(), "no-browser-"));
  folder = mkdtempSync(join(tmpdir(), "browser-"));
  vi.stubEnv("CHROMIUM_PATH", "");
  vi.stubEnv("PATH", [empty, folder].join(delimiter));
});

afterEach(() => {
  vi.unstubAllEnvs();
  rmSync(empty, { recursive: true });
  rmSync(folder, { recursive: true });
});

function program(name: string, mode: number): string {
  const path = join(folder, name);
  writeFileSync(path, "");
  chmodSync(path, mode);
  return path;
}

test("finds a chromium of the system under any of its names, the one without windows first", () => {
  expect(systemChromium()).toBeUndefined();
  for (const name of ["chromium-browser", "chromium"]) {
    const path = program(name, 0o755);
    expect(systemChromium()).toBe(path);
    expect(chromiumWithWindows()).toBe(path);
  }
  const windowless = program("chromium-headless-shell", 0o755);
  expect(systemChromium()).toBe(windowless);
  expect(chromiumWithWindows()).toBe(join(folder, "chromium"));
});

test("takes no file for a browser that cannot be run", () => {
  program("chromium", 0o644);
  expect(systemChromium()).toBeUndefined();
});

test("the browser a person names comes first, and a wrong name is said plainly", () => {
  program("chromium", 0o755);
  vi.stubEnv("CHROMIUM_PATH", join(empty, "gone"));
  expect(systemChromium()).toBe(join(empty, "gone"));
  expect(() => ensureBrowser()).toThrow("correct CHROMIUM_PATH");
});
