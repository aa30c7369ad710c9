import { type ChangeEvent, useState } from "react";
import { type ImportOutcome, importFile } from "../../../app/share/fileImport";
import { readBeside } from "../../../app/share/readBeside";
import { importSheet, type SheetImportOutcome } from "../../../app/share/sheetImport";
import type { Autosave } from "../../../app/storage/autosave";
import type { LengthUnit } from "../../../core/lengthText";
import type { Fitting } from "../../../document/fitting";
import { useAnnounce } from "../Announcer";
import { newFitting } from "../../../app/session/newFitting";
import { copyTitle } from "../../../text/copyTitles";
import { intakeWords } from "../../../text/files";
import { fileWords, libraryWords } from "../../../text/library";
import { useUnit } from "../useStore";
import { importSentences, refusalAmong, sheetSentences } from "../../../text/fileSentences";
import { lookForGone } from "./useListing";
import { listMayHaveChanged } from "./shelf";

interface OpenFileProps {
  readonly autosave: Autosave;
  /** The names on the list, so that a copy gets one of its own. */
  readonly titles: readonly string[];
  readonly text?: string;
}

/** What came of the last file, and the ways on from it. */
interface Report {
  readonly sentences: readonly string[];
  /** What was added, and can be taken away again. */
  readonly added: readonly string[];
  /** What was here already, and can be added all the same. */
  readonly alreadyHere: readonly Fitting[];
}

const reportOf = (sentences: readonly string[]): Report => ({ sentences, added: [], alreadyHere: [] });

/** Opens a file of fittings or a table, says what came of it, and offers to undo it, or to add what is here already. */
export function OpenFile({ autosave, titles, text = fileWords.openFile }: OpenFileProps) {
  const unit = useUnit();
  const [report, setReport] = useState<Report>(reportOf([]));
  const tell = useTell(autosave, setReport);
  const open = async (event: ChangeEvent<HTMLInputElement>) => {
    const [file] = event.target.files ?? [];
    // The same file chosen twice is opened twice.
    event.target.value = "";
    if (file === undefined) return;
    setReport(reportOf([intakeWords.reading]));
    tell(openedReport(await openedFile(file, autosave, unit), unit));
  };
  const addAnyway = async () => {
    const taken = [...titles];
    const copies = report.alreadyHere.map(({ id: _id, ...fitting }) => {
      const title = copyTitle(fitting.title, taken);
      taken.push(title);
      return { ...fitting, title };
    });
    const added = await autosave.context.storage.add(copies);
    const outcome = added.kind === "added" ? { ...added, kind: "imported" as const, alreadyHere: [] } : added;
    tell(openedReport(outcome, unit));
  };
  const undo = async () => {
    const isOpen = report.added.includes(autosave.openId() ?? "");
    if (isOpen && (await autosave.put(newFitting(unit))) === "notKept")
      return tell({ ...report, sentences: [libraryWords.notKept] });
    const outcomes = await Promise.all(report.added.map((id) => autosave.context.storage.remove(id)));
    const refusal = refusalAmong(outcomes);
    tell(refusal === null ? reportOf([intakeWords.undone]) : { ...report, sentences: [refusal] });
  };
  return (
    <>
      <div className="row">
        <label className="patch file-patch">
          {text}
          <input
            className="unseen"
            type="file"
            accept=".json,.csv,application/json,text/csv,text/plain"
            onChange={(event) => void open(event)}
          />
        </label>
      </div>
      <p className="quiet small">{fileWords.openNote}</p>
      {report.sentences.length > 0 && (
        <div className="caution wide stack">
          <ul className="plain-list">
            {report.sentences.map((sentence, i) => (
              // Two fittings may share a name; their order tells them apart.
              <li key={`${sentence}${String(i)}`}>{sentence}</li>
            ))}
          </ul>
          <div className="row">
            {report.added.length > 0 && <Press text={intakeWords.undo} onPress={undo} />}
            {report.alreadyHere.length > 0 && (
              <Press text={intakeWords.addAnyway(report.alreadyHere.length)} onPress={addAnyway} />
            )}
          </div>
        </div>
      )}
    </>
  );
}

/** Shows and says what came of something, and has the list read anew, here and in other tabs. */
function useTell(autosave: Autosave, setReport: (report: Report) => void): (report: Report) => void {
  const announce = useAnnounce();
  return (report) => {
    setReport(report);
    announce(report.sentences.join(" "));
    autosave.context.channel.send({ kind: "listChanged" });
    listMayHaveChanged();
    // What was lost may be back.
    void lookForGone(autosave);
  };
}

function openedReport(outcome: ImportOutcome | SheetImportOutcome, unit: LengthUnit): Report {
  if (outcome.kind === "refusedSheet") return reportOf(sheetSentences(outcome.problems, unit));
  const sentences = importSentences(outcome, unit);
  if (outcome.kind !== "imported") return reportOf(sentences);
  const added = outcome.fittings.flatMap(({ kind, id }) => (kind === "alreadyHere" ? [] : [id]));
  return { sentences, added, alreadyHere: outcome.alreadyHere };
}

function openedFile(file: File, autosave: Autosave, unit: LengthUnit): Promise<ImportOutcome | SheetImportOutcome> {
  const { storage } = autosave.context;
  const isTable = /\.(?:csv|tsv)$/i.test(file.name) || file.type === "text/csv";
  return isTable ? importSheet(file, storage, newFitting(unit)) : importFile(file, storage, read);
}

const read = readBeside(() =>
  typeof Worker === "undefined"
    ? null
    : new Worker(new URL("../../../app/share/fileWorker.ts", import.meta.url), { type: "module" }),
);

function Press({ text, onPress }: { readonly text: string; readonly onPress: () => Promise<void> }) {
  return (
    <button type="button" className="patch" onClick={() => void onPress()}>
      {text}
    </button>
  );
}
