import { describe, expect, test } from "vitest";
import { measurementNames } from "../../../src/core/body/vocabulary";
import { measurementTexts } from "../../../src/text/measurements";
import { glossary, misuses, type Sentence } from "../../support/glossary";
import { productSentences, sourceSentences } from "../../support/sentences";

/** Sentences that are put together from parts, as a person reads them. */
const composed: readonly Sentence[] = measurementNames.flatMap((name) =>
  Object.values(measurementTexts[name]).map((text: string) => ({ from: `the words of ${name}`, text })),
);
const sentences = [...productSentences(), ...composed];

describe("the glossary", () => {
  test("is heeded by every sentence of the product", () => {
    expect(misuses(sentences)).toEqual([]);
  });

  test("is laid against all of them", () => {
    expect(sentences.length).toBeGreaterThan(1500);
    const from = (start: string) => sentences.filter((sentence) => sentence.from.startsWith(start)).length;
    for (const [start, least] of [
      ["src/text/", 700],
      ["src/ui/drawing/", 2],
      ["src/command/", 10],
      ["src/document/", 20],
      ["src/app/share/", 1],
      ["public/fitting.schema.json", 60],
      ["public/plan.schema.json", 15],
      ["shared/demo/", 4],
      ["README.md", 15],
      ["index.html", 2],
    ] as const)
      expect(from(start), start).toBeGreaterThanOrEqual(least);
    for (const text of ["Update the remaining pieces", "All keys"])
      expect(sentences.map((sentence) => sentence.text)).toContain(text);
  });

  test.each(glossary.map(({ not, planted }) => [String(not), planted] as const))("%s is found", (_, planted) => {
    expect(misuses([{ from: "planted", text: planted }])).not.toEqual([]);
  });

  test("finds a word planted in a source, and not the names of kinds", () => {
    const planted = [
      'export const words = { kind: "round", done: (n: number) => `$',
      "{n} wanted here` } as const;",
    ].join("");
    const found = sourceSentences("src/text/planted.ts", planted);
    expect(found.map(({ text }) => text)).toEqual(["… wanted here"]);
    expect(misuses(found)).toHaveLength(1);
  });

  test("has no exception that nothing needs", () => {
    for (const { not, except = [] } of glossary)
      for (const { where, because } of except) {
        const needed = sentences.some(({ from, text }) => not.test(text) && (where.test(text) || where.test(from)));
        expect(needed, `${not}: ${because}`).toBe(true);
      }
  });
});
