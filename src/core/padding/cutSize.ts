import { type Outline, sectionOutline } from "../geometry/outline";
import { mm } from "../units";
import type { Pad } from "./pad";
import type { CutWidth, PieceCut, PieceRow } from "./piece";
import { addPad, anchorAlong } from "./stack";
import type { Surface } from "./surface";

/**
 * The size to cut each pad, in the order of pinning, on the surface it lies on: the bare form with every pad beneath it, those that are
 * pinned already first.
 * A stretch of the surface that turns through an angle a under padding of thickness t is longer by a·t (parallel curves),
 * so a width is the bare width plus the padding beneath summed over the turn of the outline.
 */
export function cutSizes(pads: readonly Pad[], surface: Surface, pinned: readonly Pad[] = []): readonly PieceCut[] {
  const all = [...pinned, ...pads];
  const rowsByDrop = new Map<number, Row>();
  // How many pads, from the first on, each row has felt so far: one that nobody asks for again feels no more.
  const felt = new Map<Row, number>();
  const rowAt = (drop: number, beneath: number): Row => {
    const row = rowsByDrop.get(drop) ?? newRow(drop, surface);
    rowsByDrop.set(drop, row);
    for (const pad of all.slice(felt.get(row) ?? 0, beneath)) addPad(row.beneath, pad, row);
    felt.set(row, beneath);
    return row;
  };
  return pads.map((pad, i) =>
    cutOf(
      pad,
      measuredRows(pad).map((row) => measure(row, pad, rowAt(row.drop, pinned.length + i))),
    ),
  );
}

interface Row {
  readonly drop: number;
  readonly outline: Outline;
  readonly turn: Float64Array;
  readonly beneath: Float64Array;
}

/** Points in each eighth of the outline: a cut is wanted to the millimetre, not finer. */
const cutPoints = 8;

function newRow(drop: number, surface: Surface): Row {
  const outline = sectionOutline(surface.sectionAt(drop), cutPoints);
  const { count, normalX, normalY } = outline;
  const turn = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % count;
    const cross =
      (normalX[i] as number) * (normalY[next] as number) - (normalY[i] as number) * (normalX[next] as number);
    const dot = (normalX[i] as number) * (normalX[next] as number) + (normalY[i] as number) * (normalY[next] as number);
    turn[i] = Math.abs(Math.atan2(cross, dot));
  }
  return { drop, outline, turn, beneath: new Float64Array(count) };
}

/** A row of a pad measured on its surface: widths to each side of the centre line, and how far out the centre line lies. */
interface MeasuredRow {
  readonly drop: number;
  readonly left: number;
  readonly right: number;
  readonly whole: number;
  readonly out: number;
}

function measure(row: PieceRow, pad: Pad, at: Row): MeasuredRow {
  const centre = centreAlong(pad, row, at.outline);
  const zero = anchorAlong(pad, at.outline.quarters);
  const right = stretch(at, zero + row.start, centre);
  const left = stretch(at, centre, zero + row.end);
  return { drop: row.drop, left, right, whole: left + right, out: distanceOut(at, centre) };
}

/** Where a pad's centre line runs on the bare surface: centre front, centre back, a side seam, or the middle of a disc. */
function centreAlong(pad: Pad, row: PieceRow, { quarters }: Outline): number {
  switch (pad.zone) {
    case "round":
    case "front":
      return 0;
    case "back":
      return quarters.leftFront + quarters.leftBack;
    case "leftSide":
      return quarters.leftFront;
    case "rightSide":
      return -quarters.rightFront;
    case "leftCup":
    case "rightCup":
      return (row.start + row.end) / 2;
  }
}

/** The length of the surface over a stretch of the bare outline (mm); negative if the stretch runs backwards. */
function stretch(row: Row, from: number, to: number): number {
  if (to < from) return -stretch(row, to, from);
  const { outline, turn, beneath } = row;
  const { count, along, quarters } = outline;
  const girth = quarters.leftFront + quarters.leftBack + quarters.rightFront + quarters.rightBack;
  let added = 0;
  for (let i = 0; i < count; i++) {
    const next = (i + 1) % count;
    const start = along[i] as number;
    const end = next === 0 ? (along[0] as number) + girth : (along[next] as number);
    const mean = ((beneath[i] as number) + (beneath[next] as number)) / 2;
    const shared = overlap(from, to, start, end) + overlap(from, to, start + girth, end + girth);
    if (shared > 0) added += (mean * (turn[i] as number) * shared) / (end - start);
  }
  return to - from + added;
}

const overlap = (from: number, to: number, start: number, end: number): number =>
  Math.max(0, Math.min(to, end) - Math.max(from, start));

/** How far the padded surface lies from the form's axis at a place, for the length of a piece from top to bottom. */
function distanceOut({ outline, beneath }: Row, along: number): number {
  const { count, quarters } = outline;
  const half = quarters.leftFront + quarters.leftBack;
  const held = along >= half ? along - 2 * half : along;
  let nearest = 0;
  for (let i = 1; i < count; i++) {
    if (Math.abs((outline.along[i] as number) - held) < Math.abs((outline.along[nearest] as number) - held))
      nearest = i;
  }
  return Math.hypot(outline.x[nearest] as number, outline.y[nearest] as number) + (beneath[nearest] as number);
}

const isDisc = ({ zone }: Pad): boolean => zone === "leftCup" || zone === "rightCup";

/** A disc is measured across its middle, every other pad at each of its rows. */
function measuredRows(pad: Pad): readonly PieceRow[] {
  const middle = Math.floor(pad.rows.length / 2);
  return isDisc(pad) ? pad.rows.slice(middle, middle + 1) : pad.rows;
}

function cutOf(pad: Pad, rows: readonly MeasuredRow[]): PieceCut {
  if (isDisc(pad)) {
    return { shape: "disc", diameter: mm(Math.max(...rows.map((row) => row.whole))) };
  }
  let below = 0;
  const widths = rows.map((row, i): CutWidth => {
    const above = rows[i - 1];
    if (above !== undefined) below += Math.hypot(row.drop - above.drop, row.out - above.out);
    return { belowTop: mm(below), left: mm(row.left), right: mm(row.right) };
  });
  if (pad.zone !== "round") return { shape: "panel", height: mm(below), widths };
  return { shape: "strip", length: mm(Math.max(...rows.map((row) => row.whole))), width: mm(below), widths };
}

/** The batting a cut takes (mm²), all plies, as the rectangle it is cut from. */
export function cutArea(cut: PieceCut, plies: number): number {
  switch (cut.shape) {
    case "disc":
      return plies * cut.diameter * cut.diameter;
    case "strip":
      return plies * cut.length * cut.width;
    case "panel":
      return (
        plies *
        cut.height *
        (Math.max(...cut.widths.map((width) => width.left)) + Math.max(...cut.widths.map((width) => width.right)))
      );
  }
}
