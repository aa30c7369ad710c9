import { useState } from "react";
import { fileName, offerFile } from "../../../app/share/fileOffer";
import { type ListedFitting, listedId } from "../../../app/storage/fittingOutcome";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import { rawText } from "../../../app/storage/quarantine";
import type { Autosave } from "../../../app/storage/autosave";
import { writeFitting } from "../../../document/fitting";
import { momentText, presentInstant } from "../../../text/moment";
import { useShelf } from "../shelf/shelf";
import { useListing } from "../shelf/useListing";
import { useOpening } from "../shelf/useOpening";
import { libraryWords } from "../../../text/library";
import { rescueWords } from "../../../text/rescue";

/** The fittings on this device in the plainest form, which plans nothing: names, a way to open one, and its raw text. */
export function OtherFittings() {
  const autosave = useShelf((state) => state.autosave);
  return (
    <section className="stack">
      <h2>{rescueWords.others}</h2>
      {autosave === null ? <p className="quiet">{rescueWords.othersUnread}</p> : <Others autosave={autosave} />}
    </section>
  );
}

function Others({ autosave }: { readonly autosave: Autosave }) {
  const found = useListing(autosave);
  const [said, setSaid] = useState("");
  const opened = useOpening(autosave);
  if (found.kind === "looking") return <p className="quiet">{libraryWords.loading}</p>;
  if (found.kind === "notRead") return <p className="caution">{rescueWords.othersUnread}</p>;
  const others = found.listing.fittings.filter(
    (one) => listedId(one) !== autosave.openId() && !(one.kind === "fitting" && one.entry.deletedAt !== null),
  );
  const open = async (id: string) => {
    const refusal = await opened(id);
    if (refusal !== null) setSaid(refusal);
  };
  if (others.length === 0) return <p className="quiet">{rescueWords.noOthers}</p>;
  return (
    <>
      {said !== "" && <p className="caution">{said}</p>}
      <ul className="tags wide">
        {others.slice(0, mostShown).map((one) => (
          <Other
            key={listedId(one)}
            listed={one}
            storage={autosave.context.storage}
            onOpen={() => void open(listedId(one))}
            onTrouble={() => setSaid(libraryWords.cannotOpen)}
          />
        ))}
      </ul>
      {others.length > mostShown && <p className="quiet">{rescueWords.moreOthers(others.length - mostShown)}</p>}
    </>
  );
}

/** A list of thousands would make a page that already failed slow as well. */
const mostShown = 50;

interface OtherProps {
  readonly listed: ListedFitting;
  readonly storage: FittingStorage;
  readonly onOpen: () => void;
  readonly onTrouble: () => void;
}

function Other({ listed, storage, onOpen, onTrouble }: OtherProps) {
  const title = listed.kind === "fitting" && listed.entry.title !== "" ? listed.entry.title : libraryWords.untitled;
  const saveRaw = async () => {
    const read = await storage.read([listedId(listed)]);
    const [found] = read.kind === "read" ? read.fittings : [];
    if (found === undefined) return onTrouble();
    const raw = found.kind === "fitting" ? rawText(writeFitting(found.fitting)) : found.rawText;
    offerFile(document, fileName("raw text", title, presentInstant(), "txt"), raw, "txt");
  };
  return (
    <li className="tag">
      <div className="tag-face apart">
        <div className="tag-words">
          <p>{title}</p>
          {listed.kind === "fitting" && (
            <p className="quiet small">{libraryWords.changed(momentText(listed.entry.changedAt))}</p>
          )}
        </div>
        <div className="row tag-ways">
          {listed.kind === "fitting" && (
            <button type="button" className="patch" aria-label={rescueWords.openNamed(title)} onClick={onOpen}>
              {libraryWords.open}
            </button>
          )}
          <button
            type="button"
            className="patch"
            aria-label={rescueWords.saveRawOf(title)}
            onClick={() => void saveRaw()}
          >
            {rescueWords.saveRawShort}
          </button>
        </div>
      </div>
    </li>
  );
}
