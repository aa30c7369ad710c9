import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { apply } from "../../../src/app/session/commands";
import { derivation } from "../../../src/app/session/derived";
import { lengthOfRoll } from "../../../src/app/supplies/battingLayout";
import { letters } from "../../../src/app/patterns/letters";
import { classSupplies, shareOfClass } from "../../../src/app/supplies/classSupplies";
import { coverOfStep } from "../../../src/app/patterns/coverOfStep";
import { chosenCloth } from "../../../src/app/steps/chosenCloth";
import { costOf } from "../../../src/app/supplies/cost";
import { battingSupplies, coverSupply, notions } from "../../../src/app/supplies/fittingSupplies";
import { armParts } from "../../../src/core/arm/armParts";
import { coverParts } from "../../../src/core/cover/coverParts";
import { usualAllowances } from "../../../src/core/cover/cuttingLine";
import { clothRows } from "../../../src/core/supplies/clothRows";
import { clothWidths } from "../../../src/core/supplies/goods";
import { partFrame } from "../../../src/core/pattern/patternPart";
import {
  type CoverCloth as CoverKind,
  type Fitting,
  type FormKind,
  type WorkEntry,
  writeFitting,
} from "../../../src/document/fitting";
import { formKinds } from "../../../src/document/fittingLimits";
import { pieceToFile } from "../../../src/document/pieceFile";
import { readFitting, readFittingText } from "../../../src/document/readFitting";
import { classSuppliesLines, clothSentence, notionLines } from "../../../src/text/supplies";
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
  return { step, input: derived.input, cover: coverSupply(step, derived.input, fitting) };
}

