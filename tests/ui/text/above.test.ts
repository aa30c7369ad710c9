import { describe, expect, test } from "vitest";
import { buildsAbove } from "../../../src/core/above/buildsAbove";
import { mm } from "../../../src/core/units";
import { aboveWords } from "../../../src/text/above";
import { peopleAbove } from "../../tools/peopleAbove";

const people = peopleAbove(60);
const words = people.flatMap(({ body, form, batting }) =>
  buildsAbove(body, form, batting).flatMap((build) =>
    (["1/8 in", "0.5 cm"] as const).map((step) => ({ build, step, said: aboveWords(build, step) })),
  ),
);

describe("the words of what is built above the bust", () => {
  test("are whole sentences with lengths in the reader's unit", () => {
    for (const { said, step } of words) {
      for (const sentence of [said.act, ...said.how, ...said.reads, ...said.stays]) {
        expect(sentence).toMatch(/^[A-Z][^{}]*\.$/);
        expect(sentence).not.toMatch(/undefined|NaN|null/);
        expect(sentence).not.toMatch(step === "1/8 in" ? /\d[ \u00a0]cm\b/ : /\d[ \u00a0]in\b/);
      }
    }
  });

  /** Broken on purpose: a build that stays short said nothing. Seen to fail. */
  test("say of each reading that stays what can be done, and of each build what to do", () => {
    for (const { build, said } of words) {
      expect(said.stays).toHaveLength(build.readings.filter(({ stays }) => stays !== null).length);
      const isDone = ["layers", "extend", "markInward"].includes(build.act.what);
      expect(said.how.length > 0).toBe(isDone);
      expect(said.reads.length > 0).toBe(isDone);
    }
  });

  test("name what is missing, and whose", () => {
    const [, , left] = buildsAbove({ acrossChest: mm(350) }, { acrossChest: mm(320) }, { layerThickness: mm(6) });
    if (left === undefined) throw new Error("no build");
    expect(aboveWords(left, "1/8 in").act).toBe(
      "Not built yet: measure the shoulder to apex of the person, the bust below the nape of the person, the shoulder to apex of the form and the bust below the nape of the form.",
    );
  });
});
