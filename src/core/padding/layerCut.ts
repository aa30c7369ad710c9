import type { LevelName } from "../body/vocabulary";
import type { Millimetres } from "../units";

/** Where an end of a layer lies: this far above or below the nearest level line, along the surface it lies on. */
export interface EndPlace {
  readonly level: LevelName;
  readonly distance: Millimetres;
  readonly side: "above" | "below";
}

/** The width of a cut where a level line crosses it: to the wearer's left and right of the anchor line, lying flat. */
export interface LineWidth {
  readonly level: LevelName;
  /** Below the top edge of the cut. */
  readonly belowTop: Millimetres;
  readonly left: Millimetres;
  readonly right: Millimetres;
}

/**
 * Darts or slits that let a flat cut follow the surface: so many, spread evenly, each taking up (or opening by) `width` at the
 * edge or line it starts from and running out over `depth` (mm).
 */
export interface Darts {
  readonly from: "top" | "bottom" | LevelName;
  readonly kind: "dart" | "slit";
  readonly count: number;
  readonly width: Millimetres;
  readonly depth: Millimetres;
}

/**
 * The size to cut one layer, lying flat, as the surface is that it lies on: the form with everything beneath it. A strip goes
 * all the way around with edges that meet: its widths are lengths to both sides of the anchor. A panel is cut once, open.
 * A disc is one layer of a cup pad, slit to its center. A bought pad is not cut.
 */
export type LayerCut =
  | {
      readonly shape: "strip" | "panel";
      readonly height: Millimetres;
      readonly top: EndPlace;
      readonly bottom: EndPlace;
      /** At the top and bottom edge, which cross no line. */
      readonly topWidth: Millimetres;
      readonly bottomWidth: Millimetres;
      readonly widths: readonly LineWidth[];
      readonly darts: readonly Darts[];
    }
  | { readonly shape: "disc"; readonly diameter: Millimetres }
  | { readonly shape: "bought" };
