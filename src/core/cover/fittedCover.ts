import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import type { TapeReading } from "../plan/plan";
import { mm } from "../units";
import type { Cloth } from "./cloth";
import { type CoverPanelName, type CoverSeamName, panelSeams, panelsAround, type PanelSeams } from "./coverPanels";
import { type CoverGround, type CoverRow, coverRows } from "./coverRows";
import type { PanelLengths } from "./finishPanel";
import { flattenMirrored, flattenPanel } from "./flattenPanel";
import { panelMesh, pointsPerRow } from "./panelMesh";
import { lineLength, panelEdge, panelRow, type PanelShape } from "./panelShape";

/**
 * A fitted cover as cloth is cut for it: eight panels, or ten, from the bust line to below the hem, without allowances. Above the bust
 * line it is traced on the form, since nothing was read there.
 */
export interface FittedCover {
  readonly cloth: Cloth;
  readonly panels: readonly CoverPanel[];
  /** The heights of all rows, from the top line down, the same in every panel. */
  readonly rows: readonly PanelRowPlace[];
  /** What the tape reads around the surface that the cover is cut for (mm), before the cloth's stretch or ease. */
  readonly girths: Partial<ByLevel<TapeReading>>;
}

export interface PanelRowPlace {
  readonly depthBelowNape: number;
  readonly line: LevelName | "between" | null;
}

export interface CoverPanel {
  readonly name: CoverPanelName;
  readonly seams: PanelSeams;
  readonly shape: PanelShape;
  /** What its rows and edge steps are cut for (mm). */
  readonly lengths: PanelLengths;
  /** Each edge as it is drawn, from the top line down (mm). */
  readonly seamLengths: { readonly first: number; readonly last: number };
  /** Along each drawn level line, from seam to seam (mm). */
  readonly levels: readonly { readonly name: LevelName; readonly row: number; readonly length: number }[];
  readonly notches: readonly Notch[];
}

/** Marks on an edge that meet those of its neighbor: one, or two side by side, at a row. */
export interface Notch {
  readonly edge: "first" | "last";
  readonly row: number;
  readonly count: 1 | 2;
}

export function fittedCover(ground: CoverGround, cloth: Cloth): FittedCover {
  const rows = coverRows(ground);
  return {
    cloth,
    panels: panelsAround(ground.hasSideFrontSeams).map((name, i) => coverPanel(name, i, rows, cloth)),
    rows: rows.map(({ depthBelowNape, line }) => ({ depthBelowNape, line })),
    girths: girthsOf(rows),
  };
}

function coverPanel(name: CoverPanelName, first: number, rows: readonly CoverRow[], cloth: Cloth): CoverPanel {
  const flatten = name.startsWith("right") ? flattenMirrored : flattenPanel;
  const { shape, lengths } = flatten(panelMesh(rows, first), cloth);
  const levels = rows.flatMap(({ line }, row) =>
    isLevel(line) ? [{ name: line, row, length: lineLength(panelRow(shape, row)) }] : [],
  );
  const seams = panelSeams[name];
  return {
    name,
    seams,
    shape,
    lengths,
    seamLengths: {
      first: lineLength(panelEdge(shape, 0)),
      last: lineLength(panelEdge(shape, pointsPerRow - 1)),
    },
    levels,
    notches: levels.flatMap((level): readonly Notch[] =>
      (["first", "last"] as const).map((edge) => ({
        edge,
        row: level.row,
        count: notchCount(seams[edge], level.name),
      })),
    ),
  };
}

const isLevel = (line: CoverRow["line"]): line is LevelName => levelNames.some((name) => name === line);

/** Two at the waist of the side seams, so that no panel is sewn on upside down or to the wrong neighbor. */
const notchCount = (seam: CoverSeamName, level: LevelName): 1 | 2 =>
  level === "waist" && (seam === "leftSide" || seam === "rightSide") ? 2 : 1;

const girthsOf = (rows: readonly CoverRow[]): Partial<ByLevel<TapeReading>> =>
  Object.fromEntries(
    rows.flatMap(({ line, tape: { quarters } }) => {
      if (!isLevel(line)) return [];
      const [front, back] = [quarters.leftFront + quarters.rightFront, quarters.leftBack + quarters.rightBack];
      return [[line, { girth: mm(front + back), frontArc: mm(front), backArc: mm(back) }]];
    }),
  );
