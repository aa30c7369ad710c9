import { chance } from "../support/peopleChance";
import { type LoopRun, loopRun } from "../support/loopRun";
import { people } from "../support/people";

/**
 * Carries out plans for made-up people whose batting, tape and form are not what the tool takes them for, and prints how near
 * they end. `npm run study:loop [-- COUNT]`.
 */
const count = Number(process.argv[2] ?? 500);
const everybody = people(3 * count).filter(
  (person) => person.formKind === "measured" && (person.care === "all-arcs" || person.care === "left-and-right"),
);
/** The 3 to 6 mm are a spread (1), or the error that nine readings in ten stay within (1.645). */
const errorSpreads = Number(process.argv[3] ?? 1.645);
const runs: LoopRun[] = [];
const started = performance.now();
for (let i = 0; runs.length < count; i++) {
  const luck = chance(90_000 + i);
  const conditions = {
    worth: 2 ** luck.between(-1, 1),
    squeeze: luck.between(0, 0.25),
    onset: luck.pick(["secondLayer", "eighthLayer"] as const),
    readingError: luck.between(3, 6) / errorSpreads,
  };
  const someone = everybody[i % everybody.length];
  if (someone === undefined) throw new Error("Nobody to pad for.");
  runs.push(loopRun(someone, conditions, luck));
}
const quantile = (values: readonly number[], share: number) =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(share * values.length))] as number;
const percent = (values: readonly boolean[]) =>
  `${((100 * values.filter(Boolean).length) / values.length).toFixed(1)} %`;
const worst = runs.map((run) => Math.max(0, ...run.misses.map(({ miss }) => Math.abs(miss))));
const all = runs.flatMap((run) => run.misses.map(({ miss }) => Math.abs(miss)));
console.log(
  `people ${runs.length} (${new Set(everybody).size} bodies), ${((performance.now() - started) / 1000).toFixed(0)} s`,
);
console.log(
  `every girth and arc within 6 mm: ${percent(worst.map((miss) => miss <= 6))}; within 12 mm: ${percent(worst.map((miss) => miss <= 12))}; worst ${Math.max(...worst).toFixed(1)} mm`,
);
console.log(
  `single readings: median ${quantile(all, 0.5).toFixed(1)}, 95 % within ${quantile(all, 0.95).toFixed(1)}, within 6 mm ${percent(all.map((miss) => miss <= 6))}`,
);
console.log(
  `nine-in-ten interval of a layer's worth holds it: after the trial ${percent(runs.map((run) => run.heldAfterTrial))}, at the end ${percent(runs.map((run) => run.heldAtEnd))}`,
);
console.log(`nine-in-ten interval of a level's reading holds it: ${percent(runs.flatMap((run) => run.heldReadings))}`);
console.log(
  `pieces: median ${quantile(
    runs.map((run) => run.pieces),
    0.5,
  )}, most ${Math.max(...runs.map((run) => run.pieces))}; worth believed over true: ${quantile(
    runs.map((run) => run.worthRatio),
    0.05,
  ).toFixed(2)} to ${quantile(
    runs.map((run) => run.worthRatio),
    0.95,
  ).toFixed(2)}`,
);
const byReading = new Map<string, number[]>();
for (const run of runs)
  for (const { level, what, miss } of run.misses)
    byReading.set(`${level} ${what}`, [...(byReading.get(`${level} ${what}`) ?? []), miss]);
for (const [name, misses] of byReading)
  console.log(
    name.padEnd(20),
    "mean",
    (misses.reduce((a, b) => a + b, 0) / misses.length).toFixed(2).padStart(6),
    " 5 %",
    quantile(misses, 0.05).toFixed(1).padStart(6),
    " 95 %",
    quantile(misses, 0.95).toFixed(1).padStart(6),
  );
