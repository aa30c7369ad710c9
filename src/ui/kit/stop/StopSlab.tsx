import type { ReactNode } from "react";

export interface StopSlabProps {
  readonly words: ReactNode;
  readonly press: () => void;
  readonly isReady: boolean;
  /** The longest of the words that may come here while somebody types: they keep the room, so that no letter moves the page. */
  readonly longest?: string;
}

/** The one dark block of a stop: pressed when its work is done. */
export function StopSlab({ words, press, isReady, longest }: StopSlabProps) {
  return (
    <button type="button" className="stop-slab" disabled={!isReady} onClick={press}>
      {longest === undefined ? (
        <span>{words}</span>
      ) : (
        <span className="kept-room slab-room" data-longest={longest}>
          <span>{words}</span>
        </span>
      )}
      <svg width="46" height="24" viewBox="0 0 46 24" aria-hidden focusable="false">
        <path d="M0 12H42M32 3L43 12L32 21" fill="none" stroke="currentColor" strokeWidth="4" />
      </svg>
    </button>
  );
}
