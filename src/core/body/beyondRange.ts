import { type Millimetres, mm } from "../units";
import type { LengthRange } from "./measurementFacts";
import type { MeasurementName } from "./vocabulary";

/** Something that readings say of a body or a form which lies beyond what was expected of it (mm), and which readings say it. */
export interface BeyondRange<Code extends string> {
  readonly code: Code;
  /** The one to measure again comes first. */
  readonly names: readonly MeasurementName[];
  readonly got: Millimetres;
  readonly expected: LengthRange;
}

/** Nothing where it lies from the least to the most, both included. */
export const beyondRange = <Code extends string>(
  code: Code,
  names: readonly MeasurementName[],
  got: number,
  least: number,
  most: number,
): readonly BeyondRange<Code>[] =>
  got >= least && got <= most ? [] : [{ code, names, got: mm(got), expected: { least: mm(least), most: mm(most) } }];
