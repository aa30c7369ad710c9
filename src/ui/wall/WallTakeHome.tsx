import { useEffect, useRef } from "react";
import type { Fitting } from "../../document/fitting";
import { SharePanel } from "../library/SharePanel";
import { takeHomeWords } from "../text/library";
import { wallControls } from "../text/wall";

/** The made-up person on the wall as a link and as a code for the class to take home. Nobody's own fitting goes out here. */
export function WallTakeHome({ fitting, onClose }: { readonly fitting: Fitting; readonly onClose: () => void }) {
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
      className="wall-help wall-home"
      ref={panel}
      tabIndex={-1}
      aria-labelledby="wall-home-title"
      onKeyDown={(event) => {
        if (event.key === "Escape") onClose();
      }}
    >
      <h2 id="wall-home-title">{takeHomeWords.title}</h2>
      <p>{takeHomeWords.lead}</p>
      <SharePanel fitting={fitting} title={fitting.title} />
      <button type="button" className="patch" onClick={onClose}>
        {wallControls.closeKeys}
      </button>
    </section>
  );
}
