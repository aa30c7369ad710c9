import type { PlannedLevel, PlannedPiece } from "../../core/plan/plan";
import { mm, ratio } from "../../core/units";
import { figureExtent } from "../drawing/figureScene";
import { type SectionAt, torsoCurves } from "../drawing/torsoCurves";
import { ringDrops, standing, type StandingRing, type TurningRing, turningSurface } from "./turningSurface";

/**
 * Everything the turning figure is drawn from, worked out once for a plan: the form with what each piece adds, the crown of
 * the form by rule, and the body. Which pieces are on is decided later.
 */
export interface TurningModel {
  readonly levels: readonly PlannedLevel[];
  readonly form: readonly TurningRing[];
  readonly crown: readonly StandingRing[];
  readonly body: readonly StandingRing[];
  readonly pieces: readonly PlannedPiece[];
  readonly bottom: number;
  /** How far anything stands out from the middle (mm), for the room it needs on the page. */
  readonly reach: number;
}

export function turningModel(levels: readonly PlannedLevel[], pieces: readonly PlannedPiece[]): TurningModel {
  const formAt = torsoCurves(levels, "formSection");
  const { top, bottom } = figureExtent(levels, pieces);
  const stops = levels.map(({ drop }) => drop.value);
  const drops = ringDrops(top, bottom, stops);
  const form = turningSurface(formAt, pieces, drops);
  const body = standing(turningSurface(torsoCurves(levels, "bodySection"), [], drops), 0);
  const finished = standing(form, pieces.length);
  const crown = standing(turningSurface(crownAt(formAt, top), [], ringDrops(crownTop, top, [])), 0);
  const reach = [...finished, ...body, ...crown].reduce(
    (most, { x, y }) => x.reduce((far, value, at) => Math.max(far, Math.hypot(value, y[at] ?? 0)), most),
    0,
  );
  return { levels, form, crown, body, pieces: pieces.toSorted((a, b) => a.order - b.order), bottom, reach };
}

/** The neck cap's upper edge, above the nape (mm). Of the crown nothing was measured. */
export const crownTop = -56;

/**
 * The form above the highest measured part, by rule: the shoulders close in to the neck, which stands a little behind the
 * middle. Shares run from 0 at the neck cap to 1 where the measured part begins.
 */
function crownAt(formAt: SectionAt, top: number): SectionAt {
  const chest = formAt(top);
  return (drop) => {
    const share = (drop - crownTop) / (top - crownTop);
    const out = eased((share - neckShare) / (1 - neckShare));
    const broad = (breadth: number) => mm(neckHalf + (breadth - neckHalf) * out ** 0.55);
    return {
      leftBreadth: broad(chest.leftBreadth),
      rightBreadth: broad(chest.rightBreadth),
      frontDepth: mm(neckFront + (chest.frontDepth - neckFront) * out),
      backDepth: mm(neckBack + (chest.backDepth - neckBack) * out ** 0.7),
      exponent: ratio(2 + (chest.exponent - 2) * out),
    };
  };
}

/** The neck of a stock form, drawn by rule: half as broad as a neck of 36 cm girth, set back (mm). */
const [neckHalf, neckFront, neckBack] = [56, 36, 66] as const;
const neckShare = 0.36;

/** From 0 to 1 without a corner at either end. */
const eased = (share: number): number => {
  const held = Math.max(0, Math.min(1, share));
  return held * held * (3 - 2 * held);
};
