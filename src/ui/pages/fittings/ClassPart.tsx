import { useEffect, useMemo, useState } from "react";
import { classNumbers, numbersToKeep } from "../../../app/classView/classNumbers";
import type { DeviceSettings } from "../../../app/storage/deviceSettings";
import { namelessCopy } from "../../../app/share/namelessCopy";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import { rosterWords } from "../../../text/roster";
import { classSuppliesWords } from "../../../text/supplies";
import { latePart } from "../../kit/rescue/latePart";
import { useUnit } from "../../kit/useStore";
import { ClassSuppliesFound } from "./ClassSuppliesFound";
import type { ListedEntry } from "./fittingEntry";
import { SaveMany } from "./SaveMany";
import { type MadeForClass, useClassWork } from "./useClassWork";
import { byNames, rosterOf, WhoTakesPart } from "./WhoTakesPart";

/** What prints for a class is fetched when somebody prints. */
const ClassSheets = latePart(() => import("./ClassSheets").then(({ ClassSheets }) => ClassSheets));

interface ClassProps {
  readonly storage: FittingStorage;
  readonly entries: readonly ListedEntry[];
  /** What this device remembers, with the numbers of those who were on the list before. */
  readonly settings: DeviceSettings;
}

/** The roster: who takes part, and what is printed, saved and added up for everyone at once. */
export function ClassPart({ storage, entries, settings }: ClassProps) {
  const unit = useUnit();
  const [unticked, setUnticked] = useState<ReadonlySet<string>>(new Set());
  const [isNamed, setNamed] = useState(true);
  const numbers = useNumbers(storage, entries, settings);
  const all = useMemo(() => rosterOf(entries, isNamed, numbers), [entries, isNamed, numbers]);
  const students = all.filter(({ id }) => !unticked.has(id));
  const state = JSON.stringify(students);
  const { at, made, print, addUp, putAway } = useClassWork(storage, unit, students, state);
  const isIdle = at === null && students.length > 0;
  if (entries.length < 2) return null;
  return (
    <>
      <section className="stitched stack">
        <h2>{rosterWords.title}</h2>
        <p>{rosterWords.lead}</p>
        <WhoTakesPart all={all} unticked={unticked} isNamed={isNamed} isFixed={at !== null} onChange={setUnticked} />
        <label className="tick">
          <input
            type="checkbox"
            checked={!isNamed}
            disabled={at !== null}
            onChange={({ target }) => setNamed(!target.checked)}
          />
          {rosterWords.nameless}
        </label>
        <div className="row">
          {(["padding", "session", "measuring"] as const).map((paper) => (
            <button key={paper} type="button" className="patch" disabled={!isIdle} onClick={() => print(paper)}>
              {rosterWords.print[paper](students.length)}
            </button>
          ))}
          <button type="button" className="patch" disabled={!isIdle} onClick={addUp}>
            {classSuppliesWords.add(students.length)}
          </button>
        </div>
        <SaveMany
          key={state}
          storage={storage}
          ids={students.map(({ id }) => id)}
          text={rosterWords.saveFile(students.length)}
          name={rosterWords.file}
          copies={isNamed ? null : (fitting, place) => namelessCopy(fitting, students[place]?.name ?? "")}
          isDisabled={!isIdle}
        />
        <p role="status">{at === null ? "" : classSuppliesWords.working(at, students.length)}</p>
        {made === null || at !== null ? null : <Made made={made} onPutAway={putAway} />}
      </section>
      {made?.kind === "sheets" && made.people.length > 0 ? (
        <ClassSheets key={made.paper} paper={made.paper} people={made.people} isWhole={made.isWhole} />
      ) : null}
    </>
  );
}

/** Everyone's number, given once and kept on this device. */
function useNumbers(storage: FittingStorage, entries: readonly ListedEntry[], settings: DeviceSettings) {
  // What was given in this visit is known before the list is read anew.
  const [given, setGiven] = useState<DeviceSettings>({});
  const numbers = useMemo(
    () =>
      classNumbers(
        { ...settings, ...given },
        byNames(entries).map(({ entry }) => entry.id),
      ),
    [entries, settings, given],
  );
  useEffect(() => {
    const fresh = entries.length < 2 ? null : numbersToKeep({ ...settings, ...given }, numbers);
    if (fresh === null) return;
    setGiven((before) => ({ ...before, ...fresh }));
    void storage.saveSettings(fresh);
  }, [storage, entries, settings, given, numbers]);
  return numbers;
}

function Made({ made, onPutAway }: { readonly made: MadeForClass; readonly onPutAway: () => void }) {
  return (
    <div className="stack">
      {made.leftOut.length === 0 ? null : <p className="caution">{classSuppliesWords.leftOut(made.leftOut)}</p>}
      {made.kind === "supplies" ? (
        <ClassSuppliesFound supplies={made.supplies} names={made.names} />
      ) : made.people.length > 0 ? (
        <>
          <p>{rosterWords.ready[made.paper](made.people.map(({ name }) => name))}</p>
          <div className="row">
            <button type="button" className="patch" onClick={() => window.print()}>
              {rosterWords.printAgain}
            </button>
            <button type="button" className="patch" onClick={onPutAway}>
              {rosterWords.putAway}
            </button>
          </div>
        </>
      ) : null}
    </div>
  );
}
