import { memo, useMemo } from "react";
import { type Band, bandOf, targetMarks } from "../../../app/steps/tapeKeys";
import { fineStep, tapeStep } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { shownLength } from "../../../text/shownLength";
import { bandWords } from "../../../text/stops";
import { useLengths } from "../useStore";
import { useTypedLength } from "./useTypedLength";

/** As finely as the keys of the tape are marked. */
const markStep = { in: tapeStep.in, cm: fineStep.cm, mm: fineStep.mm } as const;

interface BandsProps {
  readonly draftKey: string;
  readonly expected: Millimetres;
}

/** Less, on target, more, in the order of the tape, each with what this step makes of it. */
export function Bands({ draftKey, expected }: BandsProps) {
  const { unit } = useLengths();
  const { length } = useTypedLength(draftKey);
  const bands = useMemo((): readonly (readonly [Band, string])[] => {
    const [low, high] = targetMarks(expected, unit).map((mark) => shownLength(mark, markStep[unit])) as [
      string,
      string,
    ];
    return [
      ["less", bandWords.less(low)],
      ["onTarget", bandWords.between(low, high)],
      ["more", bandWords.more(high)],
    ];
  }, [unit, expected]);
  const now = length === null ? null : bandOf(length, expected);
  return (
    <ul className="bands">
      {bands.map(([band, range]) => (
        <BandOf key={band} band={band} range={range} isNow={now === band} />
      ))}
    </ul>
  );
}

interface BandOfProps {
  readonly band: Band;
  readonly range: string;
  readonly isNow: boolean;
}

/** One of them: a letter changes two at most. */
const BandOf = memo(function BandOf({ band, range, isNow }: BandOfProps) {
  const [short, make] = [bandWords.short[band], bandWords.make[band]];
  return (
    <li className={`band band-${band}`} aria-current={isNow ? "true" : undefined}>
      <strong>{range}</strong>
      <span className="kept-room band-make" data-short={short} data-longest={make}>
        <span>
          <span className="band-said">
            <span className="band-short">{short} </span>
            {make}
          </span>
        </span>
      </span>
    </li>
  );
});
