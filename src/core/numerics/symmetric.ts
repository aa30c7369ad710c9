import { assert } from "../result";

/**
 * A symmetric positive definite matrix, taken apart once by Cholesky's method (Golub and Van Loan, Matrix Computations,
 * 4th ed. 2013, algorithm 4.2.1, cited from memory) to solve with it and to invert it. Rows are lists of equal length.
 */
export type Matrix = readonly (readonly number[])[];

export interface Symmetric {
  readonly solve: (right: readonly number[]) => readonly number[];
  readonly inverse: () => Matrix;
}

export function symmetric(matrix: Matrix): Symmetric {
  const lower = cholesky(matrix);
  const solve = (right: readonly number[]) => backward(lower, forward(lower, right));
  return { solve, inverse: () => matrix.map((_, i) => solve(matrix.map((_, j) => (i === j ? 1 : 0)))) };
}

const at = (matrix: Matrix, i: number, j: number): number => (matrix[i] as readonly number[])[j] as number;

function cholesky(matrix: Matrix): Matrix {
  const lower = matrix.map(() => matrix.map(() => 0));
  for (let i = 0; i < matrix.length; i++) {
    const row = lower[i] as number[];
    for (let j = 0; j <= i; j++) {
      let rest = at(matrix, i, j);
      for (let k = 0; k < j; k++) rest -= (row[k] as number) * at(lower, j, k);
      assert(i !== j || rest > 0, "the matrix is positive definite");
      row[j] = i === j ? Math.sqrt(rest) : rest / at(lower, j, j);
    }
  }
  return lower;
}

function forward(lower: Matrix, right: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (let i = 0; i < lower.length; i++) {
    let rest = right[i] as number;
    for (let k = 0; k < i; k++) rest -= at(lower, i, k) * (found[k] as number);
    found.push(rest / at(lower, i, i));
  }
  return found;
}

function backward(lower: Matrix, right: readonly number[]): readonly number[] {
  const found = right.map(() => 0);
  for (let i = lower.length - 1; i >= 0; i--) {
    let rest = right[i] as number;
    for (let k = i + 1; k < lower.length; k++) rest -= at(lower, k, i) * (found[k] as number);
    found[i] = rest / at(lower, i, i);
  }
  return found;
}
