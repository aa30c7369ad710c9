import type { BattingRole } from "../material";
import { addLayer, type Laid, type LevelOutline } from "../padding/layerThickness";

/**
 * What one layer of a batting adds under the tape, its compressed thickness (mm), and how much of that every further
 * layer of a stack loses because the ones over it press on it: n layers add layer · (1 + (n − 1)(1 −
 * stackCompression)). Without it, layers simply add. Published tests only say that thickness falls with pressure (van
 * Wyk, J. Textile Inst. 37, T285, 1946, cited from memory); the readings decide how much.
 */
export interface CompressedLayer {
  readonly layer: number;
  readonly stackCompression: number;
}

export type CompressedLayers = { readonly [role in BattingRole]: CompressedLayer };

/** How many layers of each batting lie at each point of an outline, edges that are pulled thin counted in part. */
export type LayerCounts = { readonly [role in BattingRole]: Float64Array };

/** Counts the layers of pinned pieces at a level, once for every list of pieces and once for every piece. */
export function layerCounter(
  levelSections: readonly LevelOutline[],
): (level: number, pieces: readonly Laid[]) => LayerCounts {
  const known = levelSections.map(() => new Map<readonly Laid[], LayerCounts>());
  const countsOf = levelSections.map(pieceLayers);
  return (level, pieces) => {
    const byPieces = known[level] as Map<readonly Laid[], LayerCounts>;
    const found =
      byPieces.get(pieces) ?? countLayers(pieces, levelSections[level] as LevelOutline, countsOf[level] as PieceLayers);
    byPieces.set(pieces, found);
    return found;
  };
}

/** The layers of one piece at each point of an outline; null where it does not reach that height. */
type PieceLayers = (piece: Laid) => LayerCounts | null;

function pieceLayers(levelSection: LevelOutline): PieceLayers {
  const known = new WeakMap<Laid, { readonly counts: LayerCounts | null }>();
  return (piece) => {
    const found = known.get(piece);
    if (found !== undefined) return found.counts;
    const { count } = levelSection.outline;
    const total = { building: new Float64Array(count), finishing: new Float64Array(count) };
    let reaches = false;
    for (const layer of piece.layers)
      reaches = addLayer(total[layer.batting], layer, piece.anchor, levelSection, 1) || reaches;
    const counts = reaches ? total : null;
    known.set(piece, { counts });
    return counts;
  };
}

function countLayers(
  pieces: readonly Laid[],
  { outline: { count } }: LevelOutline,
  countsOf: PieceLayers,
): LayerCounts {
  const total = { building: new Float64Array(count), finishing: new Float64Array(count) };
  for (const piece of pieces) {
    const counts = countsOf(piece);
    if (counts === null) continue;
    for (const batting of ["building", "finishing"] as const) {
      for (let i = 0; i < count; i++)
        total[batting][i] = (total[batting][i] as number) + (counts[batting][i] as number);
    }
  }
  return total;
}

/** The compressed thickness (mm) of counted layers at each point of the outline, for given worths of a layer. */
export function compressedThickness({ building, finishing }: LayerCounts, compressed: CompressedLayers): Float64Array {
  return building.map((count, i) => {
    const other = finishing[i] as number;
    const whole = count + other;
    if (whole === 0) return 0;
    // One layer of the stack, wherever it lies in it, keeps its whole thickness: shared between the battings as they are.
    const free = Math.min(1, whole) / whole;
    const thickness = (layers: number, { layer, stackCompression }: CompressedLayer) =>
      layers * layer * (1 - stackCompression * (1 - free));
    return thickness(count, compressed.building) + thickness(other, compressed.finishing);
  });
}
