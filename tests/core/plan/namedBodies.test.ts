import { describe, expect, test } from "vitest";
import type { Measurements } from "../../../src/core/body/measurements";
import type { levelNames } from "../../../src/core/body/vocabulary";
import { piecesThickness } from "../../../src/core/padding/layerThickness";
import { pieceExtent } from "../../../src/core/padding/piece";
import { basis } from "../../../src/core/plan/basis";
import type { Plan } from "../../../src/core/plan/plan";
import { planFitting } from "../../../src/core/plan/planFitting";
import { tapeQuarters } from "../../../src/core/tape/tape";
import { waistTape } from "../../../src/core/plan/waistTape";
import {
  batting,
  body,
  bodyWith,
  form,
  level,
  levelOf,
  meanThickness,
  levelSectionOf,
  untoldMisses,
} from "./examplePerson";

/**
 * Bodies that a paper pattern cannot follow, one to a test, with what a practitioner would look at: where the padding goes, at
 * what height, what the tape then reads, and what is said about that which padding cannot do.
 */
const planOf = (person: Measurements): Plan => planFitting({ body: person, form, batting });

const thickness = (person: Measurements, plan: Plan, name: (typeof levelNames)[number], ...parts: Parts) =>
  meanThickness(plan.pieces, levelSectionOf(person, name), ...parts);
type Parts = readonly ("front" | "back" | "left" | "right")[];

const piecesIn = (plan: Plan, ...zones: readonly string[]) => plan.pieces.filter(({ zone }) => zones.includes(zone));

const extent = (piece: Plan["pieces"][number]) => pieceExtent(piece);

/** Broken on purpose: a front arc read from the back; the hill behind laid in front. Seen to fail. */
describe("front and seat", () => {
  type Half = readonly [girth: number, front: number];
  /** A person with these girths and fronts from the waist down, whom the padding reaches everywhere. */
  const reached = (waist: Half, highHip: Half, fullHip: Half) => {
    const person = bodyWith({
      ...level("waist", ...waist),
      ...level("highHip", ...highHip),
      ...level("fullHip", ...fullHip),
    });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    expect(plan.shortfalls).toEqual([]);
    return { person, plan };
  };
  const thickerBy3 = (person: Measurements, plan: Plan, side: "front" | "back", other: "front" | "back") => {
    for (const name of ["waist", "highHip", "fullHip"] as const)
      expect(thickness(person, plan, name, side)).toBeGreaterThan(3 * thickness(person, plan, name, other));
  };

  test("a full front with a flat seat: all of it in front, hardly anything behind, and no seat made", () => {
    const { person, plan } = reached([770, 435], [915, 492], [965, 488]);
    thickerBy3(person, plan, "front", "back");
    expect(thickness(person, plan, "fullHip", "back")).toBeLessThan(3);
    const [inFront, behind] = [piecesIn(plan, "front"), piecesIn(plan, "back")];
    const layers = (pieces: typeof inFront) => pieces.reduce((sum, piece) => sum + piece.layers.length, 0);
    expect(layers(inFront)).toBeGreaterThan(layers(behind));
  });

  test("a flat front with a full seat: the other way about, and the most of it at the seat", () => {
    const { person, plan } = reached([705, 340], [895, 411], [1005, 450]);
    thickerBy3(person, plan, "back", "front");
    expect(thickness(person, plan, "fullHip", "back")).toBeGreaterThan(thickness(person, plan, "waist", "back"));
    expect(thickness(person, plan, "fullHip", "front")).toBeLessThan(4);
  });
});

/**
 * A tilted waist is compared with the form where its middle lies, half the tilt from its back; the waist tape is told
 * both heights. Broken on purpose: the two heights exchanged. Seen to fail.
 */
describe("a waist that tilts: the tape still reads right, and the waist lies where its middle is", () => {
  const tilted = (front: number, back: number) => {
    const person = bodyWith({ waistToFloorFront: front, waistToFloorBack: back });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    expect(plan.shortfalls).toEqual([]);
    const depthBelowNape = (one: Plan) => levelOf(one, "waist").depthBelowNape.value;
    return { tape: waistTape(plan, person).tilt, lower: depthBelowNape(plan) - depthBelowNape(planOf(bodyWith({}))) };
  };

  test("lower in front", () => {
    const { tape, lower } = tilted(1015, 1040);
    expect(tape).toEqual({ front: 1015, back: 1040 });
    expect(lower).toBeCloseTo(12.5);
  });

  test("lower behind", () => {
    const { tape, lower } = tilted(1040, 1022);
    expect(tape).toEqual({ front: 1040, back: 1022 });
    expect(lower).toBeCloseTo(-9);
  });
});

