import type { LevelName } from "../../../core/body/vocabulary";

/** The levels as German sentences need them: where something is, what is measured, and the line in the dative. */
type ByName = { readonly [level in LevelName]: string };

export const atLevel: ByName = {
  bust: "an der Brust",
  underbust: "unter der Brust",
  waist: "an der Taille",
  highHip: "an der hohen Hüfte",
  fullHip: "an der Hüfte",
};

/** Nominative and accusative alike. */
export const theLevel: ByName = {
  bust: "die Brust",
  underbust: "die Unterbrust",
  waist: "die Taille",
  highHip: "die hohe Hüfte",
  fullHip: "die Hüfte",
};

/** A line's name behind `der` in the dative or genitive: only an adjective changes. */
export const inflected = (line: string): string => line.replace(/^hohe /, "hohen ");
