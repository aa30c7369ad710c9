import type { Section } from "../body/section";
import type { ApexReadings } from "../body/heightReadings";
import type { QuarterReadings } from "../body/levelReadings";
import type { LevelName } from "../body/vocabulary";
import type { HeightCurve } from "../geometry/heightCurve";
import type { Outline } from "../geometry/outline";
import type { LayerThickness } from "./sideLevel";

/** Everything the shaping starts from: the bare form, what already lies on it, and what the tape is to read at each level. */
export interface ShapingProblem {
  /** From the top down. */
  readonly levels: readonly ShapingLevel[];
  /** The bare form at any depth below the nape. */
  readonly sectionAt: (depthBelowNape: number) => Section;
  /** How much the body's tape would read beyond the bare form's between the lines, in front and behind (mm): a wish, not a target. */
  readonly gainAt: { readonly front: HeightCurve; readonly back: HeightCurve };
  readonly apex: ApexReadings;
  /** Whether a bra with cups is worn, which cup pads can fill. */
  readonly hasCups: boolean;
  readonly layer: LayerThickness;
}

export interface ShapingLevel {
  readonly name: LevelName;
  readonly depth: number;
  readonly outline: Outline;
  readonly target: QuarterReadings;
  /** What the tape reads beyond the simulation (mm). */
  readonly offset: QuarterReadings;
  /** Thickness of what is pinned, at each point of the outline (mm). */
  readonly pinned: Float64Array;
}
