import { type HeightCurve, heightCurve } from "../geometry/heightCurve";
import { quarterLengths } from "../geometry/outline";
import { supportsOf } from "../geometry/support";
import { mm, ratio } from "../units";
import type { HalvesSection, Section } from "./section";
import { sectionOfLengths } from "./sectionOfLengths";
import { sectionReading } from "./sectionReading";
import type { LevelName } from "./vocabulary";

/** A line of a torso and the curve there; lines run from the top down. */
export interface TorsoLine {
  readonly name: LevelName | "between";
  readonly depthBelowNape: number;
  readonly section: Section;
}

/** The one way to a torso's curve at a height (mm below the nape). Beyond its first and last line it stays as it is there. */
export type SectionAt = (depthBelowNape: number) => Section;

/**
 * A torso between its lines: what the tape would read in front and behind is drawn as a curve through the lines that never
 * overshoots, from bust to underbust by the share of a breast; the breadths and exponents likewise, and the section is
 * the one that reads so.
 */
export function torsoCurve(lines: readonly TorsoLine[]): SectionAt {
  const halves = lines.map(({ section }) => section).filter((section) => "frontDepth" in section);
  return halves.length === lines.length ? halvesCurve(lines, halves) : tracedCurve(lines);
}

function halvesCurve(lines: readonly TorsoLine[], sections: readonly HalvesSection[]): SectionAt {
  const depths = lines.map(({ depthBelowNape }) => depthBelowNape);
  const curve = (part: (section: HalvesSection) => number) => heightCurve(depths, sections.map(part));
  const left = curve((section) => section.leftBreadth);
  const right = curve((section) => section.rightBreadth);
  const frontExponent = curve((section) => section.frontExponent);
  const backExponent = curve((section) => section.backExponent);
  const { front, back } = lengthCurves(lines);
  return (depth) =>
    sectionAtLine(lines, depth) ??
    sectionOfLengths(
      {
        leftBreadth: mm(left(depth)),
        rightBreadth: mm(right(depth)),
        frontExponent: ratio(frontExponent(depth)),
        backExponent: ratio(backExponent(depth)),
      },
      front(depth),
      back(depth),
    );
}

/** On a line, and beyond the ends, the section is the line's own. */
function sectionAtLine(lines: readonly TorsoLine[], depth: number): Section | undefined {
  const [first, last] = [lines[0] as TorsoLine, lines[lines.length - 1] as TorsoLine];
  if (depth <= first.depthBelowNape) return first.section;
  if (depth >= last.depthBelowNape) return last.section;
  return lines.find((line) => line.depthBelowNape === depth)?.section;
}

/** What the tape would read in front and behind at any height. */
export function lengthCurves(lines: readonly TorsoLine[]): { readonly front: HeightCurve; readonly back: HeightCurve } {
  const readings = lines.map(({ section }) => sectionReading(section));
  const curve = (values: readonly number[]) => breastCurve(lines, values);
  return {
    front: curve(readings.map(({ frontArc }) => frontArc)),
    back: curve(readings.map(({ backArc }) => backArc)),
  };
}

/**
 * A body keeps its bust girth far down: at each tenth of the way from bust to underbust, the share of the change that is
 * made. Median of 48 three-dimensional bodies of made-up women (an artist's shapes).
 */
const breastShares = [0, 0.06, 0.12, 0.18, 0.25, 0.34, 0.49, 0.68, 0.84, 0.95, 1] as const;
const breastShare = heightCurve(
  breastShares.map((_, i) => i / 10),
  breastShares,
);

/** Where the optional reading between bust and underbust is taken: this share of the way down. */
export const lowerBreastPlace = 0.75;

function breastCurve(lines: readonly TorsoLine[], values: readonly number[]): HeightCurve {
  const depths = lines.map(({ depthBelowNape }) => depthBelowNape);
  const smooth = heightCurve(depths, values);
  const bust = lines.findIndex(({ name }) => name === "bust");
  const underbust = lines.findIndex(({ name }) => name === "underbust");
  if (bust === -1 || underbust === -1) return smooth;
  const [top, bottom] = [depths[bust] as number, depths[underbust] as number];
  const shareAt = (i: number) => breastShare(((depths[i] as number) - top) / (bottom - top));
  return (depth) => {
    if (depth <= top || depth >= bottom) return smooth(depth);
    let below = bust + 1;
    while ((depths[below] as number) < depth) below++;
    const [from, to] = [shareAt(below - 1), shareAt(below)];
    const share = (breastShare((depth - top) / (bottom - top)) - from) / (to - from);
    return (values[below - 1] as number) + share * ((values[below] as number) - (values[below - 1] as number));
  };
}

/** The lines with one more between bust and underbust, whose girth was read; what it differs lies in front. */
export function withLowerBreast(lines: readonly TorsoLine[], girth: number): readonly TorsoLine[] {
  const at = lines.findIndex(({ name }) => name === "bust");
  const [bust, underbust] = [lines[at], lines[at + 1]];
  if (bust === undefined || underbust?.name !== "underbust") return lines;
  const gap = underbust.depthBelowNape - bust.depthBelowNape;
  const depthBelowNape = bust.depthBelowNape + lowerBreastPlace * gap;
  const section = torsoCurve(lines)(depthBelowNape);
  if (!("frontDepth" in section)) return lines;
  const back = Math.min(sectionReading(section).backArc, girth / 2);
  const read = sectionOfLengths(section, girth - back, back);
  return lines.toSpliced(at + 1, 0, { name: "between", depthBelowNape, section: read });
}

/** Directions in which blended curves are known. */
const directions = 72;

/** Curves of which one is traced: supports are blended, which keeps them convex, and scaled to what the tape would read. */
function tracedCurve(lines: readonly TorsoLine[]): SectionAt {
  const depths = lines.map(({ depthBelowNape }) => depthBelowNape);
  const supports = lines.map(({ section }) => supportsOf(section, directions));
  const { front, back } = lengthCurves(lines);
  return (depth) => {
    const own = sectionAtLine(lines, depth);
    if (own !== undefined) return own;
    const below = depths.findIndex((place) => place >= depth);
    const [from, to] = [depths[below - 1] as number, depths[below] as number];
    const share = (depth - from) / (to - from);
    const [upper, lower] = [supports[below - 1] as readonly number[], supports[below] as readonly number[]];
    const support = upper.map((value, i) => value + share * ((lower[i] as number) - value));
    const { leftFront, rightFront, leftBack, rightBack } = quarterLengths({ support });
    const scale = (front(depth) + back(depth)) / (leftFront + rightFront + leftBack + rightBack);
    return { support: support.map((value) => scale * value) };
  };
}
