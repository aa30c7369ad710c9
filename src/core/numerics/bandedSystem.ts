import { assert } from "../result";

/**
 * A symmetric positive definite matrix whose entries lie within a band around the diagonal: row by row from the entry
 * `band` places before the diagonal up to the diagonal itself. Entries before the first column are zero.
 */
export interface BandedMatrix {
  readonly size: number;
  readonly band: number;
  readonly entries: Float64Array;
}

/** Solves the matrix for one right-hand side after another, in its place; the matrix is factored once (Cholesky). */
export function bandedSolver({ size, band, entries }: BandedMatrix): (values: Float64Array) => void {
  const width = band + 1;
  const factor = entries.slice();
  for (let row = 0; row < size; row++) {
    for (let column = Math.max(0, row - band); column <= row; column++) {
      let sum = factor[row * width + column - row + band] as number;
      for (let k = Math.max(0, row - band, column - band); k < column; k++)
        sum -=
          (factor[row * width + k - row + band] as number) * (factor[column * width + k - column + band] as number);
      if (column < row) factor[row * width + column - row + band] = sum / (factor[column * width + band] as number);
      else {
        assert(sum > 0, "a banded matrix that is solved is positive definite");
        factor[row * width + band] = Math.sqrt(sum);
      }
    }
  }
  return (values) => {
    for (let row = 0; row < size; row++) {
      let sum = values[row] as number;
      for (let k = Math.max(0, row - band); k < row; k++)
        sum -= (factor[row * width + k - row + band] as number) * (values[k] as number);
      values[row] = sum / (factor[row * width + band] as number);
    }
    for (let row = size - 1; row >= 0; row--) {
      let sum = values[row] as number;
      for (let k = row + 1; k <= Math.min(size - 1, row + band); k++)
        sum -= (factor[k * width + row - k + band] as number) * (values[k] as number);
      values[row] = sum / (factor[row * width + band] as number);
    }
  };
}
