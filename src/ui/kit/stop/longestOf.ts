import { type Millimetres, mm } from "../../../core/units";

/** Of the words that may come to one place, those that keep room for all of them. */
export const longestOf = (words: readonly string[]): string =>
  words.reduce((longest, one) => (one.length > longest.length ? one : longest));

/** Of lengths near one some have a fraction of the unit at hand, and take the most room. */
export const lengthsNear = (expected: Millimetres): readonly Millimetres[] => [
  expected,
  mm(expected + 3),
  mm(expected + 10),
];
