import type { BattingRole } from "../material";
import { pinnableWidth } from "../tolerances";
import { mm } from "../units";
import type { Pad } from "./pad";
import type { PieceRow } from "./piece";
import type { Surface } from "./surface";

/**
 * A hill of padding over centre front or centre back, and its cutting into slabs by contours. At each row the hill is
 * highest on its centre line (the crown, left and right of it apart) and falls to nothing at the side seams as a
 * power of the cosine of the way round; a slab covers where the hill is higher than the slab's middle height. The trim
 * widens or narrows the slabs of one side at one height without another slab coming in.
 */
export interface Hill {
  readonly zone: "front" | "back";
  readonly left: HillSide;
  readonly right: HillSide;
}

export interface HillSide {
  readonly crown: (drop: number) => number;
  readonly trim: (drop: number) => number;
}

/** One slab of a hill: plies of one batting between two heights above the bare form (mm, compressed). */
export interface Slab {
  readonly batting: BattingRole;
  readonly plies: number;
  readonly from: number;
  readonly to: number;
}

/** The battings a stack is made of: pads within, and the single ply outside, which may be of another batting. */
export interface StackMaterial {
  readonly inner: { readonly batting: BattingRole; readonly layer: number };
  readonly outer: { readonly batting: BattingRole; readonly layer: number };
}

/** The slabs of a stack from the outermost inward: one single ply outside, then pads of several plies each. */
export function slabs({ inner, outer }: StackMaterial, pliesPerPad: number, upTo: number): readonly Slab[] {
  const stack: Slab[] = [{ batting: outer.batting, plies: 1, from: 0, to: outer.layer }];
  while (stack.length < mostSlabs && contourHeight(stack[stack.length - 1] as Slab) < upTo) {
    const from = (stack[stack.length - 1] as Slab).to;
    stack.push({ batting: inner.batting, plies: pliesPerPad, from, to: from + pliesPerPad * inner.layer });
  }
  return stack;
}

const mostSlabs = 40;

/** A slab covers where the hill is higher than this: its middle, so that the volume is right on average. */
export const contourHeight = (slab: Slab): number => (slab.from + slab.to) / 2;

/**
 * The width over which a pad is pulled thin at its edge (mm): three times its thickness, so that a tape runs over the edge
 * without bridging much, and no less than two fingers. Common practice gives no number: "pull, do not cut, the edge".
 */
export const featherFor = (thickness: number): number => Math.max(25, Math.min(60, 3 * thickness));

/** Which way round a back pad's rows are counted from centre front: over the left side, as the plan file does, or over the right. */
export type WayToBack = "overLeft" | "overRight";

/** Cuts a hill into pads, the slab with the highest contour (the smallest pad) first, as they are pinned. */
export const hillPads = (hill: Hill, surface: Surface, stack: readonly Slab[]): readonly Pad[] =>
  contours(hill, surface, stack).map((contour) => contourPad(contour, "overLeft"));

/** What a slab covers of a hill in one piece, before its rows are counted round from centre front. */
export interface Contour {
  readonly zone: Hill["zone"];
  readonly slab: Slab;
  readonly extents: readonly Extent[];
}

interface Extent {
  readonly drop: number;
  readonly left: number;
  readonly right: number;
  readonly centre: number;
}

export function contours(hill: Hill, surface: Surface, stack: readonly Slab[]): readonly Contour[] {
  const rows = surface.drops.map((drop, row) =>
    hillRow(hill, drop, surface.frontQuarter[row] as number, surface.backQuarter[row] as number),
  );
  const top = rows.reduce((highest, { left, right }) => Math.max(highest, left.crown, right.crown), 0);
  return [...stack].reverse().flatMap((slab) => {
    const height = contourHeight(slab);
    if (top <= height) return [];
    const extents = rows.map((row) => extentOf(row, height));
    return pinnableRuns(extents, (from, to) => tip(hill, surface, height, from, to)).map((run) => ({
      zone: hill.zone,
      slab,
      extents: run,
    }));
  });
}

export function contourPad({ zone, slab, extents }: Contour, way: WayToBack): Pad {
  const thickness = slab.to - slab.from;
  return {
    zone,
    batting: slab.batting,
    plies: slab.plies,
    thickness: mm(thickness),
    feather: mm(featherFor(thickness)),
    rows: extents.map(({ drop, left, right, centre }): PieceRow => {
      const from = way === "overLeft" ? centre : -centre;
      return { drop: mm(drop), start: mm(from - right), end: mm(from + left) };
    }),
  };
}

