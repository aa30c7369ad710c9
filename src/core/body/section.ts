import type { Millimetres, Ratio } from "../units";

/**
 * The outline of a body or form at one height: a closed convex curve in the level plane (x to the wearer's left, y to
 * the front), made of four quarter superellipses that join at the sides and at centre front and back. The side seams
 * lie where the halves join (y = 0), half a breadth to each side. The exponent is a fitting constant (2 is an ellipse,
 * larger is boxier) and nothing shown to a person may hang on its exact value.
 */
export interface Section {
  readonly leftBreadth: Millimetres;
  readonly rightBreadth: Millimetres;
  readonly frontDepth: Millimetres;
  readonly backDepth: Millimetres;
  readonly exponent: Ratio;
}
