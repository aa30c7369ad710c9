import { expect, test } from "vitest";
import type { LengthStep } from "../../../src/core/lengthText";
import { cutSentence, placeSentence } from "../../../src/text/pieces";
import { planWords } from "../../../src/text/plan";
import { plannedExample } from "../../gallery/plannedExample";

const { pieces, levels } = plannedExample;

test.each<LengthStep>(["1/8 in", "0.5 cm"])("no length of a piece's sentences breaks over two lines, in %s", (step) => {
  expect(pieces.length).toBeGreaterThan(2);
  const breakable = /\d (\d+\/\d+|in|cm|mm)\b/;
  for (const piece of pieces) {
    expect(cutSentence(piece, step, null)).not.toMatch(breakable);
    expect(placeSentence(piece, levels, step)).not.toMatch(breakable);
    expect(cutSentence(piece, step, null)).toMatch(/\d\u00a0(in|cm)/);
  }
});

test("what goes into files and the terminal keeps its plain spaces", () => {
  for (const piece of pieces) expect(planWords("1/8 in").piecePlace(piece, levels)).not.toContain("\u00a0");
});