/** A hill at one height: its sides in the order they come along the surface, and where its centre line lies. */
interface HillRow {
  readonly drop: number;
  readonly left: SideRow;
  readonly right: SideRow;
  readonly centre: number;
}

interface SideRow {
  readonly crown: number;
  readonly trim: number;
  readonly quarter: number;
}

function hillRow(hill: Hill, drop: number, front: number, back: number): HillRow {
  const quarter = hill.zone === "front" ? front : back;
  const side = ({ crown, trim }: HillSide): SideRow => ({ crown: crown(drop), trim: trim(drop), quarter });
  const [left, right] = [side(hill.left), side(hill.right)];
  // Seen from centre back, the wearer's left lies the other way along the surface.
  return hill.zone === "front"
    ? { drop, left, right, centre: 0 }
    : { drop, left: right, right: left, centre: front + back };
}

const extentOf = ({ drop, left, right, centre }: HillRow, height: number): Extent => ({
  drop,
  left: sideExtent(left, height),
  right: sideExtent(right, height),
  centre,
});

/**
 * A section moved forward by u stands out by u·cos θ (its support function), so the first power would be the shape of a
 * body that is only deeper. A little more keeps the pads clear of the side seam, where a tape would bridge to the other half.
 */
const hillPower = 1.1;

/** How far a contour runs from the centre line to one side: where the hill has fallen to the height. */
function sideExtent({ crown, trim, quarter }: SideRow, height: number): number {
  if (crown <= height) return 0;
  const way = (2 / Math.PI) * Math.acos((height / crown) ** (1 / hillPower));
  return quarter * Math.min(furthestShare, way * (1 + trim));
}

/** A front or back pad stops short of the side seam by this share of the quarter, so that the seam stays where the form has it. */
const furthestShare = 0.97;

/** Runs of rows wide enough to pin, each drawn out to where the width has shrunk to the narrowest; runs too short are left out. */
function pinnableRuns(
  extents: readonly Extent[],
  tipBetween: (wide: Extent, narrow: Extent) => Extent,
): readonly (readonly Extent[])[] {
  const isWide = (extent: Extent | undefined) => extent !== undefined && extent.left + extent.right >= pinnableWidth;
  const runs: Extent[][] = [];
  for (const [i, extent] of extents.entries()) {
    if (!isWide(extent)) continue;
    const before = extents[i - 1];
    const after = extents[i + 1];
    if (!isWide(before)) runs.push(before === undefined ? [] : clear(tipBetween(extent, before), extent));
    const run = runs[runs.length - 1] as Extent[];
    run.push(extent);
    if (!isWide(after) && after !== undefined) run.push(...clear(tipBetween(extent, after), extent));
  }
  return runs.filter((run) => lengthOf(run) >= pinnableWidth);
}

/** A tip on top of the row it grew from would be no row of its own. */
const clear = (tip: Extent, row: Extent): Extent[] => (Math.abs(tip.drop - row.drop) < leastRowGap ? [] : [tip]);

/** Rows closer than this (mm) draw the same line. */
const leastRowGap = 0.5;

const lengthOf = (run: readonly Extent[]): number => {
  const [first, last] = [run[0], run[run.length - 1]];
  return first === undefined || last === undefined ? 0 : last.drop - first.drop;
};

/** Between a row that is wide enough and one that is not, the place where the slab is just wide enough, by halving. */
function tip(hill: Hill, surface: Surface, height: number, wide: Extent, narrow: Extent): Extent {
  const { drops, frontQuarter, backQuarter } = surface;
  const [inner, outer] = [drops.indexOf(wide.drop), drops.indexOf(narrow.drop)];
  const at = (share: number): Extent =>
    extentOf(
      hillRow(
        hill,
        between(drops, inner, outer, share),
        between(frontQuarter, inner, outer, share),
        between(backQuarter, inner, outer, share),
      ),
      height,
    );
  let found = wide;
  let [inside, outside] = [0, 1];
  for (let step = 0; step < tipSteps; step++) {
    const middle = (inside + outside) / 2;
    const tried = at(middle);
    if (tried.left + tried.right >= pinnableWidth) {
      inside = middle;
      found = tried;
    } else outside = middle;
  }
  return found;
}

/** Rows lie at most 20 mm apart: halved so often, a tip is found to a tenth of a millimetre. */
const tipSteps = 8;

const between = (values: readonly number[], inner: number, outer: number, share: number): number =>
  (values[inner] as number) + ((values[outer] as number) - (values[inner] as number)) * share;
