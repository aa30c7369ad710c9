import IsValidOp from "jsts/org/locationtech/jts/operation/valid/IsValidOp.js";
import { describe, expect, test } from "vitest";
import { levelNames } from "../../../src/core/body/vocabulary";
import { coverRows } from "../../../src/core/cover/coverRows";
import { coverSeamNames, panelSeams, panelsAround, seamsAround } from "../../../src/core/cover/coverPanels";
import { panelEdges } from "../../../src/core/cover/panelEdges";
import { type CoverPanel, fittedCover } from "../../../src/core/cover/fittedCover";
import { pointsPerRow } from "../../../src/core/cover/panelMesh";
import { panelOutline, panelPoint, panelRow } from "../../../src/core/cover/panelShape";
import { girthOf } from "../../../src/core/geometry/outline";
import { tautPointAt } from "../../../src/core/surface/tautSection";
import { asCut, coverCases, edgesOf, groundOf, knit, libraryArea, libraryLength, section, woven } from "./covers";

const cases = coverCases(40);
/** In three cloths with eight panels, and in woven cloth with ten. */
const everyCover = cases.flatMap(({ one, ground, rows, covers, plan }) => {
  const divided = { ...ground, hasSideFrontSeams: true };
  const dividedRows = coverRows(divided);
  return [...covers.map((cover) => ({ rows, cover })), { rows: dividedRows, cover: fittedCover(divided, woven) }].map(
    (made) => ({ seed: String(one.seed), plan, cut: asCut(made.cover.cloth), ...made }),
  );
});
const worst = (values: readonly number[]): number => values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
const widthAt = (panel: CoverPanel, row: number): number => libraryLength(panelRow(panel.shape, row));
const isFront = ({ name }: CoverPanel): boolean => name.includes("Front");

/** Sewn back together: lengths by a general-purpose geometry library. */
describe("the panels of a cover give their own surface", () => {
  /** Broken on purpose: panels not finished after the relaxation; rows finished to their chords. Seen to fail. */
  test("every girth and every front within 0.6 mm, at every row and so at every level line", () => {
    let rowsMet = 0;
    for (const { seed, rows, cover, cut } of everyCover) {
      const misses = rows.flatMap(({ tape: { quarters } }, row) => {
        rowsMet++;
        const widths = cover.panels.map((panel) => ({ panel, width: widthAt(panel, row) / cut.across }));
        const sum = (some: typeof widths) => some.reduce((total, { width }) => total + width, 0);
        const front = quarters.leftFront + quarters.rightFront;
        return [sum(widths) - girthOf(quarters), sum(widths.filter(({ panel }) => isFront(panel))) - front];
      });
      expect(worst(misses), seed).toBeLessThan(0.6);
    }
    expect(rowsMet).toBeGreaterThan(4000);
  });

  /** Broken on purpose: the cover cut for the bare form; princess seams' widths swapped left and right. Seen to fail. */
  test("and at the level lines what the plan foretells of the padded form", () => {
    for (const { seed, plan, cover, cut } of everyCover) {
      const misses = plan.levels.flatMap(({ name, predicted }) => {
        const drawn = cover.panels.reduce(
          (sum, { levels }) => sum + (levels.find((level) => level.name === name)?.length ?? 0),
          0,
        );
        return [drawn / cut.across - predicted.girth, (cover.girths[name]?.girth ?? 0) - predicted.girth];
      });
      expect(worst(misses), seed).toBeLessThan(0.6);
    }
  });

  /** Broken on purpose: the last edge of a panel a thousandth longer; steps told along the depth alone. Seen to fail. */
  test("every seam as long as on the surface, and joined edges alike within 0.2 mm, whole and between notches", () => {
    for (const { seed, rows, cover, cut } of everyCover) {
      const levelRows = rows.flatMap(({ line }, row) => (line === null ? [] : [row]));
      const stretches = [
        ...levelRows.slice(1).map((to, i) => [levelRows[i] as number, to] as const),
        [0, rows.length - 1] as const,
      ];
      cover.panels.forEach((panel, i) => {
        const next = cover.panels[(i + 1) % cover.panels.length] as CoverPanel;
        expect(panel.seams.last, seed).toBe(next.seams.first);
        const misses = stretches.flatMap(([from, to]) => {
          const drawn = libraryLength(edgesOf(panel).last.slice(from, to + 1));
          const joined = libraryLength(edgesOf(next).first.slice(from, to + 1));
          return [drawn - joined, drawn - cut.along * seamLength(rows.slice(from, to + 1), i + 1)];
        });
        expect(worst(misses), `${seed} ${panel.name}`).toBeLessThan(0.2);
      });
    }
  });

  test("with little strain: a panel's area is that of its part of the surface", () => {
    const strains = cases.flatMap(({ rows, covers: [cover] }) =>
      (cover?.panels ?? []).map((panel, i) => {
        const flat: number = libraryArea(panelOutline(panel.shape)).getArea();
        const cells = rows.slice(1).flatMap((_, row) => cellAreas(rows, i, row));
        return flat / cells.reduce((sum, cell) => sum + cell, 0) - 1;
      }),
    );
    expect(strains.length).toBe(320);
    expect(worst(strains)).toBeLessThan(0.02);
    expect(strains.reduce((sum, strain) => sum + Math.abs(strain), 0) / strains.length).toBeLessThan(0.005);
  });

  /** Broken on purpose: relaxing left out; the lines across and along counted as little as the diagonals. Seen to fail. */
  test("and so is each cell's: within 3 % in 95 of 100, in front between bust and underbust within 6 %", () => {
    const [above, elsewhere]: [number[], number[]] = [[], []];
    for (const { rows, covers } of cases) {
      const found = cellStrains(rows, covers[0]?.panels ?? []);
      above.push(...found.above);
      elsewhere.push(...found.elsewhere);
    }
    expect(above.length).toBeGreaterThan(5000);
    expect([share95(above) < 0.06, share95(elsewhere) < 0.03]).toEqual([true, true]);
    expect([worst(above) < 0.12, worst(elsewhere) < 0.12]).toEqual([true, true]);
  });
});

