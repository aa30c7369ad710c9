import type { LineAtForm, LineReadingAsked } from "../../../app/progress/linesAtForm";
import { type LevelName, levelNames } from "../../../core/body/vocabulary";
import { askedParts, type LinePart, lineParts } from "../../../core/form/linePart";
import { linesWords } from "../../../text/linesAtForm";
import { levelWords } from "../../../text/pictures";
import { useLengths } from "../../kit/useStore";

interface LineChoiceProps {
  readonly lines: readonly LineAtForm[];
  readonly level: LevelName;
  readonly onChoose: (asked: LineReadingAsked) => void;
}

/** The five lines: which are measured, which is at hand; a press goes to one. */
export function LineChoice({ lines, level, onChoose }: LineChoiceProps) {
  return (
    <ul className="line-choice" aria-label={linesWords.read.lines}>
      {levelNames.map((name) => {
        const read = lines.find((item) => item.level === name)?.read ?? {};
        const open = askedParts.find((part) => read[part] === undefined);
        return (
          <li key={name}>
            <button
              type="button"
              aria-current={name === level ? "step" : undefined}
              onClick={() => onChoose({ level: name, part: open ?? "girth" })}
            >
              {levelWords[name]}
              {open === undefined ? <span className="line-done"> {linesWords.read.measured}</span> : null}
            </button>
          </li>
        );
      })}
    </ul>
  );
}

/** The readings of one line side by side, filled in as they come; a press takes one of them, or takes it again. */
export function LineParts({ lines, level, part, onChoose }: LineChoiceProps & { readonly part: LinePart }) {
  const { write } = useLengths();
  const line = lines.find((item) => item.level === level);
  return (
    <ul className="line-parts">
      {lineParts.map((name) => {
        const length = line?.read[name];
        const isAsked = askedParts.includes(name);
        return (
          <li key={name}>
            <button
              type="button"
              aria-current={name === part ? "step" : undefined}
              onClick={() => onChoose({ level, part: name })}
            >
              <span aria-hidden>{linesWords.read.short[name]}</span>
              <span className="unseen">{linesWords.read.part(name)}</span>{" "}
              {length === undefined && !isAsked ? (
                <span className="quiet small">{linesWords.read.optional}</span>
              ) : (
                <strong>{length === undefined ? "–" : write(length)}</strong>
              )}
            </button>
          </li>
        );
      })}
    </ul>
  );
}
