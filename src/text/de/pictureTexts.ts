import { upperFirst } from "../upperFirst";
import type { KnownLength, SectionTold, ThicknessTold } from "../pictureTexts";

export type { KnownLength, SectionTold, ThicknessTold } from "../pictureTexts";

export const pictureTexts = {
  figure: (order: number | undefined, view: string): string =>
    order === undefined ? `Alle Polster, ${view}` : `Polster ${String(order)}, ${view}`,
  figureShows: (view: string, orders: readonly string[]): string =>
    `Die Büste mit ihrem Polster ${view}, ringsum der Umriss der Person. ${
      orders.length === 0 ? "Von hier ist kein Polster zu sehen." : `Von hier zu sehen: ${orders.join(", ")}.`
    }`,
  disc: (diameter: string): string => `Eine runde Scheibe mit ${diameter} Durchmesser.`,
  testSquare: "Prüfquadrat",
  testSquareShows: (side: string): string => `In wahrer Größe gedruckt misst dieses Quadrat ${side} in jeder Richtung.`,
  section: (level: string): string => `${upperFirst(level)}, von oben gesehen`,
  sectionShows: ({ person, front, form, padded, orders }: SectionTold): string =>
    [
      `Die Person misst hier rundum ${known(person)}, davon vorn ${known(front)}.`,
      `Die Büste misst ${known(form)}, mit allem Polster sollen es ${padded} sein.`,
      orders.length === 0 ? "Es ist kein Vlies zu sehen." : `Vlies zu sehen: ${orders.join(", ")}.`,
    ].join(" "),
  thickness: (before: ThicknessTold, now: ThicknessTold, readings: readonly string[]): string =>
    `Anfangswert: ${span(before)}. Von Ihrem Maßband: ${span(now)}. ${
      readings.length === 0 ? "Noch ist nichts gemessen." : `Maße: ${readings.join("; ")}.`
    }`,
} as const;

const known = ({ length, isEstimated }: KnownLength): string => `${length}${isEstimated ? " (geschätzt)" : ""}`;

const span = ({ middle, low, high }: ThicknessTold): string => `${middle}, am ehesten ${low} bis ${high}`;
