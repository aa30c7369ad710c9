/**
 * The eight panels of a fitted cover, in order from center back over the wearer's right side, the front and the left side to
 * center back again, each between two seams. So the arc length from center front grows from one panel to the next and,
 * seen from outside, every panel's first seam is on the left.
 */
export const coverPanelNames = [
  "rightCenterBack",
  "rightSideBack",
  "rightSideFront",
  "rightCenterFront",
  "leftCenterFront",
  "leftSideFront",
  "leftSideBack",
  "leftCenterBack",
] as const;
export type CoverPanelName = (typeof coverPanelNames)[number];

export const coverSeamNames = [
  "centerBack",
  "rightBackPrincess",
  "rightSide",
  "rightFrontPrincess",
  "centerFront",
  "leftFrontPrincess",
  "leftSide",
  "leftBackPrincess",
] as const;
export type CoverSeamName = (typeof coverSeamNames)[number];

/** The seams on both edges of a panel, the first on the left as seen from outside. */
export interface PanelSeams {
  readonly first: CoverSeamName;
  readonly last: CoverSeamName;
}

export const panelSeams: { readonly [name in CoverPanelName]: PanelSeams } = {
  rightCenterBack: { first: "centerBack", last: "rightBackPrincess" },
  rightSideBack: { first: "rightBackPrincess", last: "rightSide" },
  rightSideFront: { first: "rightSide", last: "rightFrontPrincess" },
  rightCenterFront: { first: "rightFrontPrincess", last: "centerFront" },
  leftCenterFront: { first: "centerFront", last: "leftFrontPrincess" },
  leftSideFront: { first: "leftFrontPrincess", last: "leftSide" },
  leftSideBack: { first: "leftSide", last: "leftBackPrincess" },
  leftCenterBack: { first: "leftBackPrincess", last: "centerBack" },
};
