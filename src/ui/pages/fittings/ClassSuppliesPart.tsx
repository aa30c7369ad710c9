import { useState } from "react";
import {
  type ClassSupplies,
  classSupplies,
  letter,
  type ShareOfClass,
  shareOfClass,
} from "../../../app/supplies/classSupplies";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import { classSuppliesLines, classSuppliesWords, battingToHave, leftWords } from "../../../text/supplies";
import { LayoutPicture } from "../../kit/supplies/LayoutPicture";
import { useLengths } from "../../kit/useStore";
import { type ListedEntry, openedEntry, titleOf } from "./fittingEntry";

interface ClassSuppliesProps {
  readonly storage: FittingStorage;
  readonly entries: readonly ListedEntry[];
}

interface Added {
  readonly supplies: ClassSupplies;
  readonly names: readonly string[];
  readonly leftOut: readonly string[];
}

/** What several fittings take together: who is ticked is read and planned one after the other, then everything is laid together. */
export function ClassSuppliesPart({ storage, entries }: ClassSuppliesProps) {
  const { unit } = useLengths();
  const [unticked, setUnticked] = useState<ReadonlySet<string>>(new Set());
  const [at, setAt] = useState<number | null>(null);
  const [added, setAdded] = useState<Added | null>(null);
  const chosen = entries.filter(({ entry }) => !unticked.has(entry.id));
  const addUp = async () => {
    setAdded(null);
    const shares: ShareOfClass[] = [];
    const names: string[] = [];
    const leftOut: string[] = [];
    for (const [i, listed] of chosen.entries()) {
      setAt(i + 1);
      await afterPaint();
      const opened = await openedEntry(storage, listed.entry.id);
      const share = opened === null ? null : shareOrNone(opened.fitting, shares.length);
      if (share === null) leftOut.push(titleOf(listed));
      else {
        shares.push(share);
        names.push(titleOf(listed));
      }
    }
    setAdded({ supplies: classSupplies(shares, unit), names, leftOut });
    setAt(null);
  };
  const tick = (id: string) => {
    const others = new Set(unticked);
    if (!others.delete(id)) others.add(id);
    setUnticked(others);
    setAdded(null);
  };
  if (entries.length < 2) return null;
  return (
    <section className="stitched stack">
      <h2>{classSuppliesWords.title}</h2>
      <p>{classSuppliesWords.lead}</p>
      <fieldset className="stack">
        <legend>{classSuppliesWords.who}</legend>
        {entries.map((listed) => (
          <label key={listed.entry.id} className="tick">
            <input
              type="checkbox"
              checked={!unticked.has(listed.entry.id)}
              disabled={at !== null}
              onChange={() => tick(listed.entry.id)}
            />
            <span>{titleOf(listed)}</span>
          </label>
        ))}
      </fieldset>
      <div className="row">
        <button
          type="button"
          className="patch"
          disabled={chosen.length === 0 || at !== null}
          onClick={() => void addUp()}
        >
          {classSuppliesWords.add(chosen.length)}
        </button>
      </div>
      <p role="status">{at === null ? "" : classSuppliesWords.working(at, chosen.length)}</p>
      {added === null ? null : <AddedUp added={added} />}
    </section>
  );
}

function AddedUp({ added: { supplies, names, leftOut } }: { readonly added: Added }) {
  const { unit, step } = useLengths();
  return (
    <div className="stack">
      {leftOut.length === 0 ? null : <p className="caution">{classSuppliesWords.leftOut(leftOut)}</p>}
      {supplies.battings.map(({ name, layout }) => (
        <div key={`${name} ${layout.good.id}`} className="stack">
          <p>
            <strong>{battingToHave(name, layout, unit)}</strong> {leftWords(layout, step)}
          </p>
          {layout.tooLarge.length === 0 ? null : (
            <p className="caution">{classSuppliesWords.tooLarge(layout.tooLarge.map(({ label }) => label))}</p>
          )}
          <LayoutPicture layout={layout} name={name} />
        </div>
      ))}
      {names.length === 0 ? null : (
        <>
          <p className="quiet">{classSuppliesWords.letters(names.map((name, i) => `${letter(i)} ${name}`))}</p>
          <ul className="plain-list">
            {classSuppliesLines(supplies, unit).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** One fitting that the planner fails on leaves the sum of the others as it is. */
function shareOrNone(...asked: Parameters<typeof shareOfClass>): ShareOfClass | null {
  try {
    return shareOfClass(...asked);
  } catch {
    return null;
  }
}

/** Two frames of a slow tablet, so that the count is seen before the planning goes on. */
const afterPaint = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 40));
