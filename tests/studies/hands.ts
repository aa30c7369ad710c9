import { planOfText } from "../../src/command/planOfText";
import { planFitting } from "../../src/core/plan/planFitting";
import { handErrors } from "./handErrors";
import { fittingFileOf, people } from "../tools/people";
import { chance } from "../tools/peopleChance";
import { afterSeamShift } from "../tools/planChecker";
import {
  type FileLayer,
  type FilePiece,
  type FileReading,
  type FileRow,
  checkedLevelNames,
  type PlanFile,
  readingKeys,
} from "../tools/planCheckerFile";
import { bareOutline, type Outline } from "../tools/planCheckerOutline";
import { wholeReading } from "../tools/planCheckerTape";
import { readAtLevel } from "../tools/trueTape";
import { scenarios } from "../tools/trueScenarios";
import { pairName, planOfGiven, truePairs } from "../tools/trueTrials";
import { layerThickness, rowAt } from "../tools/planCheckerThickness";

/**
 * What becomes of plans in hands: an independent tape over every plan as drawn, and over the same pieces with edges that came out
 * otherwise, pinned a little off, cut a little short. Prints what plans are judged by, with the goal, and beside it what
 * the plans were before whose layers were contours of a hill (400 people, seeds from 1).
 *
 *   npm run study:hands -- [how many people] [first seed]
 */
const [count = "120", firstSeed = "1"] = process.argv.slice(2);
const leastHeight = 60;
const square = 40;
/** A girth so large that no layer meets itself around it. */
const once = 10_000;
const rounding = 0.15;
const say = (line = "") => process.stdout.write(`${line}\n`);

interface Studied {
  readonly name: string;
  readonly seed: number;
  readonly plan: PlanFile;
  readonly read: (pieces: readonly FilePiece[]) => readonly FileReading[];
  readonly asDrawn: readonly FileReading[];
}

const crowd = people(Number(count), Number(firstSeed));
const ofPeople = crowd.flatMap((person): readonly Studied[] => {
  const result = planOfText(JSON.stringify(fittingFileOf(person)));
  if (!result.ok) return [];
  const plan: PlanFile = result.value;
  const read = shifted(plan, tapeOver(plan));
  return [{ name: `seed ${person.seed}`, seed: person.seed, plan, read, asDrawn: read(plan.pieces) }];
});

/** Bodies of the true sections on forms of the true sections, read on the lines with breadths: the outline is the true one. */
const ofSections = truePairs.map((pair, i): Studied => {
  const given = scenarios.find(({ id }) => id === "linesAndBreadths")?.given(pair);
  if (given === undefined) throw new Error("no such scenario");
  const plan = planOfGiven(given);
  const read = (pieces: readonly FilePiece[]) =>
    checkedLevelNames.map((level): FileReading => {
      const laid = readAtLevel({ ...plan, pieces }, pair.form, level, pair.body.levels[level].depthBelowNape);
      return { girthMm: laid.girth, frontArcMm: laid.front, backArcMm: laid.back };
    });
  return { name: pairName(pair), seed: i + 1, plan, read, asDrawn: read(plan.pieces) };
});

const before: { readonly [title: string]: { readonly figures: string; readonly goal: string } } = {
  "every edge comes out half as wide": { figures: "27.2 / 182", goal: "<= 3" },
  "half as wide again": { figures: "28.6 / 133", goal: "<= 3" },
  "edges left square": { figures: "70.6 / 469", goal: "<= 5" },
  "edges 25 mm wide": { figures: "29.9 / 228", goal: "<= 8" },
  "all pinned 6 mm lower": { figures: "8.5 / 63.1", goal: "<= 1" },
  "each piece within 6 mm of its place": { figures: "4.1 / 21.6", goal: "<= 1" },
  "each edge cut 3 mm short": { figures: "6.0 / 24.5", goal: "<= 2.5" },
  "paper: as drawn against the body": { figures: "1.1 / 3.1", goal: "<= 3 / <= 6" },
  "pieces a plan: median, p90, most": { figures: "12, 16, 21", goal: "<= 5, -, <= 9" },
  "pieces under 60 mm tall": { figures: "856 of 4602", goal: "0" },
  "layers without 40 x 40 mm at full": { figures: "2708 of 4602", goal: "0" },
  "time of a plan: median / p95, ms": { figures: "2.9 / 9.1", goal: "<= 5 / <= 20" },
};

say(`${ofPeople.length} plans of ${crowd.length} made-up people, seeds from ${firstSeed}`);
told(ofPeople);
const times = sorted(crowd.map((person) => quickest(() => planFitting(person))));
row("time of a plan: median / p95, ms", `${at(times, 0.5).toFixed(1)} / ${at(times, 0.95).toFixed(1)}`);
say();
say(`${ofSections.length} plans of bodies on forms of true sections, read on the lines with breadths`);
told(ofSections);

