import type { FigureView } from "../figureView";
import type { PicturePoint } from "../picturePoint";

/**
 * How a tape is led for one measurement: from which side it is seen, the tape's line where it shows and where the
 * figure hides it, lines that run straight through the air, and the landmarks with their words. Places are on the page.
 */
export interface TapeRoute {
  readonly view: FigureView;
  readonly shot: "whole" | "torso" | "shoulders" | "arm";
  readonly tapes: readonly (readonly PicturePoint[])[];
  readonly hidden: readonly (readonly PicturePoint[])[];
  /** Measured through the air between two places, with boards or a ruler to help. */
  readonly straight: readonly {
    readonly from: PicturePoint;
    readonly to: PicturePoint;
    readonly helper: readonly PicturePoint[];
  }[];
  readonly landmarks: readonly Landmark[];
  /** Side seams, centre lines or a level to show besides. */
  readonly guides: readonly { readonly role: "seam" | "centre"; readonly line: readonly PicturePoint[] }[];
}

export interface Landmark {
  readonly place: PicturePoint;
  /** Empty where its twin on the other side is named. */
  readonly words: string;
}

export const plainRoute: TapeRoute = {
  view: "front",
  shot: "torso",
  tapes: [],
  hidden: [],
  straight: [],
  landmarks: [],
  guides: [],
};
