import { rosterNames, rosterWords } from "../../../text/roster";
import { type ListedEntry, titleOf } from "./fittingEntry";
import type { Student } from "./useClassWork";

interface Listed extends Student {
  readonly title: string;
  readonly revision: number;
}

const byName = new Intl.Collator();

/** By their names on the list; each with the number that stays the same from one print to the next. */
export function rosterOf(
  entries: readonly ListedEntry[],
  isNamed: boolean,
  numbers: ReadonlyMap<string, number>,
): readonly Listed[] {
  const sorted = byNames(entries).map((listed) => ({ listed, number: numbers.get(listed.entry.id) ?? 0 }));
  // Of two with one name the one with the lower number keeps it as it is.
  const inOrder = sorted.toSorted((one, other) => one.number - other.number);
  const names = rosterNames(
    inOrder.map(({ listed }) => listed.entry.title),
    isNamed,
    inOrder.map(({ number }) => number),
  );
  return sorted.map((one) => {
    const { id, revision } = one.listed.entry;
    const name = names[inOrder.indexOf(one)] ?? "";
    return { id, revision, title: titleOf(one.listed), name, number: one.number };
  });
}

/** The order in which numbers are given to those who have none. */
export const byNames = (entries: readonly ListedEntry[]): readonly ListedEntry[] =>
  entries.toSorted(
    (one, other) => byName.compare(one.entry.title, other.entry.title) || (one.entry.id < other.entry.id ? -1 : 1),
  );

interface WhoProps {
  readonly all: readonly Listed[];
  readonly unticked: ReadonlySet<string>;
  readonly isNamed: boolean;
  readonly isFixed: boolean;
  readonly onChange: (unticked: ReadonlySet<string>) => void;
}

/** Everyone who may take part, to be ticked, with the name on paper where that is another. */
export function WhoTakesPart({ all, unticked, isNamed, isFixed, onChange }: WhoProps) {
  const tick = (id: string) => {
    const others = new Set(unticked);
    if (!others.delete(id)) others.add(id);
    onChange(others);
  };
  return (
    <fieldset className="stack" disabled={isFixed}>
      <legend>{rosterWords.who}</legend>
      {all.map(({ id, title, name }) => (
        <label key={id} className="tick">
          <input type="checkbox" checked={!unticked.has(id)} onChange={() => tick(id)} />
          <span>{isNamed && title === name ? title : rosterWords.calledThere(title, name)}</span>
        </label>
      ))}
      <div className="row">
        <button type="button" className="patch" onClick={() => onChange(new Set())}>
          {rosterWords.everyone}
        </button>
        <button type="button" className="patch" onClick={() => onChange(new Set(all.map(({ id }) => id)))}>
          {rosterWords.nobody}
        </button>
      </div>
    </fieldset>
  );
}
