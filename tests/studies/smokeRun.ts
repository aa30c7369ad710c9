import { mkdirSync, writeFileSync } from "node:fs";
import type { SmokeBrowser } from "./smokeBrowser";
import { builtTool } from "./smokeBuild";
import { smokeStory } from "./smokeStory";

/**
 * Builds the tool, tells the smoke story in a browser and prints what was seen at each step. After a step that failed
 * the later ones, which build on it, are not tried; the picture of that moment is kept. `--pictures` keeps them all.
 */
export async function smokeRun(start: () => Promise<SmokeBrowser>): Promise<void> {
  const browser = await start();
  const tool = await builtTool().catch(async (problem: unknown) => {
    await browser.close();
    throw problem;
  });
  console.log(`The tool in ${browser.name}\n`);
  let told = 0;
  for (const { title, run } of smokeStory) {
    const begun = performance.now();
    const outcome = await run(browser, tool.server).then(
      (seen) => ({ went: "ok", seen }),
      (problem: unknown) => ({ went: "FAILED", seen: problem instanceof Error ? problem.message : String(problem) }),
    );
    const seconds = ((performance.now() - begun) / 1000).toFixed(1);
    console.log(`${outcome.went.padEnd(7)}${seconds.padStart(5)} s  ${title.padEnd(54)}${outcome.seen}`);
    told += outcome.went === "ok" ? 1 : 0;
    if (outcome.went !== "ok" || process.argv.includes("--pictures")) await keepPicture(browser, told);
    if (outcome.went !== "ok") break;
  }
  await browser.close();
  await tool.remove();
  console.log(`\n${told} of ${smokeStory.length} steps went as they should in ${browser.name}.`);
  process.exitCode = told === smokeStory.length ? 0 : 1;
}

async function keepPicture(browser: SmokeBrowser, step: number): Promise<void> {
  const path = `screenshots/smoke-${browser.name.split(/[ /]/)[0]?.toLowerCase()}-${step}.png`;
  mkdirSync("screenshots", { recursive: true });
  const picture = await browser.picture().catch(() => null);
  if (picture === null) return;
  writeFileSync(path, picture);
  console.log(`       picture: ${path}`);
}
