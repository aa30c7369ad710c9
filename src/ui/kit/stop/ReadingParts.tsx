import { useMemo } from "react";
import { paddedDraftKey } from "../../../app/session/commands";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { type Millimetres, mm } from "../../../core/units";
import { bandWords } from "../../../text/stops";
import { useLengths } from "../useStore";
import { lengthsNear, longestOf } from "./longestOf";
import type { ReadingAsked } from "./useReadingAsked";
import type { StepAtHand } from "./useStep";
import { useTypedLength } from "./useTypedLength";

type Part = keyof typeof bandWords.parts;

/** What a reading is called beside the others of its level. */
export const partOf = (name: MeasurementName): string =>
  bandWords.parts[(["Girth", "FrontArc", "BackArc"] as const).find((part) => name.endsWith(part)) ?? ("Girth" as Part)];

interface ReadingPartsProps {
  readonly expected: StepAtHand["step"]["expected"];
  readonly reading: ReadingAsked;
}

/** The readings of this level side by side, filled in as they come; a press takes one of them again. */
export function ReadingParts({ expected, reading }: ReadingPartsProps) {
  return (
    <ul className="reading-parts">
      {reading.names.map((name) => (
        <li key={name}>
          <PartButton name={name} expected={mm(expected[name] ?? 0)} reading={reading} />
        </li>
      ))}
    </ul>
  );
}

interface PartButtonProps {
  readonly name: MeasurementName;
  readonly expected: Millimetres;
  readonly reading: ReadingAsked;
}

function PartButton({ name, expected, reading }: PartButtonProps) {
  const { write } = useLengths();
  const { length } = useTypedLength(paddedDraftKey(name));
  const longest = useMemo(() => longestOf(lengthsNear(expected).map(write)), [expected, write]);
  return (
    <button type="button" aria-current={name === reading.asked ? "step" : undefined} onClick={() => reading.take(name)}>
      {partOf(name)}{" "}
      <strong className="kept-room" data-longest={longest}>
        <span>{length === null ? "–" : write(length)}</span>
      </strong>
    </button>
  );
}
