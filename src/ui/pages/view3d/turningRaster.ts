import type { Rgb } from "./turningColours";
import { lit, type Look, type StandingRing } from "./turningSurface";

/** Where what is seen lies on the picture: picture elements for a millimeter, and where the middle of the figure is. */
export interface PicturePlace {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

/** The picture elements of a figure, made once for a size and painted again and again. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly inks: Uint32Array<ArrayBuffer>;
  readonly near: Float32Array;
}

export function newRaster(width: number, height: number): Raster {
  const [across, down] = [Math.max(1, Math.round(width)), Math.max(1, Math.round(height))];
  return { width: across, height: down, inks: new Uint32Array(across * down), near: new Float32Array(across * down) };
}

/** What a surface is made of between two rings at a point of the lower one, in full light. */
export type Material = (ring: StandingRing, at: number) => Rgb;

/**
 * Paints the surface of rings: what faces the viewer, lit smoothly from corner to corner, the nearer before the farther. A canvas
 * that fills some thousands of faces one by one draws seven pictures a second on a slow tablet.
 */
export function paintSurface(
  raster: Raster,
  rings: readonly StandingRing[],
  { look, place, material, shading, every = 1 }: SurfaceLook,
): void {
  raster.near.fill(Number.NEGATIVE_INFINITY);
  raster.inks.fill(0);
  const seen = rings.map((ring) => cornersOf(ring, look, place, every));
  seen.forEach((ring, row) => {
    light(ring, seen[row - 1] ?? ring, seen[row + 1] ?? ring);
  });
  for (let row = 1; row < seen.length; row++) {
    const [upper, lower, ring] = [seen[row - 1] ?? [], seen[row] ?? [], rings[row] as StandingRing];
    lower.forEach((d, at) => {
      const next = (at + 1) % lower.length;
      const [a, b, c] = [upper[at], upper[next], lower[next]];
      if (a === undefined || b === undefined || c === undefined) return;
      const colour = material(ring, at * every);
      fillTriangle(raster, a, b, c, colour, shading);
      fillTriangle(raster, a, c, d, colour, shading);
    });
  }
}

interface SurfaceLook {
  readonly look: Look;
  readonly place: PicturePlace;
  readonly material: Material;
  readonly shading: number;
  /** Of so many points of a ring one is taken; every one if left out. */
  readonly every?: number;
}

/** A corner of the surface on the picture, how near it is (mm), and how much light falls on it. */
interface Corner {
  readonly across: number;
  readonly down: number;
  readonly near: number;
  light: number;
}

function cornersOf(
  { section: { points, depthBelowNape } }: StandingRing,
  look: Look,
  place: PicturePlace,
  every: number,
): Corner[] {
  return Array.from({ length: points.length / 2 / every }, (_, i) => {
    const at = i * every;
    const { across, down, near } = look(points[2 * at] ?? 0, points[2 * at + 1] ?? 0, depthBelowNape);
    return {
      across: place.left + across * place.scale,
      down: place.top + down * place.scale,
      near: near * place.scale,
      light: 0,
    };
  });
}

/** Light on the corners of a ring, by the surface's direction between their neighbors. */
function light(ring: Corner[], above: readonly Corner[], below: readonly Corner[]): void {
  const count = ring.length;
  ring.forEach((corner, at) => {
    const [before, after] = [ring[(at + count - 1) % count] ?? corner, ring[(at + 1) % count] ?? corner];
    const [up, down] = [above[at] ?? corner, below[at] ?? corner];
    const [across1, down1, near1] = [after.across - before.across, after.down - before.down, after.near - before.near];
    const [across2, down2, near2] = [down.across - up.across, down.down - up.down, down.near - up.near];
    const normal = {
      across: down1 * near2 - near1 * down2,
      down: near1 * across2 - across1 * near2,
      near: across1 * down2 - down1 * across2,
    };
    // Some thousand times a picture: Math.hypot takes ten times as long.
    const size = Math.sqrt(normal.across ** 2 + normal.down ** 2 + normal.near ** 2) || 1;
    corner.light = lit({ across: normal.across / size, down: normal.down / size, near: normal.near / size });
  });
}

function fillTriangle(
  { width, height, inks, near }: Raster,
  a: Corner,
  b: Corner,
  c: Corner,
  colour: Rgb,
  shading: number,
): void {
  const area = (b.across - a.across) * (c.down - a.down) - (c.across - a.across) * (b.down - a.down);
  if (area <= 0) return;
  const left = Math.max(0, Math.floor(Math.min(a.across, b.across, c.across)));
  const right = Math.min(width - 1, Math.ceil(Math.max(a.across, b.across, c.across)));
  const top = Math.max(0, Math.floor(Math.min(a.down, b.down, c.down)));
  const bottom = Math.min(height - 1, Math.ceil(Math.max(a.down, b.down, c.down)));
  const [bAcross, bDown] = [(c.down - a.down) / area, -(c.across - a.across) / area];
  const [cAcross, cDown] = [-(b.down - a.down) / area, (b.across - a.across) / area];
  for (let y = top; y <= bottom; y++) {
    for (let x = left; x <= right; x++) {
      const ofB = (x - a.across) * bAcross + (y - a.down) * bDown;
      const ofC = (x - a.across) * cAcross + (y - a.down) * cDown;
      const ofA = 1 - ofB - ofC;
      if (ofA < -rim || ofB < -rim || ofC < -rim) continue;
      const at = y * width + x;
      const nearness = ofA * a.near + ofB * b.near + ofC * c.near;
      if (nearness <= (near[at] as number)) continue;
      near[at] = nearness;
      inks[at] = inkOf(colour, ofA * a.light + ofB * b.light + ofC * c.light, shading);
    }
  }
}

/** A hair over the edges, so that no ground shines through between triangles. */
const rim = 0.02;

/** A color under so much light as one number, as `shaded` has it: opaque, blue before green before red. */
function inkOf({ red, green, blue }: Rgb, lightOnIt: number, shading: number): number {
  const dark = (1 - lightOnIt) * shading;
  const [warm, cold] = [1 - 0.75 * dark, 1 - 0.72 * dark];
  return (255 << 24) | (Math.round(blue * cold) << 16) | (Math.round(green * warm) << 8) | Math.round(red * warm);
}
