import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import type { Fitting } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { leftToDo } from "../../src/app/session/leftToDo";
import { leftToDoText } from "../../src/text/leftToDo";
import { newFitting } from "../../src/app/session/newFitting";
import { sampleBody } from "../support/sample";

const bare: Fitting = { ...demoFitting, work: [] };
const left = (fitting: Fitting): string => leftToDoText(leftToDo(fitting));
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
  expect(left(empty)).toBe("nothing measured yet");
  const waist = apply(empty, { does: "measure", whose: "body", name: "waistGirth", text: "30" });
  expect(left(waist)).toBe("left to measure: bust all around and full hip all around");
  expect(left(bare)).not.toMatch(/measure/);
});

test("then the pieces, and last the tape", () => {
  expect(left(bare)).toBe(`${all} pieces planned, none pinned`);
  expect(left(padded(1))).toBe(`1 of ${all} pieces pinned, ${all - 1} to go`);
  expect(left(padded(all))).toBe(`all ${all} pieces pinned; left: measure every level line`);
});

test("a body measured again asks for the change alone", () => {
  const later = apply(padded(all), {
    does: "measure",
    whose: "body",
    name: "waistGirth",
    text: sampleBody("waistGirth", 1.75),
  });
  const [, pinned, , toGo] = /^(\d+) of (\d+) pieces pinned, (\d+) to go$/.exec(left(later)) ?? [];
  expect(Number(pinned)).toBe(all);
  expect(Number(toGo)).toBeGreaterThan(0);
  expect(Number(toGo)).toBeLessThanOrEqual(all / 2);
});

test("readings that contradict each other are told", () => {
  const contradicting = apply(bare, { does: "measure", whose: "body", name: "waistFrontArc", text: "60" });
  expect(left(contradicting)).toBe("some measurements need another look");
});
