import type { Keeping } from "../../../app/storage/keeping";
import { fileWords } from "../../../text/library";
import { OpenFile } from "../../kit/shelf/OpenFile";
import { dayText } from "../../../text/moment";
import { SaveAll } from "./SaveAll";
import type { Listing } from "../../kit/shelf/useListing";

/** Files out and in: everything as files, and a file of fittings or a table of measurements back. */
export function FilePart({ keeping, listing }: { readonly keeping: Keeping; readonly listing: Listing }) {
  const found = listing.fittings.filter((one) => one.kind === "fitting");
  const unreadable = listing.fittings.length - found.length;
  // What was removed would come back with the file.
  const readable = found.filter(({ entry }) => entry.deletedAt === null);
  const { lastFileAt } = listing.settings;
  // The settings may have been lost together with everything else.
  const lastFile = typeof lastFileAt === "string" ? lastFileAt : (keeping.desk.storage.lastFile()?.savedAt ?? null);
  const changes = readable.filter(({ entry }) => lastFile !== null && entry.changedAt > lastFile).length;
  return (
    <section className="stitched stack">
      <h2>{fileWords.title}</h2>
      <p>{fileWords.lead}</p>
      <p className="quiet">
        {lastFile === null ? fileWords.never : fileWords.lastSaved(dayText(lastFile), changes)}
        {unreadable > 0 && ` ${fileWords.leftOut(unreadable)}`}
      </p>
      <SaveAll storage={keeping.desk.storage} ids={readable.map(({ entry }) => entry.id)} />
      <OpenFile keeping={keeping} titles={found.map(({ entry }) => entry.title)} />
    </section>
  );
}
