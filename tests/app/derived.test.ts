import { describe, expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { levelNames } from "../../src/core/body/vocabulary";
import { assert } from "../../src/core/result";
import { tapeAgreement } from "../../src/core/tolerances";
import type { Fitting } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { newFitting } from "../../src/app/session/newFitting";

const girths = (bust: string, waist: string, hip: string): Fitting =>
  [
    { name: "bustGirth", text: bust } as const,
    { name: "waistGirth", text: waist } as const,
    { name: "fullHipGirth", text: hip } as const,
  ].reduce((fitting, typed) => apply(fitting, { does: "measure", whose: "body", ...typed }), newFitting("in"));

describe("the demo", () => {
  const { planning, problems } = derivation()(demoFitting);
  test("has no problem and a plan of few pieces and nothing short", () => {
    expect(problems).toEqual({ entries: [], measurements: [], batting: [] });
    assert(planning.kind === "planned", "the demo can be planned");
    expect(planning.plan.pieces.length).toBeGreaterThan(2);
    expect(planning.plan.pieces.length).toBeLessThanOrEqual(9);
    expect(planning.plan.shortfalls).toEqual([]);
  });
  test("ends at the body's girths", () => {
    assert(planning.kind === "planned", "the demo can be planned");
    for (const { body, predicted } of planning.plan.levels) {
      expect(Math.abs(predicted.girth - body.girth.value)).toBeLessThanOrEqual(tapeAgreement);
    }
    expect(planning.plan.levels.map(({ name }) => name)).toEqual(levelNames);
  });
});

describe("three girths", () => {
  test("are enough: the tool chooses a size and plans", () => {
    const { planning, ranking } = derivation()(girths("35", "31", "38"));
    assert(planning.kind === "planned", "three girths can be planned");
    expect(planning.size).toBe(ranking[0]?.size);
    expect(ranking.length).toBeGreaterThan(5);
  });
  test("two are not", () => {
    const two = apply(girths("35", "31", "38"), { does: "measure", whose: "body", name: "waistGirth", text: "" });
    const { planning, problems, progress } = derivation()(two);
    expect(planning.kind).toBe("waiting");
    expect(progress).toBeNull();
    expect(problems.measurements.map(({ code, names }) => [code, names])).toContainEqual(["missing", ["waistGirth"]]);
  });
  test("a contradiction stops the plan and is named", () => {
    const contradicting = apply(girths("35", "31", "38"), {
      does: "measure",
      whose: "body",
      name: "waistFrontArc",
      text: "34",
    });
    const { planning, problems } = derivation()(contradicting);
    expect(planning.kind).toBe("waiting");
    expect(problems.measurements.map(({ code }) => code)).toContain("arcNotShorterThanGirth");
  });
});

describe("what is remembered", () => {
  test("a letter typed somewhere gives the very same plan back", () => {
    const derive = derivation();
    const before = derive(demoFitting);
    const typing = apply(demoFitting, { does: "draft", of: "other", key: "reading.waistGirth", text: "30" });
    expect(derive(typing)).toBe(before);
  });
  test("a reading over the padding moves the progress and not the plan; one of the bare form is the form's", () => {
    const derive = derivation();
    const first = derive(demoFitting).planning;
    assert(first.kind === "planned", "the demo can be planned");
    const piece = first.plan.pieces[0];
    assert(piece !== undefined, "its plan has pieces");
    const bare = derive(
      apply(demoFitting, { does: "read", name: "waistGirth", text: "30", at: "2026-01-02T03:04:05Z" }),
    ).planning;
    expect(bare.kind === "planned" && bare.plan.levels[2]?.form.girth.value).toBeCloseTo(30 * 25.4, 0);
    expect(bare.kind === "planned" && bare.plan.levels[2]?.known).toBe("line");
    const padded = apply(demoFitting, {
      does: "record",
      entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at: "2026-01-02T03:04:05Z" },
    });
    const before = derive(padded);
    const after = derive(apply(padded, { does: "read", name: "waistGirth", text: "30", at: "2026-01-02T03:04:05Z" }));
    expect(after.planning).toBe(before.planning);
    expect(after.progress).not.toBe(before.progress);
  });
  test("another unit changes no length of the plan", () => {
    const derive = derivation();
    const before = derive(demoFitting).planning;
    const after = derive(apply(demoFitting, { does: "changeUnit", unit: "cm" })).planning;
    assert(before.kind === "planned" && after.kind === "planned", "both can be planned");
    expect(after.plan).toEqual(before.plan);
  });
});
