import { type ByLevel, levelNames, type MeasurementName } from "../../core/body/vocabulary";
import type { TapeReading } from "../../core/plan/plan";
import { readingName, tapeParts } from "../progress/padProgress";

/** What the tape should read (mm), under the names that readings are typed by. */
export const expectedReadings = (readings: ByLevel<TapeReading>): { readonly [name in MeasurementName]?: number } =>
  Object.fromEntries(
    levelNames.flatMap((level) => tapeParts.map((part) => [readingName(level, part), readings[level][part]])),
  );
