import { useCallback, useEffect, useRef, useState } from "react";
import { openRoom, type OpenRoom } from "../../../app/classRemote/remoteLink";
import { longestAct, type RemoteMove } from "../../../app/classRemote/remoteWords";
import { useRemoteOffered } from "../../kit/useRemoteOffered";
import { remoteWords } from "../../../text/remote";
import { withoutFigures } from "../../../text/withoutFigures";

/** How the class view stands with a phone that moves it. */
export type RemoteStanding =
  | { readonly kind: "off" }
  | { readonly kind: "opening" }
  | { readonly kind: "failed" }
  | { readonly kind: "waiting"; readonly code: string; readonly addresses: readonly string[] }
  | { readonly kind: "paired"; readonly addresses: readonly string[] };

export interface ClassRemote {
  /** Whether the server that this page came from passes moves on. */
  readonly isOffered: boolean;
  readonly standing: RemoteStanding;
  readonly start: () => void;
  /** Lets the phone go and shows another code. */
  readonly free: () => void;
  readonly stop: () => void;
}

/** A phone's moves do what the keys do; the phone is told the act of the step, without any figure. */
export function useClassRemote(headline: string, onMove: (does: RemoteMove) => void): ClassRemote {
  const isOffered = useRemoteOffered() === true;
  const [standing, setStanding] = useState<RemoteStanding>({ kind: "off" });
  const room = useRef<OpenRoom | null>(null);
  const moved = useRef(onMove);
  const act = remoteAct(headline);
  useEffect(() => {
    moved.current = onMove;
  }, [onMove]);
  useEffect(
    () => () => {
      room.current?.end();
      room.current = null;
    },
    [],
  );
  useEffect(() => {
    if (standing.kind !== "off") room.current?.sayAct(act);
  }, [act, standing.kind]);
  const start = useCallback(async () => {
    setStanding({ kind: "opening" });
    const opened = await openRoom(
      (news) => {
        if (news.kind === "move") moved.current(news.move);
        else setStanding({ ...news, addresses: room.current?.addresses ?? [] });
      },
      (isLost) => {
        // A server that was started anew knows nothing of this room.
        if (isLost) setStanding((before) => (before.kind === "off" ? before : { kind: "failed" }));
      },
    );
    room.current?.end();
    room.current = opened;
    if (opened === null) setStanding({ kind: "failed" });
  }, []);
  const stop = useCallback(() => {
    room.current?.end();
    room.current = null;
    setStanding({ kind: "off" });
  }, []);
  const free = useCallback(() => room.current?.free(), []);
  return { isOffered, standing, start: () => void start(), free, stop };
}

/** The sentence that a phone may be told of a step. */
export function remoteAct(headline: string): string {
  const act = withoutFigures(headline);
  return act === "" ? remoteWords.noAct : act.slice(0, longestAct);
}
