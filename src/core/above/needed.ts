import type { Measurements } from "../body/measurements";
import type { LengthName } from "../body/vocabulary";
import type { Millimetres } from "../units";
import type { BuildAct, UnreadAbove } from "./buildAbove";

/** The readings that a build needs, each read, or the names of those that were not. */
export type Needed<Name extends string> =
  | { readonly kind: "read"; readonly of: { readonly [name in Name]: number } }
  | { readonly kind: "unread"; readonly act: Extract<BuildAct, { readonly what: "unread" }> };

/** One side's own reading, or the one that was taken for both. */
export function sideLength(
  measurements: Measurements,
  side: "left" | "right",
  name: "shoulderDrop" | "shoulderLength" | "shoulderToApex",
): Millimetres | undefined {
  const own = `${side}S${name.slice(1)}` as Extract<LengthName, `${"left" | "right"}Shoulder${string}`>;
  return measurements[own] ?? measurements[name];
}

/** Gathers what a build needs: every value under its own key, with the name to say where it is missing. */
export function needed<Key extends string>(
  values: {
    readonly [key in Key]: readonly [value: number | undefined, whose: UnreadAbove["whose"], name: UnreadAbove["name"]];
  },
): Needed<Key> {
  const entries = Object.entries(values) as [Key, (typeof values)[Key]][];
  const missing = entries.flatMap(([, [value, whose, name]]) => (value === undefined ? [{ whose, name }] : []));
  if (missing.length > 0)
    return { kind: "unread", act: { what: "unread", missing, isBegun: missing.length < entries.length } };
  return {
    kind: "read",
    of: Object.fromEntries(entries.map(([key, [value]]) => [key, value])) as { [key in Key]: number },
  };
}
