import { describe, expect, test } from "vitest";
import { improvements } from "../../../src/core/body/measurementFacts";
import { measurementNames } from "../../../src/core/body/vocabulary";
import { improvementText, measurementTexts } from "../../../src/text/measurements";

const sentences = (text: string): number => text.split(/[.!?](?: |$)/).filter((part) => part !== "").length;

describe("the words of every measurement", () => {
  test.each(measurementNames)("%s", (name) => {
    const { label, what, onBody, alone, onForm, landmark, mistake } = measurementTexts[name];
    expect(label).toMatch(/^[A-Z][a-z ,]+$/);
    expect([sentences(what), sentences(onBody), sentences(onForm)]).toEqual([1, 2, 2]);
    for (const text of [what, onBody, alone, onForm, landmark, mistake]) {
      expect(text).toMatch(/^[A-Z].*\.$/);
      expect(text).not.toMatch(/undefined|\s\s|\.\./);
    }
  });

  test("labels are distinct", () => {
    const labels = measurementNames.map((name) => measurementTexts[name].label);
    expect(new Set(labels).size).toBe(labels.length);
  });

  test("an improvement is one sentence", () => {
    for (const improvement of improvements) expect(sentences(improvementText[improvement])).toBe(1);
  });
});
