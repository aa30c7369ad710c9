import { expect, it } from "vitest";
import { fuzzedReaders, isSound } from "../../studies/savingFuzz";

/** A few hundred damaged texts at every reader; the study takes twenty thousand. */
it("no reader crashes, hangs or half-reads a damaged text", { timeout: 120_000 }, async () => {
  const readers = await fuzzedReaders(300, 20_261_125);
  expect(readers.map(({ name }) => name).length).toBeGreaterThanOrEqual(9);
  for (const reader of readers) {
    expect(isSound(reader), JSON.stringify(reader)).toBe(true);
    expect(reader.refused, reader.name).toBeGreaterThan(0);
  }
});

it("and a reader that half-reads would be found", () => {
  const reader = { name: "x", cases: 1, refused: 0, whole: 0, other: 0, thrown: 0, slowestMilliseconds: 1 };
  expect(
    [{ other: 1 }, { thrown: 1 }, { slowestMilliseconds: 9_000 }].map((fault) => isSound({ ...reader, ...fault })),
  ).toEqual([false, false, false]);
});
