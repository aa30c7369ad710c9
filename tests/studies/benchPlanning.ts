import { levelNames, type LevelName } from "../../src/core/body/vocabulary";
import type { Reread } from "../../src/core/calibration/evidence";
import type { PlanInput } from "../../src/core/plan/basis";
import type { Plan, TapeReading } from "../../src/core/plan/plan";
import { planFitting } from "../../src/core/plan/planFitting";
import type { PaddingSoFar } from "../../src/core/plan/paddingSoFar";
import { replanFitting } from "../../src/core/plan/replanFitting";
import { mm, ratio } from "../../src/core/units";
import { people } from "../tools/people";
import { largestFitting } from "./benchLargest";
import { machine } from "./benchMachine";

/**
 * How long planning takes: the first plan and a plan made anew halfway through the work, for made-up people and for the
 * largest fitting. Every plan is made several times, warm, and its quickest time counts, because a machine that others use as well can
 * only make it slower. Milliseconds of the wall clock, and of the processor (which sees no one else's work, but does see
 * this program's own compiler and collector). `benchPlan` builds and starts it.
 */
const [count = "200", times = "5"] = process.argv.slice(2);
const budget = 16;

interface Timed {
  readonly wall: number;
  readonly processor: number;
}

const withFinish: PlanInput = {
  ...largestFitting,
  finishingBatting: { name: "fine wadding", layerThickness: mm(2), relativeDeviation: ratio(0.35) },
};

const crowd = people(Number(count));
console.log(`Planning in ms, each the quickest of ${times}, warm, on ${machine()}.\n`);
console.log(
  `${"".padEnd(64)}${["p50", "p95", "max"].map((head) => `wall ${head}`.padStart(10)).join("")}   processor p50, p95, max`,
);
row(
  `first plan, ${count} made-up people`,
  crowd.map((person) => timed(() => planFitting(person))),
);
row(
  `plan made anew halfway, the same people`,
  crowd.map((person) => {
    const soFar = halfway(person, planFitting(person));
    return timed(() => replanFitting(person, soFar));
  }),
);
const again = Math.ceil(Number(count) / 4);
const goals = [
  ...largest("the largest fitting", largestFitting),
  ...largest("the largest with a second batting", withFinish),
];
console.log(
  `\nGoal: the largest fitting within ${budget} ms, 95 in 100. ${goals.map(([title, value]) => `${title}: ${value.toFixed(1)} ms, ${value <= budget ? "met" : "not met"}`).join(". ")}.`,
);

/** Times the first plan of a fitting and a plan made anew halfway; gives the wall clock's 95 in 100 of each. */
function largest(name: string, input: PlanInput): readonly (readonly [title: string, value: number])[] {
  const plan = planFitting(input);
  const soFar = halfway(input, plan);
  const title = `${name} (${plan.pieces.length} pieces)`;
  const many = (work: () => unknown) => Array.from({ length: again }, () => timed(work));
  return [
    [
      `${name}, first`,
      row(
        `${title}, first plan`,
        many(() => planFitting(input)),
      ),
    ],
    [
      `${name}, anew`,
      row(
        `${title}, anew halfway`,
        many(() => replanFitting(input, soFar)),
      ),
    ],
  ];
}

function timed(work: () => unknown): Timed {
  work();
  const runs = Array.from({ length: Number(times) }, (): Timed => {
    const [begun, used] = [performance.now(), process.cpuUsage()];
    work();
    const { user, system } = process.cpuUsage(used);
    return { wall: performance.now() - begun, processor: (user + system) / 1000 };
  });
  return {
    wall: Math.min(...runs.map(({ wall }) => wall)),
    processor: Math.min(...runs.map(({ processor }) => processor)),
  };
}

/** Prints one line and gives the wall clock's 95 in 100. */
function row(title: string, all: readonly Timed[]): number {
  const quantiles = (values: readonly number[]) => {
    const sorted = [...values].sort((a, b) => a - b);
    return [0.5, 0.95, 1].map((share) => sorted[Math.ceil(share * sorted.length) - 1] as number);
  };
  const [wall, processor] = [quantiles(all.map((one) => one.wall)), quantiles(all.map((one) => one.processor))];
  const cells = (values: readonly number[]) => values.map((value) => value.toFixed(1).padStart(10)).join("");
  console.log(`${title.padEnd(64)}${cells(wall)}${cells(processor)}`);
  return wall[1] as number;
}

/**
 * Half of the pieces pinned, and at every level girth and arcs read on the bare form and now, a little off what was expected.
 * None of the rest is cut yet: pieces that are cut might be left as they are, and nothing would be shaped.
 */
function halfway(_: PlanInput, { pieces, bareForm }: Plan): PaddingSoFar {
  const pinned = pieces.slice(0, Math.ceil(pieces.length / 2));
  const last = pinned[pinned.length - 1];
  const readings = (read: (level: LevelName) => TapeReading, off: number): Reread["readings"] =>
    Object.assign(
      {},
      ...levelNames.map((level, i) => ({
        [`${level}FrontArc`]: mm(read(level).frontArc + off * (1 + i)),
        [`${level}BackArc`]: mm(read(level).backArc - off * (2 - i)),
        [`${level}Girth`]: mm(read(level).girth + off),
      })),
    );
  return {
    pinned,
    rereads: [
      { pinned: [], readings: readings((level) => bareForm[level], 1) },
      { pinned, readings: readings((level) => last?.readingsAfter[level] ?? bareForm[level], 2) },
    ],
    cut: [],
    readingError: 5,
  };
}
