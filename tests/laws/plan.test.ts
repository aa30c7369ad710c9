import fc from "fast-check";
import { afterAll, describe, expect, test, vi } from "vitest";
import type { Measurements } from "../../src/core/body/measurements";
import { mm, ratio } from "../../src/core/units";
import { formTables } from "../../src/document/formTables";
import { type Person, person } from "../tools/people";
import { agreementMm, bodyAgreementMm, checkRebuilt, rebuildReadings } from "../tools/planChecker";
import {
  type CheckedLevelName,
  checkedLevelNames,
  type FileLevel,
  type FileLayer,
  type FilePiece,
  type FileRow,
  type PlanFile,
  readingKeys,
} from "../tools/planCheckerFile";
import { bareOutline } from "../tools/planCheckerOutline";
import { statedRules } from "../tools/planCheckerTape";
import { fromAnchor, pieceThickness, rowAt } from "../tools/planCheckerThickness";
import { anybody, chances, changed, planFor } from "./planned";

/**
 * The laws of the plan over made-up people (the numbering is that of the table of laws in tests/README.md). Each says
 * how it was broken on purpose, in a copy of the core, and seen to fail.
 */
const stemOf = { girthMm: "Girth", frontArcMm: "FrontArc", backArcMm: "BackArc" } as const;
const outermost = ({ layers }: FilePiece): FileLayer => layers[layers.length - 1] as FileLayer;
const thicknessOf = ({ layers }: FilePiece) => sum(layers.map(({ thicknessMm }) => thicknessMm));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Many plans to a test, and other work may share the machine. */
vi.setConfig({ testTimeout: 120_000 });

/** Broken on purpose: every target girth 4 mm more than the larger of body and form. Seen to fail with the first person. */
describe("law 1: a body that reads like its form", () => {
  test("needs no piece, no re-marked seam, and has no shortfall", () => {
    fc.assert(
      fc.property(anybody, ({ body, batting }) => {
        const plan = planFor({ body, form: body, batting });
        expect(plan.pieces).toEqual([]);
        expect(plan.shortfalls).toEqual([]);
        expect(plan.seamShifts).toEqual([]);
      }),
      chances(20),
    );
  });

  /** Broken on purpose: the body's heights estimated as if there were no form. Seen to fail for every table with a nape-to-waist. */
  test.each(formTables.map(({ id, sizes }) => [id, sizes] as const))(
    "nor does a body of whom only the girths were read, on any size of the table %s",
    (_id, sizes) => {
      for (const { measurements } of sizes) {
        // Not every table has a full hip, which every plan needs.
        const form = changed({ fullHipGirth: mm((measurements.bustGirth ?? 0) + 40) }, measurements);
        const { bustGirth, underbustGirth, waistGirth, fullHipGirth } = form;
        const body = changed({}, { bustGirth, underbustGirth, waistGirth, fullHipGirth });
        expect(
          planFor({ body, form, batting: { name: "", layerThickness: mm(6), relativeDeviation: ratio(0.2) } }).pieces,
        ).toEqual([]);
      }
    },
  );
});

/** Broken on purpose: the shaping loop stopped at 9 mm instead of 0.4; the feather drawn out by a third when the stack is
 * read; the body's front and back arc swapped. Each seen to fail, the second by the outside checker alone. */
