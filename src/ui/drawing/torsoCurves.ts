import { type SectionAt, torsoCurve } from "../../core/body/torsoCurve";
import type { PlannedLevel } from "../../core/plan/plan";
import { mm } from "../../core/units";

/**
 * A section for every height below the nape, from the levels of a plan and what is known between them. Above the bust
 * nothing was measured; there the chest is drawn falling back towards the neck by a rule of ours.
 */
export function torsoCurves(levels: readonly PlannedLevel[], whose: "formSection" | "bodySection"): SectionAt {
  const sectionAt = torsoCurve(
    levels.flatMap((level) => [
      { name: level.name, depthBelowNape: level.drop.value, section: level[whose] },
      ...level.below[whose === "formSection" ? "form" : "body"],
    ]),
  );
  const bust = levels.find(({ name }) => name === "bust")?.drop.value ?? 0;
  return (depthBelowNape) => {
    const section = sectionAt(depthBelowNape);
    const share = chestShare(bust - depthBelowNape, bust);
    return "frontDepth" in section && share < 1 ? { ...section, frontDepth: mm(section.frontDepth * share) } : section;
  };
}

/** Depth of the chest above the bust as a share of the depth at the bust: all of it there, six tenths at the neck. */
const chestShare = (above: number, bust: number): number =>
  above <= 0 ? 1 : 1 - 0.4 * Math.sin((Math.min(1, above / bust) * Math.PI) / 2) ** 1.5;
