import { type Layer, type LayerRow, rowAt } from "../padding/layer";
import type { Piece } from "../padding/piece";

/** A piece that is already cut, used for a piece of the new plan: as it is, or trimmed to the new outline. */
export interface CutUse {
  readonly pieceId: string;
  readonly fit: "asItIs" | "trim";
}

/** For each piece, the cut piece that it can be made of: same kind, zone and layers, and nowhere smaller by more than a finger. */
export function useOfCut(pieces: readonly Piece[], cut: readonly Piece[]): readonly (CutUse | null)[] {
  const free = [...cut];
  return pieces.map((piece) => {
    const fitting = free
      .filter((candidate) => isAlike(piece, candidate))
      .map((candidate) => ({ candidate, ...differences(piece, candidate) }))
      .filter(({ missing }) => missing <= stretchable)
      .sort((a, b) => a.spare - b.spare)[0];
    if (fitting === undefined) return null;
    free.splice(free.indexOf(fitting.candidate), 1);
    return { pieceId: fitting.candidate.id, fit: fitting.spare <= stretchable ? "asItIs" : "trim" };
  });
}

/** Batting gives this much (mm) at an edge when it is pinned. Common practice, no source. */
const stretchable = 10;

const isAlike = (one: Piece, other: Piece): boolean =>
  one.kind === other.kind &&
  one.zone === other.zone &&
  one.layers.length === other.layers.length &&
  one.layers.every(({ batting }, i) => batting === other.layers[i]?.batting);

/** By how much the cut piece's outlines fall short of the wanted ones anywhere, and stand beyond them anywhere (mm). */
function differences(wanted: Piece, candidate: Piece): { readonly missing: number; readonly spare: number } {
  const all = wanted.layers.flatMap((layer, i) => layerDifferences(layer, candidate.layers[i] as Layer));
  return { missing: Math.max(...all), spare: -Math.min(...all) };
}

function layerDifferences(wanted: Layer, candidate: Layer): readonly number[] {
  const [top, bottom] = [first(candidate).depthBelowNape, last(candidate).depthBelowNape];
  const ends = [top - first(wanted).depthBelowNape, last(wanted).depthBelowNape - bottom];
  const sides = wanted.rows
    .filter((row) => row.depthBelowNape >= top && row.depthBelowNape <= bottom)
    .flatMap((row) => {
      const other = rowAt(candidate.rows, row.depthBelowNape);
      return [other.start - row.start, row.end - other.end];
    });
  return [...ends, ...sides];
}

const first = ({ rows }: Layer): LayerRow => rows[0] as LayerRow;
const last = ({ rows }: Layer): LayerRow => rows[rows.length - 1] as LayerRow;
