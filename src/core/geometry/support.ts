import type { ConvexShape, QuarteredShape } from "./outline";

/**
 * How far a section reaches from its middle in a direction (mm): the distance of the line that touches it there. The
 * direction is an angle from the wearer's left, turned towards the front. Supports of curves laid around one another add.
 */
export function supportAt(shape: ConvexShape, angle: number): number {
  if (!("support" in shape)) return quarteredSupport(shape, angle);
  const { support } = shape;
  const count = support.length;
  const step = (2 * Math.PI) / count;
  const place = angle / step;
  const before = Math.floor(place);
  const at = (i: number) => support[((i % count) + count) % count] as number;
  const past = (place - before) * step;
  // The corner of the supporting lines on both sides of the direction.
  return (at(before) * Math.sin(step - past) + at(before + 1) * Math.sin(past)) / Math.sin(step);
}

/** The support of |x/a|^n + |y/d|^n = 1 is the dual norm of (a cos, d sin), of the exponent n / (n − 1). */
function quarteredSupport(shape: QuarteredShape, angle: number): number {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const breadth = c > 0 ? shape.leftBreadth : shape.rightBreadth;
  const [depth, exponent] = s > 0 ? [shape.frontDepth, shape.frontExponent] : [shape.backDepth, shape.backExponent];
  const dual = exponent / (exponent - 1);
  return (Math.abs(breadth * c) ** dual + Math.abs(depth * s) ** dual) ** (1 / dual);
}

/** How far a section reaches to each side, to the front and to the back (mm). */
export interface Reach {
  readonly left: number;
  readonly right: number;
  readonly front: number;
  readonly back: number;
}

export function reachOf(shape: ConvexShape): Reach {
  if ("support" in shape) {
    const at = (quarter: number) => supportAt(shape, (quarter * Math.PI) / 2);
    return { left: at(0), front: at(1), right: at(2), back: at(3) };
  }
  const { leftBreadth: left, rightBreadth: right, frontDepth: front, backDepth: back } = shape;
  return { left, right, front, back };
}

/** A section's support in so many evenly spaced directions, the first to the wearer's left, the next turned to the front. */
export const supportsOf = (shape: ConvexShape, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => supportAt(shape, (2 * Math.PI * i) / count));
