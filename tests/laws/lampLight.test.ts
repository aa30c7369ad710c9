import { describe, expect, test } from "vitest";
import { layersByThickness } from "../../src/app/print/layersByThickness";
import { plannedShortage } from "../../src/app/print/tuningTarget";
import { tuningWidths } from "../../src/app/print/tuningWidths";
import { basisOf } from "../../src/app/progress/replay";
import { levelNames } from "../../src/core/body/vocabulary";
import { addLayer, type LevelOutline, piecesThickness } from "../../src/core/padding/layerThickness";
import type { Layer } from "../../src/core/padding/layer";
import { isStructure } from "../../src/core/padding/piece";
import { planFitting } from "../../src/core/plan/planFitting";
import type { PlannedPiece } from "../../src/core/plan/plan";
import { tapeQuarters } from "../../src/core/tape/tape";
import { tapeAgreement } from "../../src/core/tolerances";
import { mm } from "../../src/core/units";
import { people } from "../tools/people";

/**
 * The job on paper alone: the batting turns out otherwise than the packet says, the trial's strip tells which column, each piece is cut
 * of so many layers, the tape is read, and each tuning layer is cut as wide as its table says. Over 30 made-up people and
 * every column. Broken on purpose, both seen to fail: the columns turned around; the shortage looked up without the factor. (Which of
 * a piece's layers is left out makes no difference that this would see.)
 */
const crowd = people(30).flatMap(({ body, form, batting }) => {
  const input = { body, form, batting };
  const plan = planFitting(input);
  return plan.pieces.some(isStructure) ? [{ input, plan, columns: layersByThickness(input, plan) }] : [];
});

const roundingStep = { "1/8 in": 25.4 / 8, "0.5 cm": 5, "1 mm": 1 } as const;

const halves = ["frontArc", "backArc"] as const;
const readAt = (thickness: Float64Array, { outline }: LevelOutline) => {
  const { leftFront, rightFront, leftBack, rightBack } = tapeQuarters(outline, thickness);
  return { frontArc: leftFront + rightFront, backArc: leftBack + rightBack };
};

/** Hands follow the column: the smallest layers are left out, or the outermost is cut once more. */
const cutTo = (piece: PlannedPiece, count: number, share: number): PlannedPiece => {
  const layers = piece.layers.map((layer) => ({ ...layer, thickness: mm(layer.thickness * share) }));
  while (layers.length > count) layers.shift();
  while (layers.length < count) layers.push(layers.at(-1) as (typeof layers)[number]);
  return { ...piece, layers };
};

