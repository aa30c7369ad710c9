import { createContext, type ReactNode, useCallback, useContext, useState } from "react";

/**
 * One polite voice for the whole workroom. It speaks when something happened that was not said by the thing touched:
 * a piece pinned, a step undone, a plan that changed. It never speaks while a person types.
 */
const AnnouncerContext = createContext<(sentence: string) => void>(() => {});

export const useAnnounce = (): ((sentence: string) => void) => useContext(AnnouncerContext);

export function Announcer({ children }: { readonly children: ReactNode }) {
  const [spoken, setSpoken] = useState({ sentence: "", turn: 0 });
  const announce = useCallback((sentence: string) => setSpoken(({ turn }) => ({ sentence, turn: turn + 1 })), []);
  return (
    <AnnouncerContext value={announce}>
      {children}
      <p className="unseen" role="status" aria-live="polite">
        {/* The key makes the same sentence count as new when it is said twice. */}
        <span key={spoken.turn}>{spoken.sentence}</span>
      </p>
    </AnnouncerContext>
  );
}
