import type { QuarterReadings } from "../body/levelReadings";
import type { ByLevel } from "../body/vocabulary";
import type { Millimetres, Ratio } from "../units";
import type { TapeReadingName } from "./evidence";

/** A length as the readings leave it, with one standard deviation (mm). */
export interface PosteriorLength {
  readonly value: Millimetres;
  readonly standardDeviation: Millimetres;
}

/**
 * The compressed thickness of one layer of a batting under the tape: most probable value, one standard deviation, and
 * the interval that holds the truth nine times in ten (mm); and the share that each further layer of a stack loses.
 */
export interface PosteriorThickness {
  readonly layer: Millimetres;
  readonly standardDeviation: Millimetres;
  readonly least: Millimetres;
  readonly most: Millimetres;
  readonly stackCompression: Ratio;
  readonly stackCompressionDeviation: Ratio;
}

/**
 * What one level of the padded form reads, whether or not it was read, and what its bare form reads beyond what was
 * measured of it.
 */
export interface LevelPosterior {
  readonly quarters: { readonly [quarter in keyof QuarterReadings]: PosteriorLength };
  readonly girth: PosteriorLength;
  readonly frontArc: PosteriorLength;
  readonly backArc: PosteriorLength;
  readonly bare: QuarterReadings;
}

/** A reading so far from anything the padding could be that it is left out of the calibration until it is read again (mm). */
export interface Outlier {
  readonly name: TapeReadingName;
  readonly read: Millimetres;
  readonly expected: Millimetres;
}

/** All that is known after the readings so far. */
export interface Calibration {
  readonly outliers: readonly Outlier[];
  readonly building: PosteriorThickness;
  readonly finishing: PosteriorThickness;
  readonly levels: ByLevel<LevelPosterior>;
}
