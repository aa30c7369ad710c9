import { describe, expect, test } from "vitest";
import { armReading, armReadingNames } from "../../../src/core/arm/armReadings";
import { mm } from "../../../src/core/units";
import { armOf, madeUpArm } from "./arms";

const whole = madeUpArm(1);

/** The reading to take again, and the one that it was held against. */
const comparedFor = {
  elbowBesideUpperArm: ["elbowGirth", "upperArmGirth"],
  wristBesideElbow: ["wristGirth", "elbowGirth"],
  elbowPlace: ["shoulderToElbow", "armLength"],
  lengthBesideGirth: ["shoulderToElbow", "upperArmGirth"],
};

describe("what was measured, seen as an arm", () => {
  /** Broken on purpose: two of five readings taken to be enough. Seen to fail. */
  test("is unread while any of the five is missing, and says which", () => {
    expect(armReading({})).toEqual({ kind: "unread", missing: armReadingNames });
    for (const name of armReadingNames) {
      const { [name]: _, ...rest } = whole;
      expect(armReading({ bustGirth: mm(900), ...rest })).toEqual({ kind: "unread", missing: [name] });
    }
  });

  test("is whole for every one of 200 made-up people", () => {
    for (let seed = 1; seed <= 200; seed++) expect(armReading(madeUpArm(seed)).kind, String(seed)).toBe("whole");
  });

  /** Broken on purpose: each of the checks left out. Seen to fail. */
  test.each([
    ["elbowBesideUpperArm", armOf([240, 310, 150], 300, 230), 310, 96, 300],
    ["elbowBesideUpperArm", armOf([500, 190, 150], 300, 230), 190, 200, 625],
    ["wristBesideElbow", armOf([300, 240, 260], 300, 230), 260, 60, 240],
    ["wristBesideElbow", armOf([500, 440, 105], 300, 230), 105, 110, 440],
    ["lengthBesideGirth", armOf([660, 400, 150], 210, 170), 210, 220, 380],
    ["elbowPlace", armOf([300, 260, 150], 420, 80), 420, 225, 335],
    ["elbowPlace", armOf([300, 260, 150], 200, 300), 200, 225, 335],
    ["elbowPlace", armOf([300, 260, 150], 500, -20), 500, 216, 321.6],
  ])("contradicts itself: %s", (code, readings, got, least, most) => {
    const read = armReading(readings);
    if (read.kind !== "contradicting") throw new Error(read.kind);
    expect(read.problems.map((problem) => problem.code)).toEqual([code]);
    const [{ got: found, expected, names }] = read.problems as [(typeof read.problems)[number]];
    expect(names).toEqual(comparedFor[code as keyof typeof comparedFor]);
    expect([found, expected.least, expected.most].map((value) => Math.round(10 * value) / 10)).toEqual([
      got,
      least,
      most,
    ]);
  });

  test("says everything that contradicts at once", () => {
    const read = armReading(armOf([200, 300, 320], 400, 50));
    expect(read.kind === "contradicting" ? read.problems.map(({ code }) => code) : read.kind).toEqual([
      "elbowBesideUpperArm",
      "wristBesideElbow",
      "elbowPlace",
    ]);
  });
});
