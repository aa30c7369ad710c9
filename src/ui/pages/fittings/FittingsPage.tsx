import { useState } from "react";
import type { Autosave } from "../../../app/storage/autosave";
import { useAnnounce } from "../../kit/Announcer";
import { newFitting } from "../../../app/session/newFitting";
import { goTo } from "../../kit/page";
import { notListedTexts } from "../../../text/files";
import { libraryWords } from "../../../text/library";
import { useUnit } from "../../kit/useStore";
import { ClassPart } from "./ClassPart";
import { DevicePart } from "./DevicePart";
import { FilePart } from "./FilePart";
import { FittingTags, UnkeptTag } from "./FittingTags";
import type { ListedEntry, WayBack } from "./fittingEntry";
import { SetAsidePart } from "./SetAsidePart";
import { listMayHaveChanged, useShelf } from "../../kit/shelf/shelf";
import { type Listing, useListing } from "../../kit/shelf/useListing";

/** The shelf: every fitting kept on this device, files in and out, and what was set aside. */
export function FittingsPage() {
  const autosave = useShelf((state) => state.autosave);
  return (
    <>
      <div className="place-head">
        <h1>{libraryWords.title}</h1>
        <p className="lead">{libraryWords.lead}</p>
      </div>
      {autosave ? <Shelf autosave={autosave} /> : <p className="quiet">{libraryWords.loading}</p>}
    </>
  );
}

function Shelf({ autosave }: { readonly autosave: Autosave }) {
  const found = useListing(autosave);
  if (found.kind === "looking") return <p className="quiet">{libraryWords.loading}</p>;
  if (found.kind === "notRead") return <p className="caution">{notListedTexts[found.reason]}</p>;
  const { listing } = found;
  return (
    <>
      <FittingList autosave={autosave} listing={listing} />
      {listing.toCome === 0 && (
        <ClassPart
          settings={listing.settings}
          storage={autosave.context.storage}
          entries={listing.fittings
            .filter((one) => one.kind === "fitting")
            .filter(({ entry }) => entry.deletedAt === null && !entry.archived)}
        />
      )}
      {listing.toCome === 0 && <FilePart autosave={autosave} listing={listing} />}
      <SetAsidePart autosave={autosave} listing={listing} />
      <DevicePart autosave={autosave} />
    </>
  );
}

function FittingList({ autosave, listing }: { readonly autosave: Autosave; readonly listing: Listing }) {
  const unit = useUnit();
  const announce = useAnnounce();
  const [sentence, setSentence] = useState("");
  const [done, setDone] = useState<Done | null>(null);
  const listed = listing.fittings.filter((one) => one.kind === "fitting");
  const shown = listed.filter(({ entry }) => entry.deletedAt === null && !entry.archived);
  const putAway = listed.filter(({ entry }) => entry.deletedAt === null && entry.archived);
  const binned = listed.filter(({ entry }) => entry.deletedAt !== null);
  const say = (text: string) => {
    setSentence(text);
    announce(text);
  };
  const begin = async () => {
    if ((await autosave.put(newFitting(unit))) === "put") goTo("body");
    else say(libraryWords.notKept);
  };
  const changed = () => {
    autosave.context.channel.send({ kind: "listChanged" });
    listMayHaveChanged();
  };
  const onDone = (text: string, undo: WayBack) => {
    setSentence("");
    setDone({ sentence: text, undo });
    announce(text);
    changed();
  };
  const undo = async () => {
    if (done === null) return;
    setDone(null);
    const trouble = await done.undo();
    if (trouble === null) announce(libraryWords.undone);
    else {
      say(trouble);
      setDone(done);
    }
    changed();
  };
  const tags = (entries: readonly ListedEntry[]) => (
    <FittingTags entries={entries} autosave={autosave} others={listed} onDone={onDone} say={say} />
  );
  return (
    <section className="stack">
      <button type="button" className="patch patch-main" onClick={() => void begin()}>
        {libraryWords.newFitting}
      </button>
      {sentence !== "" && <p className="caution">{sentence}</p>}
      {done && (
        <p className="caution row">
          {done.sentence}
          <button type="button" className="patch" onClick={() => void undo()}>
            {libraryWords.undo}
          </button>
        </p>
      )}
      <UnkeptTag autosave={autosave} />
      {listing.toCome > 0 && <p className="quiet">{libraryWords.toCome(listing.toCome)}</p>}
      {shown.length === 0 && listing.toCome === 0 && <p className="quiet">{libraryWords.empty}</p>}
      {tags(shown)}
      {putAway.length > 0 && (
        <Folded title={`${libraryWords.archivedTitle} (${putAway.length})`}>{tags(putAway)}</Folded>
      )}
      {binned.length > 0 && (
        <Folded title={`${libraryWords.removedTitle} (${binned.length})`}>
          <p className="quiet">{libraryWords.removedNote}</p>
          {tags(binned)}
        </Folded>
      )}
    </section>
  );
}

/** What was done last on the shelf, and the way back from it. */
interface Done {
  readonly sentence: string;
  readonly undo: WayBack;
}

function Folded({ title, children }: { readonly title: string; readonly children: React.ReactNode }) {
  return (
    <details className="folded wide">
      <summary>{title}</summary>
      {children}
    </details>
  );
}
