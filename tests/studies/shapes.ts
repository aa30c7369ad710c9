import { scenarios } from "../support/trueScenarios";
import {
  leftOut,
  levelMisses,
  type Miss,
  missesBetween,
  pairName,
  planOfGiven,
  spreadOf,
  truePairs,
} from "../support/trueTrials";

/**
 * Plans laid on bodies and forms that nobody here drew (shared/real-sections.json), by how much was measured. Misses of
 * the padded form against the body, mm, p50/p95/worst.
 *
 *   npm run study:shapes
 */
const say = (line = "") => process.stdout.write(`${line}\n`);
const figures = (misses: readonly number[]): string => {
  const { p50, p95, worst } = spreadOf(misses);
  return `${p50.toFixed(1)}/${p95.toFixed(1)}/${worst.toFixed(1)}`;
};
const worstOf = (misses: readonly Miss[]): string => {
  const found = misses.toSorted((a, b) => Math.abs(b.girth) - Math.abs(a.girth))[0];
  return found === undefined ? "" : `${found.pair}, ${found.level}`;
};

say(`${truePairs.length} pairs of a body and a form; left out:`);
for (const { pair, why } of leftOut) say(`  ${pair}: ${why}`);
say();
say("| the tool is given | girth | front | girth between lines | pieces | worst girth at |");
say("|---|---|---|---|---|---|");
for (const { title, given } of scenarios) {
  const plans = truePairs.map((pair) => ({ pair, plan: planOfGiven(given(pair)) }));
  const at = plans.flatMap(({ pair, plan }) => levelMisses(pair, plan));
  const between = plans.flatMap(({ pair, plan }) => missesBetween(pair, plan));
  const pieces = spreadOf(plans.map(({ plan }) => plan.pieces.length));
  say(
    `| ${title} | ${figures(at.map(({ girth }) => girth))} | ${figures(at.map(({ front }) => front))} | ${figures(between.map(({ girth }) => girth))} | ${pieces.p50}, ${pieces.worst} | ${worstOf(at)} |`,
  );
  if (process.argv.includes("--levels")) {
    for (const level of new Set([...at, ...between].map((miss) => miss.level))) {
      const of = [...at, ...between].filter((miss) => miss.level === level);
      say(`|   ${level} | ${figures(of.map(({ girth }) => girth))} | ${figures(of.map(({ front }) => front))} | | | |`);
    }
  }
  if (process.argv.includes("--pairs")) {
    for (const { pair, plan } of plans) {
      const misses = levelMisses(pair, plan);
      say(
        `  ${pairName(pair)}: ${misses.map(({ level, girth, front }) => `${level} ${girth.toFixed(1)} ${front.toFixed(1)}`).join("; ")}`,
      );
    }
  }
}
