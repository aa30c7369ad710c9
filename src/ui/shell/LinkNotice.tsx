import type { Keeping } from "../../app/storage/keeping";
import type { Fitting } from "../../document/fitting";
import { newsTexts, noticeWords } from "../../text/library";
import { keepFromLink, openFromLink } from "./receiveLink";
import { forget } from "../kit/shelf/shelf";

/** A link brought a fitting while somebody was at work on another: which of the two is to be open, or both be kept. */
export function LinkNotice({ keeping, fitting }: { readonly keeping: Keeping; readonly fitting: Fitting }) {
  const ways: readonly (readonly [string, () => void])[] = [
    [noticeWords.openFromLink, () => void openFromLink(keeping, fitting)],
    [noticeWords.keepFromLink, () => void keepFromLink(keeping, fitting)],
    [noticeWords.leaveFromLink, () => forget("linkWaits")],
  ];
  return (
    <div className="notice">
      <p>{newsTexts.linkWaits(fitting.title)}</p>
      <div className="row">
        {ways.map(([text, take]) => (
          <button key={text} type="button" className="patch" onClick={take}>
            {text}
          </button>
        ))}
      </div>
    </div>
  );
}
