import { describe, expect, test } from "vitest";
import { estimated } from "../../../src/core/body/reading";
import { levelNames } from "../../../src/core/body/vocabulary";
import { type PieceKind, type PieceZone, pieceZones } from "../../../src/core/padding/piece";
import type { PlannedLevel, PlannedPiece, Shortfall } from "../../../src/core/plan/plan";
import { mm } from "../../../src/core/units";
import { planWords } from "../../../src/text/plan";
import { layerOf, pieceOf, straightRows } from "../../support/samplePiece";

/** Only what a place depends on: the zone, the depths of the edges, the depths of the levels. */
const levels = levelNames.map((name, i) => ({
  name,
  depthBelowNape: estimated(mm(200 + 100 * i), mm(5)),
})) as unknown as readonly PlannedLevel[];
const piece = (zone: PieceZone, top: number, bottom: number): PlannedPiece => ({
  ...pieceOf(zone, [layerOf(straightRows([top, bottom], -80, 80), { wrap: zone === "around" })]),
  readingsAfter: {} as PlannedPiece["readingsAfter"],
});
const [inches, centimetres] = [planWords("1/8 in"), planWords("0.5 cm")];

describe("places", () => {
  test.each([
    [piece("front", 360, 425), "center front, from 4 cm above the waistline to 2.5 cm below the waistline"],
    [piece("back", 201, 610), "center back, from the bust line to 1 cm below the full hip line"],
    [
      piece("around", 340, 460),
      "edges meet at the left side seam, from 4 cm below the underbust line to 4 cm above the high hip line",
    ],
    [piece("leftCup", 180, 220), "left apex, inside the cup"],
  ])("%#", (one, place) => {
    expect(centimetres.piecePlace(one, levels)).toBe(place);
  });

  test("in the unit of the fitting", () => {
    expect(inches.piecePlace(piece("front", 361.9, 425.4), levels)).toBe(
      "center front, from 1 1/2 in above the waistline to 1 in below the waistline",
    );
  });
});

describe("names", () => {
  test("say the place, what it is, and a number from the second on; no two pieces have one name", () => {
    const name = (kind: PieceKind, zone: PieceZone, number = 1) =>
      inches.pieceName({ kind, zone, level: "waist", number });
    expect(name("panel", "front")).toBe("front waist panel");
    expect(name("wrap", "around", 2)).toBe("waist wrap 2");
    expect(name("panel", "leftBack")).toBe("left back waist panel");
    expect(name("tuning", "back")).toBe("back waist tuning layer");
    expect(name("cup", "rightCup")).toBe("right cup pad");
    const panels = pieceZones.map((zone) => name("panel", zone));
    expect(new Set(panels).size).toBe(panels.length);
  });
});

describe("advice", () => {
  const levelShortfalls = (["girth", "frontArc", "backArc"] as const).flatMap((what) =>
    (["tooLarge", "staysShort"] as const).map((sense) => ({ what, sense, level: "waist", amount: mm(12.7) }) as const),
  );
  const lengths = [
    "shoulderLength",
    "neckGirth",
    "acrossShoulders",
    "upperBackWidth",
    "shoulderDrop",
    "apexHeight",
  ] as const;
  const lengthShortfalls = lengths.flatMap((length) =>
    (["tooLarge", "staysShort"] as const).map(
      (sense) => ({ what: "length", length, sense, level: "bust", amount: mm(12.7) }) as const,
    ),
  );
  const all: readonly Shortfall[] = [...levelShortfalls, ...lengthShortfalls];

  test.each(all.map((shortfall) => [JSON.stringify(shortfall), shortfall] as const))(
    "%s says how much and what to do",
    (_what, shortfall) => {
      const advice = inches.shortfallAdvice(shortfall, "form");
      expect(advice).toContain("1/2 in");
      expect(advice.split(". ").length).toBeGreaterThanOrEqual(2);
      expect(advice).not.toMatch(/undefined|wrong body/);
    },
  );

  test("no two shortfalls share their advice", () => {
    const advice = all.map((shortfall) => inches.shortfallAdvice(shortfall, "form"));
    expect(new Set(advice).size).toBe(advice.length);
  });

  test("less than a step is not called nothing", () => {
    expect(
      centimetres.shortfallAdvice({ what: "girth", level: "waist", amount: mm(1), sense: "tooLarge" }, "form"),
    ).toContain("less than 0.5 cm");
  });

  test("a seam shift says which way and how far", () => {
    expect(inches.seamShift({ level: "waist", perSide: mm(6.35), towards: "back" })).toBe(
      "At the waist, mark the side seam 1/4 in farther back on each side.",
    );
    expect(centimetres.seamShift({ level: "fullHip", perSide: mm(10), towards: "front" })).toBe(
      "At the full hip, mark the side seam 1 cm farther forward on each side.",
    );
  });
});
