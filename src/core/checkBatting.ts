import type { Batting } from "./material";
import { mm, type Millimetres } from "./units";

/** A layer no batting has: what was given and what one layer can be (mm, under a snug tape). */
export interface BattingProblem {
  readonly code: "impossibleLayer";
  readonly batting: string;
  readonly got: Millimetres;
  readonly least: Millimetres;
  readonly most: Millimetres;
}

/**
 * A layer thinner than felt or thicker than the loftiest batting sold (an inch before the tape is drawn snug, a trade
 * figure) is a slip, most often millimetres typed as centimetres.
 */
const [least, most] = [mm(0.3), mm(30)];

export const checkBatting = ({ name, layerThickness }: Batting): readonly BattingProblem[] =>
  layerThickness >= least && layerThickness <= most
    ? []
    : [{ code: "impossibleLayer", batting: name, got: layerThickness, least, most }];