/** The area strain of each cell, of the front between bust and underbust and of all else. */
function cellStrains(rows: ReturnType<typeof coverRows>, panels: readonly CoverPanel[]) {
  const underbust = rows.findIndex(({ line }) => line === "underbust");
  const [above, elsewhere]: [number[], number[]] = [[], []];
  panels.forEach((panel, i) => {
    for (let row = 0; row + 1 < rows.length; row++) {
      const strains = cellAreas(rows, i, row).map((area, cell) => flatCell(panel, row, cell) / area - 1);
      (row < underbust && isFront(panel) ? above : elsewhere).push(...strains);
    }
  });
  return { above, elsewhere };
}

const share95 = (strains: readonly number[]): number =>
  strains.map(Math.abs).toSorted((one, other) => one - other)[Math.floor(0.95 * strains.length)] as number;

/** Broken on purpose: the seam of the side front at its edge. Seen to fail. */
test("one more seam in the side front eases what woven cloth cannot", () => {
  let met = 0;
  for (const { ground, rows, covers } of cases) {
    const [bust, underbust] = [covers[0]?.girths.bust, covers[0]?.girths.underbust];
    if (bust === undefined || underbust === undefined || bust.frontArc - underbust.frontArc < 100) continue;
    met++;
    const divided = { ...ground, hasSideFrontSeams: true };
    const whole = cellStrains(rows, covers[0]?.panels ?? []).above;
    const halves = cellStrains(coverRows(divided), fittedCover(divided, woven).panels).above;
    expect(share95(halves)).toBeLessThan(0.75 * share95(whole));
  }
  expect(met).toBeGreaterThan(3);
});

function flatCell({ shape }: CoverPanel, row: number, cell: number): number {
  const corners = [
    panelPoint(shape, row, cell),
    panelPoint(shape, row, cell + 1),
    panelPoint(shape, row + 1, cell + 1),
    panelPoint(shape, row + 1, cell),
  ];
  return libraryArea(corners).getArea();
}

/** Straight through space from row to row, as the seam of this number runs over the surface. */
function seamLength(rows: ReturnType<typeof coverRows>, seam: number): number {
  const places = rows.map(({ tape, seams, depthBelowNape }) => ({
    ...tautPointAt(tape, seams[seam] as number),
    depth: depthBelowNape,
  }));
  return places.slice(1).reduce((sum, to, i) => {
    const from = places[i] as typeof to;
    return sum + Math.hypot(to.x - from.x, to.y - from.y, to.depth - from.depth);
  }, 0);
}

