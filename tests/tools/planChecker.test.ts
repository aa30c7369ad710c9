import ellipe from "@stdlib/math-base-special-ellipe";
import { describe, expect, test } from "vitest";
import { checkPlan, rebuildReadings } from "./planChecker";
import type {
  CheckedLevelName,
  FileForm,
  FileLayer,
  FilePiece,
  FileReading,
  FileRow,
  PlanFile,
} from "./planCheckerFile";
import { checkedLevelNames } from "./planCheckerFile";
import type { FindingRule } from "./planCheckerFinding";
import { bareOutline } from "./planCheckerOutline";
import { layerThickness, pieceThickness, rowAt } from "./planCheckerThickness";
import { statedRules } from "./planCheckerTape";

/**
 * The checker on plans made by hand, small enough to be worked out on paper, and on the same plans with one planted
 * mistake each, which it must find. Half perimeters of ellipses come from complete elliptic integrals of the second
 * kind (numerics package), not from the checker's own chain of points.
 */
const halfEllipse = (breadth: number, depth: number) =>
  breadth >= depth ? 2 * breadth * ellipe(1 - (depth / breadth) ** 2) : 2 * depth * ellipe(1 - (breadth / depth) ** 2);

const halfBreadth = 130;
const frontDepth = 110;
const backDepth = 90;
const front = halfEllipse(halfBreadth, frontDepth);
const back = halfEllipse(halfBreadth, backDepth);
const bare: FileReading = { girthMm: front + back, frontArcMm: front, backArcMm: back };
const form: FileForm = {
  ...bare,
  halfBreadthMm: halfBreadth,
  frontDepthMm: frontDepth,
  backDepthMm: backDepth,
  exponent: 2,
};
const depths: { readonly [level in CheckedLevelName]: number } = {
  bust: 230,
  underbust: 290,
  waist: 360,
  highHip: 460,
  fullHip: 570,
};

const plus = (reading: FileReading, atFront: number, atBack: number): FileReading => ({
  girthMm: reading.girthMm + atFront + atBack,
  frontArcMm: reading.frontArcMm + atFront,
  backArcMm: reading.backArcMm + atBack,
});

type Gains = { readonly [level in CheckedLevelName]?: readonly [front: number, back: number] };
const readingsWith = (gains: Gains) =>
  Object.fromEntries(
    checkedLevelNames.map((level) => [level, plus(bare, ...(gains[level] ?? [0, 0]))]),
  ) as FilePiece["readingsAfter"];

function planOf(pieces: readonly FilePiece[], final: Gains): PlanFile {
  const readings = readingsWith(final);
  return {
    version: 2,
    levels: checkedLevelNames.map((name) => ({
      name,
      depthBelowNapeMm: depths[name],
      body: readings[name],
      form,
      predicted: readings[name],
    })),
    pieces,
    shortfalls: [],
    seamShifts: [],
    shapesToCut: pieces.reduce((sum, { layers }) => sum + layers.length, 0),
    battingAreaMm2: 1e7,
  };
}

const rowsBetween = (top: number, bottom: number, start: number, end: number): readonly FileRow[] => {
  const count = Math.ceil((bottom - top) / 20);
  return Array.from({ length: count + 1 }, (_, i) => ({
    depthBelowNapeMm: top + ((bottom - top) * i) / count,
    startMm: start,
    endMm: end,
  }));
};

const halfGirth = bare.girthMm / 2;
const thickness = 8;
const lengths = { girth: bare.girthMm, frontArc: front };
const roundGain: readonly [number, number] = [Math.PI * thickness, Math.PI * thickness];

/** A round over the waist alone: its feather is over well before the waist and ends before underbust and high hip. */
const turn: FileLayer = {
  batting: "building",
  thicknessMm: thickness,
  featherMm: 10,
  wrap: true,
  rows: rowsBetween(310, 420, -halfGirth, halfGirth),
};
const round: FilePiece = {
  order: 1,
  id: "wrap-around-waist-1",
  name: "waist wrap",
  kind: "wrap",
  anchor: "centerFront",
  layers: [turn],
  cut: [{}],
  readingsAfter: readingsWith({ waist: roundGain }),
};
const withLayer = (change: Partial<FileLayer>): FilePiece => ({ ...round, layers: [{ ...turn, ...change }] });
const roundPlan = planOf([round], { waist: roundGain });
const rulesFound = (plan: PlanFile): ReadonlySet<FindingRule> =>
  new Set(checkPlan(plan).map((finding) => finding.rule));

