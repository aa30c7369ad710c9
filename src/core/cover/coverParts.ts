import { flat, type PatternEdge, type PatternLine, type PatternPart } from "../pattern/patternPart";
import { mm } from "../units";
import { type Allowances, cuttingLine } from "./cuttingLine";
import type { CoverPanel, FittedCover, Notch } from "./fittedCover";
import { pointsPerRow } from "./panelMesh";
import { type FlatPoint, panelEdge, panelPoint, panelRow } from "./panelShape";

/**
 * Every panel of a cover as it is drawn at its true size, seen from outside: sewing line, cutting line, level lines, grain and
 * notches (mm, y upwards). Its outline is the sewing line; the edges of a seam name each other.
 */
export const coverParts = ({ panels }: FittedCover, allowances: Allowances): readonly PatternPart[] =>
  panels.map((panel, i): PatternPart => {
    const [before, after] = [-1, 1].map((by) => panels[(i + by + panels.length) % panels.length] as CoverPanel);
    return {
      id: partId(panel),
      kind: "cover",
      of: panel.name,
      edges: panelEdges(panel, before as CoverPanel, after as CoverPanel),
      lines: [cutLine(panel, allowances), ...panel.levels.map((level) => levelLine(panel, level)), grainLine(panel)],
      notches: panel.notches.flatMap((notch) => notchPoints(panel, notch)),
      levels: panel.levels.map(({ name, length }) => ({ name, length: mm(length) })),
    };
  });

const partId = ({ name }: Pick<CoverPanel, "name">): string => `cover-${name}`;
const edgeId = (panel: Pick<CoverPanel, "name">, edge: "first" | "last" | "top" | "bottom"): string =>
  `${partId(panel)}-${edge}`;

const drawn = (points: readonly FlatPoint[]) => points.map(({ x, y }) => flat(x, y));

/** Counterclockwise from the upper end of the first seam: down it, along the hem, up the last seam, back along the top line. */
function panelEdges(panel: CoverPanel, before: CoverPanel, after: CoverPanel): readonly PatternEdge[] {
  const { shape } = panel;
  return [
    { id: edgeId(panel, "first"), points: drawn(panelEdge(shape, 0)), sewnTo: edgeId(before, "last") },
    { id: edgeId(panel, "bottom"), points: drawn(panelRow(shape, shape.rows - 1)), sewnTo: null },
    {
      id: edgeId(panel, "last"),
      points: drawn(panelEdge(shape, pointsPerRow - 1).toReversed()),
      sewnTo: edgeId(after, "first"),
    },
    { id: edgeId(panel, "top"), points: drawn(panelRow(shape, 0).toReversed()), sewnTo: null },
  ];
}

function cutLine(panel: CoverPanel, allowances: Allowances): PatternLine {
  const cut = drawn(cuttingLine(panel, allowances));
  return { kind: "cut", name: "cut", points: [...cut, ...cut.slice(0, 1)] };
}

const levelLine = ({ shape }: CoverPanel, { name, row }: CoverPanel["levels"][number]): PatternLine => ({
  kind: "level",
  name,
  points: drawn(panelRow(shape, row)),
});

/** Straight up and down in the middle of the panel, over the middle half of its height. */
function grainLine({ shape }: CoverPanel): PatternLine {
  const middle = Math.floor(pointsPerRow / 2);
  const [upper, lower] = [0.25, 0.75].map((share) => panelPoint(shape, Math.round(share * (shape.rows - 1)), middle));
  const x = ((upper as FlatPoint).x + (lower as FlatPoint).x) / 2;
  return { kind: "grain", name: "grain", points: [flat(x, (lower as FlatPoint).y), flat(x, (upper as FlatPoint).y)] };
}

/** Marks on the sewing line; the second of two lies this far along the edge from the first (mm). */
const doubleGap = 8;

function notchPoints({ shape }: CoverPanel, { edge, row, count }: Notch): ReturnType<typeof drawn> {
  const line = panelEdge(shape, edge === "first" ? 0 : pointsPerRow - 1);
  const at = line[row] as FlatPoint;
  const next = line[row + 1] ?? (line[row - 1] as FlatPoint);
  const share = doubleGap / Math.hypot(next.x - at.x, next.y - at.y);
  const second = { x: at.x + share * (next.x - at.x), y: at.y + share * (next.y - at.y) };
  return drawn(count === 2 ? [at, second] : [at]);
}
