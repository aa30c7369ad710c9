import { memo, type PointerEvent } from "react";
import type { LengthUnit } from "../../../core/lengthText";
import { fieldWords } from "../../../text/field";
import { digitKeys, type PadKey, partKeys } from "./padKeys";

/**
 * The pad beside a length field, for a thumb: whole inches and then eighths, or centimetres and a half. It knows nothing
 * of the text it writes, so that a letter does not draw it anew; what a key does to the text is in `pressKey`.
 */
export interface FractionPadProps {
  readonly unit: LengthUnit;
  readonly onKey: (key: PadKey) => void;
}

export const FractionPad = memo(function FractionPad({ unit, onKey }: FractionPadProps) {
  const press = (key: PadKey) => () => onKey(key);
  const parts = partKeys(unit);
  return (
    <fieldset className="pad">
      <legend className="unseen">{fieldWords.pad}</legend>
      <div className="pad-digits">
        {digitKeys.map((key) => (
          <PadButton key={key} press={press(key)}>
            {key}
          </PadButton>
        ))}
      </div>
      <div className={`pad-parts pad-parts-${unit}`}>
        {parts.map((key) => (
          <PadButton key={key} press={press(key)}>
            <Part text={key} />
          </PadButton>
        ))}
        <PadButton press={press("back")} name={fieldWords.back}>
          <BackMark />
        </PadButton>
      </div>
    </fieldset>
  );
});

interface PadButtonProps {
  readonly press: () => void;
  readonly name?: string;
  readonly children: React.ReactNode;
}

/** Pressing a key leaves the caret where it was: in the field. */
const keepFocus = (event: PointerEvent | React.MouseEvent): void => event.preventDefault();

function PadButton({ press, name, children }: PadButtonProps) {
  return (
    <button type="button" className="pad-key" aria-label={name} onMouseDown={keepFocus} onClick={press}>
      {children}
    </button>
  );
}

function Part({ text }: { readonly text: string }) {
  const [over = "", under = ""] = text.split("/");
  if (under === "") return text;
  return (
    <>
      <span className="unseen">{text}</span>
      <span className="length-fraction pad-fraction" aria-hidden>
        <span className="length-over">{over}</span>
        <span className="length-under">{under}</span>
      </span>
    </>
  );
}

function BackMark() {
  return (
    <svg width="28" height="20" viewBox="0 0 28 20" aria-hidden focusable="false">
      <path d="M9 2 H26 V18 H9 L2 10 Z M13 6 L21 14 M21 6 L13 14" fill="none" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}
