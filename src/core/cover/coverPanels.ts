/**
 * The panels of a fitted cover, in order from center back over the wearer's right side, the front and the left side to center
 * back again, each between two seams. So the arc length from center front grows from one panel to the next and, seen from
 * outside, every panel's first seam is on the left. A side front is one panel, or two with a seam between them.
 */
export const coverPanelNames = [
  "rightCenterBack",
  "rightSideBack",
  "rightSideFront",
  "rightSideFrontOuter",
  "rightSideFrontInner",
  "rightCenterFront",
  "leftCenterFront",
  "leftSideFrontInner",
  "leftSideFrontOuter",
  "leftSideFront",
  "leftSideBack",
  "leftCenterBack",
] as const;
export type CoverPanelName = (typeof coverPanelNames)[number];

export const coverSeamNames = [
  "centerBack",
  "rightBackPrincess",
  "rightSide",
  "rightSideFrontSeam",
  "rightFrontPrincess",
  "centerFront",
  "leftFrontPrincess",
  "leftSideFrontSeam",
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
  rightSideFrontOuter: { first: "rightSide", last: "rightSideFrontSeam" },
  rightSideFrontInner: { first: "rightSideFrontSeam", last: "rightFrontPrincess" },
  rightCenterFront: { first: "rightFrontPrincess", last: "centerFront" },
  leftCenterFront: { first: "centerFront", last: "leftFrontPrincess" },
  leftSideFrontInner: { first: "leftFrontPrincess", last: "leftSideFrontSeam" },
  leftSideFrontOuter: { first: "leftSideFrontSeam", last: "leftSide" },
  leftSideFront: { first: "leftFrontPrincess", last: "leftSide" },
  leftSideBack: { first: "leftSide", last: "leftBackPrincess" },
  leftCenterBack: { first: "leftBackPrincess", last: "centerBack" },
};

/** Eight panels, or ten with the side fronts in two, in their order around. */
export const panelsAround = (hasSideFrontSeams: boolean): readonly CoverPanelName[] =>
  coverPanelNames.filter((name) => {
    const { first, last } = panelSeams[name];
    const isHalf = isSideFrontSeam(first) || isSideFrontSeam(last);
    const isWhole = name === "rightSideFront" || name === "leftSideFront";
    return hasSideFrontSeams ? !isWhole : !isHalf;
  });

/** The first seams of all panels around, which are all seams once. */
export const seamsAround = (hasSideFrontSeams: boolean): readonly CoverSeamName[] =>
  panelsAround(hasSideFrontSeams).map((name) => panelSeams[name].first);

const isSideFrontSeam = (seam: CoverSeamName): boolean => seam === "rightSideFrontSeam" || seam === "leftSideFrontSeam";
