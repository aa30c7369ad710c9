import { drawRoom, type JobWalk, type Shortcuts, walkJob } from "../support/jobWalk";
import { people } from "../support/people";
import { chance } from "../support/peopleChance";

/**
 * Whole jobs walked with the next step alone, for made-up people whose batting, form, hands and tape are not what the tool
 * takes them for, and how near they end.
 *
 *   npm run study:loop -- [how many jobs] [first job]
 */
const [count = "60", first = "0"] = process.argv.slice(2);
const say = (line = "") => process.stdout.write(`${line}\n`);
const crowd = people(3 * Number(count) + 300).filter(({ formKind }) => formKind === "measured");
const arcs = crowd.filter(({ care }) => care === "all-arcs");
const quarters = crowd.filter(({ care }) => care === "left-and-right");

interface Kind {
  readonly title: string;
  readonly everybody: typeof crowd;
  readonly clumsy: number;
  readonly shortcuts: Shortcuts;
}

const kinds: readonly Kind[] = [
  { title: "with trial, form read on the lines", everybody: arcs, clumsy: 1, shortcuts: {} },
  { title: "without trial", everybody: arcs, clumsy: 1, shortcuts: { trial: false } },
  { title: "form never read bare", everybody: arcs, clumsy: 1, shortcuts: { lines: false } },
  { title: "left and right apart", everybody: quarters, clumsy: 1, shortcuts: {} },
  { title: "hands twice as bad", everybody: arcs, clumsy: 2, shortcuts: {} },
];

say(
  "| job | within 6 mm | within 12 | p95 | worst | intervals hold | layer's holds | readings | steps | pieces | excused |",
);
say("|---|---|---|---|---|---|---|---|---|---|---|");
for (const { title, everybody, clumsy, shortcuts } of kinds) {
  const walks = Array.from({ length: Number(count) }, (_, i) => {
    const person = everybody[(Number(first) + i) % everybody.length];
    if (person === undefined) throw new Error("nobody to pad for");
    return walkJob(person, drawRoom(chance(90_000 + Number(first) + i), clumsy), shortcuts);
  });
  say(row(title, walks));
}

function row(title: string, walks: readonly JobWalk[]): string {
  const misses = walks.flatMap((walk) => walk.misses.map(({ miss }) => Math.abs(miss)));
  const excused = walks.reduce((sum, walk) => sum + walk.excused, 0);
  const middle = (of: (walk: JobWalk) => number) => `${at(walks.map(of), 0.5)}, ${at(walks.map(of), 1)}`;
  const cells = [
    title,
    percent(misses.map((miss) => miss <= 6)),
    percent(misses.map((miss) => miss <= 12)),
    at(misses, 0.95).toFixed(1),
    at(misses, 1).toFixed(1),
    percent(walks.flatMap(({ held }) => held)),
    percent(walks.map(({ heldLayer }) => heldLayer)),
    middle(({ readings }) => readings),
    middle(({ steps }) => steps.length),
    middle(({ pieces }) => pieces),
    percent([...misses.map(() => false), ...Array.from({ length: excused }, () => true)]),
  ];
  return `| ${cells.join(" | ")} |`;
}

function at(values: readonly number[], share: number): number {
  const sorted = values.toSorted((p, q) => p - q);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

function percent(values: readonly boolean[]): string {
  return `${((100 * values.filter(Boolean).length) / Math.max(1, values.length)).toFixed(1)} %`;
}
