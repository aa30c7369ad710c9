import type { Piece } from "../../core/padding/piece";
import type { Plan, PlannedPiece } from "../../core/plan/plan";

/** The pieces of the structure that a tuning layer lies with: under the outermost layer of the panels, over the wrap, or under its outermost layer where no panel lies there. */
export interface TuningNeighbors {
  readonly wrap: PlannedPiece | null;
  readonly panels: readonly PlannedPiece[];
}

/** As the layers are stacked in the plan: those of its own half that lie at a height where it lies. */
export function tuningNeighbors({ pieces }: Plan, tuning: PlannedPiece): TuningNeighbors {
  const [top, bottom] = heights(tuning);
  const there = pieces.filter((piece) => {
    const [from, to] = heights(piece);
    return from < bottom && to > top;
  });
  const isBack = ({ anchor }: Piece) => anchor === "centerBack";
  return {
    wrap: there.findLast(({ kind }) => kind === "wrap") ?? null,
    panels: there.filter((piece) => piece.kind === "panel" && isBack(piece) === isBack(tuning)),
  };
}

/** Where the highest edge of a piece lies below the nape, and the lowest (mm). */
function heights({ layers }: Piece): readonly [top: number, bottom: number] {
  const depths = layers.flatMap(({ rows }) => rows.map(({ depthBelowNape }) => depthBelowNape));
  return [Math.min(...depths), Math.max(...depths)];
}
