import { describe, expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { apply, type Command } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { levelNames } from "../../src/core/body/vocabulary";
import type { Fitting } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { sampleBody, sampleForm, sampleInches } from "../support/sample";

/** A sample person, padded to the end, and measured again months later. */
const bare: Fitting = { ...demoFitting, work: [] };

function planned(fitting: Fitting) {
  const { planning, progress } = derivation()(fitting);
  if (planning.kind !== "planned" || progress === null) throw new Error("there is a plan");
  return { plan: planning.plan, progress };
}

const first = planned(bare);
const padded: Fitting = first.plan.pieces.reduce(
  (fitting, piece) =>
    apply(fitting, {
      does: "record",
      entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at: "2026-01-10T10:00:00.000Z" },
    }),
  bare,
);
const waist = (text: string): Command => ({ does: "measure", whose: "body", name: "waistGirth", text });
/** The waist of the same person months later. */
const larger = sampleBody("waistGirth", 1.75);
const replans = ({ work }: Fitting): number => work.filter(({ did }) => did === "replanned").length;

describe("a body measured again under pinned pieces", () => {
  const later = planned(apply(padded, waist(larger)));

  test("keeps every pinned piece and asks for the change alone", () => {
    expect(later.progress.pinnedCount).toBe(first.plan.pieces.length);
    const left = later.progress.pieces.filter(({ pinned }) => !pinned).map(({ piece }) => piece);
    expect(left.length).toBeGreaterThan(0);
    expect(left.length).toBeLessThanOrEqual(first.plan.pieces.length / 2);
    const pinnedIds = new Set(first.plan.pieces.map(({ id }) => id));
    expect(left.filter(({ id }) => pinnedIds.has(id))).toEqual([]);
  });

  test("goes on from what the tape is expected to read, and ends at the new waist", () => {
    const before = first.plan.pieces.at(-1)?.readingsAfter;
    for (const level of levelNames) {
      const now = later.progress.now[level].girth.value;
      // 5 mm is what the first plan and the calibration may differ by over the same pieces.
      expect(Math.abs(now - (before?.[level].girth ?? 0))).toBeLessThanOrEqual(5);
    }
    const after = later.plan.pieces.at(-1)?.readingsAfter.waist.girth ?? 0;
    expect(Math.abs(after - (sampleInches("waistGirth") + 1.75) * 25.4)).toBeLessThanOrEqual(5);
  });

  test("says so once, however many readings are taken anew", () => {
    const once = apply(padded, waist(larger));
    const twice = apply(once, {
      does: "measure",
      whose: "body",
      name: "bustGirth",
      text: sampleBody("bustGirth", 0.5),
    });
    expect([replans(padded), replans(once), replans(twice)]).toEqual([0, 1, 1]);
    const pinned = apply(twice, {
      does: "record",
      entry: { did: "pinned", piece: pieceToFile(first.plan.pieces[0] as never, "", ""), at: "2026-06-01" },
    });
    expect(replans(apply(pinned, waist(sampleBody("waistGirth", 2.25))))).toBe(2);
  });

  test("is not said where nothing is pinned, or nothing of the plan changed", () => {
    expect(replans(apply(bare, waist(larger)))).toBe(0);
    const all = first.plan.pieces.map(({ id }) => id);
    const off = all.reduce(
      (fitting, pieceId) => apply(fitting, { does: "record", entry: { did: "unpinned", pieceId, at: "2026-02-01" } }),
      padded,
    );
    expect(replans(apply(off, waist(larger)))).toBe(0);
    const others: readonly Command[] = [
      waist(sampleBody("waistGirth")),
      waist("not a length"),
      { does: "changeUnit", unit: "cm" },
      { does: "rename", title: "Somebody" },
      { does: "nameBatting", role: "building", name: "wool" },
      {
        does: "chooseForm",
        table: padded.form.table ?? null,
        size: padded.form.size === undefined ? null : String(padded.form.size),
      },
    ];
    for (const command of others) expect(replans(apply(padded, command)), command.does).toBe(0);
  });

  test("is said for the form and the batting as well", () => {
    const form: Command = { does: "measure", whose: "form", name: "waistGirth", text: sampleForm("waistGirth", 1.25) };
    const layer: Command = { does: "setLayer", role: "building", text: "5 mm" };
    expect([form, layer].map((command) => replans(apply(padded, command)))).toEqual([1, 1]);
  });
});
