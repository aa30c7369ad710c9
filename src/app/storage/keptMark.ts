/**
 * A note outside the database that there were fittings, to tell a first visit from one after everything was cleared.
 * It is kept where browsers do not always clear both at once; where they do, nobody can tell, and the first screen
 * offers to open a backup either way.
 */
export interface KeptMark {
  read(): number;
  write(count: number): void;
}

const markName = "padwright fittings kept";

export function keptMark(page: Pick<Window, "localStorage">): KeptMark {
  return {
    read: () => {
      try {
        const count = Number(page.localStorage.getItem(markName) ?? "0");
        return Number.isSafeInteger(count) && count > 0 ? count : 0;
      } catch {
        return 0;
      }
    },
    write: (count) => {
      try {
        if (count > 0) page.localStorage.setItem(markName, String(count));
        else page.localStorage.removeItem(markName);
      } catch {
        // The note is a kindness; without room for it the tool works as well.
      }
    },
  };
}

/**
 * How many fittings the browser seems to have cleared: those of the note, when the list is empty. The note is brought
 * up to date only afterwards, by whoever has told the person.
 */
export const clearedFittings = (mark: KeptMark, listed: number): number => (listed === 0 ? mark.read() : 0);
