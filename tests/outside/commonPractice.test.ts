import { describe, expect, test, vi } from "vitest";
import { planOfText } from "../../src/command/planOfText";
import { torsoReadings } from "../../src/core/body/levelReadings";
import { chooseForm } from "../../src/core/plan/chooseForm";
import { mm } from "../../src/core/units";
import { formTables } from "../../src/document/formTables";
import { people } from "../tools/people";
import { checkPlan } from "../tools/planChecker";
import type { FileLayer, FileLevel, FilePiece, PlanFile } from "../tools/planCheckerFile";
import { bareOutline } from "../tools/planCheckerOutline";
import { statedRules } from "../tools/planCheckerTape";
import { pieceThickness, rowAt } from "../tools/planCheckerThickness";

/**
 * What a plan for an everyday body looks like, as check values on whole plans. Each is common practice, no source, unless
 * its own sentence names one: no law, and nothing here says in which order anybody works.
 */
vi.setConfig({ testTimeout: 60_000 });

/** A small form and a body a few layers larger, measured at the same heights. */
const heights = { napeToWaist: 392, shoulderToApex: 262, waistToHighHip: 92, waistToFullHip: 188 };
const form = { bustGirth: 826, waistGirth: 635, fullHipGirth: 876, ...heights };
const body = {
  bustGirth: 872,
  waistGirth: 722,
  fullHipGirth: 932,
  underbustGirth: 765,
  highHipGirth: 842,
  ...heights,
};

type Lengths = { readonly [name: string]: number };

function planOf(bodyLengths: Lengths, formLengths: Lengths = form, layerThickness = 6): PlanFile {
  const file = {
    version: 1,
    unit: "mm",
    body: bodyLengths,
    form: formLengths,
    batting: { name: "batting", layerThickness },
  };
  const made = planOfText(JSON.stringify(file));
  if (!made.ok) throw new Error(made.problem.join(" "));
  return made.value;
}

const levelOf = (plan: PlanFile, name: string): FileLevel => {
  const level = plan.levels.find((one) => one.name === name);
  if (level === undefined) throw new Error(`no level ${name}`);
  return level;
};

/** Thickness of the whole stack at a level, at a distance from center front (mm). */
const stackAt = (plan: PlanFile, name: string, arcLength: number): number => {
  const level = levelOf(plan, name);
  const outline = bareOutline(level.form);
  return plan.pieces.reduce(
    (sum, piece) => sum + pieceThickness(piece, level.depthBelowNapeMm, outline, statedRules.distance)(arcLength),
    0,
  );
};

const outermost = ({ layers }: FilePiece): FileLayer => layers[layers.length - 1] as FileLayer;
const top = (piece: FilePiece) => outermost(piece).rows[0]?.depthBelowNapeMm ?? 0;
const bottom = (piece: FilePiece) => outermost(piece).rows.at(-1)?.depthBelowNapeMm ?? 0;

/** Of the pieces over a level, the one that is widest there. */
function widestAt(plan: PlanFile, name: string): FilePiece {
  const { depthBelowNapeMm } = levelOf(plan, name);
  const width = (piece: FilePiece) => {
    const row = rowAt(outermost(piece).rows, depthBelowNapeMm);
    return row === undefined ? 0 : row.endMm - row.startMm;
  };
  const found = [...plan.pieces].sort((p, q) => width(q) - width(p))[0];
  if (found === undefined || width(found) === 0) throw new Error(`no piece over the ${name}`);
  return found;
}

describe("where the form is small", () => {
  // Common practice, no source: most of what a waist gains shows from the front.
  test("a waist whose front nobody measured gains more in front than behind", () => {
    for (const gain of [30, 76, 128, 181]) {
      const { predicted, form: bare } = levelOf(planOf({ ...body, waistGirth: form.waistGirth + gain }), "waist");
      const [front, back] = [predicted.frontArcMm - bare.frontArcMm, predicted.backArcMm - bare.backArcMm];
      expect(front / back).toBeGreaterThan(1.6);
      expect(front / back).toBeLessThan(2.5);
    }
  });

  // Common practice, no source: a much smaller waist is no reason for another form, and any batting will do.
  test("a waist far smaller than the body's is filled to the tape, by thin and by thick batting", () => {
    const gain = 187;
    for (const layer of [3, 6, 10]) {
      const waistGirth = form.waistGirth + gain;
      const plan = planOf({ bustGirth: 872, waistGirth, fullHipGirth: 932 }, form, layer);
      expect(checkPlan(plan)).toEqual([]);
      expect(plan.shortfalls).toEqual([]);
      expect(plan.pieces.length).toBeLessThanOrEqual(16);
      expect(Math.abs(levelOf(plan, "waist").predicted.girthMm - waistGirth)).toBeLessThanOrEqual(3);
    }
  });

  // Common practice, no source: the front and the back of one level are two measurements and are padded as two.
  test("what only the back of a level lacks is added at the back, and the front stays bare", () => {
    const hipFront = 432;
    const plan = planOf(
      { ...body, fullHipFrontArc: hipFront, fullHipBackArc: body.fullHipGirth - hipFront },
      { ...form, fullHipFrontArc: hipFront },
    );
    const level = levelOf(plan, "fullHip");
    expect(Math.abs(level.predicted.frontArcMm - hipFront)).toBeLessThanOrEqual(3);
    expect(Math.abs(level.predicted.backArcMm - (body.fullHipGirth - hipFront))).toBeLessThanOrEqual(3);
    expect(stackAt(plan, "fullHip", level.form.girthMm / 2)).toBeGreaterThan(10);
    expect(stackAt(plan, "fullHip", 0)).toBeLessThan(3);
  });
});

