import { printingWords } from "../../../text/printing";

/** A box to tick by hand, or ticked already. */
export function SheetBox({ isTicked }: { readonly isTicked: boolean }) {
  return (
    <span className="sheet-box">
      {isTicked ? (
        <>
          <svg viewBox="0 0 16 16" aria-hidden focusable="false">
            <path d="M2.5 8.5 L6.5 12.5 L13.5 3" fill="none" stroke="currentColor" strokeWidth="2.4" />
          </svg>
          <span className="unseen">{printingWords.isPinned}</span>
        </>
      ) : null}
    </span>
  );
}
