/** What has no length stays as it is; of the rest the sentences without one. */
export function withoutFigures(text: string): string {
  if (!namesLength(text)) return text;
  return text
    .split("\n")
    .map((line) =>
      line
        .split(/(?<=\.)\s+/)
        .filter((sentence) => !namesLength(sentence))
        .join(" "),
    )
    .join("\n")
    .trim();
}

/** Whether a text somebody wrote holds any number, written as digits, as a fraction sign or beside the name of a unit. */
export const namesNumber = (text: string): boolean =>
  /[\p{Nd}\p{No}]|\b(?:inch|inches|centimeters?|millimeters?|meters?)\b/iu.test(text);

export const namesLength = (text: string): boolean => /\d[\s\u00a0]*(?:in|cm|mm)\b|\d\/\d/.test(text);

/** A place with its distances left out: `2 in above the waistline` is above the waistline. */
export const placeWithoutFigures = (place: string): string => place.replace(/\d[\d\s/.,\u00a0]*(?:in|cm|mm)\s+/gu, "");
