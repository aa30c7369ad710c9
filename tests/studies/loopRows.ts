import { mm, ratio } from "../../src/core/units";
import { drawRoom, type JobWalk, type Padded, type Shortcuts, walkJob } from "../tools/jobWalk";
import { people } from "../tools/people";
import { chance } from "../tools/peopleChance";
import { scenarios } from "../tools/trueScenarios";
import { type TruePair, truePairs } from "../tools/trueTrials";
import type { TrueShape } from "../tools/trueShapes";
import type { Measurements } from "../../src/core/body/measurements";

/** A row of the study: whose jobs they are, and how they are done. */
export interface LoopRow {
  readonly title: string;
  readonly everybody: "all-arcs" | "left-and-right" | "real";
  readonly clumsy: number;
  readonly shortcuts: Shortcuts;
}

const usual = { everybody: "all-arcs", clumsy: 1, shortcuts: {} } as const;

export const loopRows: readonly LoopRow[] = [
  { ...usual, title: "with trial, form read on the lines" },
  { ...usual, title: "without trial", shortcuts: { trial: false } },
  { ...usual, title: "form never read bare", shortcuts: { lines: false } },
  { ...usual, title: "left and right apart", everybody: "left-and-right" },
  { ...usual, title: "hands twice as bad", clumsy: 2 },
  { ...usual, title: "real sections", everybody: "real" },
  ...[4, 10, 20, 30, 40].map((mostReadings) => ({
    ...usual,
    title: `at most ${mostReadings} readings over the padding`,
    shortcuts: { mostReadings },
  })),
];

export function walkOf({ everybody, clumsy, shortcuts }: LoopRow, job: number): JobWalk {
  const crowd = everybody === "real" ? realPairs() : madeUp(everybody, job);
  const padded = crowd[job % crowd.length];
  if (padded === undefined) throw new Error("nobody to pad for");
  return walkJob(padded, drawRoom(chance(90_000 + job), clumsy), shortcuts);
}

const madeUp = (care: string, job: number): readonly Padded[] =>
  people(12 * (job + 1) + 60).filter((one) => one.formKind === "measured" && one.care === care);

/** Every body on every form of the true shapes: heights known, the form known at its own levels, batting of 6 mm. */
const realPairs = (): readonly Padded[] =>
  truePairs.map((pair): Padded => {
    const given = scenarios.find(({ id }) => id === "ownLevels")?.given(pair);
    return {
      body: given?.body as unknown as Measurements,
      form: given?.form as unknown as Measurements,
      batting: { name: "batting", layerThickness: mm(6), relativeDeviation: ratio(0.3) },
      trueForm: (depth) => ({ support: supportsAt(pair, depth) }),
    };
  });

const directions = 72;

function supportsAt({ form }: TruePair, depth: number): readonly number[] {
  const { ring, seams }: ReturnType<TrueShape["sectionAt"]> = form.sectionAt(depth);
  const seam = (seams[0] + seams[1]) / 2;
  return Array.from({ length: directions }, (_, i) => {
    const [c, s] = [Math.cos((2 * Math.PI * i) / directions), Math.sin((2 * Math.PI * i) / directions)];
    return Math.max(...ring.map(({ x, y }) => x * c + (y - seam) * s));
  });
}
