/**
 * A quarter of a superellipse |x/a|^n + |y/d|^n = 1 with half-breadth a, depth d (mm) and exponent n > 1: its length
 * and points on it. The quarter is cut where x/a = y/d, so that each part is the graph of a smooth function and
 * Gauss-Legendre quadrature is exact to far below what a tape can read. A depth of zero is the flat quarter of length a.
 */
export interface Quarter {
  readonly breadth: number;
  readonly depth: number;
  readonly exponent: number;
}

export function quarterLength({ breadth, depth, exponent }: Quarter): number {
  return quarterLengths(exponent)(breadth, depth);
}

/** The lengths of quarters of one exponent, whose powers are taken once: for those who ask for many. */
export function quarterLengths(exponent: number): (breadth: number, depth: number) => number {
  const cut = 2 ** (-1 / exponent);
  const slopes = nodes.map((node) => {
    const power = (cut * node) ** (exponent - 1);
    return power * (1 - power * (cut * node)) ** (1 / exponent - 1);
  });
  return (breadth, depth) => cut * (partLength(breadth, depth, slopes) + partLength(depth, breadth, slopes));
}

/** One point of a quarter with its outward normal (unit length), both in the quarter's own frame (x ≥ 0, y ≥ 0). */
export interface QuarterPoint {
  readonly x: number;
  readonly y: number;
  readonly normalX: number;
  readonly normalY: number;
}

/** The points of the quarter of half-breadth and depth 1, with the powers its normals need. Every quarter of the exponent is a stretched one. */
export interface UnitQuarter {
  readonly count: number;
  readonly v: Float64Array;
  readonly w: Float64Array;
  readonly powerV: Float64Array;
  readonly powerW: Float64Array;
}

export function unitQuarter(exponent: number, perPart: number): UnitQuarter {
  const cut = 2 ** (-1 / exponent);
  const count = 2 * perPart + 1;
  const v = new Float64Array(count);
  const powerV = new Float64Array(count);
  for (let i = 0; i <= perPart; i++) {
    const near = (cut * i) / perPart;
    const far = (1 - near ** exponent) ** (1 / exponent);
    v[count - 1 - i] = far;
    powerV[count - 1 - i] = far ** (exponent - 1);
    v[i] = near;
    powerV[i] = near ** (exponent - 1);
  }
  // The curve is its own mirror image across the diagonal.
  return { count, v, w: v.toReversed(), powerV, powerW: powerV.toReversed() };
}

/** One point of a quarter, counted from the centre. */
export function quarterPoint(
  { v, w, powerV, powerW }: UnitQuarter,
  i: number,
  breadth: number,
  depth: number,
): QuarterPoint {
  const slopeX = (powerV[i] as number) * depth;
  const slopeY = (powerW[i] as number) * breadth;
  const size = Math.sqrt(slopeX * slopeX + slopeY * slopeY) || 1;
  return { x: breadth * (v[i] as number), y: depth * (w[i] as number), normalX: slopeX / size, normalY: slopeY / size };
}

/** Nodes and weights of 10-point Gauss-Legendre quadrature on (0, 1) (Abramowitz and Stegun 1964, table 25.4, halved). */
const nodes = [
  0.0130467357414141, 0.0674683166555077, 0.160295215850488, 0.283302302935376, 0.425562830509184, 0.574437169490816,
  0.716697697064624, 0.839704784149512, 0.932531683344492, 0.986953264258586,
] as const;
const weights = [
  0.0333356721543441, 0.0747256745752903, 0.109543181257991, 0.134633359654998, 0.147762112357376, 0.147762112357376,
  0.134633359654998, 0.109543181257991, 0.0747256745752903, 0.0333356721543441,
] as const;

/**
 * Length of the part where the first axis runs from 0 to its share at the cut, as a share of the cut: ∫ √(a² + (dy/dv)²) dv. The
 * slopes are those of the unit quarter at the nodes.
 */
function partLength(along: number, across: number, slopes: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < nodes.length; i++) {
    const slope = across * (slopes[i] as number);
    sum += (weights[i] as number) * Math.sqrt(along * along + slope * slope);
  }
  return sum;
}
