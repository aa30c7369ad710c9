import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { battingLayout, type BattingLayout, layingGap, lengthOfRoll } from "../../../src/app/supplies/battingLayout";
import { shapesOf } from "../../../src/app/supplies/fittingSupplies";
import { derivation } from "../../../src/app/session/derived";
import { flat, partFrame, type PatternPart } from "../../../src/core/pattern/patternPart";
import { clothRows } from "../../../src/core/supplies/clothRows";
import { battingGood, battingGoodIds, boughtLength } from "../../../src/core/supplies/goods";
import { readFittingText } from "../../../src/document/readFitting";
import { people, fittingFileOf } from "../../tools/people";

const demo = readFileSync(resolve(import.meta.dirname, "../../../shared/demo-fitting.json"), "utf8");

function shapesOfText(text: string) {
  const fitting = readFittingText(text);
  if (!fitting.ok) throw new Error("no fitting");
  const { planning } = derivation()(fitting.value);
  return planning.kind === "planned" ? planning.plan.pieces.flatMap(shapesOf) : [];
}

function rectangle(id: string, width: number, height: number): PatternPart {
  const corners = [flat(0, 0), flat(width, 0), flat(width, height), flat(0, height)];
  return {
    id,
    kind: "batting",
    of: id,
    edges: corners.map((corner, i) => ({
      id: `${id}-${i}`,
      points: [corner, corners[(i + 1) % 4] as typeof corner],
      sewnTo: null,
    })),
    lines: [],
    notches: [],
    levels: [],
  };
}
const shape = (id: string, width: number, height: number) => ({ id, label: id, part: rectangle(id, width, height) });

