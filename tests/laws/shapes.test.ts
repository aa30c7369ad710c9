import fc from "fast-check";
import { afterAll, describe, expect, test, vi } from "vitest";
import type { Layer, LayerRow } from "../../src/core/padding/layer";
import { rowAt } from "../../src/core/padding/layer";
import { featherLength, leastHeight, levelGaps, tallest } from "../../src/core/padding/levelGaps";
import { outermostLayer, pieceExtent } from "../../src/core/padding/piece";
import type { Plan, PlannedPiece } from "../../src/core/plan/plan";
import { planFitting } from "../../src/core/plan/planFitting";
import type { Person } from "../tools/people";
import { anybody, chances } from "./planned";

/** Many plans to a test, and other work may share the machine. */
vi.setConfig({ testTimeout: 120_000 });

/** What every piece of every plan owes the hand that cuts and pins it. Each says how it was broken on purpose and seen to fail. */
describe("pieces for hands", () => {
  const plans = new Map<number, Plan>();
  const planFor = (one: Person): Plan => {
    const plan = plans.get(one.seed) ?? planFitting(one);
    plans.set(one.seed, plan);
    return plan;
  };
  const depthsOf = ({ levels }: Plan) => levels.map(({ depthBelowNape }) => depthBelowNape.value as number);
  const everyPlan = (
    holds: (plan: Plan, depths: readonly number[], gaps: ReturnType<typeof levelGaps>) => void,
  ): void =>
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        const depths = depthsOf(plan);
        holds(plan, depths, levelGaps(depths));
      }),
      chances(20),
    );
  const top = ({ rows }: Layer) => (rows[0] as LayerRow).depthBelowNape;
  const bottom = ({ rows }: Layer) => (rows[rows.length - 1] as LayerRow).depthBelowNape;
  const isDisc = ({ kind }: PlannedPiece) => kind === "cup";
  /** Rounding of sums of millimeters, no more. */
  const hair = 1e-6;

  /** How much the laws have seen: none of them may hold of nothing. */
  let [edges, layers, turns, tuned] = [0, 0, 0, 0];
  afterAll(() => {
    expect(edges).toBeGreaterThan(200);
    expect(layers).toBeGreaterThan(150);
    expect(turns).toBeGreaterThan(5);
    expect(tuned).toBeGreaterThan(20);
  });

  /** Broken on purpose: edges spread over the whole gap instead of its room. Seen to fail. */
  test("edges keep feather and margin beyond a line they cover, and the margin short of one they do not", () => {
    everyPlan((plan, depths, gaps) => {
      for (const piece of plan.pieces.filter((other) => !isDisc(other))) {
        for (const layer of piece.layers) {
          for (const [i, depth] of depths.entries()) {
            for (const [edge, covers] of [
              [top(layer), top(layer) < depth],
              [bottom(layer), bottom(layer) > depth],
            ] as const) {
              edges++;
              const gap = gaps[edge < depth ? i : i + 1];
              if (gap === undefined) continue;
              const least = covers && Math.abs(edge - depth) <= gap.length ? gap.margin + gap.feather : gap.margin;
              expect(Math.abs(edge - depth)).toBeGreaterThanOrEqual(least - hair);
            }
          }
        }
      }
    });
  });

  /** Broken on purpose: widths drawn straight from line to line. Seen to fail. */
  test("near every line a layer is as wide as at the line, so that a piece pinned a little off reads the same", () => {
    everyPlan((plan, depths, gaps) => {
      for (const piece of plan.pieces.filter((other) => !isDisc(other))) {
        for (const layer of piece.layers.filter(({ wrap }) => !wrap)) {
          for (const [i, depth] of depths.entries()) {
            if (depth <= top(layer) || depth >= bottom(layer)) continue;
            const at = rowAt(layer.rows, depth);
            for (const near of [depth - (gaps[i]?.margin ?? 0) + 1, depth + (gaps[i + 1]?.margin ?? 0) - 1]) {
              const beside = rowAt(layer.rows, near);
              expect(beside.start).toBeCloseTo(at.start, 3);
              expect(beside.end).toBeCloseTo(at.end, 3);
            }
          }
        }
      }
    });
  });

  /** Broken on purpose: layers too low for a hand not drawn out; rows 32 mm apart; a feather of 12 mm. Each seen to fail. */
  test("every layer is tall and wide enough, its rows run downwards at most 20 mm apart, its feather is 10 mm or less", () => {
    everyPlan((plan, depths, gaps) => {
      for (const piece of plan.pieces) {
        for (const layer of piece.layers) {
          layers++;
          for (const [i, row] of layer.rows.entries()) {
            if (i === 0) continue;
            const gap = row.depthBelowNape - (layer.rows[i - 1] as LayerRow).depthBelowNape;
            expect(gap).toBeGreaterThan(0);
            expect(gap).toBeLessThanOrEqual(20 + hair);
          }
          expect(layer.feather).toBeLessThanOrEqual(featherLength);
          const covered = depths.flatMap((depth, i) => (depth > top(layer) && depth < bottom(layer) ? [i] : []));
          const [first, last] = [covered[0] ?? 0, covered.at(-1) ?? 0];
          const possible = isDisc(piece) ? leastHeight : tallest(depths, gaps, first, last);
          expect(bottom(layer) - top(layer)).toBeGreaterThanOrEqual(Math.min(leastHeight, possible) - hair);
          const isOneSided = /^(left|right)/.test(piece.zone);
          const widest = Math.max(...layer.rows.map(({ start, end }) => end - start));
          expect(widest).toBeGreaterThanOrEqual((isOneSided ? 45 : 90) - hair);
        }
      }
    });
  });

  /** Broken on purpose: panels of any thickness; three wraps; tuning of two layers. Each seen to fail. */
  test("no panel is thicker than 36 mm, a plan has two wraps at most, and a tuning layer is one layer", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const { pieces } = planFor(one);
        for (const { kind, layers: own } of pieces) {
          const thickness = own.reduce((sum, layer) => sum + layer.thickness, 0);
          if (kind === "panel") expect(own.length === 1 || thickness <= 36 + hair).toBe(true);
          if (kind === "tuning") expect(own).toHaveLength(1);
        }
        expect(pieces.filter(({ kind }) => kind === "wrap").length).toBeLessThanOrEqual(2);
      }),
      chances(20),
    );
  });

  /** Broken on purpose: the innermost layer of a panel the largest. Seen to fail. */
  test("of a panel or wrap every layer reaches as far as the one beneath it, up, down and to both sides at the lines", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        for (const piece of plan.pieces.filter(({ kind }) => kind === "panel" || kind === "wrap")) {
          piece.layers.slice(1).forEach((over, i) => {
            const beneath = piece.layers[i] as Layer;
            expect(top(over)).toBeLessThanOrEqual(top(beneath) + hair);
            expect(bottom(over)).toBeGreaterThanOrEqual(bottom(beneath) - hair);
            for (const depth of depthsOf(plan)) {
              if (depth <= top(beneath) || depth >= bottom(beneath)) continue;
              const [inner, outer] = [rowAt(beneath.rows, depth), rowAt(over.rows, depth)];
              expect(outer.start).toBeLessThanOrEqual(inner.start + hair);
              expect(outer.end).toBeGreaterThanOrEqual(inner.end - hair);
            }
          });
        }
      }),
      chances(20),
    );
  });

  /** Broken on purpose: every turn as long as the first. Seen to fail. */
  test("every turn of a wrap is 2 pi t longer than the one beneath it, at every line that both cross", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        for (const { kind, cut, layers: own } of planFor(one).pieces.filter((piece) => piece.kind === "wrap")) {
          expect(kind).toBe("wrap");
          cut.slice(1).forEach((over, i) => {
            const beneath = cut[i];
            if (over.shape !== "strip" || beneath?.shape !== "strip") return;
            for (const { level, left, right } of over.widths) {
              const below = beneath.widths.find((width) => width.level === level);
              if (below === undefined) continue;
              turns++;
              const longer = left + right - below.left - below.right;
              // A tuning layer may be slipped under the last turn, which then is longer still.
              expect(longer).toBeGreaterThanOrEqual(2 * Math.PI * (own[i]?.thickness ?? 0) - 1);
            }
          });
        }
      }),
      chances(40),
    );
  });

  /** Broken on purpose: the structure allowed to read its target. Seen to fail. */
  test("before the tuning layers the structure is 4 mm short wherever one of them lies", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        const structure = plan.pieces.filter(({ kind }) => kind !== "tuning");
        if (structure.length === 0) return;
        const before = (structure.at(-1) as PlannedPiece).readingsAfter;
        for (const { zone, layers: own } of plan.pieces.filter(({ kind }) => kind === "tuning")) {
          const half = /back/i.test(zone) ? "backArc" : "frontArc";
          for (const { name, depthBelowNape, predicted } of plan.levels) {
            if (depthBelowNape.value <= top(own[0] as Layer) || depthBelowNape.value >= bottom(own[0] as Layer))
              continue;
            if (before[name][half] < plan.bareForm[name][half] + 1) continue;
            tuned++;
            // The search chooses by fewer points than the plan is drawn with, and one half lifts the tape off the other.
            expect(predicted[half] - before[name][half]).toBeGreaterThan(one.care === "left-and-right" ? 1.5 : 3);
          }
        }
      }),
      chances(20),
    );
  });

  test("front pieces lie over center front, back pieces over center back, cup pads each on its own side", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        for (const piece of planFor(one).pieces) {
          const { start, end } = outermostLayer(piece).rows[0] as LayerRow;
          if (piece.zone === "front") expect([piece.anchor, start <= 0 && end >= 0]).toEqual(["centerFront", true]);
          if (piece.zone === "back") expect([piece.anchor, start <= 0 && end >= 0]).toEqual(["centerBack", true]);
          if (piece.zone === "leftCup") expect(start).toBeGreaterThan(-end);
          if (piece.zone === "rightCup") expect(start).toBeLessThan(-end);
          if (piece.zone === "leftFront" || piece.zone === "leftBack") expect(start).toBeCloseTo(0);
          if (piece.zone === "rightFront" || piece.zone === "rightBack") expect(end).toBeCloseTo(0);
        }
      }),
      chances(20),
    );
  });

  /** Broken on purpose: names without their numbers. Seen to fail. */
  test("cup pads come first, wraps before panels, tuning layers last; every id is its own, and left and right cups are a pair", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const { pieces } = planFor(one);
        const order = ["cup", "wrap", "panel", "bought", "tuning", "outerWrap"];
        const ranks = pieces.map(({ kind }) => order.indexOf(kind));
        expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
        expect(pieces.map((piece) => piece.order)).toEqual(pieces.map((_, i) => i + 1));
        expect(new Set(pieces.map(({ id }) => id)).size).toBe(pieces.length);
        const pairs = pieces.filter(({ kind }) => kind === "cup").map(({ pair }) => pair);
        expect([new Set(pairs).size, pairs.includes(null)]).toEqual([pairs.length / 2, false]);
        for (const piece of pieces) expect(pieceExtent(piece).bottom).toBeGreaterThan(pieceExtent(piece).top);
      }),
      chances(20),
    );
  });
});
