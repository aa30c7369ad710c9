import { memo, useMemo } from "react";
import { type Band, bandOf } from "../../../app/steps/tapeKeys";
import { onTarget } from "../../../core/tolerances";
import { type Millimetres, mm } from "../../../core/units";
import { bandWords } from "../../../text/stops";
import { useLengths } from "../useStore";
import { useTypedLength } from "./useTypedLength";

interface BandsProps {
  readonly draftKey: string;
  readonly expected: Millimetres;
}

/** Less, on target, more, in the order of the tape, each with what this step makes of it. */
export function Bands({ draftKey, expected }: BandsProps) {
  const { write } = useLengths();
  const { length } = useTypedLength(draftKey);
  const bands = useMemo((): readonly (readonly [Band, string])[] => {
    const [low, high] = [write(mm(expected - onTarget)), write(mm(expected + onTarget))];
    return [
      ["less", bandWords.less(low)],
      ["onTarget", bandWords.between(low, high)],
      ["more", bandWords.more(high)],
    ];
  }, [write, expected]);
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
