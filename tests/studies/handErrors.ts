import type { FileLayer, FilePiece, FileRow } from "../tools/planCheckerFile";
import type { Chance } from "../tools/peopleChance";

/** What hands do to the pieces of a plan: the same pieces, not quite as they were drawn. */
export interface HandError {
  readonly name: string;
  readonly does: (pieces: readonly FilePiece[], chance: Chance) => readonly FilePiece[];
}

const eachLayer = (pieces: readonly FilePiece[], change: (layer: FileLayer) => FileLayer): readonly FilePiece[] =>
  pieces.map((piece) => ({ ...piece, layers: piece.layers.map(change) }));

const feathered = (name: string, feather: (planned: number) => number): HandError => ({
  name,
  does: (pieces) => eachLayer(pieces, (layer) => ({ ...layer, featherMm: feather(layer.featherMm) })),
});

const moved = (rows: readonly FileRow[], down: number, left: number): readonly FileRow[] =>
  rows.map(({ depthBelowNapeMm, startMm, endMm }) => ({
    depthBelowNapeMm: depthBelowNapeMm + down,
    startMm: startMm + left,
    endMm: endMm + left,
  }));

/** The outline moved inward by so much on every edge. */
function shortened(layer: FileLayer, by: number): FileLayer {
  const sides = layer.wrap ? 0 : by;
  const last = layer.rows.length - 1;
  const rows = layer.rows.map((row, i) => ({
    depthBelowNapeMm: row.depthBelowNapeMm + (i === 0 ? by : i === last ? -by : 0),
    startMm: row.startMm + sides,
    endMm: row.endMm - sides,
  }));
  const [top, bottom] = [rows[0] as FileRow, rows[last] as FileRow];
  const isBetween = ({ depthBelowNapeMm: depth }: FileRow) =>
    depth > top.depthBelowNapeMm && depth < bottom.depthBelowNapeMm;
  return { ...layer, rows: rows.filter((row) => row === top || row === bottom || isBetween(row)) };
}

export const handErrors: readonly HandError[] = [
  feathered("every edge comes out half as wide", (planned) => planned / 2),
  feathered("half as wide again", (planned) => 1.5 * planned),
  feathered("edges left square", () => 0),
  feathered("edges 25 mm wide", () => 25),
  {
    name: "all pinned 6 mm lower",
    does: (pieces) => eachLayer(pieces, (layer) => ({ ...layer, rows: moved(layer.rows, 6, 0) })),
  },
  {
    name: "each piece within 6 mm of its place",
    does: (pieces, chance) =>
      pieces.map((piece) => {
        const [down, left] = [chance.between(-6, 6), chance.between(-6, 6)];
        return { ...piece, layers: piece.layers.map((layer) => ({ ...layer, rows: moved(layer.rows, down, left) })) };
      }),
  },
  { name: "each edge cut 3 mm short", does: (pieces) => eachLayer(pieces, (layer) => shortened(layer, 3)) },
];
