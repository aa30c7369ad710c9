import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import type { BelievedWorth } from "../calibration/believed";
import type { Batting } from "../material";
import type { LayerRow } from "../padding/layer";
import type { Piece, PieceZone } from "../padding/piece";

/**
 * What a new plan changes of the work that was left, in one line: the place where the number of layers to come differs most, by how many,
 * and why: the batting proved thicker or thinner than it was taken for, or the tape simply read otherwise. As long as structure is
 * left, tuning layers do not count: they are cut once the structure is read.
 */
export type PlanChange =
  | { readonly kind: "same" }
  | {
      readonly kind: "fewer" | "more";
      readonly layers: number;
      readonly zone: PieceZone;
      readonly level: LevelName;
      readonly because: "thicker" | "thinner" | "tape";
    };

export function planChange(
  before: readonly Piece[],
  after: readonly Piece[],
  drops: ByLevel<number>,
  taken: Batting,
  learned: BelievedWorth,
): PlanChange {
  const isStructureLeft = [...before, ...after].some(isStructure);
  const counted = (pieces: readonly Piece[]) => (isStructureLeft ? pieces.filter(isStructure) : pieces);
  const places = levelNames.flatMap((level) =>
    comparedZones.map((zone) => ({ level, zone, by: difference(counted(before), counted(after), zone, drops[level]) })),
  );
  const largest = places.reduce((most, place) => (Math.abs(place.by) > Math.abs(most.by) ? place : most));
  if (largest.by === 0) return { kind: "same" };
  return {
    kind: largest.by < 0 ? "fewer" : "more",
    layers: Math.abs(largest.by),
    zone: largest.zone,
    level: largest.level,
    because: cause(largest.by, taken, learned),
  };
}

const isStructure = ({ kind }: Piece): boolean => kind !== "tuning";

/** A cup is told once: the left one. */
const comparedZones: readonly PieceZone[] = ["front", "back", "around", "leftCup"];

const difference = (before: readonly Piece[], after: readonly Piece[], zone: PieceZone, drop: number): number =>
  layersAt(after, zone, drop) - layersAt(before, zone, drop);

const layersAt = (pieces: readonly Piece[], zone: PieceZone, drop: number): number =>
  pieces
    .filter((piece) => piece.zone === zone)
    .flatMap(({ layers }) => layers)
    .filter(
      ({ rows }) =>
        (rows[0] as LayerRow).depthBelowNape < drop && drop < (rows[rows.length - 1] as LayerRow).depthBelowNape,
    ).length;

/** A worth that moved by less than this share is not a reason anybody would see. */
const notable = 0.05;

/**
 * Only a batting that is thicker even where it is stacked, or thinner even in a layer alone, is given as the reason:
 * that layers beneath give way was to be expected.
 */
function cause(by: number, taken: Batting, { layer, squeeze }: BelievedWorth): "thicker" | "thinner" | "tape" {
  const alone = layer / taken.layerThickness;
  if (by < 0 && alone * (1 - squeeze) > 1 + notable) return "thicker";
  if (by > 0 && alone < 1 - notable) return "thinner";
  return "tape";
}
