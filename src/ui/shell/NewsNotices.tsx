import type { Autosave } from "../../app/storage/autosave";
import type { KnownFitting } from "../../app/storage/knownFittings";
import type { Fitting } from "../../document/fitting";
import { goneWords, libraryWords, newsTexts, noticeWords } from "../../text/library";
import { dayText } from "../../text/moment";
import { OpenFile } from "../kit/shelf/OpenFile";
import { forget } from "../kit/shelf/shelf";
import { keepFromLink, openFromLink } from "./receiveLink";
import { type Way, Ways } from "../kit/Ways";

/** Which fittings are lost, which file each of them was last saved to, and the way to open it. */
export function GoneNotice({ autosave, fittings }: { readonly autosave: Autosave; readonly fittings: Gone }) {
  const letBe = () => {
    autosave.context.storage.forgetGone(fittings.map(({ id }) => id));
    forget("gone");
  };
  return (
    <div className="notice notice-trouble">
      {goneSentences(fittings).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <OpenFile autosave={autosave} titles={[]} text={goneWords.openFile} />
      <div className="row">
        <button type="button" className="patch" onClick={letBe}>
          {goneWords.letBe}
        </button>
      </div>
    </div>
  );
}

type Gone = readonly KnownFitting[];

/** First what is lost, by name; then, file by file, what can be had back from where. */
function goneSentences(fittings: Gone): readonly string[] {
  const files = new Map<string, readonly KnownFitting[]>();
  const unsaved = fittings.filter(({ file }) => file === null);
  for (const one of fittings) {
    if (one.file === null) continue;
    const key = goneWords.file(one.file.name, dayText(one.file.savedAt));
    files.set(key, [...(files.get(key) ?? []), one]);
  }
  const saved = [...files].map(([file, inside]) =>
    inside.length === fittings.length ? goneWords.allIn(file) : goneWords.someIn(names(inside), file),
  );
  const never = unsaved.length === fittings.length ? goneWords.noneSaved : goneWords.neverSaved(names(unsaved));
  return [goneWords.lost(names(fittings), fittings.length), ...saved, ...(unsaved.length > 0 ? [never] : [])];
}

const named = 5;

function names(fittings: Gone): string {
  const titles = fittings.slice(0, named).map(({ title }) => `“${title === "" ? libraryWords.untitled : title}”`);
  return goneWords.names(titles, Math.max(0, fittings.length - named));
}

/** A link brought a fitting while somebody was at work on another: which of the two is to be open, or both be kept. */
export function LinkNotice({ autosave, fitting }: { readonly autosave: Autosave; readonly fitting: Fitting }) {
  const ways: readonly Way[] = [
    [noticeWords.openFromLink, () => void openFromLink(autosave, fitting)],
    [noticeWords.keepFromLink, () => void keepFromLink(autosave, fitting)],
    [noticeWords.leaveFromLink, () => forget("linkWaits")],
  ];
  return (
    <div className="notice">
      <p>{newsTexts.linkWaits(fitting.title)}</p>
      <Ways ways={ways} />
    </div>
  );
}
