import { describe, expect, test } from "vitest";
import { fittingArm } from "../../../src/app/arm/fittingArm";
import { armReading, armReadingNames } from "../../../src/core/arm/armReadings";
import { type ArmWish, usualArm } from "../../../src/core/arm/softArm";
import { untriedKnit, usualStretch, wovenWithoutEase } from "../../../src/core/cover/cloth";
import { mm } from "../../../src/core/units";
import {
  armNotes,
  armPartWords,
  armProblemText,
  armStepNames,
  armStepText,
  armUnreadText,
} from "../../../src/text/arm";

const body = {
  upperArmGirth: mm(318),
  elbowGirth: mm(272),
  wristGirth: mm(160),
  armLength: mm(556),
  shoulderToElbow: mm(314),
};
const knit = untriedKnit(usualStretch);
const plate = { height: mm(132), breadth: mm(102) };
const wishes: readonly ArmWish[] = [
  usualArm,
  { ...usualArm, cut: "onePiece" },
  { ...usualArm, side: "right" },
  { ...usualArm, cap: "gathered", plate },
];
const arms = [knit, wovenWithoutEase].flatMap((cloth) =>
  wishes.map((wish) => {
    const made = fittingArm({ bustGirth: mm(900), ...body }, cloth, wish);
    if (made.kind !== "arm") throw new Error(made.kind);
    return made;
  }),
);
const plain = (text: string) => text.replaceAll("\u00a0", " ");

describe("an arm of a body", () => {
  test("is made of all its parts, each with a title of its own and what it is cut from", () => {
    for (const { arm, parts } of arms) {
      expect(parts).toHaveLength(arm.wish.cut === "twoPieces" ? 7 : 6);
      const words = parts.map(({ name }) => armPartWords(name, arm));
      expect(new Set(words.map(({ title }) => title)).size).toBe(parts.length);
      for (const { title, says } of words) {
        expect(title).toContain(`Soft ${arm.wish.side} arm`);
        expect(says[0]).toMatch(/^Cut 1 from /);
      }
      const first = words[0]?.says.join(" ") ?? "";
      expect(first).toContain(arm.cloth.kind === "knit" ? "by 10 %" : "lengthwise grain");
      expect(first).toContain(`For a ${arm.wish.side === "left" ? "right" : "left"} arm, turn every part over.`);
      expect(first.includes("darts")).toBe(arm.wish.cut === "onePiece");
    }
  });

  test("while something was not measured it says what, and is not made", () => {
    const { elbowGirth: _, armLength: __, ...rest } = body;
    const made = fittingArm(rest, knit, usualArm);
    expect(made).toEqual({ kind: "unread", missing: ["elbowGirth", "armLength"] });
    expect(armUnreadText(["elbowGirth", "armLength"])).toBe(
      "For a soft arm, measure: elbow all around, arm length. None of them is estimated.",
    );
    expect(armNotes(made, "1/8 in")).toEqual([]);
    expect(armUnreadText(armReadingNames).split(", ")).toHaveLength(6);
  });

  test("what contradicts itself is said with what was read and what can be, in the person's unit, and is not made", () => {
    const made = fittingArm({ ...body, wristGirth: mm(300) }, knit, usualArm);
    if (made.kind !== "contradicting") throw new Error(made.kind);
    const said = (step: "1/8 in" | "0.5 cm") => made.problems.map((problem) => plain(armProblemText(problem, step)));
    expect(said("0.5 cm")).toEqual([
      "The person’s wrist all around reads 30 cm; beside that elbow all around it can be 7 cm to 27 cm. Measure both again.",
    ]);
    expect(said("1/8 in")[0]).toContain("11 3/4 in");
    expect(armNotes(made, "0.5 cm").map(plain)[0]).toMatch(/^No arm is among the parts\. The person’s wrist/);
    for (const more of [{ elbowGirth: mm(100) }, { shoulderToElbow: mm(500) }, { upperArmGirth: mm(980) }]) {
      const read = armReading({ ...body, ...more });
      if (read.kind !== "contradicting") throw new Error(read.kind);
      for (const problem of read.problems)
        expect(armProblemText(problem, "1 mm")).toMatch(/\d mm.*(Measure|measure) both again/);
    }
  });
});

