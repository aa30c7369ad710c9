import type { Cloth } from "./cloth";
import type { FittedCover } from "./fittedCover";

/**
 * What the shape between bust and underbust asks of a cover, by how much less the front reads at the underbust than at the
 * bust (mm): there cloth must ease most, and there it lifts off the hollow. Over true surfaces of made-up women (an artist's shapes).
 */
export type CoverMatter =
  /** Woven cloth eases about 5 % (common practice, no source): beyond that a dart or one more seam takes up the rest. */
  | { readonly kind: "dartOrSeam"; readonly frontLoss: number; readonly shareFromPrincess: number }
  /** Elastic or tape tied at the underbust over the cover while it is measured, then sewn to it. */
  | { readonly kind: "tieUnderbust"; readonly frontLoss: number };

/** Up to this front loss (mm) cloth lies 2 mm off the hollow at the median, beyond the second 21. */
const someLoss = 90;
const muchLoss = 140;

/** Where in the side front a dart or a seam takes up most: at this share of its width from the princess seam. */
const dartShare = 0.42;

/** From the bust and the underbust that the cover is cut for; without both, nothing can be said. */
export function coverMatters({ cloth, girths }: Pick<FittedCover, "cloth" | "girths">): readonly CoverMatter[] {
  const [bust, underbust] = [girths.bust, girths.underbust];
  if (bust === undefined || underbust === undefined) return [];
  const frontLoss = bust.frontArc - underbust.frontArc;
  return [
    ...(needsDart(cloth, frontLoss) ? [{ kind: "dartOrSeam" as const, frontLoss, shareFromPrincess: dartShare }] : []),
    ...(frontLoss > someLoss ? [{ kind: "tieUnderbust" as const, frontLoss }] : []),
  ];
}

const needsDart = ({ kind }: Cloth, frontLoss: number): boolean => kind === "woven" && frontLoss > muchLoss;