/** What is read and counted of plans, beside the goals. */
function told(studied: readonly Studied[]): void {
  say();
  say(`${"readings move by, mm: p95 / worst".padEnd(40)}${"now".padEnd(38)}${"before".padEnd(16)}goal`);
  for (const { name: title, does } of handErrors) {
    spreadOfMoves(
      title,
      studied.flatMap(({ name, seed, plan, read, asDrawn }) =>
        read(does(plan.pieces, chance(seed))).flatMap((reading, i) =>
          readingKeys.map((key) => ({ name, value: Math.abs(reading[key] - (asDrawn[i] as FileReading)[key]) })),
        ),
      ),
    );
  }
  spreadOfMoves("paper: as drawn against the body", studied.flatMap(missesOf));
  const counts = sorted(studied.map(({ plan }) => new Set(plan.pieces.map(({ pair, id }) => pair ?? id)).size));
  row("pieces a plan: median, p90, most", [0.5, 0.9, 1].map((share) => at(counts, share)).join(", "));
  const shapes = sorted(studied.map(({ plan }) => plan.pieces.flatMap(({ layers }) => layers).length));
  row("shapes to cut: median, most", [0.5, 1].map((share) => at(shapes, share)).join(", "));
  const layers = studied.flatMap(({ plan }) =>
    plan.pieces.flatMap((piece) => piece.layers.map((layer) => ({ piece, layer }))),
  );
  const low = layers.filter(({ layer }) => heightOf(layer) < leastHeight - rounding).length;
  row("pieces under 60 mm tall", `${low} of ${layers.length} layers`);
  const full = layers.filter(({ layer }) => holdsSquare(layer)).length;
  row("layers without 40 x 40 mm at full", `${layers.length - full} of ${layers.length}`);
}

/** The outlines are drawn once for all readings of a plan, with points some three millimeters apart. */
function tapeOver({ levels }: PlanFile): Studied["read"] {
  const outlines = levels.map(({ form }): Outline => {
    const outline = bareOutline(form);
    return { ...outline, points: outline.points.filter((_, i) => i % 3 === 0) };
  });
  return (pieces) => levels.map((level, i) => wholeReading(level, pieces, outlines[i] as Outline));
}

/** Readings with the side seams re-marked as the plan says. */
function shifted(plan: PlanFile, read: Studied["read"]): Studied["read"] {
  return (pieces) =>
    read(pieces).map((reading, i) =>
      afterSeamShift(plan, (plan.levels[i] as PlanFile["levels"][number]).name, reading),
    );
}

function missesOf({ name, plan, asDrawn }: Studied) {
  return plan.levels.flatMap((level, i) =>
    readingKeys
      .filter((key) => !plan.shortfalls.some((s) => s.level === level.name && `${s.what}Mm` === key))
      .map((key) => ({ name, value: Math.abs((asDrawn[i] as FileReading)[key] - level.body[key]) })),
  );
}

function spreadOfMoves(title: string, moves: readonly { readonly name: string; readonly value: number }[]): void {
  const values = sorted(moves.map(({ value }) => value));
  const worst = moves.reduce((most, move) => (move.value > most.value ? move : most));
  row(title, `${at(values, 0.95).toFixed(1)} / ${worst.value.toFixed(1)} (${worst.name})`);
}

function row(title: string, now: string): void {
  const { figures = "", goal = "" } = before[title] ?? {};
  say(`${title.padEnd(40)}${now.padEnd(38)}${figures.padEnd(16)}${goal}`);
}

function sorted(values: readonly number[]): readonly number[] {
  return [...values].sort((p, q) => p - q);
}

function at(values: readonly number[], share: number): number {
  return values[Math.min(values.length - 1, Math.floor(share * values.length))] ?? 0;
}

/** The quickest of a few runs, warm: a machine that others use as well can only make it slower. */
function quickest(work: () => unknown): number {
  work();
  const runs = Array.from({ length: 5 }, () => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  });
  return Math.min(...runs);
}

function heightOf({ rows }: FileLayer): number {
  return (rows[rows.length - 1] as FileRow).depthBelowNapeMm - (rows[0] as FileRow).depthBelowNapeMm;
}

/** Whether somewhere on the layer a square of 40 mm lies at full thickness, in the middle or at either side. */
function holdsSquare(layer: FileLayer): boolean {
  const { rows, featherMm, wrap, thicknessMm } = layer;
  const [top, bottom] = [(rows[0] as FileRow).depthBelowNapeMm, (rows[rows.length - 1] as FileRow).depthBelowNapeMm];
  const thirds = [0, 0.5, 1];
  for (let from = top + featherMm; from + square <= bottom - featherMm + rounding; from += 2) {
    if (wrap) return true;
    const depths = thirds.map((share) => from + share * square);
    const across = depths.flatMap((depth) => rowAt(rows, depth) ?? []);
    const start = Math.max(...across.map(({ startMm }) => startMm));
    const end = Math.min(...across.map(({ endMm }) => endMm));
    const thickness = depths.map((depth) => layerThickness(layer, depth, once, "in-the-plane"));
    const isFull = (left: number) =>
      thickness.every((at) =>
        thirds.every((share) => at(left + share * square) >= thicknessMm * (1 - rounding / Math.max(1, featherMm))),
      );
    if ([(start + end - square) / 2, start + featherMm, end - featherMm - square].some(isFull)) return true;
  }
  return false;
}
