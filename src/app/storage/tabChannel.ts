/**
 * What the tabs of one browser tell each other. A message never carries a fitting, only that something is to be read
 * anew; a tab of another release may send anything, and what is not understood is not heard.
 */
export type TabMessage =
  | { readonly kind: "saved"; readonly id: string; readonly revision: number }
  /** Something was added, removed, put away or erased. */
  | { readonly kind: "listChanged" }
  /** Another tab would like to write in this fitting: save what is open, and let go of the pen. */
  | { readonly kind: "penWanted"; readonly id: string };

export interface TabChannel {
  send(message: TabMessage): void;
  /** Hears what other tabs send, never what this one does; the answer stops it. */
  hear(listener: (message: TabMessage) => void): () => void;
  close(): void;
}

/** A browser without channels has none: the tabs then find out when they save, from the revision. */
export function tabChannel(channel: BroadcastChannel | undefined): TabChannel {
  const listeners = new Set<(message: TabMessage) => void>();
  channel?.addEventListener("message", ({ data }: MessageEvent<unknown>) => {
    const message = readMessage(data);
    if (message) for (const listener of listeners) listener(message);
  });
  return {
    send: (message) => channel?.postMessage(message),
    hear: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: () => channel?.close(),
  };
}

export function readMessage(data: unknown): TabMessage | null {
  if (typeof data !== "object" || data === null) return null;
  const { kind, id, revision } = data as { readonly [name: string]: unknown };
  if (kind === "listChanged") return { kind };
  if (typeof id !== "string") return null;
  if (kind === "penWanted") return { kind, id };
  return kind === "saved" && typeof revision === "number" ? { kind, id, revision } : null;
}
