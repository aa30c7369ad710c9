import { type LevelName, mapLevels } from "../../../core/body/vocabulary";
import { reachOf } from "../../../core/geometry/support";
import type { PlannedLevel } from "../../../core/plan/plan";
import { type TorsoShape, torsoShape } from "./torsoShape";

/** The bare form of a plan as it is drawn: at the person's level lines, from the sections the plan stands on. */
export function formTorso(levels: readonly PlannedLevel[]): TorsoShape {
  return torsoShape(
    mapLevels((name) => {
      const { drop, formSection } = planned(levels, name);
      const { left, right, front, back } = reachOf(formSection);
      return { depthBelowNape: drop.value, half: (left + right) / 2, front, back };
    }),
  );
}

function planned(levels: readonly PlannedLevel[], name: LevelName): PlannedLevel {
  const level = levels.find((item) => item.name === name);
  if (level === undefined) throw new Error(`Broken promise in the drawings: a plan without the level ${name}`);
  return level;
}
