/**
 * A root of a function of one number between two ends, by the Illinois form of false position (Dowell and Jarratt,
 * BIT 11, 1971, 168-174) with a bisection wherever that would creep. It tells a root that was found from a search that
 * gave up; the caller must look.
 */
export type Root =
  | { readonly kind: "converged"; readonly value: number }
  | { readonly kind: "gaveUp"; readonly nearest: number; readonly miss: number };

export interface RootSearch {
  readonly from: number;
  readonly to: number;
  /** How close to zero the function must come, in its own unit. */
  readonly precision: number;
}

const stepCap = 60;

export function root(value: (at: number) => number, search: RootSearch): Root {
  let [low, high] = [search.from, search.to];
  let [atLow, atHigh] = [value(low), value(high)];
  if (Math.abs(atLow) <= search.precision) return { kind: "converged", value: low };
  if (Math.abs(atHigh) <= search.precision) return { kind: "converged", value: high };
  if (!(atLow * atHigh < 0)) return nearer(low, atLow, high, atHigh);
  for (let step = 0; step < stepCap; step++) {
    const falsePosition = (low * atHigh - high * atLow) / (atHigh - atLow);
    const middle = step % 4 === 3 ? (low + high) / 2 : falsePosition;
    const atMiddle = value(middle);
    if (Math.abs(atMiddle) <= search.precision) return { kind: "converged", value: middle };
    if (atMiddle * atHigh < 0) {
      low = high;
      atLow = atHigh;
    } else {
      atLow /= 2;
    }
    high = middle;
    atHigh = atMiddle;
  }
  return nearer(low, value(low), high, atHigh);
}

function nearer(low: number, atLow: number, high: number, atHigh: number): Root {
  return Math.abs(atLow) < Math.abs(atHigh)
    ? { kind: "gaveUp", nearest: low, miss: atLow }
    : { kind: "gaveUp", nearest: high, miss: atHigh };
}
