import { useState } from "react";
import { fileName, offerFile } from "../../app/share/fileOffer";
import { writeBundles } from "../../app/share/fittingFile";
import type { FittingStorage } from "../../app/storage/fittingStorage";
import type { Fitting } from "../../document/fitting";
import { backupWords } from "../text/files";
import { fileWords } from "../text/library";
import { presentInstant } from "./moment";
import { listMayHaveChanged } from "./shelf";

interface SaveAllProps {
  readonly storage: FittingStorage;
  readonly fittings: readonly Fitting[];
}

/** Files that are still to be handed out, when everything is too much for one. */
interface Parts {
  readonly at: string;
  readonly texts: readonly string[];
  readonly next: number;
}

/** Everything as one file; where that could not be opened again, as several, one with each press. */
export function SaveAll({ storage, fittings }: SaveAllProps) {
  const [parts, setParts] = useState<Parts | null>(null);
  const save = async () => {
    const now = presentInstant();
    const { at, texts, next } = parts ?? { at: now, texts: writeBundles(fittings, now), next: 0 };
    const name = texts.length === 1 ? "" : backupWords.part(next + 1, texts.length);
    offerFile(document, fileName("fittings", name, at, "json"), texts[next] ?? "", "json");
    if (next + 1 < texts.length) return setParts({ at, texts, next: next + 1 });
    setParts(null);
    await storage.saveSettings({ lastFileAt: at });
    listMayHaveChanged();
  };
  return (
    <>
      {parts && <p className="caution">{backupWords.divided(parts.texts.length)}</p>}
      <div className="row">
        <button type="button" className="patch" disabled={fittings.length === 0} onClick={() => void save()}>
          {parts ? backupWords.saveNext(parts.next + 1, parts.texts.length) : fileWords.saveAll(fittings.length)}
        </button>
      </div>
    </>
  );
}
