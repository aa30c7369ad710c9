import { pictureWords } from "../../text/pictures";
import { inchMm, type LengthWriter } from "../../text/lengthWriter";
import { circle, closedPath, number, openPath, segment } from "./pathText";
import { at, label, type Label, mark, type Mark, type Scene } from "./scene";

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
const tapeFoot = 71;

/** A span that shows the bare form's reading and the one wanted, and some way beyond. */
export const tapeSpan = (gains: readonly number[]): number =>
  Math.max(shortestSpan, ...gains.map((gain) => Math.abs(gain) * 1.45));

/** A few centimetres, so that a tape nearly there still shows its numbers (mm). */
const shortestSpan = 70;

/** What of the picture stays while a reading is typed: the tape with its numbers and the pin, and where a reading lies on it. */
interface TapeGround {
  readonly first: number;
  readonly pin: number;
  readonly beneath: readonly Mark[];
  readonly above: readonly Mark[];
  readonly labels: readonly Label[];
}

type TapeGroundOf = Pick<TapePicture, "wanted" | "isEstimated" | "span" | "lengths">;

export function tapeGround({ wanted, isEstimated, span, lengths }: TapeGroundOf): TapeGround {
  const first = wanted - span * pinShare;
  const pin = placeOf(wanted, first, span);
  const scale = tapeScale(first, first + span, lengths).map(({ reading, isMajor }) => ({
    reading,
    isMajor,
    x: placeOf(reading, first, span),
  }));
  return {
    first,
    pin,
    beneath: [
      mark("tape", closedPath([at(-2, tapeTop), at(width + 2, tapeTop), at(width + 2, tapeFoot), at(-2, tapeFoot)])),
      mark("tapeTick", ...scale.map(({ x, isMajor }) => segment(at(x, tapeTop), at(x, tapeTop + (isMajor ? 10 : 6))))),
    ],
    above: [
      mark(isEstimated ? "wantGuess" : "want", segment(at(pin, 8), at(pin, tapeFoot))),
      mark("pin", circle(at(pin, 7), 6)),
    ],
    labels: scale.flatMap(({ reading, isMajor, x }): readonly Label[] =>
      isMajor && x > 18 && x < width - 18 && Math.abs(x - pin) > 15
        ? [label("onTape", at(x, tapeFoot - 10), lengths.writeBare(reading))]
        : [],
    ),
  };
}

const placeOf = (reading: number, first: number, span: number): number => ((reading - first) / span) * width;

/** The whole picture; whoever draws it anew with every letter hands in the part that stays. */
export function tapeScene(picture: TapePicture, ground: TapeGround = tapeGround(picture)): Scene {
  const { name, wanted, now, isEstimated, span, words, lengths } = picture;
  const { first, pin, beneath, above, labels } = ground;
  const end = now === null ? 0 : Math.min(width - 4, Math.max(10, placeOf(now, first, span)));
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
      now === null ? pictureWords.notRead : `${pictureWords.now} ${lengths.write(now)}`,
    ].join(", "),
    frame: { x: 0, y: 0, width, height: tapeFoot + 2 },
    textSize: 19,
    marks: [
      ...beneath,
      mark("layer", band),
      mark("hatch", isOver ? "" : gapHatch(Math.max(end, 0), pin, 1)),
      mark("over", isOver ? gapHatch(pin, end, -1) : ""),
      mark("seamMoved", now === null ? "" : openPath([at(end, bandTop - 4), at(end, tapeTop + 12)])),
      ...above,
    ],
    labels,
  };
}

/** Slanted strokes over a stretch of the band. */
function gapHatch(from: number, to: number, slant: 1 | -1): string {
  const step = 7;
  const count = Math.max(0, Math.floor((to - from) / step));
  const [foot, top] = [number(tapeTop - 1), number(bandTop + 1)];
  let strokes = "";
  let left = from + (to - from - count * step) / 2;
  for (let i = 0; i < count; i++, left += step) {
    const [start, end] = slant === 1 ? [left, left + step] : [left + step, left];
    strokes += `M${number(start)} ${foot}L${number(end)} ${top}`;
  }
  return strokes;
}

/** The marks of a tape between two readings: as fine as they can be told apart, numbered as often as there is room. */
export function tapeScale(
  from: number,
  to: number,
  { unit }: LengthWriter,
): readonly { readonly reading: number; readonly isMajor: boolean }[] {
  const steps = unit === "in" ? inchSteps : metricSteps;
  const { minor, perMajor } = steps.find((step) => (to - from) / (step.minor * step.perMajor) <= 7) ??
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
