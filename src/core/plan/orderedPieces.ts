import type { QuarterReadings } from "../body/levelReadings";
import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import type { QuarterLengths } from "../geometry/outline";
import { addPiece, type LevelOutline, piecesThickness } from "../padding/layerThickness";
import { layerCuts } from "../padding/layerCuts";
import type { Layer } from "../padding/layer";
import type { LayerCut } from "../padding/layerCut";
import type { LaidPiece } from "../padding/laidPiece";
import { nameLaid } from "../padding/nameLaid";
import { withBonus } from "../padding/paddedThickness";
import { pieceId, type PieceName } from "../padding/piece";
import { stackOrder } from "../padding/stackOrder";
import { assert } from "../result";
import { tapeQuarters } from "../tape/tape";
import { mm } from "../units";
import type { Basis } from "./basis";
import type { PlannedPiece, TapeReading, TapeReadings } from "./plan";
import type { Start } from "./start";

export interface OrderedPieces {
  readonly pieces: readonly PlannedPiece[];
  /** What the tape reads before the first of them. */
  readonly before: TapeReadings;
}

type Marked = (level: LevelName, reading: TapeReading) => TapeReading;

/** Pieces with their names and cuts, numbered in the order of pinning, each with what the tape reads at every level once it is on. */
export function orderedPieces(
  laid: readonly LaidPiece[],
  { levelSections, sectionAt, depths }: Basis,
  start: Start,
  marked: Marked,
): OrderedPieces {
  const lines = levelNames.map((name) => ({ name, depth: depths[name] }));
  const names = nameLaid(laid, lines, start.takenIds);
  const beneath = start.pinned.flatMap(({ anchor, layers }) =>
    layers.map((layer) => ({ layer, anchor, isDisc: false })),
  );
  const cuts = layerCuts([...beneath, ...stackOrder(laid)], sectionAt, lines);
  const stacks = levelSections.map((levelSection) => piecesThickness(start.pinned, levelSection));
  const read = (level: number): TapeReading =>
    wholeReading(
      tapeQuarters(
        (levelSections[level] as LevelOutline).outline,
        withBonus(stacks[level] as Float64Array, start.layer),
      ),
      start.offsets[level] as QuarterReadings,
    );
  const byLevel = (readings: readonly TapeReading[]): TapeReadings =>
    Object.fromEntries(
      levelNames.map((name, level) => [name, marked(name, readings[level] as TapeReading)]),
    ) as ByLevel<TapeReading>;
  let readings = levelSections.map((_, level) => read(level));
  const before = byLevel(readings);
  const pieces = laid.map((piece, i): PlannedPiece => {
    readings = readings.map((reading, level) =>
      addPiece(stacks[level] as Float64Array, piece, levelSections[level] as LevelOutline) ? read(level) : reading,
    );
    const name = names[i] as PieceName;
    return {
      ...piece,
      ...name,
      id: pieceId(name),
      pair: piece.kind === "cup" ? `cup-${name.level}-${name.number}` : null,
      order: i + 1,
      cut: piece.layers.map((layer) => cutFor(layer, cuts)),
      readingsAfter: byLevel(readings),
    };
  });
  return { pieces, before };
}

function cutFor(layer: Layer, cuts: ReadonlyMap<Layer, LayerCut>): LayerCut {
  const cut = cuts.get(layer);
  assert(cut !== undefined, "every layer of a piece lies in the stack");
  return cut;
}

const wholeReading = (read: QuarterLengths, offset: QuarterReadings): TapeReading => {
  const front = read.leftFront + read.rightFront + offset.leftFront + offset.rightFront;
  const back = read.leftBack + read.rightBack + offset.leftBack + offset.rightBack;
  return { girth: mm(front + back), frontArc: mm(front), backArc: mm(back) };
};
