import { useEffect, useState } from "react";
import { classRemoteWords, remoteWords } from "../../../text/remote";
import { type QrOutcome, qrCode } from "../../../app/share/qrCode";
import { Squares } from "../../kit/shelf/SharePanel";
import { ClassPanel } from "./ClassPanel";
import type { ClassRemote } from "./useClassRemote";

/** Where a phone finds the remote, and the code that lets it in; what passes between the two is said as well. */
export function ClassRemotePanel({ remote, onClose }: { readonly remote: ClassRemote; readonly onClose: () => void }) {
  const { start, standing, isOffered } = remote;
  const [isAsked, setAsked] = useState(standing.kind !== "off");
  useEffect(() => {
    if (isAsked || !isOffered) return;
    setAsked(true);
    start();
  }, [isAsked, isOffered, start]);
  if (!isOffered)
    return (
      <ClassPanel
        id="class-remote-title"
        title={classRemoteWords.title}
        className="class-session class-note-panel"
        onClose={onClose}
      >
        <p>{classRemoteWords.notShared}</p>
      </ClassPanel>
    );
  return (
    <ClassPanel
      id="class-remote-title"
      title={classRemoteWords.title}
      className="class-session class-note-panel"
      onClose={onClose}
    >
      <Standing remote={remote} />
      <p>{remoteWords.passes}</p>
      <div className="row">
        {standing.kind === "paired" ? (
          <button type="button" className="patch" onClick={remote.free}>
            {classRemoteWords.disconnect}
          </button>
        ) : null}
        <button
          type="button"
          className="patch"
          onClick={() => {
            remote.stop();
            onClose();
          }}
        >
          {classRemoteWords.stop}
        </button>
      </div>
    </ClassPanel>
  );
}

/** The phone opens the page that is open here: each language has its own. */
const remoteAddress = (server: string): string => `${server}${window.location.pathname.slice(1)}#remote`;

/** The address and the code as one square code: a phone's camera opens the remote with the code filled in. */
function RemoteSquares({ link }: { readonly link: string }) {
  const [code, setCode] = useState<QrOutcome | null>(null);
  useEffect(() => {
    let isStale = false;
    void qrCode(link).then((made) => {
      if (!isStale) setCode(made);
    });
    return () => {
      isStale = true;
    };
  }, [link]);
  return code?.kind === "code" ? <Squares picture={code.picture} label={classRemoteWords.squares} /> : null;
}

function Standing({ remote: { standing, start } }: { readonly remote: ClassRemote }) {
  const { opening, failed, again, paired, notYours, noNetwork, open, type, once } = classRemoteWords;
  switch (standing.kind) {
    case "off":
    case "opening":
      return <p>{opening}</p>;
    case "failed":
      return (
        <>
          <p>{failed}</p>
          <button type="button" className="patch" onClick={start}>
            {again}
          </button>
        </>
      );
    case "paired":
      return (
        <p>
          <strong>{paired}</strong> {notYours}
        </p>
      );
    case "waiting": {
      const [address] = standing.addresses;
      if (address === undefined) return <p>{noNetwork}</p>;
      return (
        <>
          <p>
            {open} <strong className="class-address">{remoteAddress(address)}</strong> {type}
          </p>
          <div className="class-pairing">
            <p className="class-code">{standing.code.replace(/(\d{3})(?=\d)/g, "$1 ")}</p>
            <RemoteSquares link={`${remoteAddress(address)}/${standing.code}`} />
          </div>
          <p>{once}</p>
        </>
      );
    }
  }
}
