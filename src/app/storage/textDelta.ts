/**
 * How one text becomes another: what stays at its start, what stays at its end, and what stands between. Two states of
 * one fitting differ in a few characters, so a long history costs little more than the fitting itself.
 */
export interface TextDelta {
  readonly start: number;
  readonly end: number;
  readonly middle: string;
}

export function textDelta(from: string, to: string): TextDelta {
  const shorter = Math.min(from.length, to.length);
  let start = 0;
  while (start < shorter && from.charCodeAt(start) === to.charCodeAt(start)) start += 1;
  let end = 0;
  while (end < shorter - start && from.charCodeAt(from.length - 1 - end) === to.charCodeAt(to.length - 1 - end))
    end += 1;
  return { start, end, middle: to.slice(start, to.length - end) };
}

/** The text that the delta leads to, or nothing where the delta does not fit the text it is laid on. */
export function textAfter(from: string, { start, end, middle }: TextDelta): string | null {
  const fits = isCount(start) && isCount(end) && start + end <= from.length;
  return fits ? from.slice(0, start) + middle + from.slice(from.length - end) : null;
}

const isCount = (value: number): boolean => Number.isSafeInteger(value) && value >= 0;
