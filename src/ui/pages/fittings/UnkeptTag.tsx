import { useState } from "react";
import type { Keeping } from "../../../app/storage/keeping";
import { libraryWords, noticeWords } from "../../../text/library";
import { useFittingState } from "../../kit/useStore";
import { SharePanel } from "../../kit/shelf/SharePanel";
import { useShelf } from "../../kit/shelf/shelf";

/** What lies on the table and was never kept, such as the made-up person: it can be kept or shared as it is. */
export function UnkeptTag({ keeping }: { readonly keeping: Keeping }) {
  const fitting = useFittingState((state) => state.fitting);
  const isKept = useShelf((state) => state.open !== null);
  const [isSharing, setSharing] = useState(false);
  if (isKept || Object.keys(fitting.body).length === 0) return null;
  const title = fitting.title === "" ? libraryWords.untitled : fitting.title;
  return (
    <section className="tag tag-on-table wide">
      <div className="tag-face">
        <div className="tag-words">
          <h2 className="tag-title">{title}</h2>
          <p>
            <strong className="tag-mark">{libraryWords.onTable}</strong> {libraryWords.notKeptYet}
          </p>
        </div>
        <div className="row tag-ways">
          <button type="button" className="patch" onClick={() => keeping.keepNow()}>
            {noticeWords.keepIt}
          </button>
          <button type="button" className="patch" aria-expanded={isSharing} onClick={() => setSharing(!isSharing)}>
            {libraryWords.share}
          </button>
        </div>
      </div>
      {isSharing && <SharePanel fitting={fitting} title={title} />}
    </section>
  );
}
