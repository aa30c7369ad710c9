import { type KeyboardEvent, type RefObject, useId } from "react";
import type { LengthUnit } from "../../../core/lengthText";
import { useAnnounce } from "../Announcer";
import { fieldWords } from "../../../text/field";
import { lengthProblemText } from "../../../text/problems";
import { unitMarks, unitNames } from "../../../text/workroom";
import { useLater } from "../useSoon";
import { useLengths } from "../useStore";
import type { LengthFieldState } from "../../../app/session/lengthFieldState";
import { writtenLength } from "../../../text/writtenLength";

/**
 * The field a length is typed into. It takes whatever a person writes, says what it understood, and explains in words
 * what it could not read, without ever changing the text under the fingers.
 */
interface LengthFieldProps {
  readonly label: string;
  /** Small with its label above; or without it, where the page says what is asked: small in a table, or large by itself. */
  readonly look?: "labeled" | "small" | "large";
  readonly state: LengthFieldState;
  /** What is the matter with a length that can be read. */
  readonly problem?: string | undefined;
  /** What the field shows faintly while it is empty: an estimate, or an example. */
  readonly ghost?: string;
  /** The id of what else is to be said of it. */
  readonly describedBy?: string;
  /** The pad beside the field stands in for the tablet's own keyboard. */
  readonly padInstead?: boolean;
  readonly inputRef?: RefObject<HTMLInputElement | null>;
  readonly onEnter?: () => void;
  readonly onEscape?: () => void;
  readonly onFocus?: () => void;
}

export function LengthField(props: LengthFieldProps) {
  const { label, look = "labeled", state, ghost, padInstead = false } = props;
  const { unit, step } = useLengths();
  const id = useId();
  const announce = useAnnounce();
  // A browser looks after the words of an empty field at every letter of a full one too, as long as they are there.
  const isEmpty = useLater(state.text === "") || state.text === "";
  const unreadable = state.meaning !== null && !state.meaning.ok ? state.meaning.problem : null;
  const isWrong = (unreadable !== null && !isHalfTyped(state.text)) || props.problem !== undefined;
  const echo = state.isForeign && state.meaning?.ok ? fieldWords.means(writtenLength(state.meaning.value, step)) : null;

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    // An Enter that ends the composing of a character belongs to the input method.
    if (event.key === "Enter" && !event.nativeEvent.isComposing) {
      event.preventDefault();
      state.commit();
      if (unreadable === null) props.onEnter?.();
      else announce(lengthProblemText(unreadable, step));
    }
    if (event.key === "Escape") props.onEscape?.();
  };

  return (
    <div className={`field field-${look === "large" ? "large" : "plain"}`}>
      <label className={look === "labeled" ? "field-label" : "unseen"} htmlFor={id}>
        {label}
        <span className="unseen"> {unitNames[unit]}</span>
      </label>
      <span className="field-line">
        <span className="field-box">
          <input
            id={id}
            ref={props.inputRef}
            className="field-input"
            type="text"
            inputMode={padInstead ? "none" : keyboards[unit]}
            enterKeyHint="next"
            autoComplete="off"
            autoCorrect="off"
            spellCheck={false}
            maxLength={40}
            placeholder={isEmpty ? ghost : undefined}
            value={state.isDraft ? state.text : fieldWords.shown(state.text)}
            aria-invalid={isWrong}
            aria-describedby={props.describedBy === undefined ? `${id}-note` : `${id}-note ${props.describedBy}`}
            onChange={(event) => state.type(event.target.value)}
            onBlur={state.commit}
            onFocus={props.onFocus}
            onKeyDown={onKeyDown}
          />
        </span>
        <span className="field-unit" aria-hidden>
          {unitMarks[unit]}
        </span>
      </span>
      <span id={`${id}-note`} className={isWrong ? "field-note field-problem" : "field-note"}>
        {unreadable !== null && isWrong ? lengthProblemText(unreadable, step) : (props.problem ?? echo)}
      </span>
    </div>
  );
}

/** A number pad has neither the space nor the stroke of a fraction. */
const keyboards: { readonly [unit in LengthUnit]: "text" | "decimal" } = { in: "text", cm: "decimal", mm: "decimal" };

/** On its way to a length, and no slip yet: `34 3/` needs only its last digit. */
const isHalfTyped = (text: string): boolean => /(^|[\d ])\d+\/\s*$/.test(text);
