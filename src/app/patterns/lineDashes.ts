import type { PatternLine, PatternPart } from "../../core/pattern/patternPart";

/** Strokes and gaps of each kind of line within a part (mm); none for a solid one. */
export const dashesOf: { readonly [kind in PatternLine["kind"]]: readonly number[] } = {
  cut: [],
  level: [6, 2],
  anchor: [6, 2],
  grain: [],
  dart: [],
  slit: [],
};

/** Solid lines are cut, dashed ones are sewn: an outline is dashed where another line is the one to cut. */
export const outlineDashes = ({ lines }: Pick<PatternPart, "lines">): readonly number[] =>
  lines.some(({ kind }) => kind === "cut") ? [3, 2] : [];
