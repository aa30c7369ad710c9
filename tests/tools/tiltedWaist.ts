import type { Measurements } from "../../src/core/body/measurements";
import { torsoReadings } from "../../src/core/body/levelReadings";
import { solveSection } from "../../src/core/body/solveSection";
import { torsoCurve } from "../../src/core/body/torsoCurve";
import { levelNames } from "../../src/core/body/vocabulary";
import { sectionOutline } from "../../src/core/geometry/outline";

/**
 * How much more (mm) a body reads along a plane through the middle of its waist that lies so far lower in front than in back than
 * it does level, point by point over its own curve.
 */
export function tiltedReads(body: Measurements): (tilt: number) => number {
  const { levels } = torsoReadings(body);
  const curve = torsoCurve(
    levelNames.map((name) => ({
      name,
      depthBelowNape: levels[name].depthBelowNape.value,
      section: solveSection(levels[name]),
    })),
  );
  const waist = levels.waist.depthBelowNape.value;
  const at = (depth: number) => sectionOutline(curve(depth), 24);
  const base = at(waist);
  const [front, back] = [Math.max(...base.y), Math.min(...base.y)];
  const length = (tilt: number): number => {
    const points = Array.from({ length: base.count }, (_, i): readonly [number, number, number] => {
      let [x, y, depth]: [number, number, number] = [base.x[i] as number, base.y[i] as number, waist];
      for (let round = 0; round < 3; round++) {
        depth = waist + (tilt * (y - (front + back) / 2)) / (front - back);
        const outline = at(depth);
        [x, y] = [outline.x[i] as number, outline.y[i] as number];
      }
      return [x, y, depth];
    });
    return points.reduce((sum, [x, y, depth], i) => {
      const [toX, toY, toDepth] = points[(i + 1) % points.length] as (typeof points)[number];
      return sum + Math.hypot(toX - x, toY - y, toDepth - depth);
    }, 0);
  };
  const level = length(0);
  return (tilt) => length(tilt) - level;
}
