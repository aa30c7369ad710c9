/** Notes outside the database: each is a kindness, and without room or leave for it the tool works as well. */
export interface NotesPage {
  readonly localStorage?: Storage;
}

export const quietNotes = (page: NotesPage) => ({
  read: (name: string): string | null => quietly(() => page.localStorage?.getItem(name)) ?? null,
  write: (name: string, text: string): unknown => quietly(() => page.localStorage?.setItem(name, text)),
  clear: (name: string): unknown => quietly(() => page.localStorage?.removeItem(name)),
  names: (): readonly string[] =>
    quietly(() => Array.from({ length: page.localStorage?.length ?? 0 }, (_, i) => page.localStorage?.key(i) ?? "")) ??
    [],
});

export function quietly<Found>(work: () => Found): Found | null {
  try {
    return work();
  } catch {
    return null;
  }
}
