import { type SectionAt, torsoCurve } from "../body/torsoCurve";
import { mm } from "../units";
import type { PlannedLevel } from "./plan";

/**
 * The bare form's and the body's curve at every depth below the nape (mm), from the levels of a plan and what else it
 * knows between them. Above the bust nothing was read; there the chest falls back towards the neck by a rule of ours,
 * which only pictures may rely on.
 */
export const formCurveOf = (levels: readonly PlannedLevel[]): SectionAt =>
  curveOf(levels, ({ formSection, below }) => ({ section: formSection, between: below.form }));

export const bodyCurveOf = (levels: readonly PlannedLevel[]): SectionAt =>
  curveOf(levels, ({ bodySection, below }) => ({ section: bodySection, between: below.body }));

type Known = {
  readonly section: PlannedLevel["formSection"];
  readonly between: PlannedLevel["below"]["form"];
};

function curveOf(levels: readonly PlannedLevel[], known: (level: PlannedLevel) => Known): SectionAt {
  const sectionAt = torsoCurve(
    levels.flatMap((level) => {
      const { section, between } = known(level);
      return [{ name: level.name, depthBelowNape: level.depthBelowNape.value, section }, ...between];
    }),
  );
  const bust = levels.find(({ name }) => name === "bust")?.depthBelowNape.value ?? 0;
  return (depthBelowNape) => {
    const section = sectionAt(depthBelowNape);
    const share = chestShare(bust - depthBelowNape, bust);
    return "frontDepth" in section && share < 1 ? { ...section, frontDepth: mm(section.frontDepth * share) } : section;
  };
}

/** Depth of the chest above the bust as a share of the depth at the bust: all of it there, six tenths at the neck. A judgement. */
const chestShare = (above: number, bust: number): number =>
  above <= 0 ? 1 : 1 - 0.4 * Math.sin((Math.min(1, above / bust) * Math.PI) / 2) ** 1.5;
