import { type AboveReading, type BuildAbove, buildKinds } from "../../src/core/above/buildAbove";
import { buildsAbove } from "../../src/core/above/buildsAbove";
import { builtToTheTape } from "../tools/builtToTheTape";
import { peopleAbove } from "../tools/peopleAbove";

/** How near whole layers bring every reading above the bust to the person's, over 200 made-up people: `npm run study:above`. */
const built = peopleAbove(200).flatMap(({ body, form, batting }) =>
  buildsAbove(body, form, batting).map((build) => ({ build, layer: batting.layerThickness })),
);

console.log("| build | built, of 200 or 400 | most layers |\n|---|---|---|");
for (const kind of buildKinds) {
  const all = built.filter(({ build }) => build.kind === kind);
  const done = all.filter(({ build }) => isBuilt(build));
  const most = Math.max(0, ...done.map(({ build: { act } }) => (act.what === "layers" ? act.layers.length : 0)));
  console.log(`| ${kind} | ${done.length} of ${all.length} | ${most === 0 ? "" : most} |`);
}

console.log(
  "\n| reading | agrees after its build | miss there, middle/worst | stays short | by, middle/worst | form larger |",
);
console.log("|---|---|---|---|---|---|");
const readings = built.flatMap(({ build }) => (isBuilt(build) ? build.readings : []));
for (const name of new Set(readings.map(sideless))) {
  const all = readings.filter((reading) => sideless(reading) === name);
  const agree = all.filter(({ stays }) => stays === null).map(({ after, person }) => Math.abs(after - person));
  const short = all.flatMap(({ stays }) => (stays?.sense === "short" ? [stays.amount as number] : []));
  const larger = all.filter(({ stays }) => stays?.sense === "formLarger").length;
  console.log(
    `| ${name} | ${agree.length} of ${all.length} | ${middleAndWorst(agree)} | ${short.length} | ${middleAndWorst(short)} | ${larger} |`,
  );
}

console.log(
  "\n| built to the tape, layers really 0.6 to 1.4 times as thick | builds | that needed a turn | turns, most | off as planned, middle/worst | off at the end, middle/worst |",
);
console.log("|---|---|---|---|---|---|");
const toTheTape = peopleAbove(200).flatMap(builtToTheTape);
for (const kind of buildKinds) {
  const all = toTheTape.filter(({ planned }) => planned.kind === kind);
  if (all.length === 0) continue;
  const turned = all.filter(({ turns }) => turns.length > 0);
  const most = Math.max(0, ...turned.map(({ turns }) => turns.length));
  const [first, last] = [turned.flatMap(({ offFirst }) => offFirst), turned.flatMap(({ offLast }) => offLast)];
  console.log(
    `| ${kind} | ${all.length} | ${turned.length} | ${most} | ${middleAndWorst(first)} | ${middleAndWorst(last)} |`,
  );
}

function isBuilt({ act }: BuildAbove): boolean {
  return act.what === "layers" || act.what === "extend" || act.what === "markInward";
}

function sideless({ name }: AboveReading): string {
  return name.replace(/^(left|right)S/, "s");
}

function middleAndWorst(lengths: readonly number[]): string {
  const sorted = lengths.toSorted((a, b) => a - b);
  const [middle, worst] = [sorted[Math.floor(sorted.length / 2)], sorted.at(-1)];
  return middle === undefined || worst === undefined ? "" : `${middle.toFixed(1)}/${worst.toFixed(1)}`;
}
