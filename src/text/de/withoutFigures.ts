import { namesNumber as namesEnglishNumber } from "../withoutFigures";

export { namesLength, placeWithoutFigures, withoutFigures } from "../withoutFigures";

/** Also beside the name of a unit in German, alone, inflected or in a compound: `eine Handbreit und zwei Zentimeter`, `zollbreit`. */
export const namesNumber = (text: string): boolean =>
  namesEnglishNumber(text) || /\b(?:Zoll|(?:Zenti|Milli|Dezi)?meter)/iu.test(text);
