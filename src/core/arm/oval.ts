import { type Millimetres, mm } from "../units";

/** An oval, front to back and top to bottom (mm). */
export interface Oval {
  readonly breadth: Millimetres;
  readonly height: Millimetres;
}

export const oval = (breadth: number, height: number): Oval => ({ breadth: mm(breadth), height: mm(height) });

const meanSteps = 6;

/**
 * Around an ellipse (mm): with a and b the larger and the smaller half axis, 2π/M · (a² − Σ 2ⁿ⁻¹·cₙ²), M the arithmetic-geometric mean
 * of a and b (Abramowitz and Stegun 1964, section 17.6). Exact to the last digits after so many steps.
 */
export function aroundOval({ breadth, height }: Oval): Millimetres {
  let [a, b] = [Math.max(breadth, height) / 2, Math.min(breadth, height) / 2];
  let sum = a * a - (a * a - b * b) / 2;
  for (let step = 0; step < meanSteps; step++) {
    const half = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    sum -= 2 ** step * half * half;
  }
  return mm((2 * Math.PI * sum) / a);
}
