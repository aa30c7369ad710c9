import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { derivation } from "../../../src/app/session/derived";
import { readFittingText } from "../../../src/document/readFitting";
import { pinSentence } from "../../../src/text/pieces";

/** Read aloud, "Pin back panel 2" is an order to pin something back. Seen to fail on it. */
test("a headline cannot be misheard: an article stands before every piece, and a count is said as one", () => {
  const read = readFittingText(readFileSync("shared/demo-fitting.json", "utf8"));
  if (!read.ok) throw new Error("the sample is read");
  const { planning } = derivation()(read.value);
  if (planning.kind !== "planned") throw new Error("the sample is planned");
  const sentences = planning.plan.pieces.map(pinSentence);
  for (const sentence of sentences) expect(sentence).toMatch(/^(Pin|Lay|Slip in) the [a-z][a-z, ]*\.$/);
  expect(new Set(sentences).size).toBe(sentences.length);
  const [first] = planning.plan.pieces;
  if (first === undefined) throw new Error("the sample has pieces");
  expect(pinSentence({ ...first, number: 2 })).toContain("the second ");
});