describe("with nothing but paper", () => {
  test("in the middle column every piece has the layers that are drawn", () => {
    expect(crowd.length).toBeGreaterThan(20);
    for (const { plan, columns } of crowd) {
      const middle = columns.find(({ share }) => share === 1);
      expect(middle?.layers).toEqual(plan.pieces.filter(isStructure).map(({ layers }) => layers.length));
    }
  });

  test("columns meet without a gap, and a thicker batting never takes more layers in all", () => {
    for (const { input, columns } of crowd) {
      // The table ends where its last columns do: beyond it no count would be right.
      const drawn = 3 * 2 * Math.PI * input.batting.layerThickness;
      expect(columns[0]?.gain.from).toBeGreaterThan(0.55 * drawn);
      expect(columns.at(-1)?.gain.to).toBeLessThan(1.8 * drawn);
      for (const { gain, share } of columns) {
        expect(gain.from).toBeLessThan(share * drawn);
        expect(gain.to).toBeGreaterThan(share * drawn);
      }
      columns.slice(1).forEach(({ gain, layers }, i) => {
        const before = columns[i];
        expect(gain.from).toBe(before?.gain.to);
        const sum = (all: readonly number[] = []) => all.reduce((total, one) => total + one, 0);
        expect(sum(layers)).toBeLessThanOrEqual(sum(before?.layers));
      });
    }
  });

  /** Seen to fail: on the widths for the bare figures, which miss the drawn layer by up to 3 in. */
  test.each(["1/8 in", "0.5 cm", "1 mm"] as const)(
    "a tape that reads what the sheet expects, rounded to %s, gives the layer that is drawn",
    (step) => {
      let compared = 0;
      let bare = 0;
      for (const { input, plan } of crowd)
        for (const piece of plan.pieces.filter(({ kind }) => kind === "tuning")) {
          const half = piece.anchor === "centerBack" ? "backArc" : "frontArc";
          for (const { level, left, right } of piece.cut.flatMap((cut) => ("widths" in cut ? cut.widths : []))) {
            const { exact, printed } = plannedShortage(plan, level, half, step);
            // Four figures rounded, and what the plan itself leaves off.
            expect(Math.abs(exact - printed)).toBeLessThan(2 * roundingStep[step] + tapeAgreement);
            const widthOf = (...to: readonly [] | readonly [typeof step]) =>
              tuningWidths(input, plan, piece, [printed], ...to).find((one) => one.level === level)?.widths[0];
            const width = widthOf(step);
            if (width === "none") continue;
            expect(typeof width === "number" && Math.abs(width - left - right), `${piece.id} ${level}`).toBeLessThan(1);
            const without = widthOf();
            if (typeof without !== "number" || Math.abs(without - left - right) > 12) bare += 1;
            compared += 1;
          }
        }
      expect(compared).toBeGreaterThan(200);
      // With the figures as they are printed, and nothing done about it, other layers would be cut.
      expect(bare).toBeGreaterThan(25);
    },
  );

  test.each([
    ["in the middle of its column", 1.5, 5],
    ["where its column ends", 2, 6.5],
  ] as const)("with a batting %s the tape is near the person’s at every level in the end", (where, median, most) => {
    const before: number[] = [];
    const misses: number[] = [];
    for (const { input, plan, columns } of crowd)
      for (const { share, layers, gain } of columns) {
        const drawn = 3 * 2 * Math.PI * input.batting.layerThickness;
        for (const real of where === "where its column ends" ? [gain.from / drawn, gain.to / drawn] : [share]) {
          const { levelSections } = basisOf(input);
          const structure = plan.pieces.filter(isStructure).map((piece, i) => cutTo(piece, layers[i] ?? 0, real));
          for (const [i, level] of levelNames.entries()) {
            const at = levelSections[i] as LevelOutline;
            const thickness = piecesThickness(structure, at);
            const wanted = readAt(piecesThickness(plan.pieces, at), at);
            const short = (half: (typeof halves)[number]) => wanted[half] - readAt(thickness, at)[half];
            const isCut = new Set<string>();
            const shorts = { frontArc: short("frontArc"), backArc: short("backArc") };
            for (const piece of plan.pieces.filter(({ kind }) => kind === "tuning")) {
              const half = piece.anchor === "centerBack" ? "backArc" : "frontArc";
              const [found] = tuningWidths(input, plan, piece, [shorts[half] / share]).filter(
                (one) => one.level === level,
              );
              const [width] = found?.widths ?? [];
              if (typeof width !== "number" || shorts[half] <= 0) continue;
              isCut.add(half);
              const layer = piece.layers[0] as Layer;
              const rows = [-100, 100].map((off) => ({
                depthBelowNape: mm(at.depth + off),
                start: mm(-width / 2),
                end: mm(width / 2),
              }));
              addLayer(thickness, { ...layer, rows, thickness: mm(layer.thickness * real) }, piece.anchor, at);
            }
            for (const half of halves) {
              if (!isCut.has(half)) continue;
              before.push(Math.abs(shorts[half]));
              misses.push(Math.abs(wanted[half] - readAt(thickness, at)[half]));
            }
          }
        }
      }
    const at = (all: readonly number[], share: number) =>
      all.toSorted((a, b) => a - b)[Math.floor(share * all.length)] ?? Number.NaN;
    expect(misses.length).toBeGreaterThan(150);
    expect(at(before, 0.5)).toBeGreaterThan(8);
    expect(at(misses, 0.5)).toBeLessThan(median);
    expect(at(misses, 0.95)).toBeLessThan(most);
  });
});
