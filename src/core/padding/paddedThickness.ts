import type { LevelOutline, Laid } from "./layerThickness";
import { piecesThickness } from "./layerThickness";
import type { LayerThickness } from "./sideLevel";

/**
 * The thickness (mm) of pieces as planned layer by layer, with what the first layer of a stack adds beyond every
 * further one, which the layers over it compress: wherever anything lies at all, that bonus of one layer comes on top.
 */
export const paddedThickness = (pieces: readonly Laid[], level: LevelOutline, layer: LayerThickness): Float64Array =>
  withBonus(piecesThickness(pieces, level), layer);

export const withBonus = (planned: Float64Array, { each, bonus }: LayerThickness): Float64Array =>
  planned.map((thickness) => thickness + bonus * Math.min(1, thickness / each));
