import { createContext, type ReactNode, useContext } from "react";
import { printingWords } from "../../../text/printing";
import { useFittingState } from "../useStore";

/** One page of a sheet that may go on overleaf, and says so at both ends. */
interface SheetPageProps {
  readonly title: string;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  readonly children: ReactNode;
}

export function SheetPage({ title, isFirst, isLast, children }: SheetPageProps) {
  return (
    <article className="sheet">
      <h2 className="sheet-title">
        {title}
        {isFirst ? "" : `, ${printingWords.continued}`}
      </h2>
      {children}
      {isLast ? null : <p className="sheet-overleaf">{printingWords.overleaf}</p>}
    </article>
  );
}

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

/** Whether the sheets carry the name of the fitting; where they do not, no page of them says whose it is. */
export const NamePrinted = createContext(true);

export function usePrintedName(): string {
  const isPrinted = useContext(NamePrinted);
  const title = useFittingState(({ fitting }) => fitting.title);
  return isPrinted ? title : "";
}
