/**
 * Chance that can be repeated: a stream of numbers from a seed, the same on every machine (mulberry32, a 32-bit
 * mixing generator in the public domain; from memory). For making test people, not for secrets.
 */
export interface Chance {
  /** Even between two bounds. */
  readonly between: (least: number, most: number) => number;
  /** Normal with a mean and a standard deviation (Box and Muller 1958). */
  readonly normal: (mean: number, sd: number) => number;
  readonly happens: (probability: number) => boolean;
  readonly pick: <const Value>(values: readonly [Value, ...Value[]]) => Value;
}

export function chance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    between: (least, most) => least + (most - least) * next(),
    normal: (mean, sd) => mean + sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    happens: (probability) => next() < probability,
    pick: (values) => values[Math.floor(next() * values.length)] ?? values[0],
  };
}