describe("the steps of making an arm", () => {
  test("each has a headline and its lines, in every cut, cloth and unit", () => {
    for (const { arm } of arms) {
      for (const step of ["1/8 in", "0.5 cm", "1 mm"] as const) {
        const texts = armStepNames.map((name) => armStepText(name, arm, step));
        expect(new Set(texts.map(({ title }) => title)).size).toBe(4);
        for (const { title, lines } of texts) {
          expect(title).toMatch(/^\w.*\.$/);
          expect(lines.length).toBeGreaterThan(2);
          for (const line of lines) expect(line).toMatch(/\.$/);
        }
      }
    }
  });

  /** Broken on purpose: the figures of the cloth as it is cut in place of the body's; one unit for both. Seen to fail. */
  test("filling says what the tape is to read, how much fiber as an estimate, and asks for a dust mask", () => {
    const [{ arm }] = arms as [(typeof arms)[number]];
    const fill = armStepText("fill", arm, "0.5 cm");
    expect(plain(fill.lines.join(" "))).toContain("upper arm 32 cm, elbow 27 cm, wrist 16 cm");
    expect(fill.lines.join(" ")).toContain("150 to 250 g of loose fiber, estimated");
    expect(plain(armStepText("fill", arm, "1/8 in").lines.join(" "))).toContain("upper arm 12 1/2 in");
    expect(fill.cautions).toBe("fillingArm");
  });

  /** Broken on purpose: the words of every cap those of its own oval; a refusal unsaid. Seen to fail. */
  test("a gathered cap says so where it is cut and sewn, and why there is none where it cannot be had", () => {
    const made = (wish: Partial<ArmWish>) => {
      const found = fittingArm(body, knit, { ...usualArm, ...wish });
      if (found.kind !== "arm") throw new Error(found.kind);
      const all = armStepNames.map((name) => plain(armStepText(name, found.arm, "0.5 cm").lines.join(" "))).join(" ");
      return { all, disc: armPartWords("capDisc", found.arm).says.join(" ") };
    };
    const own = made({ plate });
    expect(own.all + own.disc).not.toMatch(/gather|oval/);
    expect(made({}).all).toContain("cut for one that is 13 cm high (a judgement)");
    const gathered = made({ cap: "gathered", plate });
    expect(gathered.all).toContain("The cap is 5 % longer than the disc. Run a gathering thread");
    expect(gathered.all).not.toContain("oval of its own");
    expect(gathered.disc).toContain("The cap is 5 % longer: gather it in.");
    expect(made({ cap: "gathered" }).all).toContain("measure height and width of that armhole");
    expect(made({ cap: "gathered", plate: { height: mm(90), breadth: mm(70) } }).all).toContain(
      "this arm is too large",
    );
    expect(made({ cap: "gathered", plate: { height: mm(280), breadth: mm(240) } }).all).toContain(
      "armhole is too large for this arm",
    );
  });

  test("the cap disc stays soft until the arm is turned, and no pin stays in the arm or under a sleeve", () => {
    for (const { arm } of arms) {
      const sew = armStepText("sew", arm, "1/8 in").lines;
      const at = (words: RegExp) => sew.findIndex((line) => words.test(line));
      expect(at(/no card behind the disc yet/)).toBeGreaterThan(at(/Sew (the front seam|both darts)/));
      expect(at(/Turn the arm through the wrist\. Slide the card in/)).toBeGreaterThan(
        at(/no card behind the disc yet/),
      );
      expect(sew.join(" ")).toContain("Take every pin out and count.");
      expect(sew.some((line) => line === "Use a stretch stitch.")).toBe(arm.cloth.kind === "knit");
      expect(armStepText("hang", arm, "1/8 in").lines.join(" ")).toContain("No pin stays under a sleeve.");
    }
  });
});
