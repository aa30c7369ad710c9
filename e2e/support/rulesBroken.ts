import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "@playwright/test";
import type axe from "axe-core";

const everyTag = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/**
 * The rules of access that a page, or the part of it named, breaks as it stands: all the rules, or only those named. The
 * checker is laid into a page once and stays there as long as the page does.
 */
export async function rulesBroken(
  page: Page,
  { part, only }: { readonly part?: string; readonly only?: readonly string[] } = {},
): Promise<readonly string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(source);
  const runOnly: axe.RunOnly =
    only === undefined ? { type: "tag", values: everyTag } : { type: "rule", values: [...only] };
  // What is in order is counted no further; that takes half of what is left.
  const options: axe.RunOptions = { runOnly, resultTypes: ["violations"] };
  return page.evaluate(
    async ([place, wanted]) => {
      // Half way from one colour to another, nothing can be said of it.
      for (const animation of document.getAnimations()) animation.finish();
      const checker = (window as unknown as { readonly axe: typeof axe }).axe;
      const { violations } = await checker.run(place ?? document, wanted);
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
    },
    [part ?? null, options] as const,
  );
}
