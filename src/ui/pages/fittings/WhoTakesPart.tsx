import { rosterNames, rosterWords } from "../../../text/roster";
import { type ListedEntry, titleOf } from "./fittingEntry";
import type { Student } from "./useClassWork";

interface Listed extends Student {
  readonly title: string;
  readonly revision: number;
}

const byName = new Intl.Collator();

/** By their names, and not by what was changed last, so that everyone's number stays the same from one print to the next. */
export function rosterOf(entries: readonly ListedEntry[], isNamed: boolean): readonly Listed[] {
  const sorted = entries.toSorted(
    (one, other) => byName.compare(one.entry.title, other.entry.title) || (one.entry.id < other.entry.id ? -1 : 1),
  );
  const names = rosterNames(
    sorted.map(({ entry }) => entry.title),
    isNamed,
  );
  return sorted.map((listed, i) => {
    const { id, revision } = listed.entry;
    return { id, revision, title: titleOf(listed), name: names[i] ?? "" };
  });
}

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
