import { inchMm, type LengthWriter } from "./lengthWriter";

/**
 * The steps of a map of depth: at most four bands of equal height, in round figures of the person's unit, the first
 * from where batting is felt at all.
 */
export interface DepthBand {
  readonly from: number;
  /** Null for the deepest. */
  readonly to: number | null;
}

const bandCount = 4;

/** Batting thinner than this is not worth a shade (mm): about a third of the thinnest layer in use. */
const felt = 1.5;

export function depthBands(deepest: number, { unit }: LengthWriter): readonly DepthBand[] {
  if (deepest < felt) return [];
  const steps = unit === "in" ? [0.25, 0.5, 0.75, 1, 1.5, 2].map((step) => step * inchMm) : [5, 10, 15, 20, 30, 40, 50];
  const step = steps.find((size) => size * bandCount >= deepest) ?? steps.at(-1) ?? 0;
  const count = Math.min(bandCount, Math.ceil(deepest / step));
  return Array.from({ length: count }, (_, i) => ({
    from: i === 0 ? felt : i * step,
    to: i === count - 1 ? null : (i + 1) * step,
  }));
}
