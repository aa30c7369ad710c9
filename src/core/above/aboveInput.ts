import type { Measurements } from "../body/measurements";
import type { MadeLayers } from "./buildAbove";

/** What the builds above the bust are worked out from. Lengths in millimeters, depths straight below the nape. */
export interface AboveInput {
  readonly body: Measurements;
  /** The BARE form. Readings at a line that is the person's were taken on the person's line. */
  readonly form: Measurements;
  /** One layer of batting under a snug tape. */
  readonly layer: number;
  readonly added: AddedByPadding;
  /** How many layers lie on what was built already, by id: as many as hands have put there, whatever would fit. */
  readonly made: ReadonlyMap<string, MadeLayers>;
}

/**
 * What the padding of the levels adds above the bust: by how much longer the front half and the back half of the form read at a
 * depth with every piece pinned than bare.
 */
export interface AddedByPadding {
  readonly front: (depthBelowNape: number) => number;
  readonly back: (depthBelowNape: number) => number;
}

export const nothingAdded: AddedByPadding = { front: () => 0, back: () => 0 };

/** How thick padding lies that adds so much to a half, which turns through half a turn (parallel curves). */
export const meanThickness = (addedToHalf: number): number => addedToHalf / Math.PI;
