import { memo, type ReactNode, useMemo, useState } from "react";
import { bandOf, type TapeKey, tapeRows } from "../../../app/steps/tapeKeys";
import type { Millimetres } from "../../../core/units";
import { bandWords } from "../../../text/stops";
import { useLengths } from "../useStore";

interface TapeKeysProps {
  readonly around: Millimetres;
  /** Whether a range around it is on target; an estimate has none. */
  readonly isRange: boolean;
  readonly rows: number;
  readonly value: Millimetres | null;
  readonly onPick: (text: string) => void;
  /** Between the ways to the rows below and above. */
  readonly children: ReactNode;
}

/** The tape is the keyboard: rows of its own marks around what is expected, on target white with a bar below. */
export function TapeKeys({ around, isRange, rows, value, onPick, children }: TapeKeysProps) {
  const { unit, write } = useLengths();
  const [moved, setMoved] = useState(0);
  const shown = useMemo(() => tapeRows(around, unit, rows, moved), [around, unit, rows, moved]);
  const [first] = shown[0] ?? [];
  const [last] = shown.at(-1) ?? [];
  const nearest = shown
    .flat()
    .reduce((best, key) => (off(key.length, around) < off(best, around) ? key.length : best), 0);
  return (
    <fieldset className={`tape tape-${unit}`}>
      <legend className="unseen">{bandWords.tape}</legend>
      {shown.map((row) => (
        <div key={row[0]?.text} className="tape-line">
          {row.map((key, i) => (
            <TapeButton
              key={key.text}
              mark={key}
              look={[
                "tape-key",
                isRange && bandOf(key.length, around) === "onTarget" ? "tape-right" : "",
                key.length === nearest ? (isRange ? "tape-expected" : "tape-estimated") : "",
                i === 0 ? "tape-whole" : "",
                i * 2 === row.length ? "tape-half" : "",
              ].join(" ")}
              words={write(key.length)}
              isPressed={value !== null && off(value, key.length) < 0.3}
              onPick={onPick}
            />
          ))}
        </div>
      ))}
      <div className="tape-moves">
        <button type="button" className="patch patch-plain" onClick={() => setMoved(moved - rows)}>
          {first === undefined ? "" : bandWords.rowsDown(first.part)}
        </button>
        {children}
        <button type="button" className="patch patch-plain" onClick={() => setMoved(moved + rows)}>
          {last === undefined ? "" : bandWords.rowsUp(String(Number(last.part) + (unit === "mm" ? 10 : 1)))}
        </button>
      </div>
    </fieldset>
  );
}

interface TapeButtonProps {
  readonly mark: TapeKey;
  readonly look: string;
  readonly words: string;
  readonly isPressed: boolean;
  readonly onPick: (text: string) => void;
}

/** One mark of the tape: a letter that is typed changes two of them at most. */
const TapeButton = memo(function TapeButton({ mark: { text, part }, look, words, isPressed, onPick }: TapeButtonProps) {
  return (
    <button
      type="button"
      className={look}
      aria-pressed={isPressed}
      aria-label={words}
      onMouseDown={(event) => event.preventDefault()}
      onClick={() => onPick(text)}
    >
      <KeyPart part={part} />
    </button>
  );
});

const off = (one: number, other: number): number => Math.abs(one - other);

function KeyPart({ part }: { readonly part: string }) {
  const [over = "", under = ""] = part.split("/");
  if (under === "") return <span aria-hidden>{part}</span>;
  return (
    <span className="length-fraction" aria-hidden>
      <span className="length-over">{over}</span>
      <span className="length-under">{under}</span>
    </span>
  );
}
