import type { BattingRole } from "../material";
import type { Layer } from "../padding/layer";
import { addLayer, type Laid, type LevelOutline } from "../padding/layerThickness";
import { mm } from "../units";

/** How many layers of each batting lie at each point of a bare outline, feathered edges counted in part. */
export type LayerCounts = { readonly [role in BattingRole]: Float64Array };

/** A piece as the learning sees it: what it lays, and which piece it is. */
export interface LearnedPiece extends Laid {
  readonly id: string;
}

/** How a piece came out of a hand: each side edge so far beyond the drawing (mm), and every feather longer by this logarithm. */
export interface PieceChange {
  readonly cut: number;
  readonly edge: number;
}

/** Counts the layers of one piece at a level, as it came out of a hand. */
export function layerCounts({ anchor, layers }: LearnedPiece, level: LevelOutline, change: PieceChange): LayerCounts {
  const { count } = level.outline;
  const counts = { building: new Float64Array(count), finishing: new Float64Array(count) };
  for (const layer of layers) addLayer(counts[layer.batting], changed(layer, change), anchor, level, 1);
  return counts;
}

function changed(layer: Layer, { cut, edge }: PieceChange): Layer {
  if (cut === 0 && edge === 0) return layer;
  const rows = layer.wrap
    ? layer.rows
    : layer.rows.map((row) => ({ ...row, start: mm(row.start - cut), end: mm(row.end + cut) }));
  return { ...layer, feather: mm(layer.feather * Math.exp(edge)), rows };
}

/** Whether any layer of a piece lies at this depth below the nape. */
export const reaches = ({ layers }: Laid, depth: number): boolean =>
  layers.some(
    ({ rows }) => depth > (rows[0]?.depthBelowNape ?? depth) && depth < (rows.at(-1)?.depthBelowNape ?? depth),
  );

/** Whether a tape at this depth can feel an edge of a piece: a side edge, or a top or bottom edge that came out twice as long. */
export const hasEdgeNear = ({ layers }: Laid, depth: number): boolean =>
  layers.some(({ rows, wrap, feather }) => {
    const [top, bottom] = [rows[0]?.depthBelowNape ?? depth, rows.at(-1)?.depthBelowNape ?? depth];
    if (depth <= top || depth >= bottom) return false;
    return !wrap || Math.min(depth - top, bottom - depth) < 2 * feather;
  });
