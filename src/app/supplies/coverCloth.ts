import { shoulderToApexEstimate } from "../../core/body/estimates";
import type { Measurements } from "../../core/body/measurements";
import { coverParts } from "../../core/cover/coverParts";
import { usualAllowances } from "../../core/cover/cuttingLine";
import type { FittedCover } from "../../core/cover/fittedCover";
import { lineLength, partFrame, partOutline, type PatternPart } from "../../core/pattern/patternPart";
import { type ClothRows, clothRows } from "../../core/supplies/clothRows";
import { type Millimetres, mm } from "../../core/units";

/** What a fitted cover takes: the panels laid on cloth of a width, and the lengths of its seams (mm). */
export interface CoverCloth {
  readonly rows: ClothRows;
  readonly parts: readonly PatternPart[];
  /** Left above the bust line of every panel, to be traced on the form and trimmed. */
  readonly above: Millimetres;
  /** Every seam once. */
  readonly seams: Millimetres;
  /** The seam that a cover of woven cloth opens at. */
  readonly opening: Millimetres;
}

/** Left beyond the shoulder where a panel is traced on the form (mm). Common practice, no source. */
const spared = 50;

export function coverCloth(cover: FittedCover, body: Measurements, clothWidth: Millimetres): CoverCloth {
  const parts = coverParts(cover, usualAllowances);
  const above = aboveBust(body) + spared;
  const panels = parts.map((part) => {
    const { width, height } = partFrame(part);
    return { id: part.id, width, height: height + above };
  });
  const edges = cover.panels.map(({ seams, seamLengths }) => ({
    seam: seams.first,
    length: seamLengths.first + above,
  }));
  return {
    rows: clothRows(panels, clothWidth),
    parts,
    above: mm(above),
    seams: mm(edges.reduce((sum, { length }) => sum + length, 0)),
    opening: mm(edges.find(({ seam }) => seam === "centerBack")?.length ?? 0),
  };
}

/** From the bust line up to the shoulder along the body: front and back are cut alike, the front is the longer. */
const aboveBust = ({ bustGirth, shoulderToApex, leftShoulderToApex, rightShoulderToApex }: Measurements): number =>
  Math.max(leftShoulderToApex ?? 0, rightShoulderToApex ?? 0, shoulderToApex ?? 0) ||
  shoulderToApexEstimate(bustGirth ?? 0).value;

/** Around the outline of a part (mm). */
export const aroundPart = (part: PatternPart): number => {
  const outline = partOutline(part);
  return lineLength([...outline, ...outline.slice(0, 1)]);
};
