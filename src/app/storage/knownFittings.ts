import { fieldsOf } from "./fields";
import { type NotesPage, quietly, quietNotes } from "./quietNotes";

/** A fitting there is, with the file it was last saved to, so that a loss can be told by name. */
export interface KnownFitting {
  readonly id: string;
  readonly title: string;
  readonly file: KnownFile | null;
}

/** A file that was handed to the person, and when, as an ISO 8601 instant in UTC. */
export interface KnownFile {
  readonly name: string;
  readonly savedAt: string;
}

export type KnownFittings = ReturnType<typeof knownFittings>;

/** The note of them outside the database, one line to a fitting, so that two tabs do not write over each other. */
export function knownFittings(page: NotesPage) {
  const notes = quietNotes(page);
  const read = (id: string): KnownFitting | null => {
    const text = notes.read(`${prefix}${id}`);
    if (text === null) return null;
    const { title, file } = fieldsOf(parsed(text));
    return { id, title: typeof title === "string" ? title : "", file: readFile(file) };
  };
  const write = ({ id, title, file }: KnownFitting) => notes.write(`${prefix}${id}`, JSON.stringify({ title, file }));
  const ids = () => notes.names().flatMap((name) => (name.startsWith(prefix) ? [name.slice(prefix.length)] : []));
  const forget = (id: string): unknown => notes.clear(`${prefix}${id}`);
  return {
    all: (): readonly KnownFitting[] => ids().flatMap((id) => read(id) ?? []),
    /** Notes that a fitting is there; a title only where it is known. */
    note: (id: string, title?: string): void => {
      const before = read(id);
      const now = { id, title: (title ?? before?.title ?? "").slice(0, longestTitle), file: before?.file ?? null };
      if (before?.title !== now.title) write(now);
    },
    noteFile: (ids: readonly string[], file: KnownFile): void => {
      for (const id of ids) write({ id, title: read(id)?.title ?? "", file });
      notes.write(lastFileName, JSON.stringify(file));
    },
    /** The last file that was saved, whatever was in it. */
    lastFile: (): KnownFile | null => readFile(parsed(notes.read(lastFileName))),
    forget,
    clear: (): void => {
      ids().forEach(forget);
      notes.clear(lastFileName);
      notes.clear(countName);
    },
  };
}

const prefix = "padwright fitting ";
const lastFileName = "padwright last file";
/** Earlier releases noted how many there were. */
const countName = "padwright fittings kept";
/** Enough to tell one fitting from another. */
const longestTitle = 80;

function readFile(found: unknown): KnownFile | null {
  const { name, savedAt } = fieldsOf(found);
  return typeof name === "string" && typeof savedAt === "string" ? { name, savedAt } : null;
}

const parsed = (text: string | null): unknown => (text === null ? null : quietly(() => JSON.parse(text) as unknown));
