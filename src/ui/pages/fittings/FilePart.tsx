import { useState } from "react";
import { fileName, offerFile } from "../../../app/share/fileOffer";
import { bundleParts, writeBundle } from "../../../app/share/fittingFile";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import type { Autosave } from "../../../app/storage/autosave";
import type { Fitting } from "../../../document/fitting";
import { backupWords, notListedTexts } from "../../../text/files";
import { fileWords } from "../../../text/library";
import { dayText, presentInstant } from "../../../text/moment";
import { OpenFile } from "../../kit/shelf/OpenFile";
import { listMayHaveChanged } from "../../kit/shelf/shelf";
import type { Listing } from "../../kit/shelf/useListing";

/** Files out and in: everything as files, and a file of fittings or a table of measurements back. */
export function FilePart({ autosave, listing }: { readonly autosave: Autosave; readonly listing: Listing }) {
  const found = listing.fittings.filter((one) => one.kind === "fitting");
  const unreadable = listing.fittings.length - found.length;
  // What was removed would come back with the file.
  const readable = found.filter(({ entry }) => entry.deletedAt === null);
  const { lastFileAt } = listing.settings;
  // The settings may have been lost together with everything else.
  const lastFile = typeof lastFileAt === "string" ? lastFileAt : (autosave.context.storage.lastFile()?.savedAt ?? null);
  const changes = readable.filter(({ entry }) => lastFile !== null && entry.changedAt > lastFile).length;
  return (
    <section className="stitched stack">
      <h2>{fileWords.title}</h2>
      <p>{fileWords.lead}</p>
      <p className="quiet">
        {lastFile === null ? fileWords.never : fileWords.lastSaved(dayText(lastFile), changes)}
        {unreadable > 0 && ` ${fileWords.leftOut(unreadable)}`}
      </p>
      <SaveAll storage={autosave.context.storage} ids={readable.map(({ entry }) => entry.id)} />
      <OpenFile autosave={autosave} titles={found.map(({ entry }) => entry.title)} />
    </section>
  );
}

interface SaveAllProps {
  readonly storage: FittingStorage;
  readonly ids: readonly string[];
}

/** Files that are still to be handed out, when everything is too much for one. */
interface Parts {
  readonly at: string;
  readonly fittings: readonly (readonly Fitting[])[];
  readonly next: number;
}

/** Everything as one file; where that could not be opened again, as several, one with each press. */
export function SaveAll({ storage, ids }: SaveAllProps) {
  const [parts, setParts] = useState<Parts | null>(null);
  const [isReading, setReading] = useState(false);
  const [trouble, setTrouble] = useState<string | null>(null);
  /** Everything is read only now: the list is shown without. */
  const firstPart = async (): Promise<Parts | null> => {
    setReading(true);
    const read = await storage.read(ids);
    setReading(false);
    if (read.kind === "notRead") {
      setTrouble(notListedTexts[read.reason]);
      return null;
    }
    const fittings = read.fittings.flatMap((one) => (one.kind === "fitting" ? [one.fitting] : []));
    setTrouble(fittings.length < ids.length ? fileWords.leftOut(ids.length - fittings.length) : null);
    return { at: presentInstant(), fittings: bundleParts(fittings), next: 0 };
  };
  const save = async () => {
    const now = parts ?? (await firstPart());
    if (now === null) return;
    const { at, fittings, next } = now;
    const part = fittings[next] ?? [];
    const name = fittings.length === 1 ? "" : backupWords.part(next + 1, fittings.length);
    const file = fileName("fittings", name, at, "json");
    offerFile(document, file, writeBundle(part, at), "json");
    storage.noteFile(
      part.flatMap(({ id }) => id ?? []),
      file,
    );
    if (next + 1 < fittings.length) return setParts({ at, fittings, next: next + 1 });
    setParts(null);
    await storage.saveSettings({ lastFileAt: at });
    listMayHaveChanged();
  };
  return (
    <>
      {isReading && <p className="quiet">{backupWords.reading}</p>}
      {trouble !== null && <p className="caution">{trouble}</p>}
      {parts && <p className="caution">{backupWords.divided(parts.fittings.length)}</p>}
      <div className="row">
        <button type="button" className="patch" disabled={ids.length === 0 || isReading} onClick={() => void save()}>
          {parts ? backupWords.saveNext(parts.next + 1, parts.fittings.length) : fileWords.saveAll(ids.length)}
        </button>
      </div>
    </>
  );
}