describe("law 2: the tape over the finished stack reads the body", () => {
  let met = 0;
  const misses: number[] = [];
  afterAll(() => {
    expect(met).toBeGreaterThan(200);
    const sorted = misses.toSorted((a, b) => a - b);
    expect(sorted[Math.floor(0.95 * sorted.length)]).toBeLessThanOrEqual(bodyAgreementMm);
  });

  test("within 3 mm at every girth and arc that has no shortfall, by the plan and by the outside checker", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        for (const level of plan.levels) {
          for (const key of readingKeys) {
            if (level.form[key] <= level.body[key]) misses.push(Math.abs(level.predicted[key] - level.body[key]));
            if (plan.shortfalls.some((shortfall) => shortfall.level === level.name && `${shortfall.what}Mm` === key))
              continue;
            expect(Math.abs(level.predicted[key] - level.body[key])).toBeLessThanOrEqual(bodyAgreementMm);
            met++;
          }
        }
        expect(checkRebuilt(plan, rebuildReadings(plan))).toEqual([]);
      }),
      chances(20),
    );
  });

  /** Found among the first 1200 people: a tall waist on a short torso, a hip or an underbust that its neighbours took over. */
  const onceWrong = [59, 104, 123, 228, 591, 614, 720, 756, 1013, 1016, 1018, 1117, 1131, 1132, 1147];

  test.each(onceWrong)("holds, or says what stays short, for person %i who once was planned wrong", (seed) => {
    const plan = planFor(person(seed));
    for (const level of plan.levels) {
      for (const key of readingKeys) {
        if (plan.shortfalls.some(({ level: at, what }) => at === level.name && `${what}Mm` === key)) continue;
        expect(Math.abs(level.predicted[key] - level.body[key]), `${level.name} ${key}`).toBeLessThanOrEqual(
          bodyAgreementMm,
        );
      }
    }
  });

  test("and the body of the plan is the body that was measured", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        for (const level of planFor(one).levels) {
          for (const key of readingKeys) {
            const typed = one.body[`${level.name as CheckedLevelName}${stemOf[key]}`];
            if (typed === undefined) continue;
            // Front and back arc may miss the girth by a few millimetres, which the plan shares between them.
            expect(Math.abs(level.body[key] - typed)).toBeLessThanOrEqual(key === "girthMm" ? 0.05 : 3.05);
          }
        }
      }),
      chances(20),
    );
  });
});

/** How far the bare outline turns under the widest layer of a piece (radians). */
function turningAngle(level: FileLevel, piece: FilePiece): number {
  const outline = bareOutline(level.form);
  const { points } = outline;
  const row = rowAt(outermost(piece).rows, level.depthBelowNapeMm);
  if (row === undefined) return 0;
  const covered = (arcLength: number) => {
    const place = fromAnchor(arcLength, piece.anchor, outline);
    return place >= row.startMm && place <= row.endMm;
  };
  return sum(
    points.slice(1).map((q, i) => {
      const p = points[i] as typeof q;
      if (!covered((p.arcLength + q.arcLength) / 2)) return 0;
      return Math.abs(
        Math.atan2(p.normalX * q.normalY - p.normalY * q.normalX, p.normalX * q.normalX + p.normalY * q.normalY),
      );
    }),
  );
}

/** Broken on purpose: the tape standing off one and a half times the padding; back pieces taking their thickness away. Seen to fail. */
describe("law 3: adding a piece", () => {
  let gains = 0;
  afterAll(() => expect(gains).toBeGreaterThan(200));

  /**
   * Beyond the turning angle the tape may bridge from a blunt end to what lies beside it. The most seen in 60 plans was
   * 0.38 of the thickness, over a narrow tuning layer on a flat front; half is allowed, and half a millimeter of rounding.
   */
  const endEffect = 0.5;

  /** Over other stacks the tape bridges from one to the next, and turns further around a layer's end: 1.19 at most over 150 people. */
  const endEffectOverStacks = 1.5;

  /** Two readings rounded to a tenth, and the bare form read off its curve where the stack is read off a fine chain of points. */
  const rounded = 0.25;

  test("never shortens a girth, an arc by no more than a tape can read, and adds at most its turning angle times its thickness", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        for (const level of plan.levels) {
          let before = level.form;
          for (const piece of plan.pieces) {
            const after = piece.readingsAfter[level.name as CheckedLevelName];
            const gain = after.girthMm - before.girthMm;
            expect(gain).toBeGreaterThanOrEqual(-rounded);
            if (before !== level.form) {
              const lifted = -1 - thicknessOf(piece) / 3;
              expect(after.frontArcMm - before.frontArcMm).toBeGreaterThanOrEqual(lifted);
              expect(after.backArcMm - before.backArcMm).toBeGreaterThanOrEqual(lifted);
            }
            expect(gain).toBeLessThanOrEqual(2 * Math.PI * thicknessOf(piece) + rounded);
            if (gain > 0.5) {
              gains++;
              const more = before === level.form ? endEffect : endEffectOverStacks;
              expect(gain).toBeLessThanOrEqual((turningAngle(level, piece) + more) * thicknessOf(piece) + 0.5);
            }
            before = { ...level.form, ...after };
          }
        }
      }),
      chances(20),
    );
  });
});

