import { describe, expect, test } from "vitest";
import { isConfirmed, levelWithReadings, padProgress, pieceGain } from "../../src/app/progress/padProgress";
import { levelNames } from "../../src/core/body/vocabulary";
import type { PlannedPiece } from "../../src/core/plan/plan";
import { mm } from "../../src/core/units";
import type { Fitting, WorkEntry } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { examplePlan as plan } from "../gallery/examplePlan";

const at = "2026-01-02T03:04:05.000Z";
const pinned = (piece: PlannedPiece): WorkEntry => ({ did: "pinned", piece: pieceToFile(piece, "", ""), at });
const unpinned = ({ id }: PlannedPiece): WorkEntry => ({ did: "unpinned", pieceId: id, at });
const measured = (readings: { readonly [name: string]: string }): WorkEntry => ({ did: "measured", readings, at });
const progress = (...work: readonly WorkEntry[]) =>
  padProgress(plan, { work, unit: "cm" } satisfies Pick<Fitting, "work" | "unit">);
const pieces = plan.pieces;
const last = pieces.length - 1;
const at0 = pieces[0] as PlannedPiece;

describe("before anything is pinned", () => {
  test("the first piece is next and every reading is the bare form's", () => {
    const { next, pinnedCount, now } = progress();
    expect(next?.id).toBe(at0.id);
    expect(pinnedCount).toBe(0);
    for (const level of levelNames) expect(now[level].girth.value).toBe(plan.bareForm[level].girth);
  });

  test("what is known of the bare form confirms nothing; what a tape reads does", () => {
    const kinds = new Set(levelNames.map((level) => progress().now[level].girth.kind));
    expect(kinds.has("read")).toBe(false);
    expect(levelNames.some((level) => isConfirmed(progress().now[level].girth))).toBe(false);
    expect(isConfirmed(progress(measured({ waistGirth: "80 cm" })).now.waist.girth)).toBe(true);
  });
});

describe("pinning", () => {
  test("piece after piece arrives at what the plan predicts, at every level and part", () => {
    const { now, next } = progress(...pieces.map(pinned));
    expect(next).toBeNull();
    for (const level of levelNames) {
      const wanted = pieces[last]?.readingsAfter[level];
      for (const part of ["girth", "frontArc", "backArc"] as const) {
        // A piece that moves a reading by less than half a millimeter does not touch it.
        expect(Math.abs(now[level][part].value - (wanted?.[part] ?? Number.NaN))).toBeLessThan(1);
      }
    }
  });

  test("and taking it off again is as if nothing had been done", () => {
    const { now, next } = progress(pinned(at0), unpinned(at0));
    expect(next?.id).toBe(at0.id);
    for (const level of levelNames) expect(now[level].girth.value).toBeCloseTo(plan.bareForm[level].girth, 9);
  });

  test("the gains of all pieces add up to the padding", () => {
    for (const level of levelNames) {
      const sum = pieces.reduce((total, piece) => total + pieceGain(plan, piece)[level].girth, 0);
      expect(sum).toBeCloseTo((pieces[last]?.readingsAfter[level].girth ?? 0) - plan.bareForm[level].girth, 6);
    }
  });
});

describe("a reading", () => {
  test("counts until a piece is pinned over that level, and then only what is expected is known", () => {
    const thick = pieces.findIndex((piece) => pieceGain(plan, piece).waist.girth > 1);
    expect(thick).toBeGreaterThan(0);
    const before = pieces.slice(0, thick).map(pinned);
    const read = progress(...before, measured({ waistGirth: "80 cm" }));
    expect(read.now.waist.girth).toEqual({ kind: "read", value: 800 });
    const piece = pieces[thick] as PlannedPiece;
    const after = progress(...before, measured({ waistGirth: "80 cm" }), pinned(piece));
    expect(after.now.waist.girth.kind).toBe("expected");
    expect(after.now.waist.girth.value).toBeCloseTo(800 + pieceGain(plan, piece).waist.girth, 6);
  });

  test("the last one of a place is the one that counts", () => {
    const { now } = progress(measured({ waistGirth: "80 cm" }), measured({ waistGirth: "81 cm" }));
    expect(now.waist.girth).toEqual({ kind: "read", value: 810 });
  });
});

describe("two of girth, front and back give the third", () => {
  const now = levelWithReadings(
    {
      girth: { kind: "expected", value: mm(800) },
      frontArc: { kind: "expected", value: mm(420) },
      backArc: { kind: "expected", value: mm(380) },
    },
    { girth: undefined, frontArc: undefined, backArc: undefined },
  );
  const none = { girth: undefined, frontArc: undefined, backArc: undefined };

  test("the third, once it is read too, takes no reading away, whatever the three come to", () => {
    const two = levelWithReadings(now, { ...none, girth: mm(810), frontArc: mm(430) });
    const three = levelWithReadings(two, { ...none, backArc: mm(390) });
    expect(three).toEqual({
      girth: { kind: "read", value: 810 },
      frontArc: { kind: "read", value: 430 },
      backArc: { kind: "read", value: 390 },
    });
    expect(levelWithReadings(two, { ...none, girth: mm(815) }).backArc).toEqual({ kind: "follows", value: 385 });
  });

  test("girth and front", () => {
    const after = levelWithReadings(now, { ...none, girth: mm(810), frontArc: mm(430) });
    expect(after.backArc).toEqual({ kind: "follows", value: 380 });
  });
  test("front and back", () => {
    const after = levelWithReadings(now, { ...none, frontArc: mm(430), backArc: mm(390) });
    expect(after.girth).toEqual({ kind: "follows", value: 820 });
  });
  test("a girth alone shares its news evenly, and says that this is only expected", () => {
    const after = levelWithReadings(now, { ...none, girth: mm(820) });
    expect(after.frontArc).toEqual({ kind: "expected", value: 430 });
    expect(after.backArc).toEqual({ kind: "expected", value: 390 });
  });
  test("a front alone leaves the back no surer than the girth", () => {
    const after = levelWithReadings(now, { ...none, frontArc: mm(430) });
    expect(after.backArc).toEqual({ kind: "expected", value: 370 });
  });
  test("nothing read changes nothing", () => {
    expect(levelWithReadings(now, none)).toBe(now);
  });
});
