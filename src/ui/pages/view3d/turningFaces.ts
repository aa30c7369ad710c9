import type { Look, SeenPoint } from "./turningView";
import type { StandingRing } from "./turningSurface";

/** A face of a surface between two rings that looks towards the viewer, with what lies on it and how it is lit. */
export interface Face {
  readonly corners: readonly [SeenPoint, SeenPoint, SeenPoint, SeenPoint];
  readonly near: number;
  /** Light on it, from 0 (turned away from the lamp) to 1. */
  readonly light: number;
  /** The outermost piece, by its order, or 0 for the bare form. */
  readonly piece: number;
  /** How thick that piece is here (mm), and which piece it lies on. */
  readonly own: number;
  readonly beneath: number;
}

/** The faces towards the viewer, the furthest first, so that nearer ones are painted over them. */
export function facesToward(rings: readonly StandingRing[], look: Look): readonly Face[] {
  const seen = rings.map((ring) => seenRing(ring, look));
  const faces: Face[] = [];
  for (let row = 1; row < seen.length; row++) {
    const [upper, lower, ring] = [seen[row - 1] ?? [], seen[row] ?? [], rings[row]];
    if (ring === undefined) continue;
    for (let at = 0; at < lower.length; at++) {
      const next = (at + 1) % lower.length;
      const [a, b, c, d] = [upper[at], upper[next], lower[next], lower[at]];
      if (a === undefined || b === undefined || c === undefined || d === undefined) continue;
      const normal = facing(a, b, c, d);
      if (normal.near <= 0) continue;
      faces.push({
        corners: [a, b, c, d],
        near: (a.near + b.near + c.near + d.near) / 4,
        light: lit(normal),
        piece: ring.outermost[at] ?? 0,
        own: ring.own[at] ?? 0,
        beneath: ring.beneath[at] ?? 0,
      });
    }
  }
  return faces.sort((one, other) => one.near - other.near);
}

export const seenRing = ({ x, y, drop }: StandingRing, look: Look): readonly SeenPoint[] =>
  Array.from(x, (value, at) => look(value, y[at] ?? 0, drop));

/** The outward normal of a face, as the viewer sees it, of length one; a face without extent looks nowhere. */
function facing(a: SeenPoint, b: SeenPoint, c: SeenPoint, d: SeenPoint): SeenPoint {
  const [across1, down1, near1] = [c.across - a.across, c.down - a.down, c.near - a.near];
  const [across2, down2, near2] = [d.across - b.across, d.down - b.down, d.near - b.near];
  const across = down1 * near2 - near1 * down2;
  const down = near1 * across2 - across1 * near2;
  const near = across1 * down2 - down1 * across2;
  const size = Math.hypot(across, down, near);
  return size === 0 ? { across: 0, down: 0, near: 0 } : { across: across / size, down: down / size, near: near / size };
}

/** A lamp above the viewer's left shoulder, of length one, and some light from everywhere. */
const lamp = { across: -0.45, down: -0.4, near: 0.8 } as const;

const lit = ({ across, down, near }: SeenPoint): number =>
  Math.max(0, Math.min(1, 0.15 + across * lamp.across + down * lamp.down + near * lamp.near));
