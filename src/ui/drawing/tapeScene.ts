import { pictureWords } from "../text/pictures";
import { inchMm, type LengthWriter } from "./lengthWriter";
import { circle, closedPath, openPath, segment } from "./pathText";
import { at } from "./picturePoint";
import { label, mark, type Label, type Scene } from "./scene";

/**
 * One reading on a drawn tape. The tape lies along the foot with its own numbers; on it lies the padded form as a band
 * of calico that ends where the tape now reads; a pin stands at the reading wanted. What is still to go is the hatched gap
 * between them; what is over lies beyond the pin, hatched the other way. The pin always stands at the same place of the
 * picture, so that tapes under one another compare at a glance.
 */
export interface TapePicture {
  readonly name: string;
  readonly wanted: number;
  /** Null while nobody has read the tape yet. */
  readonly now: number | null;
  /** Whether the reading wanted is an estimate: its pin is then dashed. */
  readonly isEstimated: boolean;
  /** How much of the tape the picture shows (mm), the same for tapes to be compared. */
  readonly span: number;
  readonly words: string;
  readonly lengths: LengthWriter;
}

const width = 400;
const pinShare = 0.76;
const bandTop = 16;
const tapeTop = 38;
const tapeFoot = 68;

/** A span that shows the bare form's reading and the one wanted, and some way beyond. */
export const tapeSpan = (gains: readonly number[]): number =>
  Math.max(shortestSpan, ...gains.map((gain) => Math.abs(gain) * 1.45));

/** A few centimetres, so that a tape nearly there still shows its numbers (mm). */
const shortestSpan = 70;

export function tapeScene({ name, wanted, now, isEstimated, span, words, lengths }: TapePicture): Scene {
  const first = wanted - span * pinShare;
  const place = (reading: number): number => ((reading - first) / span) * width;
  const pin = place(wanted);
  const end = now === null ? 0 : Math.min(width - 4, Math.max(10, place(now)));
  const scale = tapeScale(first, first + span, lengths);
  const band =
    now === null
      ? ""
      : closedPath([
          at(0, bandTop),
          at(end, bandTop),
          at(end, tapeTop),
          at(0, tapeTop),
          at(5, tapeTop - 7),
          at(0, bandTop + 7),
        ]);
  const isOver = now !== null && end > pin;
  return {
    title: `${name}: ${words}`,
    description: [
      `${pictureWords.wanted} ${lengths.write(wanted)}${isEstimated ? " (estimated)" : ""}`,
      now === null ? "not read yet" : `${pictureWords.now} ${lengths.write(now)}`,
    ].join(", "),
    frame: { x: 0, y: 0, width, height: tapeFoot + 2 },
    textSize: 15,
    marks: [
      mark("tape", closedPath([at(-2, tapeTop), at(width + 2, tapeTop), at(width + 2, tapeFoot), at(-2, tapeFoot)])),
      mark(
        "tapeTick",
        ...scale.map(({ reading, isMajor }) =>
          segment(at(place(reading), tapeTop), at(place(reading), tapeTop + (isMajor ? 11 : 6))),
        ),
      ),
      mark("layer", band),
      mark("hatch", isOver ? "" : gapHatch(Math.max(end, 0), pin, 1)),
      mark("over", isOver ? gapHatch(pin, end, -1) : ""),
      mark("seamMoved", now === null ? "" : openPath([at(end, bandTop - 4), at(end, tapeTop + 12)])),
      mark(isEstimated ? "wantGuess" : "want", segment(at(pin, 8), at(pin, tapeFoot))),
      mark("pin", circle(at(pin, 7), 6)),
    ],
    labels: scale.flatMap(({ reading, isMajor }): readonly Label[] => {
      const x = place(reading);
      return isMajor && x > 14 && x < width - 14 && Math.abs(x - pin) > 12
        ? [label("onTape", at(x, tapeFoot - 9), lengths.writeBare(reading))]
        : [];
    }),
  };
}

/** Slanted strokes over a stretch of the band. */
function gapHatch(from: number, to: number, slant: 1 | -1): string {
  const step = 7;
  const count = Math.max(0, Math.floor((to - from) / step));
  return Array.from({ length: count }, (_, i) => {
    const left = from + i * step + (to - from - count * step) / 2;
    const [start, end] = slant === 1 ? [left, left + step] : [left + step, left];
    return segment(at(start, tapeTop - 1), at(end, bandTop + 1));
  }).join("");
}

/** The marks of a tape between two readings: as fine as they can be told apart, numbered as often as there is room. */
export function tapeScale(
  from: number,
  to: number,
  { unit }: LengthWriter,
): readonly { readonly reading: number; readonly isMajor: boolean }[] {
  const steps = unit === "in" ? inchSteps : metricSteps;
  const { minor, perMajor } = steps.find((step) => (to - from) / (step.minor * step.perMajor) <= 9) ??
    steps.at(-1) ?? { minor: to - from, perMajor: 1 };
  const first = Math.ceil(from / minor);
  const count = Math.max(0, Math.floor(to / minor) - first + 1);
  return Array.from({ length: count }, (_, i) => ({
    reading: (first + i) * minor,
    isMajor: (first + i) % perMajor === 0,
  }));
}

const inchSteps = [
  { minor: inchMm / 8, perMajor: 4 },
  { minor: inchMm / 8, perMajor: 8 },
  { minor: inchMm / 4, perMajor: 8 },
  { minor: inchMm / 2, perMajor: 8 },
  { minor: inchMm, perMajor: 10 },
] as const;
const metricSteps = [
  { minor: 1, perMajor: 10 },
  { minor: 5, perMajor: 4 },
  { minor: 10, perMajor: 5 },
  { minor: 10, perMajor: 10 },
  { minor: 50, perMajor: 4 },
] as const;
