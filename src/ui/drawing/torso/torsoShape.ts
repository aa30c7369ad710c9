import { type ByLevel, type LevelName, levelNames, mapLevels } from "../../../core/body/vocabulary";
import { type HeightCurve, heightCurve } from "../../../core/geometry/heightCurve";
import { reachOf } from "../../../core/geometry/support";
import type { PlannedLevel } from "../../../core/plan/plan";

/**
 * What a torso is drawn from: at each level its distance below the nape and how far its outline lies from the middle, to
 * the side, to the front and to the back (mm). A form is drawn from its own sections, so no two forms look alike.
 */
interface TorsoLevel {
  readonly depthBelowNape: number;
  readonly half: number;
  readonly front: number;
  readonly back: number;
}

/** A torso at any height below the nape (mm), from the bottom of its armhole to its hem. */
export interface TorsoShape {
  readonly levels: ByLevel<TorsoLevel>;
  readonly half: HeightCurve;
  readonly front: HeightCurve;
  readonly back: HeightCurve;
  /** Half the width of the neck, half that of the shoulders, and the heights of shoulder tip and armhole bottom. */
  readonly neckHalf: number;
  readonly shoulderHalf: number;
  readonly shoulderTip: number;
  readonly armholeBottom: number;
  readonly hem: number;
}

function torsoShape(levels: ByLevel<TorsoLevel>): TorsoShape {
  const { bust, underbust, fullHip } = levels;
  const armholeBottom = Math.min(205, bust.depthBelowNape - 24);
  const shoulderHalf = Math.min(190, Math.max(150, 0.72 * bust.half + 70));
  // A full bust swells below a sloping armhole; else the torso would look like a box.
  const armholeHalf = Math.min(
    0.97 * bust.half,
    (bust.half + 0.86 * shoulderHalf) / 2,
    0.9 * shoulderHalf + 0.04 * bust.half,
  );
  const hem = fullHip.depthBelowNape + 78;
  const depths = levelNames.map((name) => levels[name].depthBelowNape);
  const along = (part: "half" | "front" | "back") => levelNames.map((name) => levels[name][part]);
  const midway = (bust.depthBelowNape + underbust.depthBelowNape) / 2;
  return {
    levels,
    half: heightCurve([armholeBottom, ...depths, hem], [armholeHalf, ...along("half"), 0.985 * fullHip.half]),
    front: heightCurve(
      [pit.depth, chestDepth(bust), bust.depthBelowNape, midway, ...depths.slice(1), hem],
      [
        pit.forward,
        0.52 * bust.front + 22,
        bust.front,
        // The underside of a bust is round, and so is the curve that is drawn for one.
        underbust.front + 0.7 * (bust.front - underbust.front),
        ...along("front").slice(1),
        0.97 * fullHip.front,
      ],
    ),
    back: heightCurve(
      [0, chestDepth(bust), ...depths, hem],
      [napeBack, Math.max(1.05 * bust.back, 96), ...along("back"), 0.94 * fullHip.back],
    ),
    neckHalf: 58,
    shoulderHalf,
    shoulderTip: 52,
    armholeBottom,
    hem,
  };
}

/** Where the neck of a torso seen from the side meets the chest, and how far behind the middle its nape lies (mm). */
export const pit = { depth: 78, forward: 42 } as const;
export const napeBack = 58;

/** The chest and the shoulder blades, which must lie above the bust. */
const chestDepth = (bust: TorsoLevel): number => Math.min(150, (pit.depth + bust.depthBelowNape) / 2);

/** Heights down a torso, close enough for a smooth line. */
export const heightsDown = (from: number, to: number): readonly number[] => {
  const count = Math.max(2, Math.ceil((to - from) / 9));
  return Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);
};

/** The bare form of a plan as it is drawn: at the person's level lines, from the sections the plan stands on. */
export function formTorso(levels: readonly PlannedLevel[]): TorsoShape {
  return torsoShape(
    mapLevels((name) => {
      const { depthBelowNape, formSection } = planned(levels, name);
      const { left, right, front, back } = reachOf(formSection);
      return { depthBelowNape: depthBelowNape.value, half: (left + right) / 2, front, back };
    }),
  );
}

function planned(levels: readonly PlannedLevel[], name: LevelName): PlannedLevel {
  const level = levels.find((item) => item.name === name);
  if (level === undefined) throw new Error(`Broken promise in the drawings: a plan without the level ${name}`);
  return level;
}
