/** The kind of page that one person's sheets are printed on. */
export const pageOf = (place: number): string => `person-${place + 1}`;

/** The name at the foot of every page of theirs, whatever it is made of: what is neither letter nor digit is written by its number. */
export const footRule = (place: number, name: string): string =>
  `@page ${pageOf(place)} { @bottom-right { content: "${cssText(name)}"; font: 10pt sans-serif; } }`;

const cssText = (name: string): string =>
  [...name]
    .map((sign) => (/[\p{Letter}\p{Number}\p{Mark} ]/u.test(sign) ? sign : `\\${sign.codePointAt(0)?.toString(16)} `))
    .join("");
