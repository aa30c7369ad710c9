import type { ReactNode } from "react";
import { printingWords } from "../../../text/printing";

/** One page of a sheet that may go on overleaf, and says so at both ends. */
export interface SheetPageProps {
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
