import { type FormEvent, useEffect, useId, useState } from "react";
import { listenAsPhone, pairPhone, sendMove } from "../../../app/classRemote/remoteLink";
import { codeDigits, remoteMoves, type RemoteMove } from "../../../app/classRemote/remoteWords";
import { useRemoteOffered } from "../../kit/useRemoteOffered";
import { useAskedThing } from "../../kit/page";
import { remoteWords } from "../../../text/remote";
import "./remote.css";

/** A phone as the remote of a class view: the code first, then three large buttons and the act of the step. */
export function RemotePage() {
  const [phone, setPhone] = useState<string | null>(() => sessionStorage.getItem(keptPhone));
  const [news, setNews] = useState("");
  const keep = (paired: string | null) => {
    if (paired === null) sessionStorage.removeItem(keptPhone);
    else sessionStorage.setItem(keptPhone, paired);
    setPhone(paired);
  };
  return (
    <div className="remote-page">
      <h1>{remoteWords.title}</h1>
      {phone === null ? (
        <Pairing
          news={news}
          onPaired={(paired) => {
            setNews("");
            keep(paired);
          }}
        />
      ) : (
        <Moving
          phone={phone}
          onOver={(said) => {
            setNews(said);
            keep(null);
          }}
        />
      )}
      <p className="quiet">{remoteWords.passes}</p>
    </div>
  );
}

/** A phone that was put down and wakes again is still the remote; the browser forgets it with the tab. */
const keptPhone = "padwright remote";

function Pairing({ news, onPaired }: { readonly news: string; readonly onPaired: (phone: string) => void }) {
  // A square code brings the digits along.
  const asked = useAskedThing();
  const [code, setCode] = useState(asked !== null && /^\d+$/.test(asked) ? asked : "");
  const [problem, setProblem] = useState(news);
  const isOffered = useRemoteOffered();
  const id = useId();
  const connect = async (event: FormEvent) => {
    event.preventDefault();
    const paired = await pairPhone(code.replace(/\D/g, ""));
    if (typeof paired === "object") onPaired(paired.phone);
    else setProblem(remoteWords[paired]);
  };
  if (isOffered === false) return <p>{remoteWords.notOffered}</p>;
  return (
    <form className="stack" onSubmit={(event) => void connect(event)}>
      <p>{remoteWords.lead}</p>
      <label htmlFor={id}>{remoteWords.code}</label>
      <input
        id={id}
        className="remote-code"
        inputMode="numeric"
        autoComplete="off"
        maxLength={codeDigits + 2}
        value={code}
        onChange={({ target }) => setCode(target.value)}
      />
      <button type="submit" className="patch patch-main">
        {remoteWords.connect}
      </button>
      <p role="alert">{problem}</p>
    </form>
  );
}

function Moving({ phone, onOver }: { readonly phone: string; readonly onOver: (said: string) => void }) {
  const [act, setAct] = useState("");
  const [isLost, setLost] = useState(false);
  const [isMissed, setMissed] = useState(false);
  useEffect(
    () => listenAsPhone(phone, (news) => (news.kind === "act" ? setAct(news.act) : onOver(remoteWords.over)), setLost),
    [phone, onOver],
  );
  const move = async (does: RemoteMove) => setMissed(!(await sendMove(phone, does)));
  return (
    <>
      <p className="remote-act" aria-live="polite">
        {act === "" ? remoteWords.noAct : act}
      </p>
      <div className="remote-moves">
        {remoteMoves.map((does) => (
          <button
            key={does}
            type="button"
            className={does === "forward" ? "patch patch-main" : "patch"}
            data-move={does}
            onClick={() => void move(does)}
          >
            {remoteWords.moves[does]}
          </button>
        ))}
      </div>
      <p role="status">{isLost ? remoteWords.lost : isMissed ? remoteWords.notMoved : ""}</p>
      <button type="button" className="patch" onClick={() => onOver("")}>
        {remoteWords.leave}
      </button>
    </>
  );
}
