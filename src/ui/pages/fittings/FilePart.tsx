import type { FittingStorage } from "../../../app/storage/fittingStorage";
import type { Autosave } from "../../../app/storage/autosave";
import { fileWords } from "../../../text/library";
import { dayText } from "../../../text/moment";
import { OpenFile } from "../../kit/shelf/OpenFile";
import { listMayHaveChanged } from "../../kit/shelf/shelf";
import type { Listing } from "../../kit/shelf/useListing";
import { PasteLinks } from "./PasteLinks";
import { SaveMany } from "./SaveMany";

/** Files out and in: everything as files, and a file of fittings or a table of measurements back. */
export function FilePart({ autosave, listing }: { readonly autosave: Autosave; readonly listing: Listing }) {
  const found = listing.fittings.filter((one) => one.kind === "fitting");
  const titles = found.map(({ entry }) => entry.title);
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
      <OpenFile autosave={autosave} titles={titles} />
      <PasteLinks autosave={autosave} titles={titles} />
    </section>
  );
}

interface SaveAllProps {
  readonly storage: FittingStorage;
  readonly ids: readonly string[];
}

/** Everything as it is; once the last of it was handed out, that is noted. */
export function SaveAll({ storage, ids }: SaveAllProps) {
  const noteAll = async (at: string) => {
    await storage.saveSettings({ lastFileAt: at });
    listMayHaveChanged();
  };
  return (
    <SaveMany
      storage={storage}
      ids={ids}
      text={fileWords.saveAll(ids.length)}
      name="fittings"
      copies={null}
      onSaved={(at) => void noteAll(at)}
    />
  );
}
