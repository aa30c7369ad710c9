import { createContext, type ReactNode, useCallback, useContext, useState } from "react";

/**
 * One polite voice for the whole workroom. It speaks when something happened that was not said by the thing touched:
 * a piece pinned, a reading kept, a step undone, a plan that changed. It never speaks while a person types. A sentence does
 * not cut off the one before it: what a reading left to go is still heard when what it means for the plan follows.
 */
const AnnouncerContext = createContext<(sentence: string) => void>(() => {});

export const useAnnounce = (): ((sentence: string) => void) => useContext(AnnouncerContext);

export function Announcer({ children }: { readonly children: ReactNode }) {
  const [spoken, setSpoken] = useState<readonly Spoken[]>([]);
  const announce = useCallback(
    (sentence: string) =>
      setSpoken((before) => [...before, { sentence, turn: (before.at(-1)?.turn ?? 0) + 1 }].slice(-mostKept)),
    [],
  );
  return (
    <AnnouncerContext value={announce}>
      {children}
      <p className="unseen" role="status" aria-live="polite" aria-atomic={false}>
        {/* The key makes the same sentence count as new when it is said twice. */}
        {spoken.map(({ sentence, turn }) => (
          <span key={turn}>{sentence} </span>
        ))}
      </p>
    </AnnouncerContext>
  );
}

interface Spoken {
  readonly sentence: string;
  readonly turn: number;
}

const mostKept = 3;
