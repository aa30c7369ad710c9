import type { PatternPart } from "../pattern/patternPart";
import type { AboveStack } from "./buildAbove";

/** The one stack of a build, so many layers high; `cut` gives what so many layers are cut like, the outermost last. */
export const wholeStack = (
  layers: number,
  cut: (layers: number) => readonly PatternPart[],
  oneMore: AboveStack["oneMore"],
): AboveStack => ({ part: "whole", layers, oneMore, next: cut(layers + 1).at(-1) as PatternPart });
