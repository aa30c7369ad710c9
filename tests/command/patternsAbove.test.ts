import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { tileHeight, tilesOf, tileWidth } from "../../src/app/patterns/tiles";
import { writePatterns } from "../../src/app/patterns/writePatterns";
import { patternFiles } from "../../src/command/patternFolder";
import { patternsOfText } from "../../src/command/patternsOfText";
import { planOfText } from "../../src/command/planOfText";
import { ratio } from "../../src/core/units";
import { patternWords } from "../../src/text/patterns";
import { outlinesOfSvg, type ReadLine, type ReadPage, readDxf, readPdf } from "../tools/readPatterns";

vi.setConfig({ testTimeout: 240_000 });

/** The demo fitting with what is read above the bust, of the person and of the form. */
const demo = JSON.parse(readFileSync(resolve(import.meta.dirname, "../../shared/demo-fitting.json"), "utf8")) as Record<
  "body" | "form",
  object
>;
const above = {
  body: {
    leftShoulderDrop: "1 1/2",
    rightShoulderDrop: "1 3/4",
    leftShoulderLength: "5 1/4",
    rightShoulderLength: "5 1/4",
    neckGirth: "15",
    upperChestGirth: "34",
    upperChestFrontArc: "17 1/2",
    upperChestBelowNape: "7",
    bustBelowNape: "9 1/2",
    waistBelowNape: "15 1/4",
    upperBackWidth: "14",
    acrossChest: "13 1/2",
  },
  form: {
    shoulderDrop: "2 1/4",
    shoulderLength: "5",
    neckGirth: "13 1/2",
    upperChestGirth: "29",
    upperChestFrontArc: "15",
    napeToWaist: "15",
    waistBelowNape: "14 7/8",
    upperBackWidth: "13",
    bustBelowNape: "9 1/4",
    shoulderToApex: "9 3/4",
    acrossChest: "12",
  },
};
const text = JSON.stringify({
  ...demo,
  body: { ...demo.body, ...above.body },
  form: { ...demo.form, ...above.form },
});
const made = patternsOfText(text, { kind: "knit", stretch: ratio(0.1), shortening: ratio(0) });
if (!made.ok) throw new Error(made.problem.join(" "));
const patterns = made.value;
const parts = patterns.file.parts.filter(({ of }) => /^(upper|chest|shoulder|neck)/.test(of));

