import { type ReactNode, type ToggleEvent, useState } from "react";

interface LateFoldProps {
  readonly summary: string;
  readonly className?: string;
  readonly children: ReactNode;
}

/** A fold whose contents are made when it is first opened: what nobody looks at is neither worked out nor drawn anew. */
export function LateFold({ summary, className, children }: LateFoldProps) {
  const [wasOpened, setOpened] = useState(false);
  const onToggle = ({ newState }: ToggleEvent<HTMLDetailsElement>) => {
    if (newState === "open") setOpened(true);
  };
  return (
    <details className={className} onToggle={onToggle}>
      <summary className="fold">{summary}</summary>
      {wasOpened ? children : null}
    </details>
  );
}
