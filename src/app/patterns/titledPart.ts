import type { PatternPart } from "../../core/pattern/patternPart";

/** A part with what is written on it: what it is, and in short lines how many to cut, from what, how it is put on. */
export interface TitledPart {
  readonly part: PatternPart;
  readonly title: string;
  readonly says: readonly string[];
}

/** What is written on a part, in lines that stay within so many letters. */
export function foldedWords({ title, says }: TitledPart, letters: number): readonly string[] {
  return [title, ...says].flatMap((words) => folded(words, (line) => line.length <= letters));
}

/** Words in lines that have room, each with as many words as fit. */
export function folded(words: string, hasRoom: (line: string) => boolean): readonly string[] {
  const lines: string[] = [];
  for (const word of words.split(" ")) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && hasRoom(longer)) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
