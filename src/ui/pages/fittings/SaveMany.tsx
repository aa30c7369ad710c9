import { useState } from "react";
import { fileName, offerFile } from "../../../app/share/fileOffer";
import { bundleParts, writeBundle } from "../../../app/share/fittingFile";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import type { Fitting } from "../../../document/fitting";
import { backupWords, notListedTexts } from "../../../text/files";
import { fileWords } from "../../../text/library";
import { presentInstant } from "../../../text/moment";

interface SaveManyProps {
  readonly storage: FittingStorage;
  readonly ids: readonly string[];
  readonly text: string;
  /** What the file's name begins with. */
  readonly name: string;
  /** What goes into the file in place of the fittings themselves, in the order of `ids`; null where they do. */
  readonly copies: ((fitting: Fitting, place: number) => Fitting) | null;
  readonly isDisabled?: boolean;
  readonly onSaved?: (at: string) => void;
}

/** Files that are still to be handed out, when everything is too much for one. */
interface Parts {
  readonly at: string;
  readonly fittings: readonly (readonly Fitting[])[];
  readonly next: number;
}

/** Many fittings as one file; where that could not be opened again, as several, one with each press. */
export function SaveMany({ storage, ids, text, name, copies, isDisabled = false, onSaved }: SaveManyProps) {
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
    const fittings = read.fittings.flatMap((one) =>
      one.kind === "fitting" ? [copies === null ? one.fitting : copies(one.fitting, ids.indexOf(one.entry.id))] : [],
    );
    setTrouble(fittings.length < ids.length ? fileWords.leftOut(ids.length - fittings.length) : null);
    return { at: presentInstant(), fittings: bundleParts(fittings), next: 0 };
  };
  const save = async () => {
    const now = parts ?? (await firstPart());
    if (now === null) return;
    const { at, fittings, next } = now;
    const part = fittings[next] ?? [];
    const file = fileName(name, fittings.length === 1 ? "" : backupWords.part(next + 1, fittings.length), at, "json");
    offerFile(document, file, writeBundle(part, at), "json");
    storage.noteFile(
      part.flatMap(({ id }) => id ?? []),
      file,
    );
    if (next + 1 < fittings.length) return setParts({ at, fittings, next: next + 1 });
    setParts(null);
    onSaved?.(at);
  };
  return (
    <>
      {isReading && <p className="quiet">{backupWords.reading}</p>}
      {trouble !== null && <p className="caution">{trouble}</p>}
      {parts && <p className="caution">{backupWords.divided(parts.fittings.length)}</p>}
      <div className="row">
        <button
          type="button"
          className="patch"
          disabled={ids.length === 0 || isReading || isDisabled}
          onClick={() => void save()}
        >
          {parts ? backupWords.saveNext(parts.next + 1, parts.fittings.length) : text}
        </button>
      </div>
    </>
  );
}
