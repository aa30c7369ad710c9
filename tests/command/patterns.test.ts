import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import type { PatternFile } from "../../src/app/patterns/patternFile";
import { tileHeight, tilesOf, tileWidth } from "../../src/app/patterns/tiles";
import { patternWish } from "../../src/command/patternWish";
import { nextOfText } from "../../src/command/nextOfText";
import { levelNames } from "../../src/core/body/vocabulary";
import type { Cloth } from "../../src/core/cover/cloth";
import { ratio } from "../../src/core/units";
import { folderProblem, patternFiles, writeFolder } from "../../src/command/patternFolder";
import type { FittingPatterns } from "../../src/app/patterns/fittingPatterns";
import { patternsOfText } from "../../src/command/patternsOfText";
import { planOfText } from "../../src/command/planOfText";
import { people, fittingFileOf } from "../tools/people";
import { apart, outlinesOfSvg, type ReadLine, type ReadPage, readDxf, readPdf } from "../tools/readPatterns";

/** Files written and read back, and other work may share the machine. */
vi.setConfig({ testTimeout: 240_000, hookTimeout: 240_000 });

const sample = readFileSync(resolve(import.meta.dirname, "../../shared/demo-fitting.json"), "utf8");
const sampleBody = (JSON.parse(sample) as { readonly body: object }).body;
const withBody = (more: object): string => JSON.stringify({ ...JSON.parse(sample), body: { ...sampleBody, ...more } });

/** An arm of a made-up person, in inches as the sample is. */
const armLengths = {
  upperArmGirth: "11 1/2",
  elbowGirth: "10 1/8",
  wristGirth: "6",
  armLength: "21 3/4",
  shoulderToElbow: "12 1/4",
};
const demo = withBody(armLengths);

function patternsOf(text: string, cloth: Cloth = knit): FittingPatterns {
  const made = patternsOfText(text, cloth);
  if (!made.ok) throw new Error(made.problem.join(" "));
  return made.value;
}

const knit: Cloth = { kind: "knit", stretch: ratio(0.1), shortening: ratio(0) };
const patterns = patternsOf(demo);
let files: ReadonlyMap<string, string | Uint8Array> = new Map();
let list: PatternFile & { readonly files: readonly string[] };
beforeAll(async () => {
  files = await patternFiles(patterns);
  list = JSON.parse(text("patterns.json")) as typeof list;
});

const text = (name: string): string => {
  const found = files.get(name);
  if (typeof found !== "string") throw new Error(`no text ${name}`);
  return found;
};
const bytes = (name: string): Uint8Array => {
  const found = files.get(name);
  if (!(found instanceof Uint8Array)) throw new Error(`no bytes ${name}`);
  return found;
};

/** What is read back lies as far from what was planned as this at most (mm). */
const agreement = 0.2;

const dist = (outline: ReadLine): number =>
  outline.slice(1).reduce((sum, [x, y], i) => {
    const [fromX, fromY] = outline[i] as ReadLine[number];
    return sum + Math.hypot(x - fromX, y - fromY);
  }, 0);

