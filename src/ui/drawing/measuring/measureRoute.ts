import {
  type LengthName,
  type LevelName,
  type LevelReadingName,
  levelNames,
  levelReadingNames,
  type MeasurementName,
} from "../../../core/body/vocabulary";
import type { FigureShape } from "./figureShape";
import { lengthRoute } from "./lengthRoute";
import { levelRoute } from "./levelRoute";
import type { TapeRoute } from "./tapeRoute";

/** How the tape is led for a measurement on a figure: round or across a level, or along one of the lengths. */
export function measureRoute(name: MeasurementName, shape: FigureShape): TapeRoute {
  const level = levelOf(name);
  return level === null ? lengthRoute(name as LengthName, shape) : levelRoute(level.level, level.reading, shape);
}

/** Which level and reading a name is made of, or null for a length. */
export function levelOf(
  name: MeasurementName,
): { readonly level: LevelName; readonly reading: LevelReadingName } | null {
  for (const level of levelNames) {
    const reading = levelReadingNames.find((item) => name === `${level}${item}`);
    if (reading !== undefined) return { level, reading };
  }
  return null;
}
