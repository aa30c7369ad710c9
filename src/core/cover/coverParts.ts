import { flat, type PatternEdge, type PatternLine, type PatternPart } from "../pattern/patternPart";
import { mm } from "../units";
import { type Allowances, cuttingLine } from "./cuttingLine";
import type { CoverPanel, FittedCover, Notch } from "./fittedCover";
import { type PanelEdge, panelEdges } from "./panelEdges";
import { pointsPerRow } from "./panelMesh";
import { type FlatPoint, panelEdge, panelPoint, panelRow } from "./panelShape";

/**
 * Every panel of a cover as it is drawn at its true size, seen from outside: sewing line, cutting line, level lines, grain and
 * notches (mm, y upwards). Its outline is the sewing line; the edges of a seam name each other.
 */
export const coverParts = (cover: FittedCover, allowances: Allowances): readonly PatternPart[] =>
  cover.panels.map(
    (panel): PatternPart => ({
      id: `cover-${panel.name}`,
      kind: "cover",
      of: panel.name,
      edges: counterclockwise(panelEdges(cover, panel)),
      lines: [cutLine(panel, allowances), ...panel.levels.map((level) => levelLine(panel, level)), grainLine(panel)],
      notches: panel.notches.flatMap((notch) => notchPoints(panel, notch)),
      levels: panel.levels.map(({ name, length }) => ({ name, length: mm(length) })),
    }),
  );

const drawn = (points: readonly FlatPoint[]) => points.map(({ x, y }) => flat(x, y));

/** A panel's edges run clockwise, those of a part the other way. */
const counterclockwise = (edges: readonly PanelEdge[]): readonly PatternEdge[] =>
  edges.toReversed().map(({ id, line, sewnTo }) => ({
    id: `cover-${id}`,
    points: drawn(line.toReversed()),
    sewnTo: sewnTo === null ? null : `cover-${sewnTo}`,
  }));

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
