import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { planOfText } from "../../src/command/planOfText";
import { fittingFileOf, type Person, people } from "../tools/people";
import {
  afterSeamShift,
  bodyAgreementMm,
  checkRebuilt,
  type RebuiltLevel,
  rebuildReadings,
} from "../tools/planChecker";
import { type FileReading, type PlanFile, readingKeys } from "../tools/planCheckerFile";
import type { Finding } from "../tools/planCheckerFinding";
import { statedRules, type TapeRules } from "../tools/planCheckerTape";

/**
 * Plans many made-up people through the same door as the command (text of a fitting file in, plan file out), checks
 * every plan from outside and prints what was found.
 *
 *   npm run study:people -- [how many] [first seed] [folder for the fittings with findings]
 */
const [count = "200", firstSeed = "1", folder] = process.argv.slice(2);

interface Planned {
  readonly person: Person;
  readonly plan: PlanFile;
  readonly rebuilt: readonly RebuiltLevel[];
}

/** Every how-manieth plan is also read in the other ways the text allows, which takes as long as checking it. */
const alsoReadOtherwise = 5;

const say = (line = "") => process.stdout.write(`${line}\n`);

const crowd = people(Number(count), Number(firstSeed));
const fittings = crowd.map((person) => JSON.stringify(fittingFileOf(person)));
const begun = performance.now();
const results = fittings.map((text) => planOfText(text));
const planningSeconds = (performance.now() - begun) / 1000;

const checkingBegun = performance.now();
const planned: readonly Planned[] = results.flatMap((result, i) =>
  result.ok ? [rebuilt(crowd[i] as Person, result.value)] : [],
);
const refused = results.flatMap((result, i) =>
  result.ok ? [] : [{ seed: crowd[i]?.seed, why: result.problem.join(" ") }],
);

const findings = planned.map(({ plan, rebuilt }) => checkRebuilt(plan, rebuilt));
const checkingSeconds = (performance.now() - checkingBegun) / 1000;

say(
  `${crowd.length} people, seeds ${firstSeed} to ${Number(firstSeed) + crowd.length - 1}: ${planned.length} planned, ${refused.length} refused`,
);
for (const { seed, why } of refused) say(`  seed ${seed}: ${why}`);
say(`planning ${planningSeconds.toFixed(1)} s in all, checking ${checkingSeconds.toFixed(1)} s`);
say();
tableOfReadings();
say();
tableOfReadingsOfTheText();
say();
tableOfPieces();
say();
tableOfFindings();
if (folder !== undefined) keepWorst(folder);

function rebuilt(person: Person, plan: PlanFile): Planned {
  return { person, plan, rebuilt: rebuildReadings(plan) };
}

/** How far apart two readings of every level of every plan are, as median, 95th in a hundred, and worst with its seed. */
function row(title: string, differences: readonly { readonly seed: number; readonly difference: number }[]): void {
  const sorted = [...differences].sort((p, q) => p.difference - q.difference);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  const figure = (one: { readonly difference: number } | undefined) => (one?.difference ?? 0).toFixed(2).padStart(8);
  const worst = sorted[sorted.length - 1];
  say(
    `${title.padEnd(58)}${figure(at(0.5))}${figure(at(0.95))}${figure(worst)}  (seed ${worst?.seed}; ${sorted.length} readings)`,
  );
}

function differencesOf(pick: (one: Planned) => readonly number[], among = planned) {
  return among.flatMap((one) =>
    pick(one).map((difference) => ({ seed: one.person.seed, difference: Math.abs(difference) })),
  );
}

function finalReading({ whilePinning }: RebuiltLevel): FileReading {
  return whilePinning[whilePinning.length - 1] as FileReading;
}

function tableOfReadings(): void {
  say(`${"differences in mm".padEnd(58)}${"median".padStart(8)}${"p95".padStart(8)}${"worst".padStart(8)}`);
  for (const key of readingKeys) {
    row(
      `checker against predicted, ${key}`,
      differencesOf(({ plan, rebuilt }) =>
        rebuilt.map((one) => {
          const { level } = one;
          return afterSeamShift(plan, level.name, finalReading(one))[key] - level.predicted[key];
        }),
      ),
    );
  }
  for (const key of readingKeys) {
    row(
      `predicted against body, no shortfall listed, ${key}`,
      differencesOf(({ plan }) =>
        plan.levels
          .filter((level) => !plan.shortfalls.some((s) => s.level === level.name && `${s.what}Mm` === key))
          .map((level) => level.predicted[key] - level.body[key]),
      ),
    );
  }
}

