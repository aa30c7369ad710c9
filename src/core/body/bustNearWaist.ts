import type { HeightProblem } from "./heightProblems";
import { belowNape } from "./linePlace";
import type { Measurements } from "./measurements";
import type { LevelName, MeasurementName } from "./vocabulary";
import { mm } from "../units";

/** A bust line is seldom less than this above the waistline, seated or with a low apex (mm). A judgement. */
const leastBustToWaist = 80;

/** A bust line read so near the waistline that a height typed at the wrong line is likelier: asked about, and no hindrance. */
export function bustNearWaist(body: Measurements): readonly HeightProblem[] {
  const [bust, waist] = [belowNape(body, "bust"), belowNape(body, "waist")];
  if (bust === undefined || waist === undefined) return [];
  const gap = waist - bust;
  if (gap <= 0 || gap >= leastBustToWaist) return [];
  const names = [placeName(body, "bust"), placeName(body, "waist")];
  const expected = { least: mm(leastBustToWaist), most: mm(leastBustToWaist) };
  return [{ severity: "pleaseCheck", code: "linesClose", names, got: mm(gap), expected }];
}

const placeName = (body: Measurements, level: LevelName): MeasurementName =>
  body[`${level}BelowNape`] === undefined ? `${level}Height` : `${level}BelowNape`;
