import { type MeasurementName, measurementNames } from "../../core/body/vocabulary";
import { type Millimetres, mm } from "../../core/units";
import { entryLength, type Entry, type Fitting } from "../../document/fitting";

/** One measurement of the body in two fittings of the same person, an earlier and a later one. */
export type ComparedMeasurement = { readonly name: MeasurementName } & (
  | { readonly kind: "both"; readonly before: Millimetres; readonly after: Millimetres; readonly change: Millimetres }
  | { readonly kind: "onlyBefore"; readonly before: Millimetres }
  | { readonly kind: "onlyAfter"; readonly after: Millimetres }
);

/** What changed between two rounds of measuring, in the order of the vocabulary; lengths, never judgements. */
export function comparedBodies(before: Fitting, after: Fitting): readonly ComparedMeasurement[] {
  return measurementNames.flatMap((name): readonly ComparedMeasurement[] => {
    const was = lengthOf(before.body[name], before);
    const is = lengthOf(after.body[name], after);
    if (was !== null && is !== null) return [{ name, kind: "both", before: was, after: is, change: mm(is - was) }];
    if (was !== null) return [{ name, kind: "onlyBefore", before: was }];
    return is === null ? [] : [{ name, kind: "onlyAfter", after: is }];
  });
}

function lengthOf(entry: Entry | undefined, { unit }: Fitting): Millimetres | null {
  const length = entry === undefined ? null : entryLength(entry, unit);
  return length?.ok ? length.value : null;
}
