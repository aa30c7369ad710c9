import type { CoverPanelName } from "./coverPanels";
import type { CoverPanel, FittedCover } from "./fittedCover";
import { pointsPerRow } from "./panelMesh";
import { type FlatPoint, lineLength, panelEdge, panelRow } from "./panelShape";

/** The four edges of a panel: its top and bottom row, and along both seams. */
export const edgeNames = ["top", "last", "bottom", "first"] as const;
export type EdgeName = (typeof edgeNames)[number];

/** An edge's own name among all edges of a cover. */
export type EdgeId = `${CoverPanelName}-${EdgeName}`;

/** One edge as it is drawn, its length (mm), and the edge of a neighbor that it is sewn to; null at the top and the hem. */
export interface PanelEdge {
  readonly id: EdgeId;
  readonly line: readonly FlatPoint[];
  readonly length: number;
  readonly sewnTo: EdgeId | null;
}

/** The edges of one panel of a cover, in the order of its outline: along the top row, down the last seam, back, and up the first. */
export function panelEdges({ panels }: Pick<FittedCover, "panels">, panel: CoverPanel): readonly PanelEdge[] {
  const neighbor = (edge: "first" | "last", other: "first" | "last"): EdgeId | null => {
    const joined = panels.find(({ name, seams }) => name !== panel.name && seams[other] === panel.seams[edge]);
    return joined === undefined ? null : `${joined.name}-${other}`;
  };
  const edge = (name: EdgeName, line: readonly FlatPoint[], sewnTo: EdgeId | null): PanelEdge => ({
    id: `${panel.name}-${name}`,
    line,
    length: lineLength(line),
    sewnTo,
  });
  return [
    edge("top", panelRow(panel.shape, 0), null),
    edge("last", panelEdge(panel.shape, pointsPerRow - 1), neighbor("last", "first")),
    edge("bottom", panelRow(panel.shape, panel.shape.rows - 1).toReversed(), null),
    edge("first", panelEdge(panel.shape, 0).toReversed(), neighbor("first", "last")),
  ];
}