describe("the list of parts", () => {
  test("every layer of every piece that is cut is a part, with the sizes of the plan", () => {
    const plan = planOfText(demo);
    if (!plan.ok) throw new Error("no plan");
    const layers = plan.value.pieces.flatMap((piece) =>
      piece.cut.map((cut, i) => [`${piece.id}-layer-${i + 1}`, cut] as const),
    );
    const batting = list.parts.filter(({ kind }) => kind === "batting");
    expect(batting.map(({ id }) => id).sort()).toEqual(layers.map(([id]) => id).sort());
    for (const [id, cut] of layers) {
      const part = list.parts.find((one) => one.id === id);
      if (part === undefined || !("heightMm" in cut)) throw new Error(`no flat cut ${id}`);
      const ys = part.outline.map(([, y]) => y);
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(cut.heightMm, 0);
    }
  });

  /** Broken on purpose: an arm left out of the parts; built from four measurements. Seen to fail. */
  test("an arm is among the parts once all of it was measured, and never while one length is missing or they contradict one another", () => {
    const arm = list.parts.filter(({ kind }) => kind === "arm");
    expect(arm.map(({ id }) => id)).toEqual(
      ["upper", "under", "capDisc", "wristDisc", "tab", "capCard", "wristCard"].map((name) => `leftArm-${name}`),
    );
    for (const part of arm) {
      expect(part.of).toBe("leftArm");
      expect(part.title).toContain("left arm");
      expect(part.lines.some(({ kind }) => kind === "cut")).toBe(!part.id.endsWith("Card"));
    }
    for (const name of ["upper", "under"])
      expect(arm.find(({ id }) => id.endsWith(name))?.says.join(" ")).toContain(
        "For a right arm, turn every part over.",
      );
    const girths = { upperArm: 11.5, elbow: 10.125, wrist: 6 };
    for (const [line, inches] of Object.entries(girths)) {
      const sewn = arm.flatMap(({ levels }) => levels).filter(({ name }) => name === line);
      expect(sewn).toHaveLength(2);
      const around = (1 + list.stretch) * sewn.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
      expect(Math.abs(around - 25.4 * inches)).toBeLessThan(0.1);
    }
    const { wristGirth: _, ...rest } = armLengths;
    const notesWith = (more: object) => {
      const made = patternsOfText(withBody(more), knit);
      if (!made.ok) throw new Error(made.problem.join(" "));
      expect(made.value.file.parts.some(({ kind }) => kind === "arm")).toBe(false);
      return made.value.notes;
    };
    expect(notesWith(rest)).toEqual([]);
    expect(notesWith({ ...armLengths, shoulderToElbow: "20" })).toEqual([
      "No arm is among the parts. The person’s shoulder to elbow reads 20 in; beside that arm length it can be 9 3/4 in to 14 5/8 in. Measure both again from the shoulder tip.",
    ]);
  });

  /** Broken on purpose: the choice not passed on to the parts; the armhole of the form not read. Seen to fail. */
  test("the arm is cut as it was chosen: of one piece, its cap gathered onto the form's armhole by 5 %", () => {
    const chosen = {
      ...JSON.parse(demo),
      form: { ...JSON.parse(demo).form, armholePlateHeight: "5 1/4", armholePlateBreadth: "4" },
      arm: { cut: "onePiece", cap: "gathered" },
    };
    const { parts } = patternsOf(JSON.stringify(chosen)).file;
    const arm = parts.filter(({ kind }) => kind === "arm");
    expect(arm.map(({ id }) => id)).toEqual(
      ["whole", "capDisc", "wristDisc", "tab", "capCard", "wristCard"].map((name) => `leftArm-${name}`),
    );
    const edges = arm.flatMap((part) => part.edges);
    for (const half of ["upper", "under"]) {
      const cap = edges.find(({ id }) => id === `leftArm-whole-${half}Cap`);
      const disc = edges.find(({ id }) => id === `leftArm-capDisc-${half}`);
      expect([cap?.sewnTo, disc?.sewnTo, cap?.gathered, disc?.gathered]).toEqual([disc?.id, cap?.id, 0.05, undefined]);
      expect((cap?.lengthMm ?? 0) / (disc?.lengthMm ?? 1)).toBeCloseTo(1.05, 3);
    }
    const card = arm.find(({ id }) => id.endsWith("capCard"))?.outline ?? [];
    const span = (of: 0 | 1) =>
      Math.max(...card.map((point) => point[of])) - Math.min(...card.map((point) => point[of]));
    expect([span(0), span(1)].map((length) => Math.round(10 * length))).toEqual([1016, 1334]);
    expect(arm[0]?.says.join(" ")).toContain("Sew the two darts first.");
  });

  test("outlines are closed, run counterclockwise, and are as long as their edges; ids are one of a kind, and sewn edges name each other", () => {
    const edges = list.parts.flatMap((part) => part.edges);
    expect(new Set(edges.map(({ id }) => id)).size).toBe(edges.length);
    for (const { outline, edges: own } of list.parts) {
      expect(outline[0]).toEqual(outline.at(-1));
      const turned = outline.slice(1).reduce((sum, [x, y], i) => {
        const [fromX, fromY] = outline[i] as ReadLine[number];
        return sum + fromX * y - x * fromY;
      }, 0);
      expect(turned).toBeGreaterThan(0);
      expect(Math.abs(dist(outline) - own.reduce((sum, { lengthMm }) => sum + lengthMm, 0))).toBeLessThan(agreement);
    }
    for (const { id, sewnTo, lengthMm } of edges.filter((edge) => edge.sewnTo !== null)) {
      const other = edges.find((edge) => edge.id === sewnTo);
      expect(other?.sewnTo).toBe(id);
      expect(other?.lengthMm).toBeCloseTo(lengthMm, 1);
    }
    expect(edges.some(({ sewnTo }) => sewnTo !== null)).toBe(true);
  });
});

