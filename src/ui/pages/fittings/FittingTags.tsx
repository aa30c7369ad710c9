import { useState } from "react";
import { Boundary } from "../../kit/rescue/PageBoundary";
import { libraryWords } from "../../../text/library";
import { rescueWords } from "../../../text/rescue";
import { FittingTag } from "./FittingTag";
import { type ListedEntry, type TagProps, titleOf } from "./listedEntry";

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
