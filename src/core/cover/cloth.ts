import { type Ratio, ratio } from "../units";

/**
 * What a cover is cut from. Knit is cut narrower than the surface and pulled onto it: `stretch` is how much longer it becomes
 * across in use, as a share of its length as cut, and `shortening` how much it then loses along the grain, by which it is
 * cut longer. Woven cloth does not give; `ease` is how much wider than the surface it is cut, as a share.
 */
export type Cloth =
  | { readonly kind: "knit"; readonly stretch: Ratio; readonly shortening: Ratio }
  | { readonly kind: "woven"; readonly ease: Ratio };

/** Stretch in use: one in ten. With 5 % some of a front goes slack; more presses the batting. Common practice, no source. */
export const usualStretch: Ratio = ratio(0.1);
export const stretchOffered = { least: ratio(0.05), most: ratio(0.15) } as const;

/** A knit that nobody tried is taken to lose nothing along the grain. */
export const untriedKnit = (stretch: Ratio): Cloth => ({ kind: "knit", stretch, shortening: ratio(0) });
export const wovenWithoutEase: Cloth = { kind: "woven", ease: ratio(0) };

/** A piece of knit marked off, pulled across as hard as the cover will pull: all lengths in one unit. */
export interface StretchTest {
  /** The marks before, across and along the grain. */
  readonly marked: number;
  /** How far apart they are while it is pulled. */
  readonly across: number;
  readonly along: number;
}

/**
 * Knit that behaves as it did in the test, in use at no more than half of the stretch that was read and at no more than was wished for: a cloth
 * that does not give that much is used at less, none at less than nothing.
 */
export function knitOfTest({ marked, across, along }: StretchTest, wished: number = usualStretch): Cloth {
  const read = Math.max(0, across / marked - 1);
  const stretch = Math.min(wished, read / 2);
  const lost = Math.max(0, 1 - along / marked);
  return { kind: "knit", stretch: ratio(stretch), shortening: ratio(read === 0 ? 0 : (lost * stretch) / read) };
}

/** How long cloth is cut for a length of the surface, across and along the grain. */
export function cutFactors(cloth: Cloth): { readonly across: number; readonly along: number } {
  switch (cloth.kind) {
    case "knit":
      return { across: 1 / (1 + cloth.stretch), along: 1 / (1 - cloth.shortening) };
    case "woven":
      return { across: 1 + cloth.ease, along: 1 };
  }
}
