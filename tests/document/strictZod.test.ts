import { readFileSync } from "node:fs";
import { afterEach, expect, test, vi } from "vitest";

const sample = readFileSync(new URL("../../shared/demo-fitting.json", import.meta.url), "utf8");
const original = globalThis.Function;

afterEach(() => {
  globalThis.Function = original;
});

/** Counts every function made out of text, as a page's policy would report it. */
function countedFunctions(): () => number {
  let made = 0;
  globalThis.Function = new Proxy(original, {
    construct: (target, texts) => {
      made += 1;
      return Reflect.construct(target, texts);
    },
  });
  return () => made;
}

test("reading a fitting makes no function out of text", async () => {
  vi.resetModules();
  const made = countedFunctions();
  const { readFittingText } = await import("../../src/document/readFitting");
  expect(readFittingText(sample).ok).toBe(true);
  expect(made()).toBe(0);
});

test("and the count would show it", () => {
  const made = countedFunctions();
  expect(new Function("return 7")()).toBe(7);
  expect(made()).toBe(1);
});
