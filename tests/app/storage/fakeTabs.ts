import type { Locks } from "../../../src/app/storage/writeLock";
import type { TabChannel, TabMessage } from "../../../src/app/storage/tabChannel";

/**
 * The locks and channels of one browser with several tabs, in memory. Locks are queued, free when their work ends,
 * refused with ifAvailable and stolen with steal, as the W3C's Web Locks draft describes (from memory).
 */
export function fakeLocks(): Locks {
  const held = new Map<string, { readonly break: (reason: unknown) => void }>();
  const queues = new Map<string, (() => void)[]>();
  const grant = (name: string, work: LockGrantedCallback<unknown>): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const holding = { break: reject };
      held.set(name, holding);
      const free = () => {
        if (held.get(name) !== holding) return;
        held.delete(name);
        queues.get(name)?.shift()?.();
      };
      Promise.resolve()
        .then(() => work({ name, mode: "exclusive" }))
        .then(resolve, reject)
        .finally(free);
    });
  const request = (name: string, options: LockOptions, work: LockGrantedCallback<unknown>): Promise<unknown> => {
    if (options.steal) {
      held.get(name)?.break(new DOMException("stolen", "AbortError"));
      return grant(name, work);
    }
    if (!held.has(name)) return grant(name, work);
    if (options.ifAvailable) return Promise.resolve().then(() => work(null));
    return new Promise((resolve, reject) => {
      const start = () => resolve(grant(name, work));
      const queue = queues.get(name) ?? [];
      queues.set(name, [...queue, start]);
      options.signal?.addEventListener("abort", () => {
        queues.set(
          name,
          (queues.get(name) ?? []).filter((one) => one !== start),
        );
        reject(new DOMException("called off", "AbortError"));
      });
    });
  };
  return { request } as unknown as Locks;
}

/** Channels that hear one another, but not themselves. */
export function fakeChannels(): () => TabChannel {
  const tabs = new Set<Set<(message: TabMessage) => void>>();
  return () => {
    const listeners = new Set<(message: TabMessage) => void>();
    tabs.add(listeners);
    return {
      send: (message) => {
        const others = [...tabs].filter((tab) => tab !== listeners).flatMap((tab) => [...tab]);
        for (const listener of others) queueMicrotask(() => listener(message));
      },
      hear: (listener) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
      close: () => tabs.delete(listeners),
    };
  };
}
