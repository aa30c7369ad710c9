import { mapLevels, type QuarterReadings, torsoReadings, type TorsoReadings } from "../body/levelReadings";
import type { Measurements } from "../body/measurements";
import type { Reading } from "../body/reading";
import type { Section } from "../body/section";
import { solveSection } from "../body/solveSection";
import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import { formAtDrops } from "../form/formAtDrops";
import { sectionOutline } from "../geometry/outline";
import type { Batting } from "../material";
import type { SideWish } from "../padding/batch";
import type { Station } from "../padding/stack";
import { formSurface, type Surface } from "../padding/surface";
import { levelTarget, type Target } from "../padding/targets";
import { mm } from "../units";

export interface PlanInput {
  readonly body: Measurements;
  readonly form: Measurements;
  readonly batting: Batting;
  /** A second batting, usually thinner, that may finish the outside. */
  readonly finishingBatting?: Batting;
}

/** What every plan of one body on one form starts from, however much is pinned already: all of it at the body's drops. */
export interface Basis {
  readonly body: TorsoReadings;
  readonly drops: ByLevel<number>;
  readonly targets: ByLevel<Target>;
  readonly bodySections: ByLevel<Section>;
  readonly surface: Surface;
  readonly stations: readonly Station[];
  readonly sides: readonly SideWish[];
}

/** Works out the basis from measurements that have passed the checks for contradictions. */
export function basis({ body, form }: Pick<PlanInput, "body" | "form">): Basis {
  const torso = torsoReadings(body, form);
  const drops = mapLevels((name) => torso.levels[name].drop.value as number);
  const bare = formAtDrops(torsoReadings(form), drops);
  const targets = mapLevels((name) => levelTarget(torso.levels[name], bare[name]));
  const bodySections = mapLevels((name) => {
    const { frontArc, backArc } = targets[name].body;
    return solveSection({ ...torso.levels[name], frontArc, backArc });
  });
  const sections = levelNames.map((name) => targets[name].form.section);
  const dropList = levelNames.map((name) => drops[name]);
  return {
    body: torso,
    drops,
    targets,
    bodySections,
    surface: formSurface(dropList, sections),
    stations: sections.map((section, i) => ({
      drop: dropList[i] as number,
      outline: sectionOutline(section, tapePoints),
    })),
    sides: levelNames.map((name) => sideWish(torso, targets, bodySections, name)),
  };
}

/** Points in each eighth of the outline the tape is laid round: its chords are then short of the arc by less than 0.1 mm. */
const tapePoints = 24;

/** How far the body stands beyond the form at each side (mm), and how sure that is: half the spreads of both breadths. */
function sideWish(
  body: TorsoReadings,
  targets: ByLevel<Target>,
  sections: ByLevel<Section>,
  name: LevelName,
): SideWish {
  const { section, breadth } = targets[name].form;
  const spread = (reading: Reading) => (reading.kind === "estimated" ? reading.spread / 2 : 0);
  return {
    left: sections[name].leftBreadth - section.leftBreadth,
    right: sections[name].rightBreadth - section.rightBreadth,
    spread: Math.hypot(spread(body.levels[name].breadth), spread(breadth)),
  };
}

/** No quarter reads anything beyond the simulation. */
export const noOffset: QuarterReadings = { leftFront: mm(0), rightFront: mm(0), leftBack: mm(0), rightBack: mm(0) };
