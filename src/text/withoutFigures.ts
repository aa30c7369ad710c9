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

export const namesLength = (text: string): boolean => /\d[\s\u00a0]*(?:in|cm|mm)\b|\d\/\d/.test(text);
