import { memo, type PointerEvent, useCallback } from "react";
import type { LengthUnit } from "../../../core/lengthText";
import { fieldWords } from "../../../text/field";
import { useStoreItself } from "../useStore";

/**
 * The pad beside a length field, for a thumb: whole inches and then eighths, or centimetres and a half. It knows nothing
 * of the text it writes, so that a letter does not draw it anew; what a key does to the text is in `pressKey`.
 */
interface FractionPadProps {
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

/**
 * What a key of the pad does to a reading that is being typed. It looks up the text as it is at the press, so that two
 * quick presses never write over each other, and nobody has to hand it every letter.
 */
export function usePadInto(key: string): (pressed: PadKey) => void {
  const store = useStoreItself();
  return useCallback(
    (pressed) => {
      const text = store.getState().fitting.drafts.other[key] ?? "";
      const next = pressKey(text, pressed, text === "");
      store.dispatch({ does: "draft", of: "other", key, text: next === "" ? null : next });
    },
    [store, key],
  );
}

/** Keys work on the text of the field and know nothing of lengths, so whatever was typed by hand stays readable to them. */
export const digitKeys = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"] as const;
export const eighthKeys = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"] as const;
/** With the mark of the language; both are read. */
const halfKeys = [fieldWords.half] as const;

export type PadKey =
  | (typeof digitKeys)[number]
  | (typeof eighthKeys)[number]
  | (typeof halfKeys)[number]
  | "back"
  | "clear";

/** The keys of the last row, which finish a length: parts of an inch, or half a centimetre. */
const partKeys = (unit: LengthUnit): readonly PadKey[] => (unit === "in" ? eighthKeys : halfKeys);

/**
 * The text after a key. A field that was not touched since it was opened (`untouched`) starts anew at the first digit,
 * as does a length that already has its fraction; a part key takes the place of another one, and takes itself back.
 */
export function pressKey(text: string, key: PadKey, untouched: boolean): string {
  if (key === "clear") return "";
  if (key === "back") return withoutLast(text);
  const { whole, part } = splitText(text) ?? { whole: "", part: "" };
  if (isDigit(key)) return untouched || (part !== "" && !/^[.,]$/.test(part)) ? key : `${whole}${part}${key}`;
  if (part === key) return whole;
  if (key === fieldWords.half) return `${whole === "" ? "0" : whole}${key}`;
  return whole === "" ? key : `${whole} ${key}`;
}

const isDigit = (key: PadKey): boolean => /^\d$/.test(key);

/** Whole number and part of a text the pad could have made; null when it was typed some other way. */
function splitText(text: string): { readonly whole: string; readonly part: string } | null {
  const match = /^\s*(\d*)(?:([.,]\d*)|(?:^|\s+)(\d\/\d))?\s*$/.exec(text);
  return match ? { whole: match[1] ?? "", part: match[2] ?? match[3] ?? "" } : null;
}

function withoutLast(text: string): string {
  const split = splitText(text);
  if (split?.part.includes("/")) return split.whole;
  return text.trimEnd().slice(0, -1).trimEnd();
}
