import fc from "fast-check";
import { expect, test } from "vitest";
import { measurementNames, levelNames, requiredMeasurementNames } from "../../src/core/body/vocabulary";
import { cardPages } from "../../src/app/print/cardPages";
import { measuringPages } from "../../src/text/measuringPages";

const room = { heightOf: (height: number) => height, first: 500, later: 600, heading: 20 };
const part = fc.record({
  heading: fc.constantFrom("a", "b", null),
  cards: fc.array(fc.integer({ min: 20, max: 300 }), { minLength: 1, maxLength: 25 }),
});

test("every card is on exactly one page, in order; no page is empty and only the last is last", () => {
  let longest = 0;
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
      const pages = cardPages(parts, room);
      longest = Math.max(longest, pages.length);
      const shown = pages.flatMap((page) => page.parts.flatMap(({ cards }) => cards));
      expect(shown).toEqual(parts.flatMap(({ cards }) => cards));
      expect(pages.map(({ isLast }) => isLast)).toEqual(pages.map((_, i) => i === pages.length - 1));
      for (const page of pages) expect(page.parts.every(({ cards }) => cards.length > 0)).toBe(true);
    }),
  );
  expect(longest).toBeGreaterThan(3);
});

test("no page is fuller than its room, headings counted", () => {
  let fullest = 0;
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
      cardPages(parts, room).forEach((page, i) => {
        const height = page.parts.reduce((sum, { heading, cards }) => {
          const rows = cards.flatMap((card, at) => (at % 2 === 0 ? Math.max(card, cards[at + 1] ?? 0) : []));
          return sum + (heading === null ? 0 : room.heading) + rows.reduce((total, row) => total + row, 0);
        }, 0);
        fullest = Math.max(fullest, height);
        expect(height).toBeLessThanOrEqual(i === 0 ? room.first : room.later);
      });
    }),
  );
  expect(fullest).toBeGreaterThan(500);
});

test("a part that goes on overleaf says so there and nowhere else", () => {
  const pages = cardPages(
    [
      { heading: "a", cards: [200, 200, 200, 200, 200, 200] },
      { heading: "b", cards: [200] },
    ],
    room,
  );
  expect(pages.map((page) => page.parts.map(({ heading, isContinued }) => [heading, isContinued]))).toEqual([
    [["a", false]],
    [
      ["a", true],
      ["b", false],
    ],
  ]);
});

test("without cards there is one page", () => {
  expect(cardPages([{ heading: null, cards: [] }], room)).toEqual([{ parts: [], isLast: true }]);
});

test("the measuring sheet asks for every reading once: needed girths, then heights, then fronts, as the study orders them", () => {
  const cards = measuringPages.flatMap((page) => page.parts.flatMap((each) => each.cards));
  const names = cards.map(({ name }) => name);
  expect(names.toSorted()).toEqual(measurementNames.toSorted());
  expect(names.slice(0, 3)).toEqual([...requiredMeasurementNames]);
  expect(names[3]).toBe("napeHeight");
  const large = cards.flatMap(({ name, size }) => (size === "large" ? [name] : []));
  const fronts = names.filter(
    (name) =>
      name.endsWith("FrontArc") && levelNames.some((level) => name.startsWith(level)) && !/Left|Right/.test(name),
  );
  expect(large).toEqual([...requiredMeasurementNames, ...fronts]);
  expect(names.indexOf("waistFrontArc")).toBeGreaterThan(names.indexOf("fullHipHeight"));
  expect(names.indexOf("waistFrontArc")).toBeLessThan(names.indexOf("waistBackArc"));
});
