import { measuredAgain } from "../../../app/session/measuredAgain";
import { useEffect, useRef, useState } from "react";
import { fileName, offerFile } from "../../../app/share/fileOffer";
import { writeFittingFile } from "../../../app/share/fittingFile";
import { writeSheet } from "../../../app/share/measurementSheet";
import type { NotSaved } from "../../../app/storage/fittingOutcome";
import { renameFitting } from "../../../app/storage/renameFitting";
import type { Fitting } from "../../../document/fitting";
import { newFitting } from "../../../app/session/newFitting";
import { againTitle, copyTitle } from "../../../text/copyTitles";
import { libraryWords } from "../../../text/library";
import { useDispatch, useUnit } from "../../kit/useStore";
import { openedEntry, type TagPanel, type TagProps, titleOf, type WayBack } from "./fittingEntry";
import { dayText, presentInstant } from "../../../text/moment";
import { refusalAmong, refusalOf, unsavedText } from "../../../text/fileSentences";
import { shelf } from "../../kit/shelf/shelf";
import { type Way, Ways } from "../../kit/Ways";

interface ActionProps extends TagProps {
  readonly onPanel: (panel: TagPanel | null) => void;
}

/** Everything that can be done with a fitting besides opening it. */
export function TagActions(props: ActionProps) {
  const { autosave, listed, others, onPanel, onDone, say } = props;
  const { entry } = listed;
  const { storage } = autosave.context;
  const unit = useUnit();
  const title = titleOf(listed);
  const titles = others.map((other) => other.entry.title);
  const after = (outcome: { readonly kind: string } | NotSaved, sentence: string, undo: WayBack) => {
    const refusal = refusalOf(outcome);
    if (refusal !== null) say(refusal);
    else onDone(sentence, undo);
    onPanel(null);
  };
  /** Does something with what the fitting says, or says that it cannot be read. */
  const withFitting = async (work: (fitting: Fitting) => unknown) => {
    const opened = await openedEntry(storage, entry.id);
    if (opened === null) return say(libraryWords.cannotOpen);
    await work(opened.fitting);
  };
  const addCopy = async (copy: Omit<Fitting, "id">) => {
    const outcome = await storage.add([copy]);
    const copies = outcome.kind === "added" ? outcome.fittings : [];
    after(outcome, libraryWords.copied(title), async () =>
      refusalAmong(await Promise.all(copies.map(({ id }) => storage.remove(id)))),
    );
  };
  const archive = async () => {
    const { id, archived } = entry;
    const outcome = await storage.setArchived(id, !archived);
    const sentence = archived ? libraryWords.takenOut(title) : libraryWords.putAway(title);
    after(outcome, sentence, () => storage.setArchived(id, archived).then(refusalOf));
  };
  const remove = async () => {
    const isOnTable = autosave.openId() === entry.id;
    if (isOnTable && (await autosave.put(newFitting(unit))) === "notKept") return say(libraryWords.notKept);
    const outcome = await storage.remove(entry.id);
    // What stays on the list stays open.
    if (isOnTable && refusalOf(outcome) !== null) await autosave.open(entry.id);
    after(outcome, libraryWords.removed(title), () => storage.restore(entry.id).then(refusalOf));
  };
  const save = (kind: "json" | "csv", text: string) => {
    const name = fileName("fitting", entry.title, presentInstant(), kind);
    offerFile(document, name, text, kind);
    // A table holds the measurements and not the fitting.
    if (kind === "json") storage.noteFile([entry.id], name);
  };
  const openedActions: readonly (readonly [string, (fitting: Fitting) => unknown])[] = [
    [libraryWords.copy, ({ id: _, ...fitting }) => addCopy({ ...fitting, title: copyTitle(entry.title, titles) })],
    [
      libraryWords.again,
      (fitting) => addCopy(measuredAgain(fitting, againTitle(entry.title, dayText(presentInstant())))),
    ],
    [libraryWords.saveFile, (fitting) => save("json", writeFittingFile(fitting))],
    [libraryWords.saveTable, (fitting) => save("csv", writeSheet(fitting))],
  ];
  const opening = ([text, work]: (typeof openedActions)[number]) => [text, () => void withFitting(work)] as const;
  const actions: readonly Way[] = [
    ...openedActions.slice(0, 2).map(opening),
    [libraryWords.compare, () => onPanel("compare")],
    [libraryWords.share, () => onPanel("share")],
    ...openedActions.slice(2).map(opening),
    [entry.archived ? libraryWords.unarchive : libraryWords.archive, () => void archive()],
    [libraryWords.remove, () => void remove()],
  ];
  return (
    <div className="tag-panel stack">
      <Rename {...props} />
      <Ways ways={actions} />
      <p className="quiet small">{libraryWords.againNote}</p>
    </div>
  );
}

/** The name is part of the fitting, so it is changed by whoever has its write lock. */
function Rename({ autosave, listed, onDone, say }: ActionProps) {
  const dispatch = useDispatch();
  const { entry } = listed;
  const [title, setTitle] = useState(entry.title);
  // Named elsewhere, or the naming undone.
  useEffect(() => setTitle(entry.title), [entry.title]);
  const named = async (name: string): Promise<string | null> => {
    if (autosave.openId() === entry.id) {
      dispatch({ does: "rename", title: name });
      autosave.retry();
      return (await autosave.isKept()) ? null : unsavedText(shelf.getState().open);
    }
    const outcome = await renameFitting(autosave.context, entry.id, name);
    if (outcome.kind === "saved") return null;
    return refusalOf(outcome);
  };
  const isNaming = useRef(false);
  const rename = async () => {
    // Leaving the field after Enter is the same wish once more.
    if (title === entry.title || isNaming.current) return;
    isNaming.current = true;
    const trouble = await named(title);
    isNaming.current = false;
    if (trouble !== null) return say(trouble);
    onDone(libraryWords.renamed(title === "" ? libraryWords.untitled : title), () => named(entry.title));
  };
  return (
    <label className="name-field">
      {libraryWords.rename}
      <input
        className="line-input"
        value={title}
        maxLength={200}
        onChange={(event) => setTitle(event.target.value)}
        onBlur={() => void rename()}
        onKeyDown={(event) => {
          if (event.key === "Enter" && !event.nativeEvent.isComposing) void rename();
        }}
      />
    </label>
  );
}
