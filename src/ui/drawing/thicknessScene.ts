import { pictureWords } from "../../text/pictures";
import { inchMm, type LengthWriter } from "../../text/lengthWriter";
import { circle, closedPath, segment } from "./pathText";
import { at, type Label, label, type Mark, mark, type Scene } from "./scene";
import { pictureTexts } from "../../text/pictureTexts";

/**
 * What one layer is taken to add, against the readings that say so: the estimate from before as a hatched band, each
 * reading as a dot with its bar, and the estimate now as a firm line with its band at the right. Thicknesses in mm.
 */
export interface PosteriorLength {
  readonly middle: number;
  readonly low: number;
  readonly high: number;
}

export interface ThicknessReading extends PosteriorLength {
  /** What was read: the level or the piece. */
  readonly name: string;
}

export interface ThicknessPicture {
  readonly before: PosteriorLength;
  readonly now: PosteriorLength;
  readonly readings: readonly ThicknessReading[];
  readonly lengths: LengthWriter;
}

export function thicknessScene(picture: ThicknessPicture): Scene {
  const { before, now, readings, lengths } = picture;
  const highest = Math.max(before.high, now.high, ...readings.map(({ middle }) => middle)) * 1.12;
  const height = (thickness: number): number =>
    floor - ((floor - top) * Math.min(Math.max(thickness, 0), highest)) / highest;
  const ticks = axisTicks(highest, lengths);
  const parts = [
    intervalParts(before, now, height, lengths),
    axisParts(ticks, height, lengths),
    readingParts(readings, height),
  ];
  return {
    title: pictureWords.layerAdds,
    description: describe(picture),
    frame: { x: 0, y: 0, width, height: floor + 40 },
    textSize: 15,
    marks: parts.flatMap(({ marks }) => marks),
    labels: parts.flatMap(({ labels }) => labels),
  };
}

const width = 420;
const [left, right, top, floor] = [74, 324, 16, 210] as const;

interface Parts {
  readonly marks: readonly Mark[];
  readonly labels: readonly Label[];
}
type Height = (thickness: number) => number;

function intervalParts(before: PosteriorLength, now: PosteriorLength, height: Height, lengths: LengthWriter): Parts {
  const box = (from: number, to: number, { high, low }: PosteriorLength): string =>
    closedPath([at(from, height(high)), at(to, height(high)), at(to, height(low)), at(from, height(low))]);
  return {
    marks: [
      mark("shade1", box(left, right, before)),
      mark("hatch", bandHatch(height(before.high), height(before.low))),
      mark("layerNow", box(right + 10, right + 30, now)),
      mark("body", segment(at(left, height(now.middle)), at(right + 34, height(now.middle)))),
    ],
    labels: [
      label("strong", at(right + 38, height(now.middle)), lengths.writeFine(now.middle), "start"),
      label("quiet", at(left + 6, height(before.high) - 9), pictureWords.packet, "start"),
      label("quiet", at(width - 4, height(now.high) - 12), pictureWords.fromTape, "end"),
    ],
  };
}

function axisParts(ticks: readonly number[], height: Height, lengths: LengthWriter): Parts {
  const strokes = ticks.map((tick) => segment(at(left - 5, height(tick)), at(left, height(tick))));
  return {
    marks: [
      mark("ground", segment(at(left, top), at(left, floor)), segment(at(left, floor), at(right, floor)), ...strokes),
    ],
    labels: ticks.map((tick) => label("quiet", at(left - 10, height(tick)), lengths.writeFine(tick), "end")),
  };
}

function readingParts(readings: readonly ThicknessReading[], height: Height): Parts {
  const step = (right - left) / (readings.length + 1);
  const column = (i: number): number => left + step * (i + 1);
  const cap = (x: number, y: number): string => segment(at(x - 6, y), at(x + 6, y));
  const bars = readings.map(({ low, high }, i) => {
    const [x, from, to] = [column(i), height(high), height(low)];
    return segment(at(x, from), at(x, to)) + cap(x, from) + cap(x, to);
  });
  return {
    marks: [
      mark("straight", ...bars),
      mark("dot", ...readings.map(({ middle }, i) => circle(at(column(i), height(middle)), 5))),
    ],
    // Names that would touch stand on two rows by turns.
    labels: readings.map(({ name }, i) =>
      label("quiet", at(column(i), floor + (i % 2 === 0 || step > 60 ? 13 : 29)), name),
    ),
  };
}

/** From nothing up, in steps of round figures, four or five of them. */
function axisTicks(highest: number, { unit }: LengthWriter): readonly number[] {
  const steps = unit === "in" ? [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1].map((part) => part * inchMm) : [1, 2, 5, 10, 20];
  const step = steps.find((item) => highest / item <= 6) ?? steps.at(-1) ?? highest;
  return Array.from({ length: Math.floor(highest / step) + 1 }, (_, i) => i * step);
}

/** Slanted strokes along the upper and the lower edge of a band. */
function bandHatch(from: number, to: number): string {
  const count = Math.floor((right - left) / 14);
  const depth = Math.min(14, to - from);
  return Array.from({ length: count }, (_, i) => {
    const x = left + i * 14;
    return segment(at(x, from + depth), at(x + depth, from)) + segment(at(x, to), at(x + depth, to - depth));
  }).join("");
}

function describe({ before, now, readings, lengths }: ThicknessPicture): string {
  const told = ({ low, middle, high }: PosteriorLength) => ({
    low: lengths.writeFine(low),
    middle: lengths.writeFine(middle),
    high: lengths.writeFine(high),
  });
  const each = readings.map((reading) => `${reading.name} ${lengths.writeFine(reading.middle)}`);
  return pictureTexts.thickness(told(before), told(now), each);
}
