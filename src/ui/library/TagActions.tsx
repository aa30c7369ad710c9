import { useState } from "react";
import { fileName, offerFile } from "../../app/share/fileOffer";
import { writeFittingFile } from "../../app/share/fittingFile";
import { writeSheet } from "../../app/share/measurementSheet";
import { renameFitting } from "../../app/storage/renameFitting";
import { newFitting } from "../newFitting";
import { libraryWords, troubleTexts } from "../text/library";
import { useDispatch, useUnit } from "../useStore";
import type { TagPanel, TagProps } from "./listedEntry";
import { dayText, presentInstant } from "./moment";
import { listMayHaveChanged } from "./shelf";

interface ActionProps extends TagProps {
  readonly onPanel: (panel: TagPanel | null) => void;
}

/** Everything that can be done with a fitting besides opening it. */
export function TagActions(props: ActionProps) {
  const { keeping, listed, onPanel, onRemoved, say } = props;
  const { entry, fitting } = listed;
  const { storage, channel } = keeping.desk;
  const unit = useUnit();
  const after = async (work: Promise<{ readonly kind: string; readonly reason?: keyof typeof troubleTexts }>) => {
    const outcome = await work;
    if (outcome.reason !== undefined) say(troubleTexts[outcome.reason]);
    channel.send({ kind: "listChanged" });
    listMayHaveChanged();
    onPanel(null);
  };
  const addCopy = (title: string) => {
    const { id: _id, ...rest } = fitting;
    void after(storage.add([{ ...rest, title }]));
  };
  const remove = async () => {
    const isOnTable = keeping.openId() === entry.id;
    if (isOnTable && (await keeping.put(newFitting(unit))) === "notKept") return say(libraryWords.notKept);
    await after(storage.remove(entry.id));
    onRemoved(listed);
  };
  const save = (kind: "json" | "csv", text: string) =>
    offerFile(document, fileName("fitting", entry.title, presentInstant(), kind), text, kind);
  const actions: readonly (readonly [string, () => void])[] = [
    [libraryWords.copy, () => addCopy(libraryWords.copyTitle(entry.title))],
    [libraryWords.again, () => addCopy(libraryWords.againTitle(entry.title, dayText(presentInstant())))],
    [libraryWords.compare, () => onPanel("compare")],
    [libraryWords.share, () => onPanel("share")],
    [libraryWords.saveFile, () => save("json", writeFittingFile(fitting))],
    [libraryWords.saveTable, () => save("csv", writeSheet(fitting))],
    [
      entry.archived ? libraryWords.unarchive : libraryWords.archive,
      () => void after(storage.setArchived(entry.id, !entry.archived)),
    ],
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

/** The name is part of the fitting, so it is changed by whoever has its pen. */
function Rename({ keeping, listed, say }: ActionProps) {
  const dispatch = useDispatch();
  const { entry } = listed;
  const [title, setTitle] = useState(entry.title);
  const rename = async () => {
    if (title === entry.title) return;
    if (keeping.openId() === entry.id) {
      dispatch({ does: "rename", title });
      return;
    }
    const outcome = await renameFitting(keeping.desk, entry.id, title);
    if (outcome.kind === "saved") say(libraryWords.renamed);
    else say(outcome.reason === "changedElsewhere" ? libraryWords.openElsewhere : troubleTexts[outcome.reason]);
    listMayHaveChanged();
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
