import { useEffect, useState } from "react";
import { classControls } from "../../../text/classView";
import { classRemoteWords, remoteWords } from "../../../text/remote";
import { ClassPanel } from "./ClassPanel";
import type { ClassRemote } from "./useClassRemote";

/** Where a phone finds the remote, and the code that lets it in; what passes between the two is said as well. */
export function ClassRemotePanel({ remote, onClose }: { readonly remote: ClassRemote; readonly onClose: () => void }) {
  const { start, standing } = remote;
  const [isAsked, setAsked] = useState(standing.kind !== "off");
  useEffect(() => {
    if (isAsked) return;
    setAsked(true);
    start();
  }, [isAsked, start]);
  return (
    <ClassPanel id="class-remote-title" title={classRemoteWords.title} className="class-session" onClose={onClose}>
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
        <button type="button" className="patch" onClick={onClose}>
          {classControls.closeKeys}
        </button>
      </div>
    </ClassPanel>
  );
}

/** The phone opens the page that is open here: each language has its own. */
const remoteAddress = (server: string): string => `${server}${window.location.pathname.slice(1)}#remote`;

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
          <p className="class-code">{standing.code.replace(/(\d{3})(?=\d)/g, "$1 ")}</p>
          <p>{once}</p>
        </>
      );
    }
  }
}