/**
 * The depth of the waist is 0.8623 of the tape down the back and a constant (Army 1988, see the estimates), so 58 mm of
 * tape are 50 mm of height. Broken on purpose: form and body paired level by level by name. Seen to fail.
 */
describe("a waist at another height than the form's", () => {
  const own = levelOf(planOf(body), "waist");

  test("5 cm higher: the waist is padded up there, and the form's own narrow place below it is filled out", () => {
    const person = bodyWith({ napeToWaist: 395 - 58, waistToHighHip: 130, waistToFullHip: 245 });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    const waist = levelOf(plan, "waist");
    expect(waist.depthBelowNape.value).toBeCloseTo(own.depthBelowNape.value - 50, 0);
    // The form is wider there than at its own waist, so a plan by names would pad too much.
    expect(waist.form.girth.value).toBeGreaterThan(own.form.girth.value + 10);
    expect(waist.predicted.girth).toBeLessThan(753);
    // At the form's own waist the body already widens to the hip: more padding there than at the body's waist.
    const from = basis({ body: person, form });
    const outline = { depth: own.depthBelowNape.value, outline: levelSectionOf(body, "waist").outline };
    const [atForms, atBodys] = [outline, from.levelSections[2] as typeof outline].map((levelSection) =>
      meanThickness(plan.pieces, levelSection, "front"),
    );
    expect(atForms).toBeGreaterThan((atBodys ?? 0) - 0.5);
    expect(levelOf(plan, "fullHip").depthBelowNape.value).toBeCloseTo(
      levelOf(planOf(body), "fullHip").depthBelowNape.value - 5,
      0,
    );
  });

  test("5 cm lower: compared with the form half way to its high hip, so little is wanted there, and most above", () => {
    const person = bodyWith({ napeToWaist: 395 + 58, waistToHighHip: 70, waistToFullHip: 150 });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    const waist = levelOf(plan, "waist");
    expect(waist.depthBelowNape.value).toBeCloseTo(own.depthBelowNape.value + 50, 0);
    expect(waist.form.girth.value).toBeGreaterThan(own.form.girth.value + 50);
    const above = { depth: own.depthBelowNape.value, outline: levelSectionOf(body, "waist").outline };
    expect(meanThickness(plan.pieces, above, "front")).toBeGreaterThan(thickness(person, plan, "waist", "front"));
  });

  test("5 cm lower and slim: the form is too large there, which names alone would never show", () => {
    const person = bodyWith({
      ...level("waist", 700, 360),
      napeToWaist: 395 + 58,
      waistToHighHip: 70,
      waistToFullHip: 150,
    });
    const plan = planOf(person);
    const tooLarge = plan.shortfalls.find(({ level: name, what }) => name === "waist" && what === "girth");
    expect(tooLarge?.sense).toBe("tooLarge");
    expect(tooLarge?.amount).toBeGreaterThan(15);
    expect(untoldMisses(plan)).toEqual([]);
  });
});

