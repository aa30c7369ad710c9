import type { ChangeEvent } from "react";
import type { Autosave } from "../../../app/storage/autosave";
import { intakeWords } from "../../../text/files";
import { fileWords } from "../../../text/library";
import { type Intake, useIntake } from "./useIntake";

interface OpenFileProps {
  readonly autosave: Autosave;
  /** The names on the list, so that a copy gets one of its own. */
  readonly titles: readonly string[];
  readonly text?: string;
}

/** Opens files of fittings and tables, one or several, and says what came of them. */
export function OpenFile({ autosave, titles, text = fileWords.openFile }: OpenFileProps) {
  const intake = useIntake(autosave, titles);
  const open = (event: ChangeEvent<HTMLInputElement>) => {
    const files = [...(event.target.files ?? [])];
    // The same file chosen twice is opened twice.
    event.target.value = "";
    if (files.length > 0) void intake.openFiles(files);
  };
  return (
    <>
      <div className="row">
        <label className="patch file-patch">
          {text}
          <input
            className="unseen"
            type="file"
            multiple
            accept=".json,.csv,application/json,text/csv,text/plain"
            onChange={open}
          />
        </label>
      </div>
      <p className="quiet small">{fileWords.openNote}</p>
      <IntakeSaid intake={intake} />
    </>
  );
}

/** What came of the last files or links, with the way back, and the way to add what is here already. */
export function IntakeSaid({ intake: { report, undo, addAnyway, openAdded } }: { readonly intake: Intake }) {
  if (report.sentences.length === 0) return null;
  return (
    <div className="caution wide stack">
      <ul className="plain-list">
        {report.sentences.map((sentence, i) => (
          // Two fittings may share a name; their order tells them apart.
          <li key={`${sentence}${String(i)}`}>{sentence}</li>
        ))}
      </ul>
      <div className="row">
        {openAdded === null ? null : <Press text={intakeWords.openAdded} onPress={openAdded} />}
        {report.added.length > 0 && <Press text={intakeWords.undo} onPress={undo} />}
        {report.alreadyHere.length > 0 && (
          <Press text={intakeWords.addAnyway(report.alreadyHere.length)} onPress={addAnyway} />
        )}
      </div>
    </div>
  );
}

function Press({ text, onPress }: { readonly text: string; readonly onPress: () => Promise<void> }) {
  return (
    <button type="button" className="patch" onClick={() => void onPress()}>
      {text}
    </button>
  );
}
