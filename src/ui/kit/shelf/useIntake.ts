import { useState } from "react";
import { type ImportOutcome, importFile } from "../../../app/share/fileImport";
import { importLinks, type LinksOutcome } from "../../../app/share/linkImport";
import { readBeside } from "../../../app/share/readBeside";
import { importSheet, type SheetImportOutcome } from "../../../app/share/sheetImport";
import type { Autosave } from "../../../app/storage/autosave";
import type { LengthUnit } from "../../../core/lengthText";
import type { Fitting } from "../../../document/fitting";
import { newFitting } from "../../../app/session/newFitting";
import { copyTitle } from "../../../text/copyTitles";
import { filesSentences, linksSentences, type OpenedFile, refusalAmong } from "../../../text/fileSentences";
import { intakeWords } from "../../../text/files";
import { libraryWords } from "../../../text/library";
import { useAnnounce } from "../Announcer";
import { useUnit } from "../useStore";
import { useOpening } from "./useOpening";
import { listMayHaveChanged } from "./shelf";
import { lookForGone } from "./useListing";

/** What came of the last files or links, and the ways on from it. */
export interface IntakeReport {
  readonly sentences: readonly string[];
  /** What was added, and can be taken away again. */
  readonly added: readonly string[];
  /** What was here already, and can be added all the same. */
  readonly alreadyHere: readonly Fitting[];
}

export interface Intake {
  readonly report: IntakeReport;
  readonly openFiles: (files: readonly File[]) => Promise<void>;
  /** Whether all of them were taken. */
  readonly openLinks: (links: readonly string[]) => Promise<boolean>;
  readonly addAnyway: () => Promise<void>;
  readonly undo: () => Promise<void>;
  /** Opens the one that was added; null where it was none or several. */
  readonly openAdded: (() => Promise<void>) | null;
}

/** Takes fittings in from files and links, says what came of it, and offers to undo it, or to add what is here already. */
export function useIntake(autosave: Autosave, titles: readonly string[]): Intake {
  const unit = useUnit();
  const opened = useOpening(autosave);
  const { storage } = autosave.context;
  const [report, setReport] = useState<IntakeReport>(reportOf([], []));
  const tell = useTell(autosave, setReport);
  const openFiles = async (files: readonly File[]) => {
    const opened: OpenedFile[] = [];
    for (const [i, file] of files.entries()) {
      const reading = files.length === 1 ? intakeWords.reading : intakeWords.readingMany(i + 1, files.length);
      setReport(reportOf([reading], []));
      opened.push({ name: file.name, outcome: await openedFile(file, autosave, unit) });
    }
    const outcomes = opened.map(({ outcome }) => outcome);
    tell(reportOf(filesSentences(opened, unit), outcomes));
  };
  const openLinks = async (links: readonly string[]) => {
    const outcome = await importLinks(links, storage);
    tell(reportOf(linksSentences(outcome), outcome.taken === null ? [] : [outcome.taken]));
    return outcome.taken?.kind === "imported" && outcome.refused.length === 0;
  };
  const addAnyway = async () => {
    const taken = [...titles];
    const copies = report.alreadyHere.map(({ id: _id, ...fitting }) => {
      const title = copyTitle(fitting.title, taken);
      taken.push(title);
      return { ...fitting, title };
    });
    const added = await storage.add(copies);
    const outcome = added.kind === "added" ? { ...added, kind: "imported" as const, alreadyHere: [] } : added;
    tell(reportOf(filesSentences([{ name: "", outcome }], unit), [outcome]));
  };
  const undo = async () => {
    const isOpen = report.added.includes(autosave.openId() ?? "");
    if (isOpen && (await autosave.put(newFitting(unit))) === "notKept")
      return tell({ ...report, sentences: [libraryWords.notKept] });
    const refusal = refusalAmong(await Promise.all(report.added.map((id) => storage.remove(id))));
    tell(refusal === null ? reportOf([intakeWords.undone], []) : { ...report, sentences: [refusal] });
  };
  const [only] = report.added;
  const openOnly = async (id: string) => {
    const refusal = await opened(id);
    if (refusal !== null) tell({ ...report, sentences: [refusal] });
  };
  const openAdded = only === undefined || report.added.length > 1 ? null : () => openOnly(only);
  return { report, openFiles, openLinks, addAnyway, undo, openAdded };
}

type Taken = ImportOutcome | SheetImportOutcome | NonNullable<LinksOutcome["taken"]>;

function reportOf(sentences: readonly string[], outcomes: readonly Taken[]): IntakeReport {
  const imported = outcomes.flatMap((outcome) => (outcome.kind === "imported" ? [outcome] : []));
  const fittings = imported.flatMap((outcome) => outcome.fittings);
  return {
    sentences,
    added: fittings.flatMap(({ kind, id }) => (kind === "alreadyHere" ? [] : [id])),
    alreadyHere: imported.flatMap((outcome) => outcome.alreadyHere),
  };
}

/** Shows and says what came of something, and has the list read anew, here and in other tabs. */
function useTell(autosave: Autosave, setReport: (report: IntakeReport) => void): (report: IntakeReport) => void {
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
