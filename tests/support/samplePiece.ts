import type { Layer, LayerRow } from "../../src/core/padding/layer";
import type { LayerCut } from "../../src/core/padding/layerCut";
import type { Piece, PieceKind, PieceZone } from "../../src/core/padding/piece";
import { mm } from "../../src/core/units";

/** Rows straight from top to bottom, from one distance to another. */
export const straightRows = (depths: readonly number[], start: number, end: number): readonly LayerRow[] =>
  depths.map((depth) => ({ depthBelowNape: mm(depth), start: mm(start), end: mm(end) }));

export const layerOf = (rows: readonly LayerRow[], changes: Partial<Layer> = {}): Layer => ({
  batting: "building",
  thickness: mm(6),
  feather: mm(10),
  wrap: false,
  rows,
  ...changes,
});

export const kindOf = (zone: PieceZone): PieceKind =>
  zone === "around" ? "wrap" : zone.endsWith("Cup") ? "cup" : "panel";

const panelCut: LayerCut = {
  shape: "panel",
  height: mm(100),
  top: { level: "waist", distance: mm(40), side: "above" },
  bottom: { level: "waist", distance: mm(60), side: "below" },
  topWidth: mm(180),
  bottomWidth: mm(180),
  widths: [{ level: "waist", belowTop: mm(40), left: mm(90), right: mm(90) }],
  darts: [],
};

/** A piece of given layers, with all that a test does not ask about. */
export const pieceOf = (zone: PieceZone, layers: readonly Layer[], changes: Partial<Piece> = {}): Piece => ({
  id: `${zone}-1`,
  order: 1,
  kind: kindOf(zone),
  zone,
  level: "waist",
  number: 1,
  pair: null,
  anchor: zone === "back" || zone === "leftBack" || zone === "rightBack" ? "centerBack" : "centerFront",
  layers,
  cut: layers.map(() => panelCut),
  ...changes,
});
