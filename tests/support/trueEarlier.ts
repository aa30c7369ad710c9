import type { ScenarioId } from "./trueScenarios";

/**
 * What plans missed before: with heights only by tape over the surface, the form guessed between its own levels, and one
 * exponent to a level from surveys. The same bodies, forms and tape as today's figures; p50/p95/worst in mm. What could not be
 * given then has no figure.
 */
export interface Earlier {
  readonly girth: string;
  readonly front: string;
  readonly girthBetween: string;
}

const none: Earlier = { girth: "–", front: "–", girthBetween: "–" };

export const earlierFigures: { readonly [id in ScenarioId]: Earlier } = {
  fewest: none,
  byTape: none,
  ownLevels: none,
  lines: none,
  linesAndBreadths: none,
  linesBreadthsDepths: none,
  linesBodyByTape: none,
  linesAndLowerBreast: none,
};