describe("the cover", () => {
  const panelsOf = ({ parts }: Pick<PatternFile, "parts">) => parts.filter(({ kind }) => kind === "cover");
  const sewn = ({ parts }: Pick<PatternFile, "parts">, level: string): number =>
    panelsOf({ parts }).reduce(
      (sum, { levels }) => sum + (levels.find(({ name }) => name === level)?.lengthMm ?? 0),
      0,
    );

  /** Broken on purpose: the stretch left out of the list; the plan's girth in place of what the tape will read. Seen to fail. */
  test("sewn together and pulled on, it is as wide at every level as the tape will read over the padding", () => {
    const step = nextOfText(demo);
    if (!step.ok) throw new Error("no step");
    expect(panelsOf(list)).toHaveLength(8);
    expect(list.stretch).toBe(0.1);
    for (const [level, girth] of Object.entries(list.girths)) {
      expect(Math.abs((1 + list.stretch) * sewn(list, level) - girth)).toBeLessThan(1);
      const { valueMm } = (
        step.value.rest.predicted as { readonly [name: string]: { readonly girthMm: { readonly valueMm: number } } }
      )[level]?.girthMm ?? { valueMm: Number.NaN };
      expect(Math.abs(valueMm - girth)).toBeLessThan(1);
    }
  });

  /** Broken on purpose: the back in place of the front. Seen to fail. */
  test("its front panels are together as wide as the front will read, at every level", () => {
    const step = nextOfText(demo);
    if (!step.ok) throw new Error("no step");
    expect(step.value.rest.seamShifts).toEqual([]);
    const front = panelsOf(list).filter((part) => part.of.includes("Front"));
    expect(front).toHaveLength(4);
    for (const level of levelNames) {
      const { valueMm } = step.value.rest.predicted[level].frontArcMm;
      expect(Math.abs((1 + list.stretch) * sewn({ parts: front }, level) - valueMm)).toBeLessThan(1);
    }
  });

  test("of woven cloth it is as wide as the padding; of each seam both edges are equally long", () => {
    const woven = patternsOf(demo, { kind: "woven", ease: ratio(0) }).file;
    expect(woven.stretch).toBe(0);
    const edges = panelsOf(woven).flatMap((part) => part.edges);
    for (const [level, girth] of Object.entries(woven.girths))
      expect(Math.abs(sewn(woven, level) - girth)).toBeLessThan(1);
    for (const { sewnTo, lengthMm } of edges) {
      if (sewnTo === null) continue;
      expect(Math.abs((edges.find(({ id }) => id === sewnTo)?.lengthMm ?? 0) - lengthMm)).toBeLessThan(0.5);
    }
  });

  /** Seen to fail: the knit of nobody's test for whoever chose woven fabric. */
  test("the cloth that the fitting chose counts where the command says none", () => {
    const stretchOf = (chosen: readonly object[]) => {
      const made = patternsOfText(JSON.stringify({ ...(JSON.parse(demo) as object), work: chosen }), null);
      return made.ok ? made.value.file.stretch : null;
    };
    const test = { marked: "4", across: "4.6", along: "3.9" };
    expect(stretchOf([])).toBe(0.1);
    expect(stretchOf([{ did: "coverChosen", cloth: "woven" }])).toBe(0);
    expect(stretchOf([{ did: "coverChosen", cloth: "knit", ...test }])).toBeCloseTo(0.075, 6);
  });

  test("the cloth is said in the command, and anything else is refused with a sentence", () => {
    expect(patternWish(["f.json", "out"])).toMatchObject({ kind: "write", cloth: null });
    expect(patternWish(["f.json", "out", "--stretch", "0"])).toMatchObject({ cloth: { kind: "woven" } });
    expect(patternWish(["--stretch", "15", "f.json", "out"])).toMatchObject({
      cloth: { stretch: 0.15 },
      folder: "out",
    });
    expect(patternWish(["f.json", "out", "--stretch", "40"])).toMatchObject({ kind: "refused" });
    expect(patternWish(["f.json", "out", "--stretch"])).toMatchObject({ kind: "refused" });
    expect(patternWish(["f.json", "out", "--wide"])).toMatchObject({ kind: "refused" });
    expect(patternWish(["f.json"])).toMatchObject({ kind: "refused" });
    expect(patternWish(["f.json", "out", "more"])).toMatchObject({ kind: "refused" });
    expect(patternWish(["--help"])).toEqual({ kind: "help" });
  });
});