/** The areas of a panel's cells between one row and the next on the surface, in small triangles. */
function cellAreas(rows: ReturnType<typeof coverRows>, first: number, row: number): readonly number[] {
  const spotsOf = (at: number): readonly Spot[] => {
    const { tape, seams, depthBelowNape } = rows[at] as (typeof rows)[number];
    const [from, to] = [seams[first] as number, seams[first + 1] as number];
    return Array.from({ length: 6 * fine + 1 }, (_, i): Spot => {
      const { x, y } = tautPointAt(tape, from + ((to - from) * i) / (6 * fine));
      return [x, y, depthBelowNape];
    });
  };
  const [upper, lower] = [spotsOf(row), spotsOf(row + 1)];
  return Array.from({ length: pointsPerRow - 1 }, (_, cell) => {
    let area = 0;
    for (let i = cell * fine; i < (cell + 1) * fine; i++) {
      const [a, b, c, d] = [upper[i], upper[i + 1], lower[i], lower[i + 1]] as [Spot, Spot, Spot, Spot];
      area += triangle(a, b, c) + triangle(b, c, d);
    }
    return area;
  });
}

/** Triangles are so many times narrower than a cell. */
const fine = 4;

type Spot = readonly [number, number, number];

function triangle(a: Spot, b: Spot, c: Spot): number {
  const [u, v] = [b, c].map((to) => to.map((value, i) => value - (a[i] as number)) as unknown as Spot) as [Spot, Spot];
  return Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2;
}

describe("every panel", () => {
  /** Broken on purpose: the lower row above the upper; x and y changed. Seen to fail. */
  test("does not cross itself, lies with its top row up and its first seam on the left, its midline along the grain", () => {
    for (const { seed, cover } of everyCover) {
      for (const { name, shape } of cover.panels) {
        const at = `${seed} ${name}`;
        expect(new IsValidOp(libraryArea(panelOutline(shape))).isValid(), at).toBe(true);
        const middles = Array.from({ length: shape.rows }, (_, row) => panelPoint(shape, row, 3));
        const ends = Array.from({ length: shape.rows }, (_, row) => [
          panelPoint(shape, row, 0),
          panelPoint(shape, row, 6),
        ]);
        expect(middles[0]?.y, at).toBeCloseTo(0, 6);
        expect(worst([middles.reduce((sum, { x }) => sum + x, 0)]), at).toBeLessThan(1e-6);
        expect(
          middles.every(({ y }, row) => row === 0 || y < (middles[row - 1]?.y ?? 0)),
          at,
        ).toBe(true);
        expect(
          ends.every(([first, last]) => (first?.x ?? 0) < (last?.x ?? 0)),
          at,
        ).toBe(true);
        // No shear is left between the midline and y.
        expect(
          Math.abs(middles.reduce((sum, { x, y }) => sum + x * (y - (middles.at(-1)?.y ?? 0) / 2), 0)),
          at,
        ).toBeLessThan(1e-3 * middles.reduce((sum, { y }) => sum + y * y, 0));
      }
    }
  });

  /** Broken on purpose: the row for the underbust line left out; one notch at the waist of the sides. Seen to fail. */
  test("carries every level line with its length, a notch on both edges, and two at the waist of the sides", () => {
    for (const { seed, cover } of everyCover) {
      for (const panel of cover.panels) {
        expect(
          panel.levels.map(({ name }) => name),
          seed,
        ).toEqual(levelNames);
        expect(worst(panel.levels.map(({ row, length }) => widthAt(panel, row) - length)), seed).toBeLessThan(1e-6);
        expect(panel.notches.length, seed).toBe(10);
        const waist = panel.levels.find(({ name }) => name === "waist")?.row;
        for (const { edge, row, count } of panel.notches)
          expect(count, seed).toBe(panel.seams[edge].endsWith("Side") && row === waist ? 2 : 1);
      }
    }
  });
});

