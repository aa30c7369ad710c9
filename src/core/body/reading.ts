import { mm, type Millimetres } from "../units";
import type { Estimate } from "./estimates";

/**
 * A length that the plan works with: read off a tape by a person, or estimated from other readings. An estimate
 * carries one standard deviation (mm) and keeps it all the way to the screen and the printed page.
 */
export type Reading =
  | { readonly kind: "measured"; readonly value: Millimetres }
  | { readonly kind: "estimated"; readonly value: Millimetres; readonly standardDeviation: Millimetres };

export const measured = (value: Millimetres): Reading => ({ kind: "measured", value });

export const estimated = (value: Millimetres, deviation: Millimetres): Reading => ({
  kind: "estimated",
  value,
  standardDeviation: deviation,
});

/** What was read, or where nothing was, what is assumed. */
export const known = (value: Millimetres | undefined, otherwise: () => Estimate): Reading =>
  value === undefined ? guessed(otherwise()) : measured(value);

export const guessed = ({ value, standardDeviation }: Estimate): Reading => estimated(mm(value), mm(standardDeviation));
