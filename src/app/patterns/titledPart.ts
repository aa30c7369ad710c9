import type { PatternPart } from "../../core/pattern/patternPart";

/** A part with what is written on it: what it is, and in short lines how many to cut, from what, how it is put on. */
export interface TitledPart {
  readonly part: PatternPart;
  readonly title: string;
  readonly says: readonly string[];
}
