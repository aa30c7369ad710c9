import { wrapRows } from "../padding/layPieces";
import { layerCuts } from "../padding/layerCuts";
import type { Layer } from "../padding/layer";
import type { LayerCut } from "../padding/layerCut";
import { featherLength } from "../padding/levelGaps";
import type { Piece } from "../padding/piece";
import { levelNames } from "../body/vocabulary";
import type { BattingRole } from "../material";
import { type Millimetres, mm } from "../units";
import type { Basis } from "./basis";

/**
 * The trial: a strip 3 in tall wrapped around the form at the waist in so many turns, for the tape to lie on its full thickness: it tells
 * how thick a layer is before anything is cut for good. A taller strip would buckle where the form curves.
 */
export function trialPiece(
  { sectionAt, depths }: Basis,
  layerThickness: Millimetres,
  turns: number,
  batting: BattingRole,
): Piece {
  const [top, bottom] = [depths.waist - trialHeight / 2, depths.waist + trialHeight / 2];
  const lines = levelNames.map((name) => ({ name, depth: depths[name] }));
  const layers = Array.from(
    { length: turns },
    (): Layer => ({
      batting,
      thickness: layerThickness,
      feather: mm(featherLength),
      wrap: true,
      rows: wrapRows(top, bottom, [depths.waist], sectionAt),
    }),
  );
  const cuts = layerCuts(
    layers.map((layer) => ({ layer, anchor: "centerFront", isDisc: false })),
    sectionAt,
    lines,
  );
  return {
    id: "trial",
    order: 1,
    kind: "wrap",
    zone: "around",
    level: "waist",
    number: 1,
    pair: null,
    anchor: "centerFront",
    layers,
    cut: layers.map((layer) => cuts.get(layer) as LayerCut),
  };
}

/** 3 in (mm). */
export const trialHeight = mm(76);
