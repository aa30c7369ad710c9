import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import type { Fitting } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { girthsLeft, leftToDo } from "../../src/ui/pages/fittings/fittingEntry";
import { newFitting } from "../../src/app/session/newFitting";
import { sampleBody } from "../support/sample";

const bare: Fitting = { ...demoFitting, work: [] };
const at = "2026-01-10T10:00:00.000Z";

const pieces = () => {
  const { planning } = derivation()(bare);
  if (planning.kind !== "planned") throw new Error("there is a plan");
  return planning.plan.pieces;
};
const all = pieces().length;
const padded = (count: number): Fitting =>
  pieces()
    .slice(0, count)
    .reduce(
      (fitting, piece) =>
        apply(fitting, { does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at } }),
      bare,
    );

test("the measurements a plan needs come first, by name", () => {
  const empty = newFitting("in");
  expect(girthsLeft(empty)).toBe("nothing measured yet");
  const waist = apply(empty, { does: "measure", whose: "body", name: "waistGirth", text: "30" });
  expect(girthsLeft(waist)).toBe("left to measure: bust all around and full hip all around");
  expect(girthsLeft(bare)).toBeUndefined();
});

test("then the pieces, and last the tape", () => {
  expect(leftToDo(bare)).toBe(`${all} pieces planned, none pinned`);
  expect(leftToDo(padded(1))).toBe(`1 of ${all} pieces pinned, ${all - 1} to go`);
  expect(leftToDo(padded(all))).toBe(`all ${all} pieces pinned; left: measure every level line`);
});

test("a body measured again asks for the change alone", () => {
  const later = apply(padded(all), {
    does: "measure",
    whose: "body",
    name: "waistGirth",
    text: sampleBody("waistGirth", 1.75),
  });
  const [, pinned, , left] = /^(\d+) of (\d+) pieces pinned, (\d+) to go$/.exec(leftToDo(later)) ?? [];
  expect(Number(pinned)).toBe(all);
  expect(Number(left)).toBeGreaterThan(0);
  expect(Number(left)).toBeLessThanOrEqual(all / 2);
});

test("readings that contradict each other are told", () => {
  const contradicting = apply(bare, { does: "measure", whose: "body", name: "waistFrontArc", text: "60" });
  expect(leftToDo(contradicting)).toBe("some measurements need another look");
});
