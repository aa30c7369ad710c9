/** What a picture is called and what it shows, for whoever hears it instead of seeing it. */
export const pictureTexts = {
  /** One piece by its number, or all of them where none is named. */
  figure: (order: number | undefined, view: string): string =>
    order === undefined ? `All pieces, ${view}` : `Piece ${String(order)}, ${view}`,
  figureShows: (view: string, orders: readonly string[]): string =>
    `The form with its padding ${view}, and the person’s outline around it. ${
      orders.length === 0 ? "No piece shows from here." : `Pieces that show from here: ${orders.join(", ")}.`
    }`,
  disc: (diameter: string): string => `A disc ${diameter} across.`,
  testSquare: "Test square",
  testSquareShows: (side: string): string => `Printed at its true size this square measures ${side} each way.`,
  section: (level: string): string => `${level}, seen from above`,
  sectionShows: ({ person, front, form, padded, orders }: SectionTold): string =>
    [
      `The person measures ${known(person)} all around here,`,
      `${known(front)} of it in front.`,
      `The form measures ${known(form)}, and should measure ${padded} with all its padding.`,
      orders.length === 0 ? "No batting is shown." : `Pieces of batting shown: ${orders.join(", ")}.`,
    ].join(" "),
  thickness: (before: ThicknessTold, now: ThicknessTold, readings: readonly string[]): string =>
    `Starting figure: ${span(before)}. From your tape: ${span(now)}. ${
      readings.length === 0 ? "Nothing has been measured yet." : `Measurements: ${readings.join("; ")}.`
    }`,
} as const;

/** Lengths at one level seen from above, written already. */
export interface SectionTold {
  readonly person: KnownLength;
  readonly front: KnownLength;
  readonly form: KnownLength;
  readonly padded: string;
  readonly orders: readonly string[];
}

export interface KnownLength {
  readonly length: string;
  readonly isEstimated: boolean;
}

/** A thickness with its interval, written already. */
export interface ThicknessTold {
  readonly middle: string;
  readonly low: string;
  readonly high: string;
}

const known = ({ length, isEstimated }: KnownLength): string => `${length}${isEstimated ? " (estimated)" : ""}`;

const span = ({ middle, low, high }: ThicknessTold): string => `${middle}, most likely ${low} to ${high}`;
