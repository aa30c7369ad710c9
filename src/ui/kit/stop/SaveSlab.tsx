import { useCallback, useMemo } from "react";
import type { MeasurementName } from "../../../core/body/vocabulary";
import type { Millimetres } from "../../../core/units";
import { bandWords } from "../../../text/stops";
import { useLengths } from "../useStore";
import { lengthsNear, longestOf } from "./longestOf";
import { partOf } from "./ReadingParts";
import { StopSlab } from "./StopSlab";
import { useTypedLength } from "./useTypedLength";

interface SaveSlabProps {
  readonly draftKey: string;
  readonly next: MeasurementName | null;
  readonly expected: Millimetres;
  readonly press: () => void;
}

/** Says what would be saved, letter by letter. */
export function SaveSlab({ draftKey, next, expected, press }: SaveSlabProps) {
  const { write } = useLengths();
  const { length } = useTypedLength(draftKey);
  const saving = useCallback(
    (one: Millimetres) => bandWords.save(write(one), next === null ? null : partOf(next)),
    [write, next],
  );
  const longest = useMemo(
    () => longestOf([bandWords.nothingYet, ...lengthsNear(expected).map(saving)]),
    [expected, saving],
  );
  return (
    <StopSlab
      words={length === null ? bandWords.nothingYet : saving(length)}
      longest={longest}
      press={press}
      isReady={length !== null}
    />
  );
}
