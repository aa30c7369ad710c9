import { type ReactNode, useState } from "react";
import { bandOf, tapeRows } from "../../../app/steps/tapeKeys";
import type { Millimetres } from "../../../core/units";
import { bandWords } from "../../../text/stops";
import { useLengths } from "../../kit/useStore";

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
  const shown = tapeRows(around, unit, rows, moved);
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
          {row.map(({ length, text, part }, i) => (
            <button
              key={text}
              type="button"
              className={[
                "tape-key",
                isRange && bandOf(length, around) === "onTarget" ? "tape-right" : "",
                length === nearest ? (isRange ? "tape-expected" : "tape-estimated") : "",
                i === 0 ? "tape-whole" : "",
                i * 2 === row.length ? "tape-half" : "",
              ].join(" ")}
              aria-pressed={value !== null && off(value, length) < 0.3}
              aria-label={write(length)}
              onMouseDown={(event) => event.preventDefault()}
              onClick={() => onPick(text)}
            >
              <KeyPart part={part} />
            </button>
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
