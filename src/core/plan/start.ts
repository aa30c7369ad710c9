import type { QuarterReadings } from "../body/levelReadings";
import type { Pad } from "../padding/pad";
import type { FirstLayer } from "../padding/paddedTape";

/** What already lies on the form, and by how much the tape reads beyond the simulation of it, by level from the bust down. */
export interface Start {
  readonly pinned: readonly Pad[];
  readonly offsets: readonly QuarterReadings[];
  readonly firstLayer: FirstLayer;
  /** Ids that pieces on the form already have. */
  readonly takenIds: readonly string[];
}
