/** A letter for each of a row of things, on pictures and patterns: A to Z, then AA. */
export const letters = (place: number): string =>
  place < 26 ? String.fromCharCode(65 + place) : `${letters(Math.floor(place / 26) - 1)}${letters(place % 26)}`;
