import { writeFileSync } from "node:fs";
import { earlierFigures } from "./trueEarlier";
import { exponentCheck } from "./trueExponents";
import { gainsFile, gainsPath, greedyOrder } from "../tools/trueGains";
import { pairPlan, shareWithin, widthsNeeded } from "../tools/trueMayMiss";
import { type ScenarioId, scenarios } from "../tools/trueScenarios";
import { leftOut, type Miss, missesBetween, pairName, spreadOf, truePairs } from "../tools/trueTrials";

/**
 * Plans laid on bodies and forms that nobody here drew (shared/real-sections.json), by how much was measured. Misses of
 * the padded form against the body in mm, p50/p95/worst, today's beside those before heights, lines and curves were read;
 * what the plans say of themselves; how far the assumed exponents hold on shapes they were not chosen on; and what each
 * question gains.
 *
 *   npm run study:shapes [-- --levels] [-- --pairs] [-- --write]
 *
 * `--write` looks for the order of questions anew and writes shared/measuring-gains.json.
 */
const has = (flag: string) => process.argv.includes(flag);
const say = (line = "") => process.stdout.write(`${line}\n`);
const figures = (misses: readonly number[]): string => {
  const { p50, p95, worst } = spreadOf(misses);
  return `${p50.toFixed(1)}/${p95.toFixed(1)}/${worst.toFixed(1)}`;
};
const worstOf = (misses: readonly Miss[]): string => {
  const found = misses.toSorted((a, b) => Math.abs(b.girth) - Math.abs(a.girth))[0];
  return found === undefined ? "" : `${found.pair}, ${found.level}`;
};
const percent = (share: number) => `${(100 * share).toFixed(0)} %`;

const laid = scenarios.map((scenario) => ({
  scenario,
  plans: truePairs.map((pair) => pairPlan(pair, scenario.given(pair))),
}));

function tableOfPairs(): void {
  say(`${truePairs.length} pairs of a body and a form; left out:`);
  for (const { pair, why } of leftOut) say(`  ${pair}: ${why}`);
  say();
}

function tableOfMisses(): void {
  say(
    "| the tool is given | girth | before | front | before | girth between lines | before | pieces | worst girth at |",
  );
  say("|---|---|---|---|---|---|---|---|---|");
  for (const { scenario, plans } of laid) {
    const at = plans.flatMap(({ misses }) => misses);
    const between = plans.flatMap(({ pair, plan }) => missesBetween(pair, plan));
    const pieces = spreadOf(plans.map(({ plan }) => plan.pieces.length));
    const { girth, front, girthBetween } = earlierFigures[scenario.id];
    say(
      `| ${scenario.title} | ${figures(at.map((miss) => miss.girth))} | ${girth} | ${figures(at.map((miss) => miss.front))} | ${front} | ${figures(between.map((miss) => miss.girth))} | ${girthBetween} | ${pieces.p50}, ${pieces.worst} | ${worstOf(at)} |`,
    );
    if (has("--levels")) levelRows([...at, ...between]);
    if (has("--pairs")) {
      for (const { pair, plan, misses } of plans) {
        say(
          `  ${pairName(pair)} (${plan.mayMissMm}): ${misses.map(({ level, girth: miss, front: inFront }) => `${level} ${miss.toFixed(1)} ${inFront.toFixed(1)}`).join("; ")}`,
        );
      }
    }
  }
  say();
}

function levelRows(misses: readonly Miss[]): void {
  for (const level of new Set(misses.map((miss) => miss.level))) {
    const of = misses.filter((miss) => miss.level === level);
    say(
      `|   ${level} | ${figures(of.map(({ girth }) => girth))} | | ${figures(of.map(({ front }) => front))} | | | | | |`,
    );
  }
}

function tableOfMayMiss(): void {
  say(
    "What a plan says it may miss by: the share of girths and fronts within it, and the factor that would hold nine in ten",
  );
  say("(of all pairs, and the widest and narrowest without one body and one form).");
  for (const { scenario, plans } of laid) {
    const said = plans.map(({ plan }) => plan.mayMissMm);
    const { all, narrowest, widest } = widthsNeeded(plans);
    say(
      `| ${scenario.title} | says ${Math.min(...said)} to ${Math.max(...said)} mm | ${percent(shareWithin(plans))} | ${all.toFixed(2)} (${narrowest.toFixed(2)} to ${widest.toFixed(2)}) |`,
    );
  }
  const { all, narrowest, widest } = widthsNeeded(laid.flatMap(({ plans }) => plans));
  const share = shareWithin(laid.flatMap(({ plans }) => plans));
  say(`| all | | ${percent(share)} | ${all.toFixed(2)} (${narrowest.toFixed(2)} to ${widest.toFixed(2)}) |`);
  say();
}

const checked: readonly (readonly ScenarioId[])[] = [["lines"], ["linesAndBreadths"], ["linesBreadthsDepths"]];

function tableOfExponents(): void {
  say(
    "Exponents (one for every half, one for the bust in front); girth and front, p50/p95/worst: as assumed; the best choice",
  );
  say("for all pairs; and for each pair the choice that was best of those that share neither its body nor its form.");
  for (const ids of checked) {
    const of = scenarios.filter(({ id }) => ids.includes(id));
    const { assumed, bestOfAll, leftOut: strangers, best, chosen } = exponentCheck(of.map(({ given }) => given));
    const both = (misses: readonly Miss[]) =>
      `${figures(misses.map(({ girth }) => girth))} and ${figures(misses.map(({ front }) => front))}`;
    say(`| ${of.map(({ title }) => title).join("; ")} | ${both(assumed)} | ${both(bestOfAll)} | ${both(strangers)} |`);
    const named = ({ all, bustFront }: typeof best) => `${all} and ${bustFront}`;
    say(`  best ${named(best)}; chosen ${chosen.map(({ choice, times }) => `${named(choice)} (${times})`).join(", ")}`);
  }
  say();
}

function tableOfGains(): void {
  const file = gainsFile(has("--write") ? greedyOrder() : null);
  say(`Nine in ten girths and fronts lie within ${file.startMm} mm after the first three; then, most gained first:`);
  for (const { question, gainMm, leftMm } of file.order) say(`| ${question} | gains ${gainMm} | leaves ${leftMm} |`);
  for (const { question, gainMm, leftMm } of file.between)
    say(`| ${question}, between bust and underbust | gains ${gainMm} | leaves ${leftMm} |`);
  if (!has("--write")) return;
  writeFileSync(gainsPath, `${JSON.stringify(file, null, 2)}\n`);
  say(`written: ${gainsPath}`);
}

tableOfPairs();
tableOfMisses();
tableOfMayMiss();
if (!has("--quick")) tableOfExponents();
if (!has("--quick")) tableOfGains();
