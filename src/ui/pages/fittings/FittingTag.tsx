import { useId, useState } from "react";
import { useOpening } from "../../kit/shelf/useOpening";
import { libraryWords } from "../../../text/library";
import { ComparePanel } from "./ComparePanel";
import { type TagPanel, type TagProps, titleOf, useOpened, useProgress } from "./fittingEntry";
import { momentText } from "../../../text/moment";
import { refusalOf } from "../../../text/fileSentences";
import { SharePanel } from "../../kit/shelf/SharePanel";
import { listMayHaveChanged, useShelf } from "../../kit/shelf/shelf";
import { TagActions } from "./TagActions";

/** One fitting on the shelf, as a tag tied to it: whose it is, what is left to do, and what can be done with it. */
export function FittingTag(props: TagProps) {
  const { autosave, listed, others, say } = props;
  const { entry } = listed;
  const [panel, setPanel] = useState<TagPanel | null>(null);
  const heading = useId();
  const opened = useOpening(autosave);
  // The store is asked anew whenever the state of what is open changes.
  const isOnTable = useShelf(({ open }) => open !== null && autosave.openId() === entry.id);
  const progress = useProgress(autosave.context.storage, entry);
  const title = titleOf(listed);
  const isRemoved = entry.deletedAt !== null;
  const open = async () => {
    const refusal = await opened(entry.id);
    if (refusal !== null) say(refusal);
    listMayHaveChanged();
  };
  const more = () => setPanel(panel === null ? "actions" : null);
  return (
    <li className={isOnTable ? "tag tag-on-table" : "tag"} aria-labelledby={heading}>
      <div className="tag-face apart">
        <div className="tag-words">
          <h2 className="tag-title" id={heading}>
            {title}
          </h2>
          <p>
            {isOnTable && <strong className="tag-mark">{libraryWords.onTable}</strong>} {progress}
          </p>
          <p className="quiet small">{libraryWords.changed(momentText(entry.changedAt))}</p>
        </div>
        <div className="row tag-ways">
          {isRemoved ? (
            <RemovedWays {...props} />
          ) : (
            <>
              <button type="button" className="patch" onClick={() => void open()}>
                {isOnTable ? libraryWords.goOn : libraryWords.open}
                <span className="unseen"> {title}</span>
              </button>
              <button
                type="button"
                className="patch"
                aria-expanded={panel !== null}
                aria-label={libraryWords.moreOf(title)}
                onClick={more}
              >
                {libraryWords.more}
              </button>
            </>
          )}
        </div>
      </div>
      {panel === "actions" && <TagActions {...props} onPanel={setPanel} />}
      {panel === "share" && <ShareOpened {...props} />}
      {panel === "compare" && (
        <ComparePanel storage={autosave.context.storage} listed={listed} others={others} title={title} />
      )}
    </li>
  );
}

function ShareOpened({ autosave, listed }: TagProps) {
  const fitting = useOpened(autosave.context.storage, listed.entry);
  return fitting && <SharePanel fitting={fitting} title={titleOf(listed)} />;
}

function RemovedWays({ autosave, listed, onDone, say }: TagProps) {
  const { storage } = autosave.context;
  const { id } = listed.entry;
  const restore = async () => {
    const refusal = refusalOf(await storage.restore(id));
    if (refusal !== null) say(refusal);
    else onDone(libraryWords.putBack(titleOf(listed)), () => storage.remove(id).then(refusalOf));
  };
  const erase = async () => {
    const refusal = refusalOf(await storage.erase(id));
    if (refusal !== null) say(refusal);
    autosave.context.channel.send({ kind: "listChanged" });
    listMayHaveChanged();
  };
  return (
    <>
      <button type="button" className="patch" onClick={() => void restore()}>
        {libraryWords.restore}
      </button>
      <button type="button" className="patch" onClick={() => void erase()}>
        {libraryWords.erase}
      </button>
    </>
  );
}
