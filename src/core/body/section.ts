import type { Millimetres, Ratio } from "../units";

/**
 * The outline of a body or form at one height: a closed convex curve in the level plane (x to the wearer's left, y to the
 * front; the side seams lie on y = 0, center front and back on x = 0). However it came, it is asked only for its support,
 * its lengths, and its outline with normals (`geometry/outline`, `geometry/support`).
 */
export type Section = HalvesSection | TracedSection;

/**
 * Solved from the tape: two half superellipses that join at the sides, with an exponent each (2 is an ellipse, larger is
 * boxier). The exponents are a prior's, and nothing shown to a person may hang on their exact value.
 */
export interface HalvesSection {
  readonly leftBreadth: Millimetres;
  readonly rightBreadth: Millimetres;
  readonly frontDepth: Millimetres;
  readonly backDepth: Millimetres;
  readonly frontExponent: Ratio;
  readonly backExponent: Ratio;
}

/**
 * Traced, from a scan or by blending: its support (mm) in 72 or more evenly spaced directions, the first to the wearer's
 * left, the next turned towards the front.
 */
export interface TracedSection {
  readonly support: readonly number[];
}