/** Broken on purpose: an edge sewn to the next edge of its own panel. Seen to fail. */
test("every edge beside a seam is sewn to one other of the same length, and that one to it", () => {
  for (const { cover } of everyCover.filter((_, i) => i % 4 === 3 || i % 4 === 0)) {
    const edges = cover.panels.flatMap((panel) => panelEdges(cover, panel));
    expect(new Set(edges.map(({ id }) => id)).size).toBe(4 * cover.panels.length);
    for (const { id, length, line, sewnTo } of edges) {
      expect(Math.abs(libraryLength(line) - length)).toBeLessThan(1e-6);
      const other = edges.find((edge) => edge.id === sewnTo);
      expect(other === undefined).toBe(id.endsWith("-top") || id.endsWith("-bottom"));
      if (other === undefined) continue;
      expect(other.sewnTo).toBe(id);
      expect(other.id.split("-")[0]).not.toBe(id.split("-")[0]);
      expect(Math.abs(other.length - length)).toBeLessThan(0.2);
    }
  }
});

describe("the rows of a cover", () => {
  test("begin at the bust line, end below the hem, stand at most 10 and at least 5 mm apart, and hang straight below the form", () => {
    for (const { ground, rows } of cases) {
      const depths = rows.map(({ depthBelowNape }) => depthBelowNape);
      const gaps = depths.slice(1).map((depth, i) => depth - (depths[i] as number));
      expect([depths[0], depths.at(-1)]).toEqual([ground.lines[0]?.depthBelowNape, ground.hem + ground.turnUnder]);
      expect(Math.max(...gaps)).toBeLessThan(10.001);
      expect(Math.min(...gaps)).toBeGreaterThanOrEqual(5);
      const under = rows.filter(({ depthBelowNape }) => depthBelowNape >= ground.hem);
      expect(under.length).toBeGreaterThan(4);
      expect(
        worst(
          under.map(({ tape }) => girthOf(tape.quarters) - girthOf((under[0] as (typeof under)[number]).tape.quarters)),
        ),
      ).toBe(0);
    }
  });

  test("two lines closer than 5 mm leave one row", () => {
    const base = groundOf([
      { depth: 200, section: section(150, 150, 110, 90) },
      { depth: 500, section: section(170, 170, 110, 120) },
    ]);
    const lines = [
      ...base.lines.slice(0, 1),
      { name: "underbust" as const, depthBelowNape: 300 },
      { name: "between" as const, depthBelowNape: 303 },
      ...base.lines.slice(1),
    ];
    const rows = coverRows({ ...base, lines });
    expect(rows.filter(({ line }) => line !== null).map(({ line }) => line)).toEqual(["bust", "underbust", "fullHip"]);
  });

  /** Broken on purpose: the share of the whole girth. Seen to fail. */
  test("the front princess seams pass over the apexes, as far apart as they were read; the side seams lie on the side lines", () => {
    let met = 0;
    for (const {
      one,
      rows: [top],
    } of cases) {
      const apart = one.body.apexToApex;
      if (apart === undefined || top === undefined) continue;
      const [right, left] = [3, 5].map((seam) => tautPointAt(top.tape, top.seams[seam] as number));
      if (Math.abs((left?.x ?? 0) - (right?.x ?? 0) - apart) > 0.1) continue;
      met++;
      expect(Math.abs((left?.x ?? 0) + (right?.x ?? 0))).toBeLessThan(0.1);
      for (const seam of [2, 6])
        expect(Math.abs(tautPointAt(top.tape, top.seams[seam] as number).y)).toBeLessThan(1e-6);
    }
    expect(met).toBeGreaterThan(20);
  });

  /** Broken on purpose: the seam in the side front farther from the princess seam on the left. Seen to fail. */
  test("one more seam in each side front lies at 0.42 of its width from the princess seam", () => {
    for (const { ground } of cases) {
      for (const { seams } of coverRows({ ...ground, hasSideFrontSeams: true })) {
        const at = (name: (typeof coverSeamNames)[number]) => seams[seamsAround(true).indexOf(name)] ?? Number.NaN;
        const share = (princess: number, seam: number, side: number) => (seam - princess) / (side - princess);
        const left = share(at("leftFrontPrincess"), at("leftSideFrontSeam"), at("leftSide"));
        const right = share(at("rightFrontPrincess"), at("rightSideFrontSeam"), at("rightSide"));
        if (Math.abs(left - 0.42) > 1e-9 || Math.abs(right - 0.42) > 1e-9) expect([left, right]).toEqual([0.42, 0.42]);
      }
    }
    expect(cases.length).toBe(40);
  });

  test("each seam joins the panels on both its sides, once around", () => {
    for (const isDivided of [false, true]) {
      const panels = panelsAround(isDivided);
      expect(panels.length).toBe(isDivided ? 10 : 8);
      panels.forEach((name, i) => {
        expect(panelSeams[name].last).toBe(panelSeams[panels[(i + 1) % panels.length] ?? name].first);
      });
    }
    expect(seamsAround(true)).toEqual([...coverSeamNames]);
    expect(seamsAround(false)).toEqual(coverSeamNames.filter((name) => !name.endsWith("FrontSeam")));
  });
});

