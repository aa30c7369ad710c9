import { type ChangeEvent, useState } from "react";
import { importFile } from "../../app/share/fileImport";
import { fileName, offerFile } from "../../app/share/fileOffer";
import { writeBundle } from "../../app/share/fittingFile";
import { importSheet } from "../../app/share/sheetImport";
import type { Keeping } from "../../app/storage/keeping";
import type { LengthUnit } from "../../core/lengthText";
import { useAnnounce } from "../Announcer";
import { newFitting } from "../newFitting";
import { fileWords } from "../text/library";
import { useUnit } from "../useStore";
import { importSentences, sheetSentences } from "./fileSentences";
import { dayText, presentInstant } from "./moment";
import { listMayHaveChanged } from "./shelf";
import type { Listing } from "./useListing";

/** Files out and in: everything as one file, and a file of fittings or a table of measurements back. */
export function FilePart({ keeping, listing }: { readonly keeping: Keeping; readonly listing: Listing }) {
  const unit = useUnit();
  const announce = useAnnounce();
  const [report, setReport] = useState<readonly string[]>([]);
  const { storage, channel } = keeping.desk;
  const found = listing.fittings.filter((one) => one.kind === "fitting");
  const unreadable = listing.fittings.length - found.length;
  // What was removed would come back with the file.
  const readable = found.filter(({ entry }) => entry.deletedAt === null);
  const lastFile = typeof listing.settings.lastFileAt === "string" ? listing.settings.lastFileAt : null;
  const changes = readable.filter(({ entry }) => lastFile !== null && entry.changedAt > lastFile).length;

  const saveAll = async () => {
    const now = presentInstant();
    const text = writeBundle(
      readable.map(({ fitting }) => fitting),
      now,
    );
    offerFile(document, fileName("fittings", "", now, "json"), text, "json");
    await storage.saveSettings({ lastFileAt: now });
    listMayHaveChanged();
  };
  const open = async (event: ChangeEvent<HTMLInputElement>) => {
    const [file] = event.target.files ?? [];
    // The same file chosen twice is opened twice.
    event.target.value = "";
    if (file === undefined) return;
    const sentences = await openedFile(file, keeping, unit);
    setReport(sentences);
    announce(sentences.join(" "));
    channel.send({ kind: "listChanged" });
    listMayHaveChanged();
  };
  return (
    <section className="stitched stack">
      <h2>{fileWords.title}</h2>
      <p>{fileWords.lead}</p>
      <p className="quiet">
        {lastFile === null ? fileWords.never : fileWords.lastSaved(dayText(lastFile), changes)}
        {unreadable > 0 && ` ${fileWords.leftOut(unreadable)}`}
      </p>
      <div className="row">
        <button type="button" className="patch" disabled={readable.length === 0} onClick={() => void saveAll()}>
          {fileWords.saveAll(readable.length)}
        </button>
        <label className="patch file-patch">
          {fileWords.openFile}
          <input
            className="unseen"
            type="file"
            accept=".json,.csv,application/json,text/csv,text/plain"
            onChange={(event) => void open(event)}
          />
        </label>
      </div>
      <p className="quiet small">{fileWords.openNote}</p>
      {report.length > 0 && (
        <ul className="plain-list caution wide">
          {report.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

async function openedFile(file: File, keeping: Keeping, unit: LengthUnit): Promise<readonly string[]> {
  const { storage } = keeping.desk;
  const isTable = /\.(?:csv|tsv)$/i.test(file.name) || file.type === "text/csv";
  if (!isTable) return importSentences(await importFile(file, storage), unit);
  const outcome = await importSheet(file, storage, newFitting(unit));
  return outcome.kind === "refusedSheet" ? sheetSentences(outcome.problems, unit) : importSentences(outcome, unit);
}
