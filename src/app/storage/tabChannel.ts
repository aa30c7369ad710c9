import { fieldsOf } from "./fields";

/** What the tabs of one browser tell each other. A message never carries a fitting, only that something is to be read. */
export type TabMessage =
  | { readonly kind: "saved"; readonly id: string; readonly revision: number }
  /** Something was added, removed, put away or erased. */
  | { readonly kind: "listChanged" }
  /** Another tab would like to write in this fitting: save what is open, and let go of the write lock. */
  | { readonly kind: "penWanted"; readonly id: string };

export interface TabChannel {
  send(message: TabMessage): void;
  /** Hears what other tabs send, never what this one does; the answer stops it. */
  hear(listener: (message: TabMessage) => void): () => void;
  close(): void;
}

/** Without a channel the tabs find out when they save, from the revision. */
export function tabChannel(channel: BroadcastChannel | undefined): TabChannel {
  return {
    send: (message) => channel?.postMessage(message),
    hear: (listener) => {
      const hear = ({ data }: MessageEvent<unknown>): void => {
        const message = readMessage(data);
        if (message) listener(message);
      };
      channel?.addEventListener("message", hear);
      return () => channel?.removeEventListener("message", hear);
    },
    close: () => channel?.close(),
  };
}

/** A tab of another release may send anything; what is not understood is not heard. */
function readMessage(data: unknown): TabMessage | null {
  const { kind, id, revision } = fieldsOf(data);
  if (kind === "listChanged") return { kind };
  if (typeof id !== "string") return null;
  if (kind === "penWanted") return { kind, id };
  return kind === "saved" && typeof revision === "number" ? { kind, id, revision } : null;
}
