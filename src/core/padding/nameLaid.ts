import type { LevelName } from "../body/vocabulary";
import type { LaidPiece } from "./laidPiece";
import type { LayerRow } from "./layer";
import type { NamedLine } from "./layerCuts";
import { pieceId, type PieceName } from "./piece";

/** Names for pieces in the order of pinning: the level each lies over most, and a number that no piece has yet. */
export function nameLaid(
  pieces: readonly LaidPiece[],
  lines: readonly NamedLine[],
  takenIds: readonly string[],
): readonly PieceName[] {
  const taken = new Set(takenIds);
  return pieces.map((piece) => {
    const { kind, zone } = piece;
    const level = levelOf(piece, lines);
    let name: PieceName = { kind, zone, level, number: 1 };
    while (taken.has(pieceId(name))) name = { ...name, number: name.number + 1 };
    taken.add(pieceId(name));
    return name;
  });
}

/** The level that most layers cover; of several the one in the middle. */
function levelOf({ layers }: LaidPiece, lines: readonly NamedLine[]): LevelName {
  const counts = lines.map(
    ({ depth }) =>
      layers.filter(
        ({ rows }) =>
          (rows[0] as LayerRow).depthBelowNape < depth && depth < (rows[rows.length - 1] as LayerRow).depthBelowNape,
      ).length,
  );
  const most = Math.max(...counts);
  const highest = lines.filter((_, i) => counts[i] === most);
  return (highest[Math.floor(highest.length / 2)] as NamedLine).name;
}
