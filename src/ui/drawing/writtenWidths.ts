import type { CutWidth, PieceCut } from "../../core/padding/piece";
import { mm } from "../../core/units";

/**
 * The widths a person needs in order to cut a piece, from its top edge to its lower edge: at both edges, wherever the
 * width turns from growing to shrinking or back, and as few more as keep a line drawn from one to the next near the
 * piece's own edge. The drawing and its description both tell this list. A disc has none, its diameter says it all.
 */
export function writtenWidths(cut: PieceCut): readonly CutWidth[] {
  const rows = outlineWidths(cut);
  const turns = sidesOf(rows).flatMap(turnsOf);
  const corners = [...new Set([0, ...turns, rows.length - 1])].filter((i) => i in rows).sort((a, b) => a - b);
  const between = corners.slice(1).flatMap((to, i) => fewestBetween(rows, corners[i] ?? to, to));
  return [...corners.slice(0, 1), ...between].flatMap((i) => rows[i] ?? []);
}

/** Every width of the outline, top to bottom. A strip or panel without stated widths is a plain rectangle. */
export function outlineWidths(cut: PieceCut): readonly CutWidth[] {
  if (cut.shape === "disc") return [];
  if (cut.widths.length > 1) return cut.widths;
  const [across, height] = cut.shape === "strip" ? [cut.length, cut.width] : [cut.height, cut.height];
  const half = mm(across / 2);
  return [mm(0), height].map((belowTop) => ({ belowTop, left: half, right: half }));
}

/** Both sides alike to a millimetre and a half: the piece can be cut on a fold along its centre line. */
export const isEven = (widths: readonly CutWidth[]): boolean =>
  widths.every(({ left, right }) => Math.abs(left - right) <= evenWithin);
const evenWithin = 3;

/** An even piece is written by its whole width, any other by its widths to both sides of the centre line. */
function sidesOf(rows: readonly CutWidth[]): readonly (readonly number[])[] {
  if (isEven(rows)) return [rows.map(({ left, right }) => left + right)];
  return [rows.map(({ left }) => left), rows.map(({ right }) => right)];
}

/** Where values turn, by more than a hand with scissors could show (mm). */
function turnsOf(values: readonly number[]): readonly number[] {
  const turns: number[] = [];
  let way = 0;
  let extreme = 0;
  for (const [i, value] of values.entries()) {
    const from = values[extreme] ?? value;
    if ((value - from) * way > 0) extreme = i;
    else if (Math.abs(value - from) > turnSeen) {
      if (way !== 0) turns.push(extreme);
      way = Math.sign(value - from);
      extreme = i;
    }
  }
  return turns;
}
const turnSeen = 4;

/** The fewest rows from one to another, the last among them, whose straight lines stay near the outline between. */
function fewestBetween(rows: readonly CutWidth[], from: number, to: number): readonly number[] {
  const ways: (readonly number[])[] = [[]];
  for (let end = from + 1; end <= to; end += 1) {
    const found = ways
      .map((way, i) => ({ way, start: from + i }))
      .filter(({ start }) => isNear(rows, start, end))
      .reduce((best, next) => (next.way.length < best.way.length ? next : best));
    ways.push([...found.way, end]);
  }
  return ways.at(-1) ?? [];
}

function isNear(rows: readonly CutWidth[], start: number, end: number): boolean {
  const [top, bottom] = [rows[start], rows[end]];
  if (top === undefined || bottom === undefined) return false;
  return rows
    .slice(start + 1, end)
    .every((row) => (["left", "right"] as const).every((side) => distance(row, top, bottom, side) <= lineNear));
}

/** How far a place on one side's edge lies from the straight line between two others. */
function distance(row: CutWidth, top: CutWidth, bottom: CutWidth, side: "left" | "right"): number {
  const [across, down] = [bottom[side] - top[side], bottom.belowTop - top.belowTop];
  const area = across * (row.belowTop - top.belowTop) - down * (row[side] - top[side]);
  return Math.abs(area) / Math.hypot(across, down);
}

/**
 * How far a line from width to width may run from the piece's edge (mm): as far as a blade strays in batting. What is written is
 * rounded to an eighth of an inch or half a centimetre and adds up to two millimetres.
 */
const lineNear = 4;