interface Box {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

const box = (outline: readonly { readonly x: number; readonly y: number }[]): Box => ({
  left: Math.min(...outline.map(({ x }) => x)),
  right: Math.max(...outline.map(({ x }) => x)),
  low: Math.min(...outline.map(({ y }) => y)),
  high: Math.max(...outline.map(({ y }) => y)),
});
const clearBetween = (one: Box, other: Box): number =>
  Math.max(one.left - other.right, other.left - one.right, one.low - other.high, other.low - one.high);

/** Every shape lies on the batting, in its own size, apart from every other and from the rest that is said to be free. */
function expectSound({ sheets }: BattingLayout, count: number): void {
  expect(sheets.reduce((sum, { shapes }) => sum + shapes.length, 0)).toBe(count);
  for (const { width, length, shapes, left } of sheets) {
    const boxes = shapes.map(({ outline }) => box(outline));
    for (const one of boxes) {
      expect(Math.min(one.left, one.low)).toBeGreaterThan(-0.001);
      expect(one.right).toBeLessThan(width + 0.001);
      expect(one.high).toBeLessThan(length + 0.001);
    }
    for (const [i, one] of boxes.entries())
      for (const other of boxes.slice(i + 1)) expect(clearBetween(one, other)).toBeGreaterThan(layingGap - 0.001);
    if (left === null) continue;
    const free = { left: left.x, right: left.x + left.width, low: left.y, high: left.y + left.height };
    expect(free.right).toBeLessThan(width + 0.001);
    expect(free.high).toBeLessThan(length + 0.001);
    for (const one of boxes) expect(clearBetween(one, free)).toBeGreaterThan(-0.001);
  }
}

/** Broken on purpose: no gap between shapes; a turned shape drawn as it was; the rest reaching past the end. Seen to fail. */
test("on every roll and packet the layers of forty people lie apart, whole, and within what is bought", () => {
  for (const text of [demo, ...people(40, 700).map((one) => JSON.stringify(fittingFileOf(one)))]) {
    const shapes = shapesOfText(text);
    for (const id of battingGoodIds) {
      const layout = battingLayout(shapes, battingGood(id), "in");
      expectSound(layout, shapes.length - layout.tooLarge.length);
      expect(layout.used).toBeLessThan(1);
    }
  }
});

/** Broken on purpose: the first way of laying kept instead of the best; no search for a shorter length. Seen to fail. */
test("on a narrow roll hardly anybody needs more than rows, tallest first, would take, and most need less", () => {
  const roll = battingGood("roll-45-in");
  const lengths = people(40, 700).map((one) => {
    const shapes = shapesOfText(JSON.stringify(fittingFileOf(one)));
    const inRows = clothRows(
      shapes.map(({ id, part }) => {
        const { width, height } = partFrame(part);
        const isTurned = width < height && height <= roll.width;
        return { id, width: isTurned ? height : width, height: isTurned ? width : height };
      }),
      roll.width + 2 * layingGap,
    );
    return { laid: lengthOfRoll(battingLayout(shapes, roll, "in")), rows: boughtLength(inRows.length, "in"), inRows };
  });
  expect(lengths.every(({ inRows }) => inRows.tooWide.length === 0)).toBe(true);
  const saved = lengths.map(({ laid, rows }) => rows - laid);
  expect(Math.min(...saved)).toBeGreaterThan(-120);
  expect(saved.filter((one) => one > 1).length).toBeGreaterThan(20);
  // 33.3 m for all forty; 34.5 without the search for a shorter length, 34.9 with the first way of laying alone.
  expect(lengths.reduce((sum, { laid }) => sum + laid, 0)).toBeLessThan(34_000);
});

describe("shapes whose best layout is known", () => {
  /** Broken on purpose: turning not allowed. Seen to fail. */
  test("a strip longer than the roll is wide is turned, and only then fits", () => {
    const layout = battingLayout([shape("strip", 1400, 300)], battingGood("roll-115-cm"), "cm");
    expect(layout.sheets[0]?.shapes[0]?.isTurned).toBe(true);
    expect(lengthOfRoll(layout)).toBe(1400);
    expectSound(layout, 1);
  });

  test("ten strips that fill a roll side by side need no more than twice their height", () => {
    const strips = Array.from({ length: 10 }, (_, i) => shape(`s${i}`, 215, 500));
    const layout = battingLayout(strips, battingGood("roll-115-cm"), "cm");
    expect(lengthOfRoll(layout)).toBe(boughtLength(2 * 500 + layingGap, "cm"));
  });

  test("packets are filled before a further one is opened, and what no packet holds is named", () => {
    const squares = Array.from({ length: 13 }, (_, i) => shape(`s${i}`, 560, 500));
    const layout = battingLayout([...squares, shape("long", 1600, 200)], battingGood("packet-45x60-in"), "in");
    expect(layout.sheets).toHaveLength(3);
    expect(layout.tooLarge.map(({ id }) => id)).toEqual(["long"]);
    expectSound(layout, 13);
  });

  test("nothing to cut is nothing to buy", () => {
    expect(battingLayout([], battingGood("roll-90-in"), "in")).toMatchObject({ sheets: [], tooLarge: [], used: 0 });
  });
});

test("lengths are bought upwards, by the eighth of a yard or 10 cm, and a length that is there already stays", () => {
  expect(boughtLength(914.4, "in")).toBeCloseTo(914.4, 6);
  expect(boughtLength(915.5, "in")).toBeCloseTo(914.4 * 1.125, 6);
  expect(boughtLength(1000, "cm")).toBe(1000);
  expect(boughtLength(1001, "cm")).toBe(1100);
});

test("the sizes that goods are named after", () => {
  expect(battingGood("packet-81x96-in")).toMatchObject({ kind: "packet", width: 81 * 25.4, length: 96 * 25.4 });
  expect(battingGood("roll-220-cm")).toMatchObject({ kind: "roll", width: 2200 });
  for (const id of battingGoodIds) expect(battingGood(id).width).toBeGreaterThan(1000);
  expect(partFrame(rectangle("r", 3, 4))).toMatchObject({ width: 3, height: 4 });
});
