import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";

type RunOnly = NonNullable<Parameters<AxeBuilder["options"]>[0]["runOnly"]>;

const everyTag = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];

/** The rules of access that a page, or the part of it named, breaks as it stands: all the rules, or only those named. */
export async function rulesBroken(
  page: Page,
  { part, only }: { readonly part?: string; readonly only?: readonly string[] } = {},
): Promise<readonly string[]> {
  // There are no frames here; without looking for any, a check takes half the time.
  const axe = new AxeBuilder({ page }).setLegacyMode(true);
  if (part !== undefined) axe.include(part);
  const runOnly: RunOnly = only === undefined ? { type: "tag", values: everyTag } : { type: "rule", values: [...only] };
  // What is in order is counted no further; that takes half of what is left.
  const { violations } = await axe.options({ runOnly, resultTypes: ["violations"] }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(" ")).join(", ")}`);
}
