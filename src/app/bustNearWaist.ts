import { belowNape } from "../core/body/linePlace";
import type { Measurements } from "../core/body/measurements";
import type { MeasurementProblem } from "../core/body/plausibility";
import type { LevelName, MeasurementName } from "../core/body/vocabulary";
import { mm } from "../core/units";

/** A bust line is seldom less than this above the waistline, seated or with a low apex (mm). A judgement. */
const leastBustToWaist = 80;

/** A bust line read so near the waistline that a height typed at the wrong line is likelier: asked about, and no hindrance. */
export function bustNearWaist(body: Measurements): readonly MeasurementProblem[] {
  const [bust, waist] = [belowNape(body, "bust"), belowNape(body, "waist")];
  if (bust === undefined || waist === undefined) return [];
  const gap = waist - bust;
  if (gap <= 0 || gap >= leastBustToWaist) return [];
  const names = [placeName(body, "bust"), placeName(body, "waist")];
  const expected = { least: mm(leastBustToWaist), most: mm(leastBustToWaist) };
  return [{ whose: "body", severity: "pleaseCheck", code: "linesClose", names, got: mm(gap), expected }];
}

const placeName = (body: Measurements, level: LevelName): MeasurementName =>
  body[`${level}BelowNape`] === undefined ? `${level}Height` : `${level}BelowNape`;