describe("what is built above the bust is cut from patterns, too", () => {
  test("with its words, once each, beside every layer of the plan", () => {
    const plan = planOfText(text);
    if (!plan.ok) throw new Error("no plan");
    const layers = plan.value.pieces.flatMap(({ cut }) => cut).length;
    expect(patterns.file.parts.filter(({ kind }) => kind === "batting")).toHaveLength(layers + parts.length);
    const built = new Set(parts.map(({ of }) => of));
    for (const of of ["shoulderHeight-left", "shoulderHeight-right", "neck-both", "upperChest-both"])
      expect(built, of).toContain(of);
    const titles = parts.map(({ title }) => title);
    expect(new Set(titles).size).toBe(titles.length);
    for (const half of ["Front", "Back"])
      expect(
        titles.some((title) => title.startsWith(`${half} upper chest panel`)),
        half,
      ).toBe(true);
    for (const { title, says } of parts) {
      expect(title).toMatch(/^[A-Z][a-z ]+(, layer \d+ of \d+)?$/);
      expect(says[0]).toBe("Cut 1 from bonded batting.");
      expect(says).toHaveLength(3);
    }
  });

  /** Broken on purpose: the form's lines left where its own chart has them. Seen to fail. */
  test("of a form that was read on the person's lines, without heights of its own", () => {
    const { waistBelowNape: _waist, bustBelowNape: _bust, ...form } = above.form;
    const builds = (readAtBodyLines: boolean) => {
      const made = patternsOfText(
        JSON.stringify({
          ...demo,
          body: { ...demo.body, ...above.body },
          form: { ...demo.form, ...form, napeToWaist: "15 1/4", readAtBodyLines },
        }),
        { kind: "knit", stretch: ratio(0.1), shortening: ratio(0) },
      );
      if (!made.ok) throw new Error(made.problem.join(" "));
      return new Set(made.value.file.parts.map(({ of }) => of));
    };
    expect(builds(true)).toContain("upperBack-both");
    expect(builds(false)).not.toContain("upperBack-both");
  });

  /** Broken on purpose: the builds left out of the patterns. Seen to fail. */
  test("and reads back from drawings and exchange drawings at its true size", async () => {
    const files = await patternFiles(patterns);
    const file = (name: string): string => {
      const found = files.get(name);
      if (typeof found !== "string") throw new Error(`no text ${name}`);
      return found;
    };
    expect(parts.length).toBeGreaterThan(6);
    for (const { id, outline } of parts) {
      expect(apart(outline, outlinesOfSvg(file(`${id}.svg`)).get(id) ?? []), id).toBeLessThan(0.2);
      expect(apart(outline, readDxf(file(`${id}.dxf`)).outlines[0] ?? []), id).toBeLessThan(0.2);
    }
  });

  /** Broken on purpose: these parts drawn a two hundredth too large. Seen to fail. */
  test.each([
    ["letter", 215.9, 279.4],
    ["a4", 210, 297],
  ] as const)(
    "and reads back from one large sheet and from pages at its true size: %s",
    async (paper, width, height) => {
      const read = async (kind: "sheet" | "letter" | "a4"): Promise<readonly ReadPage[]> => {
        const { content } = await writePatterns(patterns, kind, patternWords);
        if (typeof content === "string") throw new Error("no bytes");
        return readPdf(content);
      };
      const sheet = (await read("sheet")).flatMap((page) => page.lines);
      const pages = await read(paper);
      const tiles = patterns.parts.flatMap(({ part }) => tilesOf(part).tiles.map((tile) => ({ part, tile })));
      const printed = pages.slice(pages.length - tiles.length);
      const [left, bottom] = [(width - tileWidth) / 2, (height - tileHeight) / 2];
      let met = 0;
      for (const { id, outline } of parts) {
        expect(Math.min(...sheet.map((line) => farthest(cornered(outline), cornered(line)))), id).toBeLessThan(0.2);
        for (const [i, { part, tile }] of tiles.entries()) {
          if (part.id !== id) continue;
          met++;
          const where = (printed[i] as ReadPage).lines.map((line) =>
            line.map(([x, y]) => [x - left + tile.left, y - bottom + tile.bottom] as const),
          );
          expect(Math.min(...where.map((line) => farthest(outline, line))), id).toBeLessThan(0.2);
        }
      }
      expect(met).toBeGreaterThanOrEqual(parts.length);
    },
  );
});

/** The largest distance between the points of two outlines, one by one; none where one has fewer points. */
const farthest = (one: ReadLine, other: ReadLine): number =>
  other.length < one.length
    ? Number.POSITIVE_INFINITY
    : Math.max(...one.map(([x, y], i) => Math.hypot(x - (other[i]?.[0] ?? 1e9), y - (other[i]?.[1] ?? 1e9))));

/** An outline with its lower left corner at the origin. */
function cornered(line: ReadLine): ReadLine {
  const [left, bottom] = [Math.min(...line.map(([x]) => x)), Math.min(...line.map(([, y]) => y))];
  return line.map(([x, y]) => [x - left, y - bottom] as const);
}

/** Breadth, height, area without sign and length of an outline (mm). */
function sizeOf(outline: ReadLine): readonly number[] {
  const range = (of: readonly number[]) => Math.max(...of) - Math.min(...of);
  let [area, length] = [0, 0];
  for (const [i, [x, y]] of outline.entries()) {
    const [nextX, nextY] = outline[(i + 1) % outline.length] as ReadLine[number];
    area += (x * nextY - nextX * y) / 2;
    length += Math.hypot(nextX - x, nextY - y);
  }
  // An area of two decimals of a millimeter around a meter of edge.
  return [range(outline.map(([x]) => x)), range(outline.map(([, y]) => y)), Math.abs(area) / 1000, length];
}

/** By how much the sizes of two outlines differ at most. */
const apart = (planned: ReadLine, read: ReadLine): number =>
  Math.max(...sizeOf(planned).map((size, i) => Math.abs(size - (sizeOf(read)[i] ?? 0))));
