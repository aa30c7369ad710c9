import { type Bin, MaxRectsPacker, PACKING_LOGIC, Rectangle } from "maxrects-packer/dist/maxrects-packer.mjs";
import { type FlatPoint, partFrame, partOutline, type PatternPart } from "../../core/pattern/patternPart";
import { type BattingGood, boughtLength } from "../../core/supplies/goods";
import { type Millimetres, mm, type Ratio, ratio } from "../../core/units";

/** One layer to cut, and what it is called on the picture. */
export interface ShapeToLay {
  readonly id: string;
  readonly label: string;
  readonly part: PatternPart;
}

/** A layer where it lies: its outline on the batting (mm), x across the width, y along the length, both from one corner. */
export interface LaidShape {
  readonly id: string;
  readonly label: string;
  readonly outline: readonly { readonly x: number; readonly y: number }[];
  readonly isTurned: boolean;
}

export interface BattingSheet {
  readonly width: Millimetres;
  readonly length: Millimetres;
  readonly shapes: readonly LaidShape[];
  /** The largest whole rectangle that nothing lies on, or null where hardly anything is left. */
  readonly left: Rect | null;
}

interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Every layer laid on a length of a roll or on packets; `tooLarge` are shapes that no sheet of it holds, whichever way they are turned. */
export interface BattingLayout {
  readonly good: BattingGood;
  readonly sheets: readonly BattingSheet[];
  readonly tooLarge: readonly ShapeToLay[];
  /** How much of what is bought the shapes themselves take. */
  readonly used: Ratio;
}

/** Between two shapes, for the scissors (mm). Common practice, no source. */
export const layingGap = 10;

/**
 * Lays shapes on a roll or on packets, each as the rectangle around it, lengthwise or across: batting has no grain. Of several ways
 * to lay them the one that needs the fewest packets, or the least length of a roll, is kept. The length of a roll is what is
 * bought in that unit.
 */
export function battingLayout(
  shapes: readonly ShapeToLay[],
  good: BattingGood,
  unit: Parameters<typeof boughtLength>[1],
): BattingLayout {
  const fits = ({ part }: ShapeToLay) => {
    const { width, height } = partFrame(part);
    return good.kind === "roll"
      ? Math.min(width, height) <= good.width
      : Math.max(width, height) <= Math.max(good.width, good.length) &&
          Math.min(width, height) <= Math.min(good.width, good.length);
  };
  const laid = shapes.filter(fits);
  const bins = laid.length === 0 ? [] : good.kind === "packet" ? packetBins(laid, good) : [rollBin(laid, good)];
  const sheets = bins.map((bin): BattingSheet => {
    const length = good.kind === "packet" ? good.length : boughtLength(usedLength(bin), unit);
    return { width: good.width, length, shapes: bin.rects.map(laidShape), left: largestLeft(bin, good.width, length) };
  });
  const bought = sheets.reduce((sum, { width, length }) => sum + width * length, 0);
  const taken = laid.reduce((sum, { part }) => sum + area(partOutline(part)), 0);
  return {
    good,
    sheets,
    tooLarge: shapes.filter((shape) => !fits(shape)),
    used: ratio(bought === 0 ? 0 : taken / bought),
  };
}

type Laid = Rectangle & { readonly data: ShapeToLay };

const logics = [PACKING_LOGIC.MAX_AREA, PACKING_LOGIC.MAX_EDGE, PACKING_LOGIC.FILL_WIDTH] as const;

/** The bins that one way of laying fills. */
function pack(
  shapes: readonly ShapeToLay[],
  width: number,
  length: number,
  logic: PACKING_LOGIC,
): readonly Bin<Laid>[] {
  const packer = new MaxRectsPacker<Laid>(width, length, layingGap, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: true,
    logic,
  });
  packer.addArray(
    shapes.map((shape) => {
      const frame = partFrame(shape.part);
      const rectangle = new Rectangle(frame.width, frame.height, 0, 0, false, true);
      rectangle.data = shape;
      return rectangle as Laid;
    }),
  );
  return packer.bins as readonly Bin<Laid>[];
}

function packetBins(
  shapes: readonly ShapeToLay[],
  { width, length }: Extract<BattingGood, { readonly kind: "packet" }>,
): readonly Bin<Laid>[] {
  return logics
    .map((logic) => pack(shapes, width, length, logic))
    .reduce((best, bins) => (isBetter(bins, best) ? bins : best));
}

