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

/** Cuts a hill into pads, the slab with the highest contour (the smallest pad) first, as they are pinned. */
export function hillPads(hill: Hill, surface: Surface, stack: readonly Slab[]): readonly Pad[] {
  const rows = surface.drops.map((drop, row) =>
    hillRow(hill, drop, surface.frontQuarter[row] as number, surface.backQuarter[row] as number),
  );
  const top = rows.reduce((highest, { before, beyond }) => Math.max(highest, before.root, beyond.root), 0);
  return [...stack].reverse().flatMap((slab) => {
    const cut = hillRoot(contourHeight(slab));
    if (top <= cut) return [];
    const extents = rows.map((row) => extentOf(row, cut));
    const tipBetween = (wide: number, narrow: number) => tip(rows[wide] as HillRow, rows[narrow] as HillRow, cut);
    return pinnableRuns(extents, tipBetween).map((run) => slabPad(hill.zone, slab, run));
  });
}

function slabPad(zone: Hill["zone"], slab: Slab, extents: readonly Extent[]): Pad {
  const thickness = slab.to - slab.from;
  return {
    zone,
    batting: slab.batting,
    plies: slab.plies,
    thickness: mm(thickness),
    feather: mm(featherFor(thickness)),
    ...(zone === "back" ? { anchor: "centerBack" } : {}),
    rows: extents.map(
      ({ drop, before, beyond }): PieceRow => ({ drop: mm(drop), start: mm(-before), end: mm(beyond) }),
    ),
  };
}

/** What a slab covers in one row, to each side of the hill's center line in the order the sides come along the surface. */
interface Extent {
  readonly drop: number;
  readonly before: number;
  readonly beyond: number;
}

/** A hill at one height: the side that comes before its center line along the surface, and the side beyond it. */
interface HillRow {
  readonly drop: number;
  readonly before: SideRow;
  readonly beyond: SideRow;
}

interface SideRow {
  /** The root of the crown: see `hillRoot`. */
  readonly root: number;
  readonly trim: number;
  readonly quarter: number;
}

function hillRow(hill: Hill, drop: number, front: number, back: number): HillRow {
  const quarter = hill.zone === "front" ? front : back;
  const side = ({ crown, trim }: HillSide): SideRow => ({ root: hillRoot(crown(drop)), trim: trim(drop), quarter });
  const [left, right] = [side(hill.left), side(hill.right)];
  // The way along the surface comes to center front from the wearer's right, and to center back from the left.
  return hill.zone === "front" ? { drop, before: right, beyond: left } : { drop, before: left, beyond: right };
}

/** What a hill covers in one row above the height with this root. */
const extentOf = ({ drop, before, beyond }: HillRow, cut: number): Extent => ({
  drop,
  before: sideExtent(before.root, before.trim, before.quarter, cut),
  beyond: sideExtent(beyond.root, beyond.trim, beyond.quarter, cut),
});

/**
 * A section moved forward by u stands out by u·cos θ (its support function), so the first power would be the shape of a
 * body that is only deeper. A little more keeps the pads clear of the side seam, where a tape would bridge to the other half.
 */
const hillPower = 1.1;

/** A hill of crown c has fallen to height h where the cosine of the way is the root of h over the root of c. */
const hillRoot = (height: number): number => (height > 0 ? height ** (1 / hillPower) : 0);

/** How far a contour runs from the centre line to one side: where the hill has fallen to the height. */
function sideExtent(root: number, trim: number, quarter: number, cut: number): number {
  if (root <= cut) return 0;
  const way = (2 / Math.PI) * Math.acos(cut / root);
  return quarter * Math.min(furthestShare, way * (1 + trim));
}

/** A front or back pad stops short of the side seam by this share of the quarter, so that the seam stays where the form has it. */
const furthestShare = 0.97;

/** Runs of rows wide enough to pin, each drawn out to where the width has shrunk to the narrowest; runs too short are left out. */
function pinnableRuns(
  extents: readonly Extent[],
  tipBetween: (wide: number, narrow: number) => Extent,
): readonly (readonly Extent[])[] {
  const isWide = (extent: Extent | undefined) => extent !== undefined && extent.before + extent.beyond >= pinnableWidth;
  const runs: Extent[][] = [];
  for (const [i, extent] of extents.entries()) {
    if (!isWide(extent)) continue;
    const before = extents[i - 1];
    const after = extents[i + 1];
    if (!isWide(before)) runs.push(before === undefined ? [] : clear(tipBetween(i, i - 1), extent));
    const run = runs[runs.length - 1] as Extent[];
    run.push(extent);
    if (!isWide(after) && after !== undefined) run.push(...clear(tipBetween(i, i + 1), extent));
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

/**
 * Between a row that is wide enough and one that is not, the place where the slab is just wide enough, by halving. Rows lie so close that
 * the hill runs straight from one to the next.
 */
function tip(wide: HillRow, narrow: HillRow, cut: number): Extent {
  const between = (from: number, to: number, share: number) => from + (to - from) * share;
  const side = (from: SideRow, to: SideRow, share: number) =>
    sideExtent(
      between(from.root, to.root, share),
      between(from.trim, to.trim, share),
      between(from.quarter, to.quarter, share),
      cut,
    );
  let [inside, outside] = [0, 1];
  for (let step = 0; step < tipSteps; step++) {
    const middle = (inside + outside) / 2;
    const width = side(wide.before, narrow.before, middle) + side(wide.beyond, narrow.beyond, middle);
    if (width >= pinnableWidth) inside = middle;
    else outside = middle;
  }
  return {
    drop: between(wide.drop, narrow.drop, inside),
    before: side(wide.before, narrow.before, inside),
    beyond: side(wide.beyond, narrow.beyond, inside),
  };
}

/** Rows lie at most 16 mm apart: halved so often, a tip is found to a hundredth of a millimetre. */
const tipSteps = 10;
