import { describe, expect, test, vi } from "vitest";
import { planOfText } from "../../src/command/planOfText";
import { torsoReadings } from "../../src/core/body/levelReadings";
import { chooseForm } from "../../src/core/plan/chooseForm";
import { mm } from "../../src/core/units";
import { formTables } from "../../src/document/formTables";
import { people } from "../support/people";
import { checkPlan } from "../support/planChecker";
import type { FileLevel, FilePiece, PlanFile } from "../support/planCheckerFile";
import { bareOutline } from "../support/planCheckerOutline";
import { statedRules } from "../support/planCheckerTape";
import { pieceThickness, rowAt } from "../support/planCheckerThickness";

/**
 * What people who pad forms do, as check values on whole plans. All of it is common practice, no source: these are not
 * laws but what a plan for an everyday body should look like.
 */
vi.setConfig({ testTimeout: 60_000 });

/** A form that follows misses 14 (bust 36, waist 28, hip 38 in), measured at the body's own heights. */
const heights = { napeToWaist: 400, shoulderToApex: 275, waistToHighHip: 100, waistToFullHip: 200 };
const form = { bustGirth: 914, waistGirth: 711, fullHipGirth: 965, ...heights };
const body = {
  bustGirth: 960,
  waistGirth: 800,
  fullHipGirth: 1020,
  underbustGirth: 830,
  highHipGirth: 930,
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

/** Thickness of the whole stack at a level, at a distance from centre front (mm). */
const stackAt = (plan: PlanFile, name: string, along: number): number => {
  const level = levelOf(plan, name);
  const { girth } = bareOutline(level.form);
  return plan.pieces.reduce(
    (sum, piece) => sum + pieceThickness(piece, level.dropMm, girth, statedRules.distance)(along),
    0,
  );
};

const top = (piece: FilePiece) => piece.rows[0]?.dropMm ?? 0;
const bottom = (piece: FilePiece) => piece.rows[piece.rows.length - 1]?.dropMm ?? 0;

/** Of the pieces over a level, the one that is widest there. */
function widestAt(plan: PlanFile, name: string): FilePiece {
  const { dropMm } = levelOf(plan, name);
  const width = (piece: FilePiece) => {
    const row = rowAt(piece.rows, dropMm);
    return row === undefined ? 0 : row.endMm - row.startMm;
  };
  const found = [...plan.pieces].sort((p, q) => width(q) - width(p))[0];
  if (found === undefined || width(found) === 0) throw new Error(`no piece over the ${name}`);
  return found;
}

describe("choosing the form (common practice, no source)", () => {
  const misses = formTables.filter((table) => table.id === "misses" || table.id === "womens");

  test("a form is chosen smaller than the body, and as large as that allows", () => {
    let chosen = 0;
    for (const one of people(16)) {
      for (const table of misses) {
        const [best, ...others] = chooseForm(one.body, table, one.batting);
        if (best === undefined || best.shortfallTotal > 0) continue;
        chosen++;
        // Padding adds and nothing takes away: with no shortfall, every size that needs less padding has one.
        for (const other of others) {
          if (other.shortfallTotal === 0) expect(other.paddingTotal).toBeGreaterThanOrEqual(best.paddingTotal);
        }
        const plan = planOf(one.body, best.measurements);
        for (const level of plan.levels) expect(level.form.girthMm).toBeLessThanOrEqual(level.body.girthMm + 3);
      }
    }
    expect(chosen).toBeGreaterThan(5);
  });

  test("where every size is too large somewhere, the one that is too large by least comes first", () => {
    for (const one of people(20)) {
      for (const table of misses) {
        const totals = chooseForm(one.body, table, one.batting).map((ranked) => ranked.shortfallTotal as number);
        expect([...totals].sort((p, q) => p - q)).toEqual(totals);
      }
    }
  });
});

describe("the waist (common practice, no source)", () => {
  test("with no arcs measured, a gain goes about twice as much to the front as to the back", () => {
    for (const gain of [40, 89, 150, 203]) {
      const { predicted, form: bare } = levelOf(planOf({ ...body, waistGirth: 711 + gain }), "waist");
      const [front, back] = [predicted.frontArcMm - bare.frontArcMm, predicted.backArcMm - bare.backArcMm];
      expect(front / back).toBeGreaterThan(1.6);
      expect(front / back).toBeLessThan(2.5);
    }
  });

  test("a waist that must gain 8 in is an everyday case: met, in about sixteen pieces at most, by any batting", () => {
    for (const layer of [3, 6, 10]) {
      const plan = planOf({ bustGirth: 960, waistGirth: 711 + 203.2, fullHipGirth: 1020 }, form, layer);
      expect(checkPlan(plan)).toEqual([]);
      expect(plan.shortfalls).toEqual([]);
      expect(plan.pieces.length).toBeLessThanOrEqual(16);
      expect(Math.abs(levelOf(plan, "waist").predicted.girthMm - 914.2)).toBeLessThanOrEqual(3);
    }
  });

  test("its wider layer starts just under the bra and blends down; the hip layer starts below that", () => {
    const plan = planOf(body);
    const [underbust, waist] = [levelOf(plan, "underbust").dropMm, levelOf(plan, "waist").dropMm];
    const waistLayer = widestAt(plan, "waist");
    // The edge is pulled thin upwards over the feather, so the layer itself begins a feather below its top.
    expect(Math.abs(top(waistLayer) + waistLayer.featherMm - underbust)).toBeLessThan(40);
    expect(bottom(waistLayer)).toBeGreaterThan(waist + 20);
    const hipLayer = widestAt(plan, "fullHip");
    expect(top(hipLayer)).toBeGreaterThan(top(waistLayer));
    expect(top(hipLayer)).toBeGreaterThan(waist);
  });
});

describe("the bust (common practice, no source)", () => {
  test("a full bust stays full: filled most at the apexes, and the tape meets girth and front arc over it", () => {
    const plan = planOf({ ...body, bustGirth: 1040, bustFrontArc: 590, underbustGirth: 840, apexToApex: 200 });
    const { predicted } = levelOf(plan, "bust");
    expect(Math.abs(predicted.girthMm - 1040)).toBeLessThanOrEqual(3);
    expect(Math.abs(predicted.frontArcMm - 590)).toBeLessThanOrEqual(3);
    const [atApex, atCentre, atSide] = [
      stackAt(plan, "bust", 100),
      stackAt(plan, "bust", 0),
      stackAt(plan, "bust", 240),
    ];
    expect(atApex).toBeGreaterThan(atCentre);
    expect(atApex).toBeGreaterThan(atSide);
    expect(stackAt(plan, "bust", -100)).toBeCloseTo(atApex, 0);
  });
});

describe("the high hip (common practice, no source)", () => {
  test("front and back are checked apart: a full front with a flat seat is padded in front only", () => {
    const plan = planOf({
      ...body,
      highHipFrontArc: 510,
      highHipBackArc: 420,
      fullHipFrontArc: 520,
      fullHipBackArc: 500,
    });
    const level = levelOf(plan, "highHip");
    expect(Math.abs(level.predicted.frontArcMm - 510)).toBeLessThanOrEqual(3);
    expect(Math.abs(level.predicted.backArcMm - 420)).toBeLessThanOrEqual(3);
    expect(stackAt(plan, "highHip", 0)).toBeGreaterThan(10);
    expect(stackAt(plan, "highHip", level.form.girthMm / 2)).toBeLessThan(3);
  });

  test("it lies where it was measured, 3 in below a navel that lies 3 in below the waist; unmeasured, halfway to the full hip", () => {
    const drops = (waistToHighHip?: number) => {
      const lengths = {
        bustGirth: mm(960),
        waistGirth: mm(800),
        fullHipGirth: mm(1020),
        napeToWaist: mm(400),
        waistToFullHip: mm(230),
      };
      const { waist, highHip } = torsoReadings(
        waistToHighHip === undefined ? lengths : { ...lengths, waistToHighHip: mm(waistToHighHip) },
      ).levels;
      return { below: highHip.drop.value - waist.drop.value, kind: highHip.drop.kind };
    };
    expect(drops(150)).toEqual({ below: expect.closeTo(150, 6), kind: "measured" });
    expect(drops()).toEqual({ below: expect.closeTo(115, 6), kind: "estimated" });
  });
});
