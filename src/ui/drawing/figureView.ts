import type { QuarterLengths } from "../../core/geometry/outline";
import { pictureWords } from "../../text/pictures";

/**
 * The three ways to look at a figure. From the front the wearer's left is on the right of the page, from the back on
 * the left; from her left side the front is on the left of the page.
 */
export const figureViews = ["front", "back", "side"] as const;
export type FigureView = (typeof figureViews)[number];

export const viewWords: { readonly [view in FigureView]: string } = {
  front: pictureWords.frontView,
  back: pictureWords.backView,
  side: pictureWords.sideView,
};

/** How far to the right of the page a place in the level plane lies (x to the wearer's left, y to the front). */
export const acrossPage = (view: FigureView, x: number, y: number): number =>
  view === "front" ? x : view === "back" ? -x : -y;

/** The part of a section that faces the reader, as signed distances along the surface from centre front. */
export function facingStretch(
  view: FigureView,
  quarters: QuarterLengths,
): { readonly from: number; readonly to: number } {
  const { leftFront, rightFront, leftBack, rightBack } = quarters;
  switch (view) {
    case "front":
      return { from: -rightFront, to: leftFront };
    case "back":
      return { from: leftFront, to: leftFront + leftBack + rightBack };
    case "side":
      return { from: 0, to: leftFront + leftBack };
  }
}
