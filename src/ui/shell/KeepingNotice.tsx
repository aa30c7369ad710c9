import { useEffect } from "react";
import { fileName, offerFile } from "../../app/share/fileOffer";
import { writeFittingFile } from "../../app/share/fittingFile";
import type { NotSaved } from "../../app/storage/fittingOutcome";
import type { Autosave } from "../../app/storage/autosave";
import { linkProblemTexts, newsTexts, noticeWords, troubleTexts } from "../../text/library";
import { useFittingState, useStoreItself } from "../kit/useStore";
import { GoneNotice, LinkNotice } from "./NewsNotices";
import { presentInstant } from "../../text/moment";
import { forget, shelf, type ShelfNews, useShelf } from "../kit/shelf/shelf";

/** What a person must know about keeping, above the work: what happened, and what can be done now. */
export function AutosaveNotice() {
  const open = useShelf((state) => state.open);
  const autosave = useShelf((state) => state.autosave);
  const news = useShelf((state) => state.news);
  const refusal = open?.saving.kind === "notSaved" ? open.saving.refusal : null;
  const isElsewhere = open?.access === "elsewhere" && refusal === null;
  return (
    <div className="notices" role="status" aria-label={noticeWords.label}>
      {autosave && refusal && <Refused autosave={autosave} refusal={refusal} />}
      {autosave && isElsewhere && <Elsewhere autosave={autosave} />}
      {open?.access === "newer" && (
        <div className="notice">
          <p>{noticeWords.newer}</p>
          <Press text={noticeWords.reload} onPress={() => window.location.reload()} />
        </div>
      )}
      {news.map((one) => {
        if (one.kind === "gone")
          return autosave && <GoneNotice key={one.kind} autosave={autosave} fittings={one.fittings} />;
        if (one.kind === "linkWaits")
          return autosave && <LinkNotice key={one.kind} autosave={autosave} fitting={one.fitting} />;
        return <News key={one.kind} news={one} />;
      })}
      <ReleaseNotice />
    </div>
  );
}

function Refused({ autosave, refusal }: { readonly autosave: Autosave; readonly refusal: NotSaved }) {
  const store = useStoreItself();
  const saveFile = () => {
    const { fitting } = store.getState();
    const name = fileName("fitting", fitting.title, presentInstant(), "json");
    offerFile(document, name, writeFittingFile(fitting), "json");
    const id = autosave.openId();
    if (id !== null) autosave.context.storage.noteFile([id], name);
  };
  return (
    <div className="notice notice-trouble">
      <p>{troubleTexts[refusal.reason]}</p>
      <div className="row">
        {refusal.reason === "changedElsewhere" ? (
          <>
            <Press text={noticeWords.keepCopy} onPress={() => void autosave.keepAsCopy()} />
            <Press text={noticeWords.takeTheirs} onPress={() => void autosave.readAnew()} />
          </>
        ) : (
          <>
            <Press text={noticeWords.saveFile} onPress={saveFile} />
            <Press text={noticeWords.retry} onPress={() => autosave.retry()} />
          </>
        )}
      </div>
    </div>
  );
}

function Elsewhere({ autosave }: { readonly autosave: Autosave }) {
  return (
    <div className="notice">
      <p>{noticeWords.elsewhere}</p>
      <Press text={noticeWords.workHere} onPress={() => void autosave.takeOver()} />
    </div>
  );
}

type OtherNews = Exclude<ShelfNews, { readonly kind: "gone" | "linkWaits" }>;

function News({ news }: { readonly news: OtherNews }) {
  const autosave = useShelf((state) => state.autosave);
  const isOpen = useShelf((state) => state.open !== null);
  useEffect(() => {
    if (news.kind === "received" && isOpen) forget("received");
  }, [news, isOpen]);
  return (
    <div className="notice">
      <p>{newsText(news)}</p>
      <div className="row">
        {news.kind === "received" && <Press text={noticeWords.keepIt} onPress={() => autosave?.keepNow()} />}
        {reloading.has(news.kind) && <Press text={noticeWords.reload} onPress={() => window.location.reload()} />}
        <Press text={noticeWords.understood} onPress={() => forget(news.kind)} />
      </div>
    </div>
  );
}

/** News that loading the page again may mend. */
const reloading: ReadonlySet<ShelfNews["kind"]> = new Set(["outdated", "notLoaded", "lastNewer"]);

function newsText(news: OtherNews): string {
  return news.kind === "linkRefused" ? linkProblemTexts[news.problem] : newsTexts[news.kind];
}

/** A newer release is offered only while everything is saved; taking it loads the page anew. */
function ReleaseNotice() {
  const offline = useShelf((state) => state.offline);
  // A fitting out of a link that was never kept would be lost with the page.
  const isNothing = useFittingState(({ fitting }) => Object.keys(fitting.body).length === 0);
  const isSaved = useShelf(({ open }) =>
    open === null ? isNothing : open.access === "newer" || open.saving.kind === "saved",
  );
  if (offline.kind === "newReleaseElsewhere") {
    return (
      <div className="notice">
        <p>{noticeWords.releaseElsewhere}</p>
        {isSaved && <Press text={noticeWords.reload} onPress={() => window.location.reload()} />}
      </div>
    );
  }
  if (offline.kind !== "newReleaseWaits" || !isSaved) return null;
  return (
    <div className="notice">
      <p>{noticeWords.release}</p>
      <Press text={noticeWords.takeRelease} onPress={() => shelf.getState().takeNewRelease()} />
    </div>
  );
}

function Press({ text, onPress }: { readonly text: string; readonly onPress: () => void }) {
  return (
    <button type="button" className="patch" onClick={onPress}>
      {text}
    </button>
  );
}
