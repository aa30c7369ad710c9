import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { apply } from "../../../src/app/session/commands";
import { derivation } from "../../../src/app/session/derived";
import { lengthOfRoll } from "../../../src/app/supplies/battingLayout";
import { classSupplies, letter, shareOfClass } from "../../../src/app/supplies/classSupplies";
import { costOf } from "../../../src/app/supplies/cost";
import { battingSupplies, coverSupply, notions } from "../../../src/app/supplies/fittingSupplies";
import { clothRows } from "../../../src/core/supplies/clothRows";
import { clothWidths } from "../../../src/core/supplies/goods";
import { partFrame } from "../../../src/core/pattern/patternPart";
import { type Fitting, writeFitting } from "../../../src/document/fitting";
import { pieceToFile } from "../../../src/document/pieceFile";
import { readFitting, readFittingText } from "../../../src/document/readFitting";
import { fittingFileOf, people } from "../../tools/people";

const demo = fittingOf(readFileSync(resolve(import.meta.dirname, "../../../shared/demo-fitting.json"), "utf8"));
const class8 = people(8, 900).map((one) => fittingOf(JSON.stringify(fittingFileOf(one))));

function fittingOf(text: string): Fitting {
  const read = readFittingText(text);
  if (!read.ok) throw new Error("no fitting");
  return read.value;
}

function planOf(fitting: Fitting) {
  const { planning } = derivation()(fitting);
  if (planning.kind !== "planned") throw new Error("no plan");
  return planning.plan;
}

function coverOf(fitting: Fitting) {
  const derived = derivation()(fitting);
  const step = derived.step();
  if (step === null || derived.input === null) throw new Error("no step");
  const cover = coverSupply(step, derived.input, fitting);
  if (cover === null) throw new Error("no cover");
  return { step, input: derived.input, cover };
}

/** Broken on purpose: pinned pieces laid all the same. Seen to fail. */
test("what is cut or pinned is not laid again, even when it was taken off", () => {
  const { pieces } = planOf(demo);
  const [first, second, third, fourth] = pieces;
  if (first === undefined || second === undefined || third === undefined || fourth === undefined)
    throw new Error("too few pieces");
  const at = "2026-01-10T10:00:00.000Z";
  const worked = (
    [
      { did: "cut", pieceId: first.id, at },
      { did: "pinned", piece: pieceToFile(second, "", ""), at },
      { did: "unpinned", pieceId: second.id, at },
      { did: "pinned", piece: pieceToFile(fourth, "", ""), at },
    ] as const
  ).reduce((fitting, entry) => apply(fitting, { does: "record", entry }), demo);
  const laid = (fitting: Fitting) =>
    battingSupplies(pieces, fitting).flatMap(({ layout }) => layout.sheets.flatMap(({ shapes }) => shapes));
  const of = (id: string, fitting: Fitting) => laid(fitting).filter((shape) => shape.id.startsWith(id)).length;
  expect(of(first.id, demo)).toBe(first.cut.length);
  expect(of(first.id, worked)).toBe(0);
  expect(of(second.id, worked)).toBe(0);
  expect(of(fourth.id, worked)).toBe(0);
  expect(of(third.id, worked)).toBe(third.cut.length);
});

describe("the cloth of the cover", () => {
  /** Broken on purpose: panels turned to lie shorter; the part above the bust line left out. Seen to fail. */
  test("every panel lies along the grain, apart from the others, within the cloth, with room above the bust line", () => {
    for (const fitting of [demo, ...class8]) {
      const { cover } = coverOf(fitting);
      const { panels, length, tooWide } = cover.rows;
      expect(tooWide).toEqual([]);
      expect(panels.length).toBe(cover.parts.length);
      expect(panels.length).toBeGreaterThanOrEqual(8);
      for (const [i, one] of panels.entries()) {
        const part = cover.parts.find(({ id }) => id === one.id);
        if (part === undefined) throw new Error("no part");
        expect(one.width).toBeCloseTo(partFrame(part).width, 6);
        expect(one.height - partFrame(part).height).toBeCloseTo(cover.above, 6);
        expect(one.x).toBeGreaterThan(0);
        expect(one.x + one.width).toBeLessThan(clothWidths["150-cm"]);
        expect(one.y + one.height).toBeLessThan(length + 0.001);
        for (const other of panels.slice(i + 1)) {
          const clear = Math.max(
            one.x - other.x - other.width,
            other.x - one.x - one.width,
            one.y - other.y - other.height,
            other.y - one.y - one.height,
          );
          expect(clear).toBeGreaterThan(-0.001);
        }
      }
      expect(cover.above).toBeGreaterThan(200);
    }
  });

  test("narrow cloth takes more rows, and a panel wider than it is named", () => {
    const wide = coverOf(demo).cover;
    const narrow = coverOf(apply(demo, { does: "changeSupplies", supplies: { cover: { width: "115-cm" } } })).cover;
    expect(wide.rows.rows).toBe(1);
    expect(narrow.rows.rows).toBeGreaterThan(1);
    expect(narrow.rows.length).toBeGreaterThan(wide.rows.length);
    expect(clothRows([{ id: "wide", width: 1200, height: 10 }], 1143).tooWide).toHaveLength(1);
    expect(clothRows([], 1143)).toMatchObject({ rows: 0, length: 0, panels: [] });
  });
});

