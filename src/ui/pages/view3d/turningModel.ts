import type { SectionAt } from "../../../core/body/torsoCurve";
import type { PlannedLevel, PlannedPiece } from "../../../core/plan/plan";
import { heightCurve } from "../../../core/geometry/heightCurve";
import { reachBeyond } from "../../../core/padding/levelGaps";
import { reachOf } from "../../../core/geometry/support";
import { mm, ratio } from "../../../core/units";
import { bodyCurveOf, formCurveOf } from "../../../core/plan/torsosOfPlan";
import { figureExtent } from "../../drawing/figureScene";
import { standing, type StandingRing, turningSections } from "./turningSurface";

/**
 * Everything the turning figure is drawn from, worked out once for a plan: the form with what each piece adds, the crown of
 * the form by rule, and the body. Which pieces are on is decided later.
 */
export interface TurningModel {
  readonly levels: readonly PlannedLevel[];
  /** The bare form at any depth below the nape. */
  readonly bareAt: SectionAt;
  /** The form with the first so many pieces on. */
  readonly standingWith: (count: number) => readonly StandingRing[];
  readonly crown: readonly StandingRing[];
  readonly body: readonly StandingRing[];
  readonly pieces: readonly PlannedPiece[];
  readonly bottom: number;
  /** How far anything stands out from the middle (mm), for the room it needs on the page. */
  readonly reach: number;
}

export function turningModel(levels: readonly PlannedLevel[], pieces: readonly PlannedPiece[]): TurningModel {
  const inOrder = pieces.toSorted((a, b) => a.order - b.order);
  const bareAt = formCurveOf(levels);
  const { top, bottom } = figureExtent(levels, pieces);
  const stops = levels.map(({ depthBelowNape }) => depthBelowNape.value);
  const form = turningSections(bareAt, inOrder, { top, bottom, stops });
  // Further up than padding reaches, nothing of the body was measured.
  const bodyTop = Math.max(top, (stops[0] ?? top) - reachBeyond.above);
  const body = standing(turningSections(bodyCurveOf(levels), [], { top: bodyTop, bottom, stops }), 0);
  const known = new Map<number, readonly StandingRing[]>();
  const standingWith = (count: number): readonly StandingRing[] => {
    const rings = known.get(count) ?? standing(form, count);
    known.set(count, rings);
    return rings;
  };
  const finished = standingWith(pieces.length);
  const crown = standing(turningSections(crownAt(bareAt, top), [], { top: crownTop, bottom: top }), 0);
  return {
    levels,
    bareAt,
    standingWith,
    crown,
    body,
    pieces: inOrder,
    bottom,
    reach: reachOfAll([...finished, ...body, ...crown]),
  };
}

function reachOfAll(rings: readonly StandingRing[]): number {
  let most = 0;
  for (const { points } of rings.map(({ section }) => section)) {
    for (let i = 0; i < points.length; i += 2) most = Math.max(most, Math.hypot(points[i] ?? 0, points[i + 1] ?? 0));
  }
  return most;
}

/** The neck cap's upper edge, above the nape (mm). Of the crown nothing was measured. */
export const crownTop = -56;

/**
 * The form above the highest measured part, by rule: shoulders a little broader than the chest that slope to a neck
 * standing behind the middle. All by rule, after no form in particular.
 */
function crownAt(formAt: SectionAt, top: number): SectionAt {
  const chest = reachOf(formAt(top));
  const shoulder = top * 0.42;
  const heights = [crownTop, -8, shoulder * 0.5, shoulder, top];
  const broad = (half: number) =>
    heightCurve(heights, [neck.half - 3, neck.half, neck.half + (half - neck.half) * 0.66, half * 1.03, half]);
  const front = heightCurve(heights, [neck.front, neck.front, chest.front * 0.48, chest.front * 0.68, chest.front]);
  const back = heightCurve(heights, [neck.back, neck.back, chest.back * 0.72, chest.back * 0.84, chest.back]);
  const exponent = heightCurve(heights, [2, 2, 2, 2.1, 2.5]);
  const [left, right] = [broad(chest.left), broad(chest.right)];
  return (depthBelowNape) => ({
    leftBreadth: mm(left(depthBelowNape)),
    rightBreadth: mm(right(depthBelowNape)),
    frontDepth: mm(front(depthBelowNape)),
    backDepth: mm(back(depthBelowNape)),
    frontExponent: ratio(exponent(depthBelowNape)),
    backExponent: ratio(exponent(depthBelowNape)),
  });
}

/** The neck of a stock form (mm): about 37 cm round, set back. */
const neck = { half: 58, front: 40, back: 70 } as const;
