import type { StackedLayer } from "./layerCuts";
import type { LaidPiece } from "./laidPiece";
import type { PieceKind } from "./piece";

/**
 * Layers from the form outwards, whatever they are pinned in: a tuning layer is slipped directly under the outermost layer of its
 * half, or under the outermost turn of the wraps where the half has no panel of its own, so that the surface stays smooth.
 */
export function stackOrder(pieces: readonly LaidPiece[]): readonly StackedLayer[] {
  const of = (list: readonly LaidPiece[]) => list.flatMap(stacked);
  const at = (place: StackPlace) => pieces.filter(({ kind }) => stackPlaces[kind] === place);
  const [tunings, panels, outer] = [at("tuning"), at("panel"), at("outside")];
  const [cups, wraps] = [of(at("form")), of(at("wrap"))];
  const half = (isBack: boolean) => {
    const own = of(panels.filter((piece) => isOnBack(piece) === isBack));
    const tuning = of(tunings.filter((piece) => isOnBack(piece) === isBack));
    return { own, tuning };
  };
  const [front, back] = [half(false), half(true)];
  const bare = [front, back].filter(({ own }) => own.length === 0).flatMap(({ tuning }) => tuning);
  const covered = [front, back]
    .filter(({ own }) => own.length > 0)
    .flatMap(({ own, tuning }) => [...own.slice(0, -1), ...tuning, ...own.slice(-1)]);
  return [...cups, ...wraps.slice(0, -1), ...bare, ...wraps.slice(-1), ...covered, ...of(outer)];
}

type StackPlace = "form" | "wrap" | "panel" | "tuning" | "outside";

/** Where the layers of each kind of piece lie: on the form itself, over what is on it, or outside everything. */
const stackPlaces: { readonly [kind in PieceKind]: StackPlace } = {
  cup: "form",
  bought: "form",
  wrap: "wrap",
  panel: "panel",
  tuning: "tuning",
  outerWrap: "outside",
};

const isOnBack = ({ anchor }: LaidPiece): boolean => anchor === "centerBack";

const stacked = ({ kind, anchor, layers }: LaidPiece): readonly StackedLayer[] =>
  layers.map((layer) => ({ layer, anchor, isDisc: kind === "cup" }));
