import type { Measurements } from "../../src/core/body/measurements";
import { levelNames, type LevelName } from "../../src/core/body/vocabulary";
import type { Reread } from "../../src/core/calibration/evidence";
import type { PlanInput } from "../../src/core/plan/basis";
import type { Plan, TapeReading } from "../../src/core/plan/plan";
import { planFitting } from "../../src/core/plan/planFitting";
import { type PaddingSoFar, replanFitting } from "../../src/core/plan/replanFitting";
import { mm, ratio } from "../../src/core/units";
import { people } from "../support/people";

/**
 * How long planning takes: the first plan and a plan made anew halfway through the work, for made-up people and for the
 * largest fitting. Every plan is made several times, warm, and its quickest time counts, because a machine that others use as well can
 * only make it slower. Milliseconds of the wall clock, and of the processor (which sees no one else's work, but does see
 * this program's own compiler and collector).
 *
 *   npm run bench:plan -- [how many people] [how often each]
 */
const [count = "200", times = "5"] = process.argv.slice(2);
const budget = 16;

interface Timed {
  readonly wall: number;
  readonly processor: number;
}

/** All readings there can be, left and right apart, and thin batting for a large difference: nothing the screens can ask for takes longer. */
const largest: PlanInput = {
  body: {
    ...quarters("bust", [342, 326, 258, 244]),
    ...quarters("underbust", [276, 262, 236, 224]),
    ...quarters("waist", [282, 270, 246, 232]),
    ...quarters("highHip", [304, 290, 290, 276]),
    ...quarters("fullHip", [316, 300, 322, 306]),
    leftShoulderToApex: mm(318),
    rightShoulderToApex: mm(306),
    apexToApex: mm(212),
    napeToWaist: mm(418),
    waistToHighHip: mm(104),
    waistToFullHip: mm(212),
    bustBreadth: mm(352),
    waistBreadth: mm(338),
    fullHipBreadth: mm(418),
  },
  form: {
    ...quarters("bust", [236, 236, 209, 209]),
    ...quarters("underbust", [198, 198, 182, 182]),
    ...quarters("waist", [178, 178, 168, 168]),
    ...quarters("highHip", [214, 214, 220, 220]),
    ...quarters("fullHip", [236, 236, 250, 250]),
    napeToWaist: mm(410),
    waistToHighHip: mm(100),
    waistToFullHip: mm(205),
  },
  batting: { name: "thin wadding", layerThickness: mm(3), spread: ratio(0.35) },
};

const withFinish: PlanInput = {
  ...largest,
  finishingBatting: { name: "fine wadding", layerThickness: mm(2), spread: ratio(0.35) },
};

const crowd = people(Number(count));
console.log(`Planning in ms, each the quickest of ${times}, warm. Budget: ${budget} for the largest fitting.\n`);
console.log(
  `${"".padEnd(52)}${["p50", "p95", "max"].map((head) => `wall ${head}`.padStart(10)).join("")}   processor p50, p95, max`,
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
const plan = planFitting(largest);
const soFar = halfway(largest, plan);
const again = Number(count) / 4;
const title = `the largest fitting (${plan.pieces.length} pieces)`;
row(
  `${title}, first plan`,
  Array.from({ length: again }, () => timed(() => planFitting(largest))),
);
row(
  `${title}, anew halfway`,
  Array.from({ length: again }, () => timed(() => replanFitting(largest, soFar))),
);
row(
  `the same with a second batting, first plan`,
  Array.from({ length: again }, () => timed(() => planFitting(withFinish))),
);

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

function row(title: string, all: readonly Timed[]): void {
  const quantiles = (values: readonly number[]) => {
    const sorted = [...values].sort((a, b) => a - b);
    return [0.5, 0.95, 1].map((share) => sorted[Math.ceil(share * sorted.length) - 1] as number);
  };
  const [wall, processor] = [quantiles(all.map((one) => one.wall)), quantiles(all.map((one) => one.processor))];
  const cells = (values: readonly number[]) => values.map((value) => value.toFixed(1).padStart(10)).join("");
  console.log(`${title.padEnd(52)}${cells(wall)}${cells(processor)}`);
}

/** Half of the pieces pinned, and at every level girth and arcs read on the bare form and now, a little off what was expected. */
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
    cut: pieces.slice(pinned.length),
    readingError: 5,
  };
}

/** One level's quarters (left front, right front, left back, right back) with the arcs and the girth they sum to. */
function quarters(
  level: LevelName,
  [leftFront, rightFront, leftBack, rightBack]: readonly [number, number, number, number],
): Measurements {
  return {
    [`${level}LeftFrontArc`]: mm(leftFront),
    [`${level}RightFrontArc`]: mm(rightFront),
    [`${level}LeftBackArc`]: mm(leftBack),
    [`${level}RightBackArc`]: mm(rightBack),
    [`${level}FrontArc`]: mm(leftFront + rightFront),
    [`${level}BackArc`]: mm(leftBack + rightBack),
    [`${level}Girth`]: mm(leftFront + rightFront + leftBack + rightBack),
  };
}
