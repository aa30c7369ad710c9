import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";

const everyTag = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];

/** The rules of access that a page, or the part of it named, breaks as it stands: all the rules, or only those named. */
export async function rulesBroken(
  page: Page,
  { part, only }: { readonly part?: string; readonly only?: readonly string[] } = {},
): Promise<readonly string[]> {
  // There are no frames here; without looking for any, a check takes half the time.
  const axe = new AxeBuilder({ page }).setLegacyMode(true);
  if (part !== undefined) axe.include(part);
  const { violations } = await (only === undefined ? axe.withTags(everyTag) : axe.withRules([...only])).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
}