/** Broken on purpose: the opening asked for of knit too; one elastic left out. Seen to fail. */
test("notions follow the plan and the cloth", () => {
  const { step, input, cover } = coverOf(demo);
  const own = notions(step, input, demo, battingSupplies(step.plan.pieces, demo), cover);
  expect(own.pins).toBe(12 * step.plan.pieces.length);
  expect(own.opening).toBeNull();
  const girths = step.plan.levels.reduce((sum, { name }) => sum + step.replan.finished[name].girth.value, 0);
  expect(own.markingElastic).toBeGreaterThan(girths);
  expect(own.styleTape).toBeGreaterThan(2 * step.replan.finished.bust.girth.value);
  const woven = apply(demo, { does: "changeSupplies", supplies: { cover: { cloth: "woven" } } });
  expect(notions(step, input, woven, [], coverOf(woven).cover).opening).toBeGreaterThan(400);
});

describe("prices", () => {
  const layouts = battingSupplies(planOf(demo).pieces, demo);
  const length = lengthOfRoll((layouts[0] as (typeof layouts)[number]).layout);

  /** Broken on purpose: a price for a packet counted by length; yards taken for meters. Seen to fail. */
  test("are added up for what they are typed for, and say when something has none", () => {
    expect(costOf(undefined, layouts, 1000)).toBeNull();
    expect(costOf({ notions: 20 }, layouts, 1000)).toEqual({ sum: 20, isWhole: false });
    const whole = costOf(
      {
        building: { price: { amount: 8, per: "yard" } },
        cover: { price: { amount: 10, per: "meter" } },
        notions: 20.5,
      },
      layouts,
      1500,
    );
    expect(whole?.isWhole).toBe(true);
    expect(whole?.sum).toBeCloseTo((8 * length) / 914.4 + 15 + 20.5, 6);
    expect(costOf({ building: { price: { amount: 8, per: "packet" } } }, layouts, null)).toBeNull();
    const packets = { building: { good: "packet-45x60-in", price: { amount: 9, per: "packet" } } } as const;
    const inPackets = battingSupplies(planOf(demo).pieces, { ...demo, supplies: packets });
    expect(costOf(packets, inPackets, null)?.sum).toBe(9 * (inPackets[0]?.layout.sheets.length ?? 0));
  });

  test("and choices are kept in the file, and a file with others is refused with a place", () => {
    const supplies = {
      building: { good: "packet-81x96-in", price: { amount: 12.5, per: "packet" } },
      cover: { cloth: "woven", width: "115-cm" },
      notions: 3,
    } as const;
    const kept = apply(demo, { does: "changeSupplies", supplies });
    const read = readFitting(JSON.parse(JSON.stringify(writeFitting(kept))));
    expect(read).toMatchObject({ ok: true, value: { supplies } });
    const wrong = readFitting({ ...writeFitting(kept), supplies: { building: { good: "roll-7-in" } } });
    expect(wrong).toMatchObject({
      ok: false,
      problem: [{ path: ["supplies", "building", "good"], code: "notAllowed" }],
    });
    expect("supplies" in writeFitting(demo)).toBe(false);
  });
});

describe("a class in sum", () => {
  const shares = class8.map((fitting, i) => shareOfClass(fitting, i)).filter((share) => share !== null);

  /** Broken on purpose: layers of the last fitting left out; the notions of the first counted for all. Seen to fail. */
  test("lays every layer of everybody, takes no more than each alone, and adds up the rest", () => {
    expect(shares.length).toBe(8);
    const sum = classSupplies(shares, "mm");
    const laid = sum.battings.flatMap(({ layout }) => layout.sheets.flatMap(({ shapes }) => shapes));
    const all = class8.flatMap((fitting) =>
      battingSupplies(planOf(fitting).pieces, fitting).flatMap(({ shapes }) => shapes),
    );
    expect(laid.length).toBe(all.length);
    expect(new Set(laid.map(({ label }) => label.replace(/[\d.]+/, "")))).toEqual(
      new Set(shares.map((_, i) => letter(i))),
    );
    const alone = class8.flatMap((fitting) =>
      battingSupplies(planOf(fitting).pieces, fitting).map(({ layout }) => lengthOfRoll(layout)),
    );
    const together = sum.battings.reduce((total, { layout }) => total + lengthOfRoll(layout), 0);
    expect(together).toBeLessThanOrEqual(alone.reduce((total, one) => total + one, 0));
    expect(sum.pins).toBe(12 * class8.reduce((total, fitting) => total + planOf(fitting).pieces.length, 0));
    expect(sum.cloths.reduce((total, { covers }) => total + covers, 0)).toBe(8);
  });

  test("a fitting without measurements has no share", () => {
    expect(shareOfClass({ ...demo, body: {} }, 0)).toBeNull();
    expect([0, 25, 26, 51, 52].map(letter)).toEqual(["A", "Z", "AA", "AZ", "BA"]);
  });
});
