import { type ReactNode, useEffect, useRef } from "react";

/** A panel over the wall: it takes the focus, gives it back, and goes at Escape. */
export interface WallPanelProps {
  readonly id: string;
  readonly title: string;
  readonly className?: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function WallPanel({ id, title, className = "", onClose, children }: WallPanelProps) {
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    panel.current?.focus({ preventScroll: true });
    return () => {
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <section
      className={`wall-help ${className}`.trim()}
      ref={panel}
      tabIndex={-1}
      aria-labelledby={id}
      onKeyDown={(event) => {
        // A dialog in the panel closes first, and by itself.
        const isInDialog = event.target instanceof Element && event.target.closest("dialog") !== null;
        if (event.key === "Escape" && !isInDialog) onClose();
      }}
    >
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
}