describe("plans made by hand", () => {
  test("a bare form with no pieces has nothing to find", () => {
    expect(checkPlan(planOf([], {}))).toEqual([]);
  });

  test("one round of thickness t adds 2 pi t, pi t of it in front (Steiner, arithmetic)", () => {
    expect(checkPlan(roundPlan)).toEqual([]);
    const waist = rebuildReadings(roundPlan)[2]?.whilePinning[1];
    expect(waist?.girthMm).toBeCloseTo(bare.girthMm + 2 * Math.PI * thickness, 1);
    expect(waist?.frontArcMm).toBeCloseTo(bare.frontArcMm + Math.PI * thickness, 1);
  });

  test("a round seen through its feather adds in proportion: half way in, half of 2 pi t", () => {
    const half = withLayer({ featherMm: 2 * (360 - 310), rows: rowsBetween(310, 415, -halfGirth, halfGirth) });
    const waist = rebuildReadings(planOf([half], {}))[2]?.whilePinning[1];
    expect(waist?.girthMm).toBeCloseTo(bare.girthMm + Math.PI * thickness, 1);
  });

  test("a piece over the front half adds pi t and the tape's bridge past its two blunt ends, nothing behind", () => {
    const blunt = withLayer({ featherMm: 0, wrap: false, rows: rowsBetween(310, 420, -front / 2, front / 2) });
    const waist = rebuildReadings(planOf([blunt], {}))[2]?.whilePinning[1] as FileReading;
    // The front half grows to the parallel curve; behind the side the tape runs straight from the blunt end to the bare back.
    expect(waist.frontArcMm - bare.frontArcMm).toBeCloseTo(Math.PI * thickness, 0);
    const bridge = waist.backArcMm - bare.backArcMm;
    expect(bridge).toBeGreaterThan(0);
    expect(bridge).toBeLessThan(2 * thickness);
  });

  test("a feathered front piece inside the front half adds less than pi t and leaves the back alone", () => {
    const inner = withLayer({ featherMm: 60, wrap: false, rows: rowsBetween(310, 420, -150, 150) });
    const waist = rebuildReadings(planOf([inner], {}))[2]?.whilePinning[1] as FileReading;
    expect(waist.frontArcMm).toBeGreaterThan(bare.frontArcMm + 1);
    expect(waist.frontArcMm).toBeLessThan(bare.frontArcMm + Math.PI * thickness);
    expect(waist.backArcMm).toBeCloseTo(bare.backArcMm, 2);
  });

  test("a piece over centre back counts on both sides of it, and given from the other side it is the same", () => {
    const behind = (start: number, end: number): FilePiece =>
      withLayer({ wrap: false, rows: rowsBetween(310, 420, start, end) });
    const one = rebuildReadings(planOf([behind(halfGirth - 100, halfGirth + 100)], {}))[2]
      ?.whilePinning[1] as FileReading;
    const other = rebuildReadings(planOf([behind(-halfGirth - 100, -halfGirth + 100)], {}))[2]
      ?.whilePinning[1] as FileReading;
    expect(one.backArcMm).toBeGreaterThan(bare.backArcMm + 5);
    expect(one.frontArcMm).toBeCloseTo(bare.frontArcMm, 2);
    expect(other.backArcMm).toBeCloseTo(one.backArcMm, 6);
    const fromBehind = rebuildReadings(planOf([{ ...behind(-100, 100), anchor: "centerBack" }], {}))[2]
      ?.whilePinning[1];
    expect(fromBehind?.backArcMm).toBeCloseTo(one.backArcMm, 6);
  });

  test("from center back the wearer's left is positive, and layers of one piece add", () => {
    const leftBehind: FilePiece = {
      ...withLayer({ wrap: false, rows: rowsBetween(310, 420, 20, 120) }),
      anchor: "centerBack",
    };
    const at = pieceThickness(
      { ...leftBehind, layers: [...leftBehind.layers, ...leftBehind.layers] },
      360,
      lengths,
      "in-the-plane",
    );
    expect(at(halfGirth - 70)).toBeCloseTo(2 * thickness);
    expect(at(70 - halfGirth)).toBe(0);
  });

  test("the seam's mark moved 5 mm a side to the front takes 10 mm from the front arc and keeps the girth", () => {
    const levels = roundPlan.levels.map((level) => ({
      ...level,
      predicted: plus(level.predicted, -10, 10),
      body: plus(level.body, -10, 10),
    }));
    const pieces = [
      {
        ...round,
        readingsAfter: Object.fromEntries(
          levels.map((level) => [level.name, level.predicted]),
        ) as FilePiece["readingsAfter"],
      },
    ];
    const seamShifts = checkedLevelNames.map((level) => ({ level, perSideMm: 5, towards: "front" as const }));
    expect(checkPlan({ ...roundPlan, levels, pieces, seamShifts })).toEqual([]);
    expect(rulesFound({ ...roundPlan, levels, pieces, seamShifts: [] })).toEqual(
      new Set(["predicted", "readingsAfter"]),
    );
  });
});

