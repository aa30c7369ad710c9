import fc from "fast-check";
import { expect, test } from "vitest";
import { type PrintedRow, printPages, rowHeight } from "../../src/ui/print/printPages";

const rows = (count: number, letters: number): readonly PrintedRow[] =>
  Array.from({ length: count }, (_, i) => ({
    piece: `${String(i)} ${"x".repeat(letters)}`,
    cut: "Cut two alike: 12 in wide, 3 3/4 in deep; pull the edge thin over 1 in.",
    tape: "high hip 38 3/8 in, front 19 7/8 in",
    read: "",
  }));

test("an ordinary plan is one page", () => {
  expect(printPages(rows(13, 75), [])).toHaveLength(1);
});

test("more letters make a row higher, and a line is never lost", () => {
  const [short, long] = [rows(1, 20)[0], rows(1, 220)[0]];
  expect(short && long && rowHeight(long) - rowHeight(short)).toBeGreaterThan(10);
});

test("every piece is on exactly one page, in order; only the last page is last, and none is empty", () => {
  let longest = 0;
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 90 }),
      fc.integer({ min: 10, max: 200 }),
      fc.nat(12),
      (count, letters, limits) => {
        const all = rows(count, letters);
        const pages = printPages(
          all,
          Array.from({ length: limits }, () => "y".repeat(150)),
        );
        longest = Math.max(longest, pages.length);
        expect(pages.flatMap((page) => page.rows)).toEqual(all);
        expect(pages.map(({ isLast }) => isLast)).toEqual(pages.map((_, i) => i === pages.length - 1));
        for (const page of pages) expect(page.rows.length).toBeGreaterThan(0);
      },
    ),
  );
  expect(longest).toBeGreaterThan(2);
});

test("a plan without pieces is one page", () => {
  expect(printPages([], ["a limit"])).toEqual([{ rows: [], isLast: true }]);
});
