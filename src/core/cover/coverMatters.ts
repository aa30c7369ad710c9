import type { Cloth } from "./cloth";
import type { FittedCover } from "./fittedCover";

/**
 * What the shape between bust and underbust asks of a cover, by how much less the front reads at the underbust than at the
 * bust (mm): there cloth must ease most, and there it lifts off the hollow. Over true surfaces of made-up women (an artist's shapes).
 */
export type CoverMatter =
  /** Woven cloth eases about 5 % (common practice, no source): beyond that one more seam takes up the rest. */
  | { readonly kind: "sideFrontSeam"; readonly frontLoss: number }
  /** Elastic or tape tied at the underbust over the cover while it is measured, then sewn to it. */
  | { readonly kind: "tieUnderbust"; readonly frontLoss: number };

/** Up to this front loss (mm) cloth lies 2 mm off the hollow at the median, beyond the second 21. */
const someLoss = 90;
const muchLoss = 140;

/** From the bust and the underbust that the cover is cut for; without both, nothing can be said. */
export function coverMatters({ cloth, girths }: Pick<FittedCover, "cloth" | "girths">): readonly CoverMatter[] {
  const [bust, underbust] = [girths.bust, girths.underbust];
  if (bust === undefined || underbust === undefined) return [];
  return frontLossMatters(cloth.kind, bust.frontArc - underbust.frontArc);
}

/** The same from how much less the front reads at the underbust than at the bust (mm), before any cover is cut. */
export function frontLossMatters(cloth: Cloth["kind"], frontLoss: number): readonly CoverMatter[] {
  return [
    ...(needsSeam(cloth, frontLoss) ? [{ kind: "sideFrontSeam" as const, frontLoss }] : []),
    ...(frontLoss > someLoss ? [{ kind: "tieUnderbust" as const, frontLoss }] : []),
  ];
}

const needsSeam = (cloth: Cloth["kind"], frontLoss: number): boolean => cloth === "woven" && frontLoss > muchLoss;
