import { armParts } from "../../core/arm/armParts";
import type { SoftArm } from "../../core/arm/softArm";
import { shoulderToApexEstimate } from "../../core/body/estimates";
import type { Measurements } from "../../core/body/measurements";
import { coverParts } from "../../core/cover/coverParts";
import { usualAllowances } from "../../core/cover/cuttingLine";
import type { FittedCover } from "../../core/cover/fittedCover";
import { lineLength, partFrame, partOutline, type PatternPart } from "../../core/pattern/patternPart";
import { type ClothPanel, type ClothRows, clothRows } from "../../core/supplies/clothRows";
import { type Millimetres, mm } from "../../core/units";
import { isCutFromPanels } from "../steps/makingSteps";
import type { CoverCloth as CoverKind } from "../../document/fitting";

/** What a cover and a soft arm take of one fabric: all that is cut laid on cloth of a width, and the lengths of seams (mm). */
export interface CoverCloth {
  readonly rows: ClothRows;
  /** What is laid, in the order that it is numbered: the panels around the form, then the parts of the arm. */
  readonly ids: readonly string[];
  /** How many of them are of the cover, of the arm; 0 of what is not made or is cut already. */
  readonly coverCount: number;
  readonly armCount: number;
  /** Whether the cover is cut from panels; a pulled knit is cut from three plain lengths, and pinned to the form. */
  readonly isFitted: boolean;
  /** Left above the bust line of every panel, to be traced on the form and trimmed. */
  readonly above: Millimetres;
  /** Every seam of the cover once, sewn or marked. */
  readonly seams: Millimetres;
  /** Every seam that is sewn: of the cover, unless there is none, and of the arm. */
  readonly sewn: Millimetres;
  /** The seam that a cover of woven cloth opens at; null where there is none. */
  readonly opening: Millimetres | null;
}

/** What is still to be cut. */
export interface ClothWish {
  readonly body: Measurements;
  readonly width: Millimetres;
  /** "none" too where the cover is cut already. */
  readonly cover: CoverKind;
  readonly arm: SoftArm | null;
}

/** Left beyond the shoulder where a panel is traced on the form (mm). Common practice, no source. */
const spared = 50;

export function coverCloth(cover: FittedCover, { body, width, cover: kind, arm }: ClothWish): CoverCloth {
  const above = aboveBust(body) + spared;
  const panels = coverParts(cover, usualAllowances).map((part) => grown(part, above));
  const ofCover = kind === "none" ? [] : isCutFromPanels(kind) ? panels : pulledPanels(cover, panels);
  const made = arm === null ? [] : armParts(arm).filter(({ name }) => clothParts.has(name));
  const ofArm = made.map(({ part }) => grown(part, 0));
  const edges = cover.panels.map(({ seams, seamLengths }) => ({
    seam: seams.first,
    length: seamLengths.first + above,
  }));
  const seams = edges.reduce((sum, { length }) => sum + length, 0);
  const opening = edges.find(({ seam }) => seam === "centerBack")?.length ?? 0;
  return {
    rows: clothRows([...ofCover, ...ofArm], width),
    ids: [...ofCover, ...ofArm].map(({ id }) => id),
    coverCount: ofCover.length,
    armCount: ofArm.length,
    isFitted: isCutFromPanels(kind),
    above: mm(above),
    seams: mm(seams),
    sewn: mm((kind === "none" ? 0 : seams) + seamsOf(made.map(({ part }) => part))),
    opening: kind === "woven" ? mm(opening) : null,
  };
}

/** What of an arm is cut from the fabric of its outside; the tab is cut from firmer cloth. */
const clothParts: ReadonlySet<string> = new Set(["upper", "under", "whole", "capDisc", "wristDisc"]);

/** The rectangle around a part as it is cut, with more at its top. */
function grown(part: PatternPart, above: number): ClothPanel {
  const { width, height } = partFrame(part);
  return { id: part.id, width, height: height + above };
}

/** On both sides of a length that is pinned to fit (mm). Common practice, no source. */
const pinnedAllowance = 25;

/** A pulled knit is one front and two backs, each as wide as its share of the largest girth, pulled in. */
function pulledPanels({ girths, cloth }: FittedCover, panels: readonly ClothPanel[]): readonly ClothPanel[] {
  const largest = Math.max(...Object.values(girths).map(({ girth }) => girth));
  const around = largest / (cloth.kind === "knit" ? 1 + cloth.stretch : 1);
  const height = Math.max(...panels.map((panel) => panel.height));
  return [0.5, 0.25, 0.25].map((share, i) => ({
    id: `pulled-${i + 1}`,
    width: share * around + 2 * pinnedAllowance,
    height,
  }));
}

/** Every seam of these parts once: of two edges that are sewn together the longer one. */
function seamsOf(parts: readonly PatternPart[]): number {
  const edges = parts.flatMap((part) => part.edges);
  const lengths = new Map(edges.map(({ id, points }) => [id, lineLength(points) as number]));
  return edges.reduce(
    (sum, { id, sewnTo }) => sum + (sewnTo === null ? 0 : Math.max(lengths.get(id) ?? 0, lengths.get(sewnTo) ?? 0) / 2),
    0,
  );
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
