import { useEffect, useRef, useState } from "react";
import { type QrOutcome, type QrPicture, qrCode } from "../../../app/share/qrCode";
import { type LinkOutcome, shareLink } from "../../../app/share/shareLink";
import type { Fitting } from "../../../document/fitting";
import { useAnnounce } from "../Announcer";
import { shareWords } from "../../../text/library";

/** A link with the fitting inside it, and the same as a code for the class view, with names left out unless wanted. */
interface SharePanelProps {
  readonly fitting: Fitting;
  readonly title: string;
  /** A made-up person before a class: her name goes along, and the code is there at once. */
  readonly isMadeUp?: boolean;
}

export function SharePanel({ fitting, title, isMadeUp = false }: SharePanelProps) {
  const [names, setNames] = useState(isMadeUp);
  const [work, setWork] = useState(false);
  const [outcome, setOutcome] = useState<LinkOutcome | null>(null);
  useEffect(() => {
    let isStale = false;
    void shareLink(fitting, { names, work }, window.location.href).then((made) => {
      if (!isStale) setOutcome(made);
    });
    return () => {
      isStale = true;
    };
  }, [fitting, names, work]);
  return (
    <div className="tag-panel stack">
      <h3>{shareWords.title(title)}</h3>
      <p>{shareWords.lead}</p>
      <Tick text={shareWords.names} checked={names} onChange={setNames} />
      {fitting.work.length > 0 && <Tick text={shareWords.work} checked={work} onChange={setWork} />}
      {outcome?.kind === "tooLong" && <p className="caution">{shareWords.tooLong(outcome.characters, outcome.most)}</p>}
      {outcome?.kind === "link" && isOnlyHere(outcome.link) ? <p className="caution">{shareWords.onlyHere}</p> : null}
      {outcome?.kind === "link" && <Link key={outcome.link} link={outcome.link} isCodeFirst={isMadeUp} />}
    </div>
  );
}

/** An address of this machine to itself leads another device nowhere. */
const isOnlyHere = (link: string): boolean => /^(localhost|127(\.\d+){3}|\[::1\])$/.test(new URL(link).hostname);

interface TickProps {
  readonly text: string;
  readonly checked: boolean;
  readonly onChange: (checked: boolean) => void;
}

function Tick({ text, checked, onChange }: TickProps) {
  return (
    <label className="tick">
      <input type="checkbox" checked={checked} onChange={(event) => onChange(event.target.checked)} />
      {text}
    </label>
  );
}

function Link({ link, isCodeFirst }: { readonly link: string; readonly isCodeFirst: boolean }) {
  const announce = useAnnounce();
  const [said, setSaid] = useState("");
  const [code, setCode] = useState<QrOutcome | null>(null);
  useEffect(() => {
    if (isCodeFirst) void qrCode(link).then(setCode);
  }, [isCodeFirst, link]);
  const say = (sentence: string) => {
    setSaid(sentence);
    announce(sentence);
  };
  const copy = () => {
    // Without a secure origin there is no clipboard at all.
    const clipboard = navigator.clipboard as Clipboard | undefined;
    if (clipboard === undefined) say(shareWords.copyByHand);
    else
      void clipboard.writeText(link).then(
        () => say(shareWords.copied),
        () => say(shareWords.copyByHand),
      );
  };
  return (
    <>
      <label className="name-field wide">
        {shareWords.link}
        <input className="line-input" readOnly value={link} onFocus={(event) => event.target.select()} />
      </label>
      <div className="row">
        <button type="button" className="patch" onClick={copy}>
          {shareWords.copy}
        </button>
        {isCodeFirst ? null : (
          <button type="button" className="patch" onClick={() => void qrCode(link).then(setCode)}>
            {shareWords.code}
          </button>
        )}
        {said}
      </div>
      {code?.kind === "tooLong" && <p className="caution">{shareWords.codeTooLong}</p>}
      {code?.kind === "code" && <Code picture={code.picture} />}
    </>
  );
}

/** Beside the link, or over the whole screen for a class: a dialog of the browser's own, which Escape closes. */
function Code({ picture }: { readonly picture: QrPicture }) {
  const large = useRef<HTMLDialogElement>(null);
  return (
    <>
      <div className="code">
        <Squares picture={picture} label={shareWords.codeLabel} />
        <button type="button" className="patch" onClick={() => large.current?.showModal()}>
          {shareWords.large}
        </button>
      </div>
      <dialog ref={large} className="over-all code-large" aria-label={shareWords.codeLabel}>
        <Squares picture={picture} label={shareWords.codeLabel} />
        <button type="button" className="patch" onClick={() => large.current?.close()}>
          {shareWords.small}
        </button>
      </dialog>
    </>
  );
}

interface SquaresProps {
  readonly picture: QrPicture;
  /** What it is for, for those who do not see it. */
  readonly label: string;
}

/** Always dark on white, whatever the colours of the page: cameras expect it. */
export function Squares({ picture: { size, path }, label }: SquaresProps) {
  return (
    <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