/** Broken on purpose: pinned pieces laid all the same. Seen to fail. */
test("what is cut or pinned is not laid again, even when it was taken off", () => {
  const plan = planOf(demo);
  const { pieces } = plan;
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
    battingSupplies(plan, fitting).flatMap(({ layout }) => layout.sheets.flatMap(({ shapes }) => shapes));
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
      const { cover, step, input } = coverOf(fitting);
      const ofCover = coverParts(coverOfStep(step, input, chosenCloth(fitting).cloth, fitting), usualAllowances);
      const ofArm = step.facts.arm === null ? [] : armParts(step.facts.arm).map(({ part }) => part);
      const { panels, length, tooWide } = cover.rows;
      expect(tooWide).toEqual([]);
      expect(panels.length).toBe(cover.ids.length);
      expect(cover.coverCount).toBe(ofCover.length);
      expect(cover.coverCount).toBeGreaterThanOrEqual(8);
      expect(cover.armCount).toBe(ofArm.length === 0 ? 0 : 4);
      for (const [i, one] of panels.entries()) {
        const part = [...ofCover, ...ofArm].find(({ id }) => id === one.id);
        if (part === undefined) throw new Error("no part");
        expect(one.width).toBeCloseTo(partFrame(part).width, 6);
        expect(one.height - partFrame(part).height).toBeCloseTo(part.kind === "arm" ? 0 : cover.above, 6);
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
  const own = notions(step, input, demo, battingSupplies(step.plan, demo), cover);
  expect(own.pins).toBe(12 * step.plan.pieces.length);
  expect(own.opening).toBeNull();
  const girths = step.plan.levels.reduce((sum, { name }) => sum + step.replan.finished[name].girth.value, 0);
  expect(own.markingElastic).toBeGreaterThan(girths);
  expect(own.styleTape).toBeGreaterThan(2 * step.replan.finished.bust.girth.value);
  const woven = apply(demo, { does: "changeSupplies", supplies: { cover: { cloth: "woven" } } });
  expect(notions(step, input, woven, [], coverOf(woven).cover).opening).toBeGreaterThan(400);
});

const whole = fittingOf(readFileSync(resolve(import.meta.dirname, "../../../shared/demo/whole-job.json"), "utf8"));
const at = "2026-01-10T10:00:00.000Z";
const recorded = (fitting: Fitting, ...entries: readonly WorkEntry[]): Fitting =>
  entries.reduce((one, entry) => apply(one, { does: "record", entry }), fitting);
const notionsOf = (fitting: Fitting) => {
  const { step, input, cover } = coverOf(fitting);
  const own = notions(step, input, fitting, battingSupplies(step.plan, fitting), cover);
  return { own, cover, lines: notionLines(own, "cm").join(" ").replaceAll("\u00a0", " ") };
};

describe("what is made over the padding", () => {
  /** Broken on purpose: the arm's parts not laid; counted although they are cut. Seen to fail. */
  test("the arm's fabric, thread, tab, cards and filling are counted until it is cut and filled", () => {
    const { cover, lines } = notionsOf(whole);
    expect(cover.armCount).toBe(4);
    expect(cover.ids.slice(-4)).toEqual(["upper", "under", "capDisc", "wristDisc"].map((name) => `leftArm-${name}`));
    expect(clothSentence("knit", "150-cm", cover, "cm")).toMatch(
      /The 8 panels and the 4 parts of the arm lie side by side/,
    );
    expect(lines).toContain("Loose fiber for the arm: about 150 to 250 g, estimated from memory.");
    expect(lines).toMatch(
      /For the arm’s tab: firm woven fabric, 18 cm × 12 cm\. For its ends: firm card, an oval 13 cm × 10 cm/,
    );
    const one = notionsOf(apply(whole, { does: "chooseArm", arm: { cut: "onePiece" } }));
    expect(one.cover.armCount).toBe(3);
    const cut = notionsOf(recorded(whole, { did: "made", what: "armCut", at }));
    expect([cut.cover.armCount, cut.own.arm, cut.own.isArmFilled]).toEqual([0, null, true]);
    expect(cover.sewn - cut.cover.sewn).toBeGreaterThan(2 * 480);
    const filled = notionsOf(
      recorded(whole, { did: "made", what: "armCut", at }, { did: "made", what: "armFilled", at }),
    );
    expect(filled.lines).not.toContain("fiber");
    expect(notionsOf(demo).lines).not.toMatch(/arm|fiber/);
  });

  /** Broken on purpose: panels laid whatever was chosen; a pulled knit as wide as the form. Seen to fail. */
  test("fabric is counted only for what is cut from it", () => {
    const chosen = (cloth: CoverKind, fitting = demo) =>
      coverOf(recorded(fitting, { did: "coverChosen", cloth, at })).cover;
    const none = chosen("none");
    expect([none.ids, none.rows.length, none.sewn]).toEqual([[], 0, 0]);
    expect(clothSentence("knit", "150-cm", none, "cm")).toBe("No fabric is needed: nothing is left to cut from it.");
    expect(chosen("none", whole)).toMatchObject({ coverCount: 0, armCount: 4 });
    const pulled = chosen("pulledKnit");
    const across = pulled.rows.panels.reduce((sum, { width }) => sum + width, 0);
    const largest = Math.max(...Object.values(coverOf(demo).step.replan.finished).map(({ girth }) => girth.value));
    expect(Math.abs(across - largest / 1.1 - 150)).toBeLessThan(1);
    expect(clothSentence("knit", "150-cm", pulled, "cm")).toContain(
      "The front and two backs of a cover that is pulled on",
    );
    expect(coverOf(recorded(demo, { did: "made", what: "coverCut", at })).cover.ids).toEqual([]);
    expect(chosen("woven").opening).not.toBeNull();
    expect(pulled.opening).toBeNull();
  });

  /** Broken on purpose: an under-cover for every form that was described. Seen to fail. */
  test("what the form asks for follows what it is made of", () => {
    const linesOf = (kind: FormKind | null, isShared = false) =>
      notionsOf(apply(demo, { does: "describeForm", kind, isShared, hasLegs: false })).lines;
    for (const kind of formKinds) {
      for (const isShared of [false, true])
        expect(linesOf(kind, isShared).includes("under-cover for the form"), kind).toBe(
          isShared || ["hard", "dials", "stretch"].includes(kind),
        );
      expect(linesOf(kind).includes("dials")).toBe(kind === "dials");
      expect(linesOf(kind).includes("Weights")).toBe(kind === "stretch");
    }
    expect(linesOf(null)).toContain("under-cover, if the form takes no pins");
    expect(linesOf("cloth")).not.toContain("under-cover");
  });
});

/** Broken on purpose: each turn as long as the first. Seen to fail. */
test("the strip of the trial is laid, a length for each turn around the waist, until the trial was made or passed over", () => {
  const plan = planOf(demo);
  const strips = (fitting: Fitting) =>
    battingSupplies(plan, fitting).flatMap(({ role, layout }) =>
      layout.sheets.flatMap(({ shapes }) =>
        shapes.filter(({ label }) => label === "T").map((shape) => ({ role, shape })),
      ),
    );
  const sizes = strips(demo).map(({ shape: { outline } }) => {
    const span = (of: "x" | "y") => Math.max(...outline.map((p) => p[of])) - Math.min(...outline.map((p) => p[of]));
    return [span("x"), span("y")].sort((a, b) => b - a);
  });
  const layer = plan.pieces[0]?.layers[0]?.thickness ?? 0;
  expect(strips(demo).map(({ role }) => role)).toEqual(["building", "building", "building"]);
  expect(sizes.every(([, height]) => Math.abs((height ?? 0) - 76) < 0.001)).toBe(true);
  const together = sizes.reduce((sum, [length = 0]) => sum + length, 0);
  expect(together).toBeCloseTo(3 * plan.bareForm.waist.girth + 9 * Math.PI * layer, 3);
  expect(strips(recorded(demo, { did: "trial", batting: "felt", level: "waist", at }))).toEqual([]);
});

describe("prices", () => {
  const layouts = battingSupplies(planOf(demo), demo);
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
    const inPackets = battingSupplies(planOf(demo), { ...demo, supplies: packets });
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
  const shares = class8.map((fitting, i) => shareOfClass(fitting, letters(i))).filter((share) => share !== null);

  /** Broken on purpose: layers of the last fitting left out; the notions of the first counted for all. Seen to fail. */
  test("lays every layer of everybody, takes no more than each alone, and adds up the rest", () => {
    expect(shares.length).toBe(8);
    const sum = classSupplies(shares, "mm");
    const withArm = classSupplies([...shares, ...[shareOfClass(whole, letters(8)) ?? []].flat()], "cm");
    expect([sum.armsCut, sum.armsFilled, withArm.armsCut, withArm.armsFilled]).toEqual([0, 0, 1, 1]);
    expect(withArm.cloths.reduce((total, one) => total + one.arms, 0)).toBe(1);
    expect(classSuppliesLines(withArm, "cm").join(" ")).toMatch(
      /for 9 covers and 1 arm:.*Arms, each with .*: 1\. Loose fiber/,
    );
    expect(classSuppliesLines(sum, "cm").join(" ")).not.toMatch(/[Aa]rm/);
    const laid = sum.battings.flatMap(({ layout }) => layout.sheets.flatMap(({ shapes }) => shapes));
    const all = class8.flatMap((fitting) => battingSupplies(planOf(fitting), fitting).flatMap(({ shapes }) => shapes));
    expect(laid.length).toBe(all.length);
    expect(new Set(laid.map(({ label }) => label.replace(/T?[\d.]*$/, "")))).toEqual(
      new Set(shares.map((_, i) => letters(i))),
    );
    const alone = class8.flatMap((fitting) =>
      battingSupplies(planOf(fitting), fitting).map(({ layout }) => lengthOfRoll(layout)),
    );
    const together = sum.battings.reduce((total, { layout }) => total + lengthOfRoll(layout), 0);
    expect(together).toBeLessThanOrEqual(alone.reduce((total, one) => total + one, 0));
    expect(sum.pins).toBe(12 * class8.reduce((total, fitting) => total + planOf(fitting).pieces.length, 0));
    expect(sum.cloths.reduce((total, { covers }) => total + covers, 0)).toBe(8);
  });

  test("a fitting without measurements has no share", () => {
    expect(shareOfClass({ ...demo, body: {} }, "A")).toBeNull();
    expect([0, 25, 26, 51, 52].map(letters)).toEqual(["A", "Z", "AA", "AZ", "BA"]);
  });
});
