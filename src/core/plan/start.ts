import type { QuarterReadings } from "../body/levelReadings";
import type { Laid } from "../padding/layerThickness";
import type { LayerThickness } from "../padding/sideLevel";

/** What already lies on the form, and by how much the tape reads beyond the simulation of it, by level from the bust down. */
export interface Start {
  readonly pinned: readonly Laid[];
  readonly offsets: readonly QuarterReadings[];
  readonly layer: LayerThickness;
  /** Ids that pieces on the form already have. */
  readonly takenIds: readonly string[];
}