/** Broken on purpose: the tape standing off 2 % more than the padding. Seen to fail with the first person. */
describe("law 4: an even difference of one layer", () => {
  test("is one wrap, and adds 2 pi t to every girth and pi t to every front (Steiner)", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const { batting } = one;
        const t = batting.layerThickness;
        const form = evenBody(one);
        const wanted = Object.fromEntries(
          checkedLevelNames.flatMap((level) => [
            [`${level}Girth`, (form[`${level}Girth`] ?? 0) + 2 * Math.PI * t],
            [`${level}FrontArc`, (form[`${level}FrontArc`] ?? 0) + Math.PI * t],
          ]),
        );
        const plan = planFor({ body: changed(form, wanted), form, batting });
        expect(plan.pieces).toHaveLength(1);
        for (const { predicted, form: bare } of plan.levels) {
          expect(Math.abs(predicted.girthMm - bare.girthMm - 2 * Math.PI * t)).toBeLessThan(0.4);
          expect(Math.abs(predicted.frontArcMm - bare.frontArcMm - Math.PI * t)).toBeLessThan(0.3);
        }
        const row = rowAt(plan.pieces[0]?.layers[0]?.rows ?? [], plan.levels[2]?.depthBelowNapeMm ?? 0);
        expect((row?.endMm ?? 0) - (row?.startMm ?? 0)).toBeCloseTo(plan.levels[2]?.form.girthMm ?? 0, 0);
      }),
      chances(20),
    );
  });

  /** All five girths and front arcs of a body, and its heights, without left and right: what was not measured as the plan estimates it. */
  const evenBody = ({ body, batting }: Person): Measurements => {
    const { levels } = planFor({ body, form: body, batting });
    const readings = levels.flatMap(({ name, body: level }) => [
      [`${name}Girth`, level.girthMm],
      [`${name}FrontArc`, level.frontArcMm],
    ]);
    const heights = {
      shoulderToApex: body.shoulderToApex ?? 268,
      napeToWaist: body.napeToWaist ?? 375,
      waistToFullHip: body.waistToFullHip ?? 200,
      waistToHighHip: body.waistToHighHip ?? 100,
    };
    return changed({}, { ...Object.fromEntries(readings), ...heights });
  };
});

/** Broken on purpose: of a gain above 60 mm only a tenth of its share given to the front. Seen to fail. */
describe("law 5: a bigger belly, same everything else", () => {
  const bellyMm = 30;
  let grew = 0;
  afterAll(() => expect(grew).toBeGreaterThan(8));

  test("never gets less padding in front", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const grown = (names: readonly (keyof Measurements)[], by: number) =>
          Object.fromEntries(
            names.map((name) => [name, one.body[name] === undefined ? undefined : one.body[name] + by]),
          );
        const body = changed(one.body, {
          ...grown(["waistGirth", "waistFrontArc", "highHipGirth", "highHipFrontArc"], bellyMm),
          ...grown(
            ["waistLeftFrontArc", "waistRightFrontArc", "highHipLeftFrontArc", "highHipRightFrontArc"],
            bellyMm / 2,
          ),
        });
        const [slim, full] = [planFor(one), planFor({ ...one, body })];
        for (const at of [2, 3]) {
          expect(paddingInFront(full, at)).toBeGreaterThanOrEqual(paddingInFront(slim, at) - 0.5);
        }
        const isShort = [slim, full].some((plan) => plan.shortfalls.some(({ level }) => level === "waist"));
        if (isShort) return;
        grew++;
        expect(paddingInFront(full, 2)).toBeGreaterThan(paddingInFront(slim, 2));
      }),
      chances(20),
    );
  });

  /** The mean thickness over the front half of the bare form at a level (mm). */
  function paddingInFront(plan: PlanFile, at: number): number {
    const level = plan.levels[at] as FileLevel;
    const outline = bareOutline(level.form);
    const front = outline.points.filter((point) => point.y > 0);
    return sum(
      plan.pieces.map((piece) => {
        const thickness = pieceThickness(piece, level.depthBelowNapeMm, outline, statedRules.distance);
        return sum(front.map((point) => thickness(point.arcLength))) / front.length;
      }),
    );
  }
});

