import { type Millimetres, mm } from "../units";

/** An oval, front to back and top to bottom (mm). */
export interface Oval {
  readonly breadth: Millimetres;
  readonly height: Millimetres;
}

export const oval = (breadth: number, height: number): Oval => ({ breadth: mm(breadth), height: mm(height) });

/**
 * Around an ellipse (mm): with a and b the larger and the smaller half axis, 2π/M · (a² − Σ 2ⁿ⁻¹·cₙ²), M the arithmetic-geometric mean
 * of a and b (Abramowitz and Stegun 1964, section 17.6). Exact to the last digits after six steps.
 */
export function aroundOval({ breadth, height }: Oval): Millimetres {
  let [a, b] = [Math.max(breadth, height) / 2, Math.min(breadth, height) / 2];
  let sum = a * a - (a * a - b * b) / 2;
  for (let weight = 1; a - b > 1e-12 * a; weight *= 2) {
    const half = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    sum -= weight * half * half;
  }
  return mm((2 * Math.PI * sum) / a);
}
