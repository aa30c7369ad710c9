import type { Piece, PieceRow } from "../padding/piece";

/** A piece that is already cut, used for a piece of the new plan: as it is, or trimmed to the new outline. */
export interface CutUse {
  readonly pieceId: string;
  readonly fit: "asItIs" | "trim";
}

/**
 * For each piece, the cut piece that it can be made of: same zone, anchor, batting and plies, and nowhere smaller by more
 * than a finger.
 */
export function useOfCut(pieces: readonly Piece[], cut: readonly Piece[]): readonly (CutUse | null)[] {
  const free = [...cut];
  return pieces.map((piece) => {
    const fitting = free
      .filter(
        (candidate) =>
          candidate.zone === piece.zone &&
          candidate.anchor === piece.anchor &&
          candidate.batting === piece.batting &&
          candidate.plies === piece.plies,
      )
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

/** By how much the cut piece's outline falls short of the wanted one anywhere, and stands beyond it anywhere (mm). */
function differences(wanted: Piece, candidate: Piece): { readonly missing: number; readonly spare: number } {
  const [top, bottom] = [first(candidate).drop, last(candidate).drop];
  const ends = [top - first(wanted).drop, last(wanted).drop - bottom];
  const sides = wanted.rows
    .filter((row) => row.drop >= top && row.drop <= bottom)
    .flatMap((row) => {
      const other = rowAt(candidate, row.drop);
      return [other.start - row.start, row.end - other.end];
    });
  const all = [...ends, ...sides];
  return { missing: Math.max(...all), spare: -Math.min(...all) };
}

const first = ({ rows }: Piece): PieceRow => rows[0] as PieceRow;
const last = ({ rows }: Piece): PieceRow => rows[rows.length - 1] as PieceRow;

/** The outline at a drop, straight between rows. */
function rowAt({ rows }: Piece, drop: number): { readonly start: number; readonly end: number } {
  const below = Math.max(
    1,
    rows.findIndex((row) => row.drop >= drop),
  );
  const [from, to] = [rows[below - 1] as PieceRow, rows[below] as PieceRow];
  const share = (drop - from.drop) / (to.drop - from.drop);
  return { start: from.start + (to.start - from.start) * share, end: from.end + (to.end - from.end) * share };
}
