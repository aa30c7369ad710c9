import { describe, expect, test } from "vitest";
import { belief } from "../../../src/core/calibration/belief";
import type { Reread } from "../../../src/core/calibration/evidence";
import { bareGirth, evidenceOf, read, waistRead, waistRound } from "./roundForm";

/**
 * Which readings count. The form is a circle whose girth a layer of 7 mm in a stack, a ninth more alone, makes longer by
 * 2 pi times its worth; every slip is one that a hand makes: an inch more, the bare form read instead, a figure turned round.
 */
const [one, two, three] = [waistRound(1), waistRound(2), waistRound(3)];
const girthOver = (layers: number, layer = 7 / 0.9) => bareGirth + 2 * Math.PI * layer * (1 + (layers - 1) * 0.9);
const believed = (...rereads: readonly Reread[]) => belief(evidenceOf({ rereads, readingError: 3 }));
const surprised = (...rereads: readonly Reread[]) => believed(...rereads).surprises.map(({ read: value }) => value);
const inch = 25.4;

describe("a slip", () => {
  test("of an inch is asked for again once the batting is known, whichever way", () => {
    const known = [waistRead(girthOver(1), [one]), waistRead(girthOver(2), [two])];
    for (const by of [-inch, inch]) {
      const slip = girthOver(3) + by;
      expect(surprised(...known, waistRead(slip, [three]))).toEqual([slip]);
    }
    expect(surprised(...known, waistRead(girthOver(3) + 6, [three]))).toEqual([]);
  });

  test("to less than the bare form reads is asked for again at once: batting takes nothing away", () => {
    expect(surprised(waistRead(bareGirth - 20, [one]))).toEqual([bareGirth - 20]);
    expect(surprised(waistRead(bareGirth + 10, [one]))).toEqual([]);
  });

  test("put right in the same place leaves no trace", () => {
    const right = waistRead(girthOver(1), [one]);
    expect(believed(waistRead(girthOver(1) + 40, [one]), right)).toEqual(believed(right));
  });

  test("typed after a right reading does not take its place where it cannot be", () => {
    const right = waistRead(girthOver(1), [one]);
    const slipped = believed(right, waistRead(girthOver(1) + 200, [one]));
    expect(slipped.building).toEqual(believed(right).building);
    expect(slipped.surprises.length).toBe(1);
  });
});

describe("readings of one place that do not agree", () => {
  const right = waistRead(girthOver(1), [one]);
  const slip = waistRead(girthOver(1) + 40, [one]);
  test("two that agree stand against one that does not, and it is asked for again", () => {
    const three = believed(right, right, slip);
    expect(three.surprises.length).toBe(1);
    expect(three.building).toEqual(believed(right, right).building);
  });

  test("a first one that was replaced counts again once a third agrees with it", () => {
    expect(believed(right, slip, right).building.layer).toBeCloseTo(believed(right, right).building.layer, 6);
  });

  test("the same pieces are the same whoever listed them", () => {
    const again: Reread = { ...right, pinned: [structuredClone(one)] };
    expect(believed(slip, again).building).toEqual(believed(right).building);
  });
});

describe("a batting thrice its packet", () => {
  const thick = girthOver(1, 21);
  test("is read twice before it is believed, and then is", () => {
    expect(surprised(waistRead(thick, [one]))).toEqual([thick]);
    const twice = believed(waistRead(thick, [one]), waistRead(thick + 4, [one]));
    expect(twice.surprises).toEqual([]);
    expect(twice.building.layer).toBeGreaterThan(17);
  });

  test("is no reason to ask again at every piece after that", () => {
    const read2 = [waistRead(thick, [one]), waistRead(thick, [one])];
    expect(surprised(...read2, waistRead(girthOver(2, 21), [two]), waistRead(girthOver(3, 21), [three]))).toEqual([]);
  });
});

test("another stretch of the same level is another place", () => {
  const girth = girthOver(1);
  const rereads = [read({ waistGirth: girth }, [one]), read({ waistFrontArc: girth / 2 }, [one])];
  expect(surprised(...rereads)).toEqual([]);
});
