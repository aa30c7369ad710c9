import { type ReactNode, useEffect, useMemo, useRef } from "react";
import type { Fitting } from "../../../document/fitting";
import { takeHomeWords } from "../../../text/library";
import { keyHelp, keyHelpWords, classControls } from "../../../text/classView";
import { sampleTitle } from "../../../text/workroom";
import { SharePanel } from "../../kit/shelf/SharePanel";

/** A panel over the class view: it takes the focus, gives it back, and goes at Escape. */
interface ClassPanelProps {
  readonly id: string;
  readonly title: string;
  readonly className?: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

export function ClassPanel({ id, title, className = "", onClose, children }: ClassPanelProps) {
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
      className={`class-help ${className}`.trim()}
      ref={panel}
      tabIndex={-1}
      aria-labelledby={id}
      onKeyDown={(event) => {
        // A dialog in the panel closes first, and by itself.
        const isInDialog = event.target instanceof Element && event.target.closest("dialog") !== null;
        if (event.key === "Escape" && !isInDialog) onClose();
      }}
    >
      <header className="class-help-head">
        <h2 id={id}>{title}</h2>
        <button type="button" className="patch" onClick={onClose}>
          {classControls.closeKeys}
        </button>
      </header>
      {children}
    </section>
  );
}

/** All keys in one list, and the switch that puts the letter keys out of action for those whom they hinder. */
interface ClassHelpProps {
  readonly lettersWork: boolean;
  readonly onLetters: (work: boolean) => void;
  /** Shows the made-up person as a link and a code; null while the own fitting stands in the class view. */
  readonly onTakeHome: (() => void) | null;
  readonly onClose: () => void;
}

export function ClassHelp({ lettersWork, onLetters, onTakeHome, onClose }: ClassHelpProps) {
  return (
    <ClassPanel id="class-help-title" title={keyHelpWords.title} onClose={onClose}>
      <dl className="class-help-keys">
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
      </div>
      <p className="quiet">{keyHelpWords.private}</p>
    </ClassPanel>
  );
}

/** The made-up person in the class view as a link and as a code for the class to take home. Nobody's own fitting goes out here. */
export function ClassTakeHome({ fitting, onClose }: { readonly fitting: Fitting; readonly onClose: () => void }) {
  const named = useMemo(() => ({ ...fitting, title: sampleTitle(fitting.title) }), [fitting]);
  return (
    <ClassPanel id="class-home-title" title={takeHomeWords.title} className="class-home" onClose={onClose}>
      <p>{takeHomeWords.lead}</p>
      <SharePanel fitting={named} title={named.title} isMadeUp />
    </ClassPanel>
  );
}