/** Broken on purpose: drawings a hundredth too large; a part left out; y not turned. Seen to fail. */
describe("what is written is read back at its true size", () => {
  test("as drawings, one by one and all together", () => {
    const all = outlinesOfSvg(text("all.svg"));
    for (const { id, outline } of list.parts) {
      expect(apart(outline, outlinesOfSvg(text(`${id}.svg`)).get(id) ?? [])).toBeLessThan(agreement);
      expect(apart(outline, all.get(id) ?? [])).toBeLessThan(agreement);
    }
  });

  test("as exchange drawings of release 12, one by one and all together", () => {
    const all = readDxf(text("all.dxf"));
    expect(all.outlines).toHaveLength(list.parts.length);
    for (const { id, outline } of list.parts) {
      const own = readDxf(text(`${id}.dxf`));
      expect(own.version).toBe("AC1009");
      expect(apart(outline, own.outlines[0] ?? [])).toBeLessThan(agreement);
      expect(Math.min(...all.outlines.map((one) => apart(outline, one)))).toBeLessThan(agreement);
    }
  });

  /** Broken on purpose: both sheets as tall; one part drawn a five hundredth too large. Seen to fail. */
  test.each([
    ["sheet.pdf", 914.4],
    ["sheet-a0.pdf", 841],
  ])("as one sheet for a roll: %s", async (name, width) => {
    const pages = await readPdf(bytes(name));
    const lines = pages.flatMap((page) => page.lines);
    for (const { outline } of list.parts)
      expect(Math.min(...lines.map((one) => apart(outline, one)))).toBeLessThan(agreement);
    const tallest = Math.max(
      ...list.parts.flatMap(({ outline }) => {
        const ys = outline.map(([, y]) => y);
        return Math.max(...ys) - Math.min(...ys);
      }),
    );
    expect(tallest).toBeLessThan(width - 60);
    for (const page of pages) {
      expect(page.height).toBeCloseTo(width, 0);
      for (const line of page.lines)
        for (const [x, y] of line) {
          expect(Math.min(x, y)).toBeGreaterThan(5);
          expect(x).toBeLessThan(page.width - 5);
          expect(y).toBeLessThan(page.height - 5);
        }
    }
  });

  test.each([
    ["tiles-letter.pdf", 215.9, 279.4],
    ["tiles-a4.pdf", 210, 297],
  ])("as pages, laid on each other as their names say: %s", async (name, width, height) => {
    const pages = await readPdf(bytes(name));
    const tiles = patterns.parts.flatMap(({ part }) => tilesOf(part).tiles.map((tile) => ({ part, tile })));
    const printed = pages.slice(pages.length - tiles.length);
    // The first pages hold the squares and the maps, several parts to a page.
    expect(pages.length - tiles.length).toBeLessThanOrEqual(Math.ceil(list.parts.length / 6));
    for (const page of pages) {
      expect([page.width, page.height].map((side) => Math.round(10 * side) / 10)).toEqual([width, height]);
      for (const { size } of page.words) expect(size).toBeGreaterThan(9.99);
    }
    const [left, bottom] = [(width - tileWidth) / 2, (height - tileHeight) / 2];
    for (const [i, { part, tile }] of tiles.entries()) {
      const outline = list.parts.find(({ id }) => id === part.id)?.outline ?? [];
      const where = (printed[i] as ReadPage).lines.map((line) =>
        line.map(([x, y]) => [x - left + tile.left, y - bottom + tile.bottom] as const),
      );
      const away = where.map((line) =>
        line.length < outline.length ? Number.POSITIVE_INFINITY : farthest(outline, line),
      );
      expect(Math.min(...away)).toBeLessThan(agreement);
    }
  });

  test("the squares on the first page measure 4 in and 100 mm", async () => {
    const [first] = await readPdf(bytes("tiles-a4.pdf"));
    const sides = (first?.lines ?? []).filter((line) => line.length === 5).map((line) => dist(line) / 4);
    for (const side of [101.6, 100])
      expect(Math.min(...sides.map((one) => Math.abs(one - side)))).toBeLessThan(agreement);
  });
});

