import { useState } from "react";
import type { Autosave } from "../../../app/storage/autosave";
import { libraryWords, noticeWords } from "../../../text/library";
import { rescueWords } from "../../../text/rescue";
import { Boundary } from "../../kit/rescue/PageBoundary";
import { SharePanel } from "../../kit/shelf/SharePanel";
import { useShelf } from "../../kit/shelf/shelf";
import { useFittingState } from "../../kit/useStore";
import { FittingTag } from "./FittingTag";
import { type ListedEntry, type TagProps, titleOf } from "./fittingEntry";

/** As many as a person looks through at once; the others are a press or a part of their name away. */
const shownAtOnce = 40;

/** The tags of a list, however long it is. */
export function FittingTags({
  entries,
  ...common
}: Omit<TagProps, "listed"> & { readonly entries: readonly ListedEntry[] }) {
  const [most, setMost] = useState(shownAtOnce);
  const [wanted, setWanted] = useState("");
  const isLong = entries.length > shownAtOnce;
  const found = isLong ? entries.filter((one) => isNamed(one, wanted)) : entries;
  return (
    <>
      {isLong && (
        <label className="name-field">
          {libraryWords.find(entries.length)}
          <input
            className="line-input"
            type="search"
            value={wanted}
            onChange={({ target }) => setWanted(target.value)}
          />
        </label>
      )}
      {isLong && found.length === 0 && <p className="quiet">{libraryWords.noneNamed}</p>}
      <ul className="tags">
        {found.slice(0, most).map((one) => (
          <Boundary key={one.entry.id} causes={[one]} instead={() => <FailedTag title={titleOf(one)} />}>
            <FittingTag {...common} listed={one} />
          </Boundary>
        ))}
      </ul>
      {found.length > most && (
        <button type="button" className="patch" onClick={() => setMost(most + shownAtOnce)}>
          {libraryWords.showMore(Math.min(shownAtOnce, found.length - most), found.length - most)}
        </button>
      )}
    </>
  );
}

const FailedTag = ({ title }: { readonly title: string }) => <li className="tag">{rescueWords.tagFailed(title)}</li>;

const isNamed = (one: ListedEntry, wanted: string): boolean =>
  titleOf(one).toLocaleLowerCase().includes(wanted.trim().toLocaleLowerCase());

/** What is open and was never kept, such as the made-up person: it can be kept or shared as it is. */
export function UnkeptTag({ autosave }: { readonly autosave: Autosave }) {
  const fitting = useFittingState((state) => state.fitting);
  const isKept = useShelf((state) => state.open !== null);
  const [isSharing, setSharing] = useState(false);
  if (isKept || Object.keys(fitting.body).length === 0) return null;
  const title = fitting.title === "" ? libraryWords.untitled : fitting.title;
  return (
    <section className="tag tag-on-table wide">
      <div className="tag-face apart">
        <div className="tag-words">
          <h2 className="tag-title">{title}</h2>
          <p>
            <strong className="tag-mark">{libraryWords.onTable}</strong> {libraryWords.notKeptYet}
          </p>
        </div>
        <div className="row tag-ways">
          <button type="button" className="patch" onClick={() => autosave.keepNow()}>
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
