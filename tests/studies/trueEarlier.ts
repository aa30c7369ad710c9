import type { ScenarioId } from "../tools/trueScenarios";

/**
 * What plans missed before: with heights only by tape over the surface, the form guessed between its own levels, and one
 * exponent to a level from surveys. p50/p95/worst in mm. The first two are of the same bodies, forms and tape as today's
 * figures. Those with a star were reckoned on 48 other bodies and 9 other forms of the same maker, with heights and lines put
 * in by hand, since nothing asked for them. What could not be given then has no figure.
 */
export interface Earlier {
  readonly girth: string;
  readonly front: string;
  readonly girthBetween: string;
}

const none: Earlier = { girth: "–", front: "–", girthBetween: "–" };

export const earlierFigures: { readonly [id in ScenarioId]: Earlier } = {
  fewest: { girth: "46.6/205.9/376.6", front: "33.1/88.6/177.7", girthBetween: "33.4/139.0/329.3" },
  byTape: { girth: "13.1/134.0/185.7", front: "10.1/77.0/123.9", girthBetween: "18.8/76.4/144.2" },
  ownLevels: { girth: "8.2/26.6/48*", front: "6.0/21.8/30*", girthBetween: "–" },
  lines: { girth: "2.2/11.2/28*", front: "1.3/6.5/23*", girthBetween: "15/69/137*" },
  linesAndBreadths: { girth: "5.0/21.6/42*", front: "–", girthBetween: "–" },
  linesBreadthsDepths: none,
  linesBodyByTape: none,
  linesAndLowerBreast: none,
};