/** Where the text can be read in more than one way: how much the final readings change if it is read the other way. */
function tableOfReadingsOfTheText(): void {
  const some = planned.filter((_, i) => i % alsoReadOtherwise === 0);
  const other = (rules: Partial<TapeRules>) =>
    differencesOf(({ plan, rebuilt }) => {
      const changed = rebuildReadings(plan, { ...statedRules, ...rules });
      return rebuilt.flatMap((level, i) => {
        const [one, two] = [finalReading(level), finalReading(changed[i] as RebuiltLevel)];
        return readingKeys.map((key) => one[key] - two[key]);
      });
    }, some);
  say("the same plans read the other way the text allows");
  row("seam at the hull's widest point, not carried straight out", other({ seam: "widest-point" }));
  row("distance to the outline along the row only", other({ distance: "along-the-row" }));
  row(
    "predicted taken before the seam shift",
    differencesOf(({ plan }) => plan.seamShifts.map((shift) => 2 * shift.perSideMm)),
  );
}

function tableOfPieces(): void {
  const numbers = planned.map(({ plan }) => plan.pieces.length).sort((p, q) => p - q);
  const at = (share: number) => numbers[Math.min(numbers.length - 1, Math.floor(share * numbers.length))];
  say(`pieces a plan: median ${at(0.5)}, p95 ${at(0.95)}, most ${at(1)} (left and right cup pads counted apart)`);
  const layers = planned.flatMap(({ plan }) => plan.pieces).flatMap((piece) => piece.layers);
  const narrowest = Math.min(...layers.flatMap(({ rows }) => rows.map((r) => r.endMm - r.startMm)));
  const heights = layers.map(
    ({ rows }) => (rows[rows.length - 1]?.depthBelowNapeMm ?? 0) - (rows[0]?.depthBelowNapeMm ?? 0),
  );
  say(`narrowest row ${narrowest.toFixed(1)} mm; lowest layer ${Math.min(...heights).toFixed(1)} mm tall`);
  const shortfalls = planned.flatMap(({ plan }) => plan.shortfalls.filter((s) => s.what !== "length"));
  const free = planned.filter(({ plan }) => plan.shortfalls.every((s) => s.what === "length")).length;
  say(
    `plans with no shortfall at a level: ${free} of ${planned.length}; shortfalls at levels: ${shortfalls.length}; seam shifts: ${planned.flatMap(({ plan }) => plan.seamShifts).length}`,
  );
}

function tableOfFindings(): void {
  const all = findings.flatMap((list, i) => list.map((finding) => ({ finding, seed: planned[i]?.person.seed })));
  say(
    `findings of the checker: ${all.length} in ${findings.filter((list) => list.length > 0).length} plans (law 2 allows ${bodyAgreementMm} mm)`,
  );
  const rules = [...new Set(all.map(({ finding }) => finding.rule))];
  for (const rule of rules) {
    const some = all.filter(({ finding }) => finding.rule === rule);
    say(`  ${rule}: ${some.length}, in ${new Set(some.map(({ seed }) => seed)).size} plans`);
    for (const { finding, seed } of some.slice(0, 6)) say(`    seed ${seed}: ${JSON.stringify(finding)}`);
  }
}

/** Every fitting with a finding, with its plan and findings, for whoever looks into it. */
function keepWorst(into: string): void {
  mkdirSync(into, { recursive: true });
  planned.forEach(({ person, plan }, i) => {
    const found: readonly Finding[] = findings[i] ?? [];
    if (found.length === 0) return;
    const file = {
      seed: person.seed,
      care: person.care,
      formKind: person.formKind,
      fitting: fittingFileOf(person),
      findings: found,
      plan,
    };
    writeFileSync(join(into, `seed-${person.seed}.json`), `${JSON.stringify(file, null, 2)}\n`);
  });
}