const farthest = (one: ReadLine, other: ReadLine): number =>
  Math.max(...one.map(([x, y], i) => Math.hypot(x - (other[i]?.[0] ?? 1e9), y - (other[i]?.[1] ?? 1e9))));

test("what lies on a page is on some page: no piece of an outline is left out by the pages of any of forty people", () => {
  for (const one of people(40, 300)) {
    for (const { part } of patternsOf(JSON.stringify(fittingFileOf(one))).parts) {
      const { tiles } = tilesOf(part);
      for (const { points } of part.edges) {
        for (const { x, y } of points) {
          const isShown = tiles.some(
            ({ left, bottom }) => x >= left && x <= left + tileWidth && y >= bottom && y <= bottom + tileHeight,
          );
          expect(isShown).toBe(true);
        }
      }
    }
  }
});

describe("the folder", () => {
  const folder = mkdtempSync(join(tmpdir(), "patterns-"));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test("is written whole, and anew over what was written before, leaving nothing of the old", () => {
    const own = join(folder, "new", "folder");
    writeFolder(
      own,
      new Map([
        ["old.svg", "x"],
        ["patterns.json", JSON.stringify({ files: ["patterns.json", "old.svg"] })],
      ]),
    );
    expect(folderProblem(own)).toBeNull();
    writeFolder(own, files);
    expect(readdirSync(own).sort()).toEqual([...list.files].sort());
  });

  test("is left alone if it holds anything else, whatever its list says", () => {
    const other = join(folder, "other");
    mkdirSync(other);
    writeFileSync(join(other, "letter.txt"), "mine");
    expect(folderProblem(other)).toContain("letter.txt");
    writeFileSync(join(other, "patterns.json"), JSON.stringify({ files: ["../letter.txt", "patterns.json"] }));
    expect(folderProblem(other)).toContain("letter.txt");
    expect(folderProblem(join(other, "letter.txt"))).toContain("is a file");
    expect(folderProblem(join(folder, "not-there"))).toBeNull();
  });
});

test("a fitting that cannot be planned is refused with its sentences", () => {
  expect(patternsOfText("{", knit)).toMatchObject({ ok: false });
  const made = patternsOfText(JSON.stringify({ ...JSON.parse(demo), body: { bustGirth: "900" } }), knit);
  expect(made.ok).toBe(false);
});
