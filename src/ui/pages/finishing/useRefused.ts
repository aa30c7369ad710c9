import type { MeasurementName } from "../../../core/body/vocabulary";
import { standingImpossible } from "./impossible";
import { impossibleWords } from "../../../text/learning";
import { useDerived } from "../../kit/useDerived";
import { useFitting, useLengths } from "../../kit/useStore";

interface Refused {
  readonly refusedText: string;
  readonly refusedWhy: string;
}

/** What was typed of a place last, where that cannot be, and why. */
export function useRefused(): (name: MeasurementName) => Refused | undefined {
  const fitting = useFitting();
  const { impossible } = useDerived();
  const { write } = useLengths();
  const standing = standingImpossible(impossible, fitting);
  return (name) => {
    const reading = standing.find((one) => one.name === name);
    const entry = reading === undefined ? undefined : fitting.work[reading.entry];
    if (reading === undefined || entry?.did !== "measured") return undefined;
    const { least, most } = reading;
    return {
      refusedText: String(entry.readings[name] ?? ""),
      refusedWhy: impossibleWords.field(write(least), write(most)),
    };
  };
}
