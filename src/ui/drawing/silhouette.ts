import type { SectionAt } from "../../core/body/torsoCurve";
import type { Laid } from "../../core/padding/layerThickness";
import type { PaddedSection } from "../../core/surface/paddedSection";
import { closeDepths, paddedSurface } from "../../core/surface/paddedSurface";
import { acrossPage, type FigureView } from "./figureView";
import { at, type PicturePoint } from "./scene";

/** A torso with its padding as a figure is drawn from it: level sections ten millimeters apart, from the top down. */
export function figureSections(
  bareAt: SectionAt,
  pieces: readonly Laid[],
  top: number,
  bottom: number,
): readonly PaddedSection[] {
  const surface = paddedSurface(bareAt, pieces, pointsPerEighth);
  return closeDepths(top, bottom, sectionStep).map((depth) => surface.at(depth));
}

const sectionStep = 10;
const pointsPerEighth = 6;

/** The two edges of the figure at each section, left and right on the page: x as the view says, y the depth below the nape. */
export function silhouette(
  sections: readonly PaddedSection[],
  view: FigureView,
): { readonly left: readonly PicturePoint[]; readonly right: readonly PicturePoint[] } {
  const edges = sections.map(({ depthBelowNape, points }) => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = 0; i < points.length; i += 2) {
      const across = acrossPage(view, points[i] as number, points[i + 1] as number);
      least = Math.min(least, across);
      most = Math.max(most, across);
    }
    return { left: at(least, depthBelowNape), right: at(most, depthBelowNape) };
  });
  return { left: edges.map(({ left }) => left), right: edges.map(({ right }) => right) };
}
