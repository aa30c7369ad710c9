import { flatDistance, type FlatPoint } from "./panelShape";

/** Where a row of a panel lying flat begins and ends. */
export interface RowEnds {
  readonly first: FlatPoint;
  readonly last: FlatPoint;
}

/** A step from one row to the next: how far apart the ends of the lower row are, and how long both edges are (mm). */
export interface StepLengths {
  readonly width: number;
  readonly first: number;
  readonly last: number;
}

/** The row below if the first edge's step leans so far to the right of square (radians); its three lengths are exact. */
export function rowBelow({ first: a, last: b }: RowEnds, step: StepLengths, lean: number): RowEnds {
  const across = flatDistance(a, b);
  const [alongX, alongY] = [(b.x - a.x) / across, (b.y - a.y) / across];
  const [s, c] = [Math.sin(lean) * step.first, Math.cos(lean) * step.first];
  const first = { x: a.x + s * alongX + c * alongY, y: a.y + s * alongY - c * alongX };
  return { first, last: meeting(first, step.width, b, step.last) };
}

/** The point so far from one point and so far from another, on the lower side of the way from the first to the second; where there is none, between them. */
function meeting(one: FlatPoint, fromOne: number, other: FlatPoint, fromOther: number): FlatPoint {
  const apart = flatDistance(one, other);
  const along = (apart * apart + fromOne * fromOne - fromOther * fromOther) / (2 * apart);
  const off = Math.sqrt(Math.max(0, fromOne * fromOne - along * along));
  const [x, y] = [(other.x - one.x) / apart, (other.y - one.y) / apart];
  return { x: one.x + along * x + off * y, y: one.y + along * y - off * x };
}