describe("shortfalls", () => {
  test("a form that is larger in front is all the reason a shortfall needs", () => {
    const plan = planOf([], {});
    const levels = plan.levels.map((l) => (l.name === "waist" ? { ...l, body: plus(l.body, -12, 0) } : l));
    const told = (amountMm: number) =>
      (["girth", "frontArc"] as const).map((what) => ({
        level: "waist",
        what,
        amountMm,
        sense: "tooLarge" as const,
      }));
    expect(checkPlan({ ...plan, levels, shortfalls: told(12) })).toEqual([]);
    expect(rulesFound({ ...plan, levels })).toEqual(new Set(["body"]));
  });
});

describe("planted mistakes are found", () => {
  const waistChanged = (change: (reading: FileReading) => FileReading): PlanFile => ({
    ...roundPlan,
    levels: roundPlan.levels.map((level) =>
      level.name === "waist" ? { ...level, predicted: change(level.predicted) } : level,
    ),
  });
  const pieceChanged = (change: Partial<FilePiece>): PlanFile => ({ ...roundPlan, pieces: [{ ...round, ...change }] });
  const layerChanged = (change: Partial<FileLayer>): PlanFile => ({ ...roundPlan, pieces: [withLayer(change)] });

  test.each([
    ["a prediction 5 mm off", waistChanged((r) => plus(r, 5, 0)), ["predicted", "lastPiece", "body"]],
    [
      "front and back swapped",
      waistChanged((r) => ({ ...r, frontArcMm: r.backArcMm, backArcMm: r.frontArcMm })),
      ["predicted", "body"],
    ],
    ["a girth that is not its two arcs", waistChanged((r) => ({ ...r, girthMm: r.girthMm + 0.9 })), ["arcsMakeGirth"]],
    ["a piece half as thick again", layerChanged({ thicknessMm: 12 }), ["predicted", "readingsAfter"]],
    ["a feather that reaches further", layerChanged({ featherMm: 80 }), ["feather", "predicted", "readingsAfter"]],
    [
      "a wrap that is only a front",
      layerChanged({ wrap: false, rows: rowsBetween(310, 420, -front / 2, front / 2) }),
      ["predicted"],
    ],
    [
      "a round at the wrong height",
      layerChanged({ rows: rowsBetween(380, 440, -halfGirth, halfGirth) }),
      ["predicted"],
    ],
    ["rows too far apart", layerChanged({ rows: turn.rows.filter((_, i) => i !== 2) }), ["rowGap"]],
    ["rows from the bottom up", layerChanged({ rows: [...turn.rows].reverse() }), ["rowGap"]],
    [
      "a sliver",
      layerChanged({ rows: turn.rows.map((row, i) => (i === 0 ? { ...row, startMm: -19, endMm: 19 } : row)) }),
      ["rowWidth"],
    ],
    [
      "a piece longer than once round",
      layerChanged({ rows: turn.rows.map((row) => ({ ...row, endMm: row.endMm + 20 })) }),
      ["rowReach"],
    ],
    ["a layer without a cut", pieceChanged({ cut: [] }), ["layers"]],
    [
      "layers of one batting that are not alike",
      pieceChanged({ layers: [turn, { ...turn, thicknessMm: 5 }], cut: [{}, {}] }),
      ["layers", "predicted"],
    ],
    ["shapes miscounted", { ...roundPlan, shapesToCut: 3 }, ["layers"]],
    [
      "a panel thicker than a hand can pin",
      pieceChanged({ kind: "panel", layers: Array(5).fill(turn), cut: [1, 2, 3, 4, 5] }),
      ["thickness"],
    ],
    ["a feather that is longer than any", layerChanged({ featherMm: 12 }), ["feather"]],
    ["numbering from 2", pieceChanged({ order: 2 }), ["order"]],
    [
      "readings after the piece that stop short",
      pieceChanged({ readingsAfter: readingsWith({}) }),
      ["lastPiece", "readingsAfter"],
    ],
    ["too little batting", { ...roundPlan, battingAreaMm2: 50_000 }, ["battingArea"]],
    [
      "a seam moved 16 mm",
      { ...roundPlan, seamShifts: [{ level: "waist", perSideMm: 16, towards: "back" as const }] },
      ["seamShift", "predicted"],
    ],
    [
      "a body not met",
      { ...roundPlan, levels: roundPlan.levels.map((l) => ({ ...l, body: plus(l.body, 0, 3.5) })) },
      ["body"],
    ],
    [
      "a form that does not read its girth",
      { ...roundPlan, levels: roundPlan.levels.map((l) => ({ ...l, form: { ...form, backDepthMm: 91 } })) },
      ["bareForm"],
    ],
    ["a level missing", { ...roundPlan, levels: roundPlan.levels.slice(1) }, ["skeleton"]],
    ["a number that is none", waistChanged((r) => ({ ...r, girthMm: Number.NaN })), ["skeleton"]],
    [
      "levels upside down",
      { ...roundPlan, levels: roundPlan.levels.map((l) => ({ ...l, depthBelowNapeMm: 800 - l.depthBelowNapeMm })) },
      ["levelOrder"],
    ],
    [
      "a shortfall that understates, and for which the form gives no reason",
      {
        ...roundPlan,
        levels: roundPlan.levels.map((l) => (l.name === "waist" ? { ...l, body: plus(l.body, -12, 0) } : l)),
        shortfalls: [
          { level: "waist", what: "girth", amountMm: 5, sense: "tooLarge" },
          { level: "waist", what: "frontArc", amountMm: 12, sense: "tooLarge" },
        ],
      },
      ["shortfallAmount", "shortfallExcuse"],
    ],
  ] as readonly (readonly [string, PlanFile, readonly FindingRule[]])[])("%s", (_, plan, expected) => {
    const found = rulesFound(plan);
    for (const rule of expected) expect(found).toContain(rule);
  });

  test("two pieces, the second said to take something away", () => {
    const second = { ...round, order: 2, readingsAfter: readingsWith({ waist: [1, 1] }) };
    expect(rulesFound({ ...roundPlan, pieces: [round, second] })).toContain("shrinking");
  });
});

