/** The notes of one origin outside its database (the part of Web Storage that is used here), to look at and to turn back. */
export interface FakeNotes extends Storage {
  everything(): readonly (readonly [string, string])[];
  put(notes: readonly (readonly [string, string])[]): void;
}

export function fakeNotes(): FakeNotes {
  let notes = new Map<string, string>();
  return {
    get length() {
      return notes.size;
    },
    key: (i) => [...notes.keys()][i] ?? null,
    getItem: (name) => notes.get(name) ?? null,
    setItem: (name, value) => {
      notes.set(name, value);
    },
    removeItem: (name) => {
      notes.delete(name);
    },
    clear: () => notes.clear(),
    everything: () => [...notes],
    put: (next) => {
      notes = new Map(next);
    },
  };
}
