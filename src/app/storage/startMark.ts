import { type NotesPage, quietNotes } from "./quietNotes";

/**
 * A note of the fitting whose opening has not ended well: written before one is opened and when one makes a page fail, and
 * taken away once it has been on the screen for a while. A start that finds it does not open that fitting by itself.
 */
export function startMark(page: NotesPage) {
  const notes = quietNotes(page);
  return {
    read: (): string | null => notes.read(markName),
    write: (id: string | null): void => {
      if (id === null) notes.clear(markName);
      else notes.write(markName, id);
    },
  };
}

const markName = "padwright start not ended well";
