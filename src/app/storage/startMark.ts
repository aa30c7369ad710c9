/**
 * A note outside the database of the fitting whose opening has not ended well: it is written before a fitting is opened
 * and when one makes a page fail, and taken away once the fitting has been on the screen for a while. A start that finds
 * it does not open that fitting again by itself, so that one bad fitting never locks the others away.
 */
export interface StartMark {
  read(): string | null;
  write(id: string | null): void;
}

const markName = "padwright start not ended well";

export function startMark(page: Pick<Window, "localStorage">): StartMark {
  return {
    read: () => {
      try {
        return page.localStorage.getItem(markName);
      } catch {
        return null;
      }
    },
    write: (id) => {
      try {
        if (id === null) page.localStorage.removeItem(markName);
        else page.localStorage.setItem(markName, id);
      } catch {
        // Without room for the note the last fitting is opened as ever.
      }
    },
  };
}
