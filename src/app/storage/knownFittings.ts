/**
 * A note outside the database of the fittings there are, with the file each was last saved to, so that a loss can be
 * told by name. It is kept where browsers do not always clear both at once, one line to a fitting, so that two tabs do not
 * write over each other; where both are cleared nobody can tell, and the first screen offers to open a backup either way.
 */
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

export interface KnownFittings {
  all(): readonly KnownFitting[];
  /** Notes that a fitting is there; a title only where it is known. */
  note(id: string, title?: string): void;
  noteFile(ids: readonly string[], file: KnownFile): void;
  /** The last file that was saved, whatever was in it. */
  lastFile(): KnownFile | null;
  forget(id: string): void;
  clear(): void;
}

type Page = Pick<Window, "localStorage">;

export function knownFittings(page: Page): KnownFittings {
  const read = (id: string): KnownFitting | null =>
    readKnown(
      id,
      quietly(() => page.localStorage.getItem(nameOf(id))),
    );
  const write = ({ id, title, file }: KnownFitting): void => {
    quietly(() => page.localStorage.setItem(nameOf(id), JSON.stringify({ title, file })));
  };
  return {
    all: () => noted(page).flatMap((id) => read(id) ?? []),
    note: (id, title) => {
      const before = read(id);
      const now = { id, title: (title ?? before?.title ?? "").slice(0, longestTitle), file: before?.file ?? null };
      if (before?.title !== now.title) write(now);
    },
    noteFile: (ids, file) => {
      for (const id of ids) write({ id, title: read(id)?.title ?? "", file });
      quietly(() => page.localStorage.setItem(lastFileName, JSON.stringify(file)));
    },
    lastFile: () => readFile(parsed(quietly(() => page.localStorage.getItem(lastFileName)))),
    forget: (id) => {
      quietly(() => page.localStorage.removeItem(nameOf(id)));
    },
    clear: () => {
      for (const id of noted(page)) quietly(() => page.localStorage.removeItem(nameOf(id)));
      quietly(() => page.localStorage.removeItem(lastFileName));
      quietly(() => page.localStorage.removeItem(countName));
    },
  };
}

/** A page that may note nothing. */
export const nothingKnown: KnownFittings = {
  all: () => [],
  note: () => {},
  noteFile: () => {},
  lastFile: () => null,
  forget: () => {},
  clear: () => {},
};

const prefix = "padwright fitting ";
const lastFileName = "padwright last file";
/** Earlier releases noted how many there were. */
const countName = "padwright fittings kept";
/** Enough to tell one fitting from another. */
const longestTitle = 80;

const nameOf = (id: string): string => `${prefix}${id}`;

function noted({ localStorage }: Page): readonly string[] {
  const names = quietly(() => Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? "")) ?? [];
  return names.filter((name) => name.startsWith(prefix)).map((name) => name.slice(prefix.length));
}

function readKnown(id: string, text: string | null): KnownFitting | null {
  if (text === null) return null;
  const found = parsed(text);
  const { title, file } = typeof found === "object" && found !== null ? (found as Partial<KnownFitting>) : {};
  return { id, title: typeof title === "string" ? title : "", file: readFile(file) };
}

function readFile(found: unknown): KnownFile | null {
  const { name, savedAt } = typeof found === "object" && found !== null ? (found as Partial<KnownFile>) : {};
  return typeof name === "string" && typeof savedAt === "string" ? { name, savedAt } : null;
}

const parsed = (text: string | null): unknown => (text === null ? null : quietly(() => JSON.parse(text) as unknown));

/** The note is a kindness: without room or leave for it the tool works as well. */
function quietly<Found>(work: () => Found): Found | null {
  try {
    return work();
  } catch {
    return null;
  }
}
