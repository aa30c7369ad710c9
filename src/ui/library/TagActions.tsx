import { useEffect, useState } from "react";
import { fileName, offerFile } from "../../app/share/fileOffer";
import { writeFittingFile } from "../../app/share/fittingFile";
import { writeSheet } from "../../app/share/measurementSheet";
import type { NotSaved } from "../../app/storage/fittingOutcome";
import { renameFitting } from "../../app/storage/renameFitting";
import { newFitting } from "../newFitting";
import { libraryWords, troubleTexts } from "../text/library";
import { useDispatch, useUnit } from "../useStore";
import { type TagPanel, type TagProps, titleOf } from "./listedEntry";
import { dayText, presentInstant } from "./moment";

interface ActionProps extends TagProps {
  readonly onPanel: (panel: TagPanel | null) => void;
}

/** Everything that can be done with a fitting besides opening it. */
export function TagActions(props: ActionProps) {
  const { keeping, listed, onPanel, onDone, say } = props;
  const { entry, fitting } = listed;
  const { storage } = keeping.desk;
  const unit = useUnit();
  const title = titleOf(listed);
  const after = (outcome: { readonly kind: string } | NotSaved, sentence: string, undo: () => Promise<unknown>) => {
    if (isNotSaved(outcome)) say(troubleTexts[outcome.reason]);
    else onDone(sentence, undo);
    onPanel(null);
  };
  const addCopy = async (copyTitle: string) => {
    const { id: _id, ...rest } = fitting;
    const outcome = await storage.add([{ ...rest, title: copyTitle }]);
    const copies = outcome.kind === "added" ? outcome.fittings : [];
    after(outcome, libraryWords.copied(title), () => Promise.all(copies.map(({ id }) => storage.remove(id))));
  };
  const archive = async () => {
    const { id, archived } = entry;
    const outcome = await storage.setArchived(id, !archived);
    const sentence = archived ? libraryWords.takenOut(title) : libraryWords.putAway(title);
    after(outcome, sentence, () => storage.setArchived(id, archived));
  };
  const remove = async () => {
    const isOnTable = keeping.openId() === entry.id;
    if (isOnTable && (await keeping.put(newFitting(unit))) === "notKept") return say(libraryWords.notKept);
    const outcome = await storage.remove(entry.id);
    after(outcome, libraryWords.removed(title), () => storage.restore(entry.id));
  };
  const save = (kind: "json" | "csv", text: string) =>
    offerFile(document, fileName("fitting", entry.title, presentInstant(), kind), text, kind);
  const actions: readonly (readonly [string, () => void])[] = [
    [libraryWords.copy, () => void addCopy(libraryWords.copyTitle(entry.title))],
    [libraryWords.again, () => void addCopy(libraryWords.againTitle(entry.title, dayText(presentInstant())))],
    [libraryWords.compare, () => onPanel("compare")],
    [libraryWords.share, () => onPanel("share")],
    [libraryWords.saveFile, () => save("json", writeFittingFile(fitting))],
    [libraryWords.saveTable, () => save("csv", writeSheet(fitting))],
    [entry.archived ? libraryWords.unarchive : libraryWords.archive, () => void archive()],
    [libraryWords.remove, () => void remove()],
  ];
  return (
    <div className="tag-panel stack">
      <Rename {...props} />
      <div className="row">
        {actions.map(([text, act]) => (
          <button key={text} type="button" className="patch" onClick={act}>
            {text}
          </button>
        ))}
      </div>
      <p className="quiet small">{libraryWords.againNote}</p>
    </div>
  );
}

const isNotSaved = (outcome: { readonly kind: string } | NotSaved): outcome is NotSaved => outcome.kind === "notSaved";

/** The name is part of the fitting, so it is changed by whoever has its pen. */
function Rename({ keeping, listed, onDone, say }: ActionProps) {
  const dispatch = useDispatch();
  const { entry } = listed;
  const [title, setTitle] = useState(entry.title);
  // Named elsewhere, or the naming undone.
  useEffect(() => setTitle(entry.title), [entry.title]);
  const named = async (name: string): Promise<string | null> => {
    if (keeping.openId() === entry.id) {
      dispatch({ does: "rename", title: name });
      return null;
    }
    const outcome = await renameFitting(keeping.desk, entry.id, name);
    if (outcome.kind === "saved") return null;
    return outcome.reason === "changedElsewhere" ? libraryWords.openElsewhere : troubleTexts[outcome.reason];
  };
  const rename = async () => {
    if (title === entry.title) return;
    const trouble = await named(title);
    if (trouble !== null) return say(trouble);
    onDone(libraryWords.renamed(title === "" ? libraryWords.untitled : title), async () => {
      const troubleBack = await named(entry.title);
      if (troubleBack !== null) say(troubleBack);
    });
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
          if (event.key === "Enter") void rename();
        }}
      />
    </label>
  );
}
