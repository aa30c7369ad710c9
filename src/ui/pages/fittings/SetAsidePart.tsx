import { useState } from "react";
import { fileName, offerFile } from "../../../app/share/fileOffer";
import type { EraseOutcome } from "../../../app/storage/changeFitting";
import { listedId } from "../../../app/storage/fittingOutcome";
import type { Autosave } from "../../../app/storage/autosave";
import { useAnnounce } from "../../kit/Announcer";
import { goTo } from "../../kit/page";
import { asideWords, libraryWords } from "../../../text/library";
import { momentText, presentInstant } from "../../../text/moment";
import { refusalOf } from "../../../text/fileSentences";
import { listMayHaveChanged } from "../../kit/shelf/shelf";
import type { Listing } from "../../kit/shelf/useListing";
import { Ways } from "../../kit/Ways";

/** What could not be read, exactly as it was found, to be saved as text or erased by the person and nobody else. */
export function SetAsidePart({ autosave, listing }: { readonly autosave: Autosave; readonly listing: Listing }) {
  const { storage } = autosave.context;
  const unread = listing.fittings.filter((one) => one.kind !== "fitting");
  const saveRaw = (text: string) => offerFile(document, fileName("raw text", "", presentInstant(), "txt"), text, "txt");
  const announce = useAnnounce();
  const [said, setSaid] = useState("");
  const look = async (id: string) => {
    const outcome = await autosave.open(id);
    if (outcome === "looking" || outcome === "open") return goTo("plan");
    const sentence = outcome === "notKept" ? libraryWords.notKept : asideWords.cannotLook;
    setSaid(sentence);
    announce(sentence);
  };
  const erase = async (work: Promise<EraseOutcome>) => {
    const refusal = refusalOf(await work);
    setSaid(refusal ?? "");
    if (refusal !== null) announce(refusal);
    listMayHaveChanged();
  };
  if (unread.length === 0 && listing.setAside.length === 0) return null;
  return (
    <section className="stitched stack">
      <h2>{asideWords.title}</h2>
      <p>{asideWords.lead}</p>
      {said !== "" && <p className="caution">{said}</p>}
      <ul className="tags wide">
        {unread.map((one) => (
          <Found
            key={listedId(one)}
            what={one.kind === "newer" ? asideWords.newer : asideWords.unreadable}
            onLook={one.kind === "newer" ? () => void look(one.id) : null}
            onSave={() => saveRaw(one.rawText)}
            onErase={one.kind === "newer" ? null : () => void erase(storage.erase(listedId(one)))}
          />
        ))}
        {listing.setAside.map(({ key, source, takenAt, rawText }) => (
          <Found
            key={key}
            what={asideWords.found(asideWords.kinds[source], momentText(takenAt))}
            onLook={null}
            onSave={() => saveRaw(rawText)}
            onErase={() => void erase(storage.eraseQuarantined(key))}
          />
        ))}
      </ul>
    </section>
  );
}

interface FoundProps {
  readonly what: string;
  readonly onLook: (() => void) | null;
  readonly onSave: () => void;
  readonly onErase: (() => void) | null;
}

function Found({ what, onLook, onSave, onErase }: FoundProps) {
  return (
    <li className="tag tag-aside">
      <div className="tag-face apart">
        <p className="tag-words">{what}</p>
        <Ways
          ways={[
            onLook && [asideWords.look, onLook],
            [asideWords.saveRaw, onSave],
            onErase && [asideWords.erase, onErase],
          ]}
        />
      </div>
    </li>
  );
}
