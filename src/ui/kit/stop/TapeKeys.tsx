import { memo, type MouseEvent, type ReactNode, useMemo, useState } from "react";
import { bandOf, type TapeKey, tapeRows } from "../../../app/steps/tapeKeys";
import type { Millimetres } from "../../../core/units";
import { bandWords } from "../../../text/stops";
import { useLengths } from "../useStore";
import { useTypedLength } from "./useTypedLength";

interface TapeKeysProps {
  /** Where the reading it writes is kept while it is typed. */
  readonly draftKey: string;
  readonly around: Millimetres;
  /** Whether a range around it is on target; an estimate has none. */
  readonly isRange: boolean;
  readonly rows: number;
  readonly onPick: (text: string) => void;
  /** Between the ways to the rows below and above. */
  readonly children: ReactNode;
}

/** The tape is the keyboard: rows of its own marks around what is expected, on target white with a bar below. */
export function TapeKeys({ draftKey, around, isRange, rows, onPick, children }: TapeKeysProps) {
  const { unit, write } = useLengths();
  const [gone, setGone] = useState({ draftKey, moved: 0 });
  // The tape of another reading begins at what is expected there.
  const moved = gone.draftKey === draftKey ? gone.moved : 0;
  const shown = useMemo(() => tapeRows(around, unit, rows, moved), [around, unit, rows, moved]);
  const marks = useMemo(() => marksOf(shown, around, isRange, write), [shown, around, isRange, write]);
  const [first] = shown[0] ?? [];
  const [last] = shown.at(-1) ?? [];
  return (
    <fieldset className={`tape tape-${unit}`}>
      <legend className="unseen">{bandWords.tape}</legend>
      <TapeLines draftKey={draftKey} rows={marks} onPick={onPick} />
      <div className="tape-moves">
        <button type="button" className="patch patch-plain" onClick={() => setGone({ draftKey, moved: moved - rows })}>
          {first === undefined ? "" : bandWords.rowsDown(first.part)}
        </button>
        {children}
        <button type="button" className="patch patch-plain" onClick={() => setGone({ draftKey, moved: moved + rows })}>
          {last === undefined ? "" : bandWords.rowsUp(String(Number(last.part) + (unit === "mm" ? 10 : 1)))}
        </button>
      </div>
    </fieldset>
  );
}

/** A mark of the tape as it looks and is called: worked out once for a reading, not at every letter. */
interface TapeMark extends TapeKey {
  readonly look: string;
  readonly words: string;
}

function marksOf(
  shown: readonly (readonly TapeKey[])[],
  around: Millimetres,
  isRange: boolean,
  write: (length: Millimetres) => string,
): readonly (readonly TapeMark[])[] {
  const nearest = shown
    .flat()
    .reduce((best, key) => (off(key.length, around) < off(best, around) ? key.length : best), 0);
  return shown.map((row) =>
    row.map((key, i) => ({
      ...key,
      look: [
        "tape-key",
        isRange && bandOf(key.length, around) === "onTarget" ? "tape-right" : "",
        key.length === nearest ? (isRange ? "tape-expected" : "tape-estimated") : "",
        i === 0 ? "tape-whole" : "",
        i * 2 === row.length ? "tape-half" : "",
      ].join(" "),
      words: write(key.length),
    })),
  );
}

interface TapeLinesProps extends Pick<TapeKeysProps, "draftKey" | "onPick"> {
  readonly rows: readonly (readonly TapeMark[])[];
}

/** The lines of the tape, with the mark that was typed. */
function TapeLines({ draftKey, rows, onPick }: TapeLinesProps) {
  const { length } = useTypedLength(draftKey);
  return rows.map((row, i) => (
    <TapeLine
      // biome-ignore lint/suspicious/noArrayIndexKey: a line has no other name than its place; the tape moves through it.
      key={i}
      row={row}
      pressed={length === null ? null : (row.find((mark) => off(length, mark.length) < 0.3)?.text ?? null)}
      onPick={onPick}
    />
  ));
}

interface TapeLineProps {
  readonly row: readonly TapeMark[];
  readonly pressed: string | null;
  readonly onPick: (text: string) => void;
}

/** One line of it: a letter changes two of them at most. */
const TapeLine = memo(function TapeLine({ row, pressed, onPick }: TapeLineProps) {
  return (
    <div className="tape-line">
      {row.map(({ text, part, look, words }, i) => (
        <button
          // biome-ignore lint/suspicious/noArrayIndexKey: as above.
          key={i}
          type="button"
          className={look}
          aria-pressed={pressed === text}
          aria-label={words}
          onMouseDown={keepFocus}
          onClick={() => onPick(text)}
        >
          <KeyPart part={part} />
        </button>
      ))}
    </div>
  );
});

const keepFocus = (event: MouseEvent): void => event.preventDefault();

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