/** Shapes that lie flat without strain, and what they must be then. */
describe("a surface that can be unrolled is unrolled", () => {
  const straight = (ground: ReturnType<typeof groundOf>) => fittedCover(ground, woven).panels;

  /** Broken on purpose: the strip's free angle left at zero beyond the first step; weights of rows and diagonals changed. Seen to fail. */
  test("a cylinder into rectangles, whatever its section", () => {
    const oval = section(160, 148, 120, 95, [3, 2.2]);
    const panels = straight(
      groundOf([
        { depth: 200, section: oval },
        { depth: 600, section: oval },
      ]),
    );
    for (const { shape, lengths } of panels) {
      const width = lengths.widths[0] as number;
      const misses = Array.from({ length: shape.rows }, (_, row) =>
        Array.from({ length: pointsPerRow }, (__, point) => {
          const { x, y } = panelPoint(shape, row, point);
          return Math.hypot(x - (width * (point - 3)) / 6, y + (400 * row) / (shape.rows - 1));
        }),
      ).flat();
      expect(worst(misses)).toBeLessThan(0.05);
    }
  });

  test("a round cone into sectors of a ring: every row an arc around one point, as far off as the slant says", () => {
    const round = (radius: number) => section(radius, radius, radius, radius);
    const panels = straight(
      groundOf(
        [
          { depth: 200, section: round(110) },
          { depth: 600, section: round(170) },
        ],
        undefined,
        "straight",
      ),
    );
    const slant = Math.hypot(400, 60);
    const [near, far] = [(slant * 110) / 60, (slant * 170) / 60];
    for (const { shape } of panels) {
      // The middles of all rows lie on one ray from the apex of the cone, which is the grain.
      const misses = Array.from({ length: shape.rows }, (_, row) =>
        Array.from({ length: pointsPerRow }, (__, point) => {
          const { x, y } = panelPoint(shape, row, point);
          return Math.hypot(x, y - near) - (near + ((far - near) * row) / (shape.rows - 1));
        }),
      ).flat();
      expect(worst(misses)).toBeLessThan(0.1);
    }
  });

  test("mirrored, it gives mirrored panels", () => {
    const sections = (left: "left" | "right") =>
      [
        [150, 141, 122, 92],
        [120, 118, 95, 80],
        [172, 165, 101, 118],
      ].map(([one, other, front, back], i) => ({
        depth: 200 + 170 * i,
        section:
          left === "left"
            ? section(one ?? 0, other ?? 0, front ?? 0, back ?? 0)
            : section(other ?? 0, one ?? 0, front ?? 0, back ?? 0),
      }));
    const here = fittedCover(groundOf(sections("left"), { left: 0.5, right: 0.45 }), knit).panels;
    const there = fittedCover(groundOf(sections("right"), { left: 0.45, right: 0.5 }), knit).panels;
    here.forEach(({ name, shape }, i) => {
      const twin = there[7 - i] as CoverPanel;
      expect(twin.name).toBe(name.replace(/^(left|right)/, (side) => (side === "left" ? "right" : "left")));
      const misses = Array.from({ length: shape.rows }, (_, row) =>
        Array.from({ length: pointsPerRow }, (__, point) => {
          const [one, other] = [panelPoint(shape, row, point), panelPoint(twin.shape, row, pointsPerRow - 1 - point)];
          return Math.hypot(one.x + other.x, one.y - other.y);
        }),
      ).flat();
      expect(worst(misses), name).toBeLessThan(1e-6);
    });
  });
});
