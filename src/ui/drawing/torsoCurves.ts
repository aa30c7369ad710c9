import type { Section } from "../../core/body/section";
import { heightCurve } from "../../core/geometry/heightCurve";
import type { PlannedLevel } from "../../core/plan/plan";
import { mm, ratio } from "../../core/units";

/**
 * A section for every drop below the nape, from the levels of a plan: smooth between the levels and never beyond them.
 * Above the bust nothing was measured; there the chest is drawn falling back towards the neck by a rule of ours.
 */
export type SectionAt = (drop: number) => Section;

export function torsoCurves(levels: readonly PlannedLevel[], whose: "formSection" | "bodySection"): SectionAt {
  const drops = levels.map(({ drop }) => drop.value);
  const curve = (pick: (section: Section) => number) =>
    heightCurve(
      drops,
      levels.map((level) => pick(level[whose])),
    );
  const left = curve(({ leftBreadth }) => leftBreadth);
  const right = curve(({ rightBreadth }) => rightBreadth);
  const front = curve(({ frontDepth }) => frontDepth);
  const back = curve(({ backDepth }) => backDepth);
  const exponent = curve((section) => section.exponent);
  const bust = drops[0] ?? 0;
  return (drop) => ({
    leftBreadth: mm(left(drop)),
    rightBreadth: mm(right(drop)),
    frontDepth: mm(front(drop) * chestShare(bust - drop, bust)),
    backDepth: mm(back(drop)),
    exponent: ratio(exponent(drop)),
  });
}

/** Depth of the chest above the bust as a share of the depth at the bust: all of it there, six tenths at the neck. */
const chestShare = (above: number, bust: number): number =>
  above <= 0 ? 1 : 1 - 0.4 * Math.sin((Math.min(1, above / bust) * Math.PI) / 2) ** 1.5;