describe("the checker's own parts", () => {
  test("a bare outline of exponent 2 has the perimeter of the elliptic integral, front and back", () => {
    const outline = bareOutline(form);
    expect(outline.frontArc).toBeCloseTo(front, 3);
    expect(outline.backArc).toBeCloseTo(back, 3);
    expect(outline.points[0]?.arcLength).toBeCloseTo(-halfGirth, 3);
    expect(outline.points[outline.points.length - 1]?.arcLength).toBeCloseTo(halfGirth, 3);
    const left = outline.points.find((p) => p.arcLength > front / 4 && p.y > 0);
    expect(left?.x).toBeGreaterThan(0);
  });

  test("of exponent 1 it is a rhombus, of a very large exponent a rectangle (exact)", () => {
    const rhombus = bareOutline({ ...form, exponent: 1 });
    expect(rhombus.frontArc).toBeCloseTo(2 * Math.hypot(halfBreadth, frontDepth), 6);
    const rectangle = bareOutline({ ...form, exponent: 4000 });
    expect(rectangle.backArc).toBeCloseTo(2 * halfBreadth + 2 * backDepth, 0);
  });

  test("a piece is thick by the nearest edge: sideways, above, or at a corner", () => {
    const layer = { ...turn, wrap: false, rows: rowsBetween(300, 400, -60, 60), featherMm: 40 };
    const at = (depthBelowNape: number, arcLength: number) =>
      layerThickness(layer, depthBelowNape, 800, statedRules.distance)(arcLength);
    expect(at(350, 0)).toBeCloseTo(thickness);
    expect(at(350, 50)).toBeCloseTo(thickness * (10 / 40));
    expect(at(320, 0)).toBeCloseTo(thickness * (20 / 40));
    expect(at(320, 45)).toBeCloseTo(thickness * (15 / 40));
    expect(at(350, 61)).toBe(0);
    expect(at(299, 0)).toBe(0);
    // A slanting side: the nearest point of the outline is not on this row, so the two readings of the text part.
    const slanting = {
      ...layer,
      rows: [
        { depthBelowNapeMm: 300, startMm: -60, endMm: 20 },
        { depthBelowNapeMm: 400, startMm: -60, endMm: 120 },
      ],
    };
    expect(layerThickness(slanting, 350, 800, "in-the-plane")(50)).toBeCloseTo(thickness * ((20 * Math.SQRT1_2) / 40));
    expect(layerThickness(slanting, 350, 800, "along-the-row")(50)).toBeCloseTo(thickness * (20 / 40));
  });

  test("rows are read straight between their neighbours and not beyond the ends", () => {
    const rows = [
      { depthBelowNapeMm: 300, startMm: -50, endMm: 50 },
      { depthBelowNapeMm: 320, startMm: -70, endMm: 60 },
    ];
    expect(rowAt(rows, 310)).toEqual({ depthBelowNapeMm: 310, startMm: -60, endMm: 55 });
    expect(rowAt(rows, 299)).toBeUndefined();
    expect(rowAt(rows, 321)).toBeUndefined();
  });
});