/** Fewer packets; of as many, the one with less on its last. */
const isBetter = (one: readonly Bin<Laid>[], other: readonly Bin<Laid>[]): boolean =>
  one.length === other.length
    ? usedLength(one.at(-1) as Bin<Laid>) < usedLength(other.at(-1) as Bin<Laid>)
    : one.length < other.length;

/** A search for the shortest length ends when it is known this well (mm), or after so many tries. */
const searchedTo = 5;
const mostTries = 24;

/** Without a limit, then on ever shorter lengths, halving what is not known yet: the packer lays better when room is scarce. */
function rollBin(shapes: readonly ShapeToLay[], { width }: Extract<BattingGood, { readonly kind: "roll" }>): Bin<Laid> {
  const sides = shapes.map(({ part }) => partFrame(part));
  const endless = sides.reduce((sum, side) => sum + Math.max(side.width, side.height) + layingGap, 0);
  const least = Math.max(
    sides.reduce((sum, side) => sum + side.width * side.height, 0) / width,
    ...sides.map((side) => Math.min(side.width, side.height)),
  );
  const tried = logics.map((logic) => {
    let best = pack(shapes, width, endless, logic)[0] as Bin<Laid>;
    let [shortest, longest] = [least, usedLength(best)];
    for (let tries = 0; tries < mostTries && longest - shortest > searchedTo; tries++) {
      const length = (shortest + longest) / 2;
      const bins = sides.some((side) => !isWithin(side, width, length)) ? [] : pack(shapes, width, length, logic);
      if (bins.length === 1) {
        best = bins[0] as Bin<Laid>;
        longest = usedLength(best);
      } else shortest = length;
    }
    return best;
  });
  return tried.reduce((best, one) => (usedLength(one) < usedLength(best) ? one : best));
}

const isWithin = (side: { readonly width: number; readonly height: number }, width: number, length: number): boolean =>
  (side.width <= width && side.height <= length) || (side.height <= width && side.width <= length);

const usedLength = (bin: Bin<Laid>): number => Math.max(...bin.rects.map(({ y, height }) => y + height));

/** The outline of a shape, moved and turned into its rectangle: turned, what was to the right lies further along. */
function laidShape({ x, y, width, data }: Laid): LaidShape {
  const frame = partFrame(data.part);
  const isTurned = Math.abs(width - frame.width) > Math.abs(width - frame.height);
  const place = (point: FlatPoint) => {
    const [right, up] = [point.x - frame.left, point.y - frame.bottom];
    return isTurned ? { x: x + up, y: y + frame.width - right } : { x: x + right, y: y + up };
  };
  return { id: data.id, label: data.label, outline: partOutline(data.part).map(place), isTurned };
}

/** The free rectangles of a bin reach a gap beyond it, and to the length that was tried; of a roll more or less than that is bought. */
function largestLeft({ freeRects, maxHeight }: Bin<Laid>, across: Millimetres, length: Millimetres): Rect | null {
  const free = freeRects.map(({ x, y, width, height }): Rect => {
    const isAtEnd = y + height >= maxHeight;
    return { x, y, width: Math.min(width, across - x), height: isAtEnd ? length - y : height };
  });
  const size = (one: Rect): number => (Math.min(one.width, one.height) < leastLeft ? 0 : one.width * one.height);
  const largest = free.reduce<Rect | null>((best, one) => (best === null || size(one) > size(best) ? one : best), null);
  return largest === null || size(largest) === 0 ? null : largest;
}

/** A strip narrower than this (mm) is not called a rest. */
const leastLeft = 100;

const area = (outline: readonly FlatPoint[]): number =>
  Math.abs(
    outline.reduce((sum, { x, y }, i) => {
      const next = outline[(i + 1) % outline.length] as FlatPoint;
      return sum + x * next.y - next.x * y;
    }, 0) / 2,
  );

/** How much of a roll is bought (mm); 0 for packets. */
export const lengthOfRoll = ({ good, sheets }: BattingLayout): Millimetres =>
  mm(good.kind === "roll" ? sheets.reduce((sum, { length }) => sum + length, 0) : 0);
