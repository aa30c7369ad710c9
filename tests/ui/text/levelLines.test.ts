import { describe, expect, test } from "vitest";
import { estimated, measured } from "../../../src/core/body/reading";
import { lengthSteps, type LengthStep } from "../../../src/core/lengthText";
import { mm } from "../../../src/core/units";
import { levelLines, markLinesSentence } from "../../../src/text/levelLines";
import { unbroken } from "../../../src/text/shownLength";
import { plannedExample } from "../../gallery/plannedExample";

const { levels } = plannedExample;
const plain = (text: string): string => text.replaceAll("\u00a0", " ");

describe("the level lines of a form", () => {
  test("one for each level, from the top down, each as far below the nape as the body has it", () => {
    const lines = levelLines(levels.toReversed(), "1 mm");
    expect(lines.map(({ name }) => name)).toEqual(["bust", "underbust", "waist", "highHip", "fullHip"]);
    for (const { name, below } of lines) {
      const level = levels.find((one) => one.name === name);
      expect(plain(below)).toBe(`${Math.round(level?.depthBelowNape.value ?? Number.NaN)} mm`);
    }
  });

  test("the hips hang from the waist: where that is guessed, so are they", () => {
    const sure = levels.map((level) => ({ ...level, depthBelowNape: measured(level.depthBelowNape.value) }));
    const guessedWaist = sure.map((level) =>
      level.name === "waist" ? { ...level, depthBelowNape: estimated(level.depthBelowNape.value, mm(20)) } : level,
    );
    const guessed = (some: typeof levels) =>
      levelLines(some, "1/8 in").flatMap(({ name, isGuessed }) => (isGuessed ? [name] : []));
    expect(guessed(sure)).not.toContain("fullHip");
    expect(guessed(guessedWaist)).toEqual(expect.arrayContaining(["waist", "highHip", "fullHip"]));
  });

  test.each(Object.keys(lengthSteps) as LengthStep[])("the sentence names every line, in steps of %s", (step) => {
    const sentence = markLinesSentence(levels, step);
    expect(sentence).toMatch(/^Mark five level lines on the form, straight down from the nape: bust/);
    for (const { level, below } of levelLines(levels, step)) expect(sentence).toContain(`${level}\u00a0${below}`);
  });

  test("a line nobody measured says so, and where none is measured that is said once", () => {
    const [first, ...rest] = levels.map((level) => ({
      ...level,
      depthBelowNape: estimated(level.depthBelowNape.value, mm(15)),
    }));
    if (first === undefined) throw new Error("no levels");
    const one = { ...first, depthBelowNape: { kind: "measured", value: first.depthBelowNape.value } } as const;
    expect(markLinesSentence([one, ...rest], "1/8 in").match(/\(estimated\)/g)).toHaveLength(4);
    expect(markLinesSentence([first, ...rest], "1/8 in")).toMatch(/These heights are estimated/);
    expect(markLinesSentence([first, ...rest], "1/8 in")).not.toContain("(estimated)");
  });
});

describe("a shown length", () => {
  test.each([
    ["about 33 3/8 in there", "about 33\u00a03/8\u00a0in there"],
    ["3/8 in, 84.5 cm and 7 mm", "3/8\u00a0in, 84.5\u00a0cm and 7\u00a0mm"],
    ["About 0.6 sq yd, or 1.2 m² of it.", "About 0.6\u00a0sq\u00a0yd, or 1.2\u00a0m² of it."],
  ])("keeps together: %s", (sentence, kept) => {
    expect(unbroken(sentence)).toBe(kept);
  });

  test.each(["14 inside, 3 of 5 levels", "size 16 1/2", "Front panel 4 in front: 12 intervals"])(
    "other words break where they like: %s",
    (sentence) => {
      expect(unbroken(sentence).replaceAll("4\u00a0in", "4 in")).toBe(sentence);
    },
  );
});
