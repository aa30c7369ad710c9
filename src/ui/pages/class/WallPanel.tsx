import { type ReactNode, useEffect, useRef } from "react";
import type { Fitting } from "../../../document/fitting";
import { takeHomeWords } from "../../../text/library";
import { keyHelp, keyHelpWords, wallControls } from "../../../text/wall";
import { SharePanel } from "../../kit/shelf/SharePanel";

/** A panel over the wall: it takes the focus, gives it back, and goes at Escape. */
interface WallPanelProps {
  readonly id: string;
  readonly title: string;
  readonly className?: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

function WallPanel({ id, title, className = "", onClose, children }: WallPanelProps) {
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

/** All keys in one list, and the switch that puts the letter keys out of action for those whom they hinder. */
interface WallHelpProps {
  readonly lettersWork: boolean;
  readonly onLetters: (work: boolean) => void;
  /** Shows the made-up person as a link and a code; null while the own fitting stands on the wall. */
  readonly onTakeHome: (() => void) | null;
  readonly onClose: () => void;
}

export function WallHelp({ lettersWork, onLetters, onTakeHome, onClose }: WallHelpProps) {
  return (
    <WallPanel id="wall-help-title" title={keyHelpWords.title} onClose={onClose}>
      <dl className="wall-help-keys">
        {[...keyHelp, takeHomeWords].map(({ keys, does }) => (
          <div key={keys}>
            <dt>{keys}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <div className="row">
        <label className="tick">
          <input type="checkbox" checked={lettersWork} onChange={(event) => onLetters(event.target.checked)} />
          {keyHelpWords.letters}
        </label>
        {onTakeHome && (
          <button type="button" className="patch" onClick={onTakeHome}>
            {takeHomeWords.control}
          </button>
        )}
        <button type="button" className="patch" onClick={onClose}>
          {wallControls.closeKeys}
        </button>
      </div>
      <p className="quiet">{keyHelpWords.private}</p>
    </WallPanel>
  );
}

/** The made-up person on the wall as a link and as a code for the class to take home. Nobody's own fitting goes out here. */
export function WallTakeHome({ fitting, onClose }: { readonly fitting: Fitting; readonly onClose: () => void }) {
  return (
    <WallPanel id="wall-home-title" title={takeHomeWords.title} className="wall-home" onClose={onClose}>
      <p>{takeHomeWords.lead}</p>
      <SharePanel fitting={fitting} title={fitting.title} isMadeUp />
      <button type="button" className="patch" onClick={onClose}>
        {wallControls.closeKeys}
      </button>
    </WallPanel>
  );
}