/** Broken on purpose: the left cup given the right one's depth; the front split evenly. Seen to fail. */
describe("the bust", () => {
  const cups = (plan: Plan) => ({ left: piecesIn(plan, "leftCup"), right: piecesIn(plan, "rightCup") });
  const middle = (piece: Plan["pieces"][number]) => (extent(piece).top + extent(piece).bottom) / 2;
  test("two unequal breasts, the left fuller and lower: each cup is filled for itself, at its own apex", () => {
    const person = bodyWith({
      ...level("bust", 1046, 607),
      bustLeftFrontArc: 315,
      bustRightFrontArc: 292,
      leftShoulderToApex: 262,
      rightShoulderToApex: 250,
    });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    const { left, right } = cups(plan);
    expect(left.length).toBeGreaterThan(0);
    expect(right.length).toBeGreaterThan(0);
    expect(thickness(person, plan, "bust", "front", "left")).toBeGreaterThan(
      thickness(person, plan, "bust", "front", "right") + 2,
    );
    for (const piece of left) {
      for (const other of right) expect(middle(piece) - middle(other)).toBeCloseTo(0.744 * (262 - 250), 0);
    }
  });

  test("an apex 4 cm lower than the form's: the cups are filled down there, above the form's own underbust", () => {
    const fuller = level("bust", 1046, 607);
    const person = bodyWith({ ...fuller, shoulderToApex: 255 + 40 / 0.744 });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    const usual = planOf(bodyWith(fuller));
    expect(levelOf(plan, "bust").depthBelowNape.value).toBeCloseTo(levelOf(usual, "bust").depthBelowNape.value + 40, 0);
    const [low, own] = [cups(plan).left, cups(usual).left].map((pieces) => pieces.map(middle));
    for (const at of low ?? []) expect(at).toBeCloseTo((own?.[0] ?? 0) + 40, 0);
    // The form has narrowed there, so more padding lies over it than at its own bust.
    expect(thickness(person, plan, "bust", "front")).toBeGreaterThan(
      thickness(bodyWith(fuller), usual, "bust", "front"),
    );
  });

  test("an apex 4 cm higher: the cups are filled up there, and the form's own bust is told as too large for the underbust", () => {
    const fuller = level("bust", 1046, 607);
    const person = bodyWith({ ...fuller, shoulderToApex: 255 - 40 / 0.744, ...level("underbust", 790, 412) });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    const usual = planOf(bodyWith(fuller));
    expect(levelOf(plan, "bust").depthBelowNape.value).toBeCloseTo(levelOf(usual, "bust").depthBelowNape.value - 40, 0);
    for (const at of cups(plan).left.map(middle))
      expect(at).toBeCloseTo(middle(cups(usual).left[0] as Plan["pieces"][number]) - 40, 0);
    const tooLarge = plan.shortfalls.find(({ level: name, what }) => name === "underbust" && what === "girth");
    expect(tooLarge?.sense).toBe("tooLarge");
    expect(tooLarge?.amount).toBeGreaterThan(20);
  });
});

/** Broken on purpose: the halves of the back split evenly. Seen to fail. */
describe("the hips", () => {
  test("the left hip is higher, and so fuller at the high hip: the left is padded for itself and its tape reads right", () => {
    const person = bodyWith({
      highHipLeftFrontArc: 233,
      highHipRightFrontArc: 216,
      highHipLeftBackArc: 233,
      highHipRightBackArc: 213,
    });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    const [left, right] = (["left", "right"] as const).map((side) => thickness(person, plan, "highHip", side));
    expect(left).toBeGreaterThan((right ?? 0) + 3);
    const evenly = Math.abs(thickness(person, plan, "fullHip", "left") - thickness(person, plan, "fullHip", "right"));
    expect(evenly).toBeLessThan(2.5);
    const levelSection = levelSectionOf(person, "highHip");
    const read = tapeQuarters(levelSection.outline, piecesThickness(plan.pieces, levelSection));
    expect(Math.abs(read.leftFront - 233)).toBeLessThan(3);
    expect(Math.abs(read.rightFront - 216)).toBeLessThan(3);
    expect(Math.abs(read.leftBack - 233)).toBeLessThan(3);
    expect(Math.abs(read.rightBack - 213)).toBeLessThan(3);
  });

  test("the left hip is higher and nobody measured left and right: the left takes the larger share of the high hip", () => {
    const person = bodyWith({ waistToFloorLeft: 1050, waistToFloorRight: 1020 });
    const plan = planOf(person);
    expect(untoldMisses(plan)).toEqual([]);
    const [left, right] = (["left", "right"] as const).map((side) => thickness(person, plan, "highHip", side));
    expect(left).toBeGreaterThan((right ?? 0) + 0.5);
    const other = bodyWith({ waistToFloorLeft: 1020, waistToFloorRight: 1050 });
    const mirrored = planOf(other);
    expect(thickness(other, mirrored, "highHip", "right")).toBeGreaterThan(
      thickness(other, mirrored, "highHip", "left") + 0.5,
    );
  });
});