/** Seen to fail before it held: the back of a body measured left and right came out with other pieces than its mirror's. */
describe("law 6: mirror a person", () => {
  let uneven = 0;
  afterAll(() => expect(uneven).toBeGreaterThan(4));

  test("and the plan mirrors", () => {
    fc.assert(
      fc.property(
        anybody.filter(({ care, body }) => care === "left-and-right" || body.leftShoulderToApex !== undefined),
        (one) => {
          const plan = planFor(one);
          const other = planFor({ ...one, body: mirroredBody(one.body), form: mirroredBody(one.form) });
          if (one.care === "left-and-right") uneven++;
          expect(other.pieces).toHaveLength(plan.pieces.length);
          for (const piece of plan.pieces)
            expect(other.pieces.filter((twin) => mirrors(piece, twin)).length).toBeGreaterThanOrEqual(1);
          plan.levels.forEach((level, i) => {
            for (const key of readingKeys) {
              const miss = (other.levels[i]?.predicted[key] ?? Number.NaN) - level.predicted[key];
              expect(Math.abs(miss)).toBeLessThanOrEqual(agreementMm);
            }
          });
        },
      ),
      chances(8),
    );
  });

  /** An edge that is pinned by hand lies no truer than a hand measures a length (ISO 20685: 5 mm). */
  const outlineMm = 5;

  const mirroredBody = (measurements: Measurements): Measurements => {
    const other = (name: string) =>
      name.replace(
        /Left|Right|^left|^right/,
        (side) => ({ Left: "Right", Right: "Left", left: "right", right: "left" })[side] ?? side,
      );
    return Object.fromEntries(Object.entries(measurements).map(([name, value]) => [other(name), value]));
  };

  /** Start and end change places and sign, from center front as from center back. */
  function mirrors(piece: FilePiece, twin: FilePiece): boolean {
    if (piece.anchor !== twin.anchor || piece.layers.length !== twin.layers.length) return false;
    return piece.layers.every(({ rows }, k) => {
      const twinRows = twin.layers[k]?.rows ?? [];
      if (rows.length !== twinRows.length) return false;
      return rows.every((row, i) => {
        const other = twinRows[i] as FileRow;
        const differences = [
          row.depthBelowNapeMm - other.depthBelowNapeMm,
          row.startMm + other.endMm,
          row.endMm + other.startMm,
        ];
        return differences.every((difference) => Math.abs(difference) <= outlineMm);
      });
    });
  }
});

/** Broken on purpose: the prediction taken from the last piece but one; a piece hiding what lies beneath it. Seen to fail. */
describe("law 9: the order of pinning", () => {
  let stacks = 0;
  afterAll(() => expect(stacks).toBeGreaterThan(20));

  test("does not change the end: after the last piece the tape reads what it reads over the whole stack", () => {
    fc.assert(
      fc.property(anybody, (one) => {
        const plan = planFor(one);
        const last = plan.pieces[plan.pieces.length - 1];
        if (last === undefined) return;
        const backwards = plan.pieces.map((piece) => ({ ...piece, order: plan.pieces.length + 1 - piece.order }));
        const rebuilt = rebuildReadings({ ...plan, pieces: backwards });
        const forwards = rebuildReadings(plan);
        plan.levels.forEach(({ name, predicted }, i) => {
          stacks++;
          expect(last.readingsAfter[name as CheckedLevelName]).toEqual(predicted);
          const [end, otherEnd] = [forwards[i]?.whilePinning.at(-1), rebuilt[i]?.whilePinning.at(-1)];
          expect(otherEnd?.girthMm).toBeCloseTo(end?.girthMm ?? 0, 6);
          expect(Math.abs((otherEnd?.girthMm ?? 0) - predicted.girthMm)).toBeLessThan(1.5);
        });
      }),
      chances(8),
    );
  });
});
