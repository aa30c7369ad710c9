/** How one text becomes another: what stays at its start, what stays at its end, and what stands between. */
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

export const textAfter = (from: string, { start, end, middle }: TextDelta): string =>
  from.slice(0, start) + middle + from.slice(from.length - end);