describe("where the padding lies", () => {
  // Common practice, no source: the waist is padded from below the bust.
  test("the wide piece over the waist begins near the underbust line and ends below the waist", () => {
    const plan = planOf(body);
    const [underbust, waist] = [levelOf(plan, "underbust").depthBelowNapeMm, levelOf(plan, "waist").depthBelowNapeMm];
    const overWaist = widestAt(plan, "waist");
    // Edges keep away from the lines, so the piece ends in the stretch between them.
    expect(Math.abs(top(overWaist) + outermost(overWaist).featherMm - underbust)).toBeLessThan(60);
    expect(bottom(overWaist)).toBeGreaterThan(waist + 20);
  });

  // Common practice, no source: cups are fullest where the body is, and alike where nobody measured a difference.
  test("a bust is filled most at the two apexes, alike left and right", () => {
    const asked = { bustGirth: 930, bustFrontArc: 522 };
    const plan = planOf({ ...body, ...asked, underbustGirth: 765, apexToApex: 184 });
    const { predicted } = levelOf(plan, "bust");
    expect(Math.abs(predicted.girthMm - asked.bustGirth)).toBeLessThanOrEqual(3);
    expect(Math.abs(predicted.frontArcMm - asked.bustFrontArc)).toBeLessThanOrEqual(3);
    const [right, center, left] = [-92, 0, 92].map((arcLength) => stackAt(plan, "bust", arcLength));
    expect(left).toBeGreaterThan(center ?? 0);
    expect(left).toBeGreaterThan(stackAt(plan, "bust", 215));
    expect(right).toBeCloseTo(left ?? 0, 0);
  });

  // ISO 8559-1:2017, 5.3.12, as a secondary source tells it: the top hip girth lies halfway from the waist to the hip.
  test("a high hip lies where it was measured, and halfway to the full hip where it was not", () => {
    const below = (waistToHighHip?: number) => {
      const lengths = {
        bustGirth: mm(872),
        waistGirth: mm(722),
        fullHipGirth: mm(932),
        napeToWaist: mm(392),
        waistToFullHip: mm(206),
      };
      const { waist, highHip } = torsoReadings(
        waistToHighHip === undefined ? lengths : { ...lengths, waistToHighHip: mm(waistToHighHip) },
      ).levels;
      return { below: highHip.depthBelowNape.value - waist.depthBelowNape.value, kind: highHip.depthBelowNape.kind };
    };
    // Below a waist that itself was found with a tape down the back: an estimate, with that tape's doubt.
    expect(below(118)).toEqual({ below: expect.closeTo(118, 6), kind: "estimated" });
    expect(below()).toEqual({ below: expect.closeTo(103, 6), kind: "estimated" });
  });
});

describe("which form to take", () => {
  const charts = formTables.filter((table) => table.id === "misses" || table.id === "womens");

  // Common practice, no source: padding adds and nothing takes away, so the form must be the smaller one everywhere.
  test("the largest size that is nowhere larger than the body, where there is one", () => {
    let chosen = 0;
    for (const one of people(16)) {
      for (const chart of charts) {
        const [best, ...others] = chooseForm(one.body, chart, one.batting);
        if (best === undefined || best.shortfallTotal > 0) continue;
        chosen++;
        for (const other of others) {
          if (other.shortfallTotal === 0) expect(other.paddingTotal).toBeGreaterThanOrEqual(best.paddingTotal);
        }
        const plan = planOf(one.body, best.measurements);
        for (const level of plan.levels) expect(level.form.girthMm).toBeLessThanOrEqual(level.body.girthMm + 3);
      }
    }
    expect(chosen).toBeGreaterThan(5);
  });

  // Common practice, no source.
  test("otherwise the one that is larger by least", () => {
    for (const one of people(20)) {
      for (const chart of charts) {
        const totals = chooseForm(one.body, chart, one.batting).map((ranked) => ranked.shortfallTotal as number);
        expect([...totals].sort((p, q) => p - q)).toEqual(totals);
      }
    }
  });
});
