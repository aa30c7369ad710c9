// @vitest-environment node
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { pauses, type QueuedSave, type SaveState, saveQueue } from "../../../src/app/storage/saveQueue";

interface Pending {
  readonly change: number;
  readonly mark: string;
  readonly end: (outcome: QueuedSave<string>) => Promise<void>;
}

function watchedQueue() {
  const pending: Pending[] = [];
  const states: SaveState<string>[] = [];
  const timers: { readonly milliseconds: number; readonly work: () => void }[] = [];
  let marks = 0;
  const queue = saveQueue<number, string>({
    save: (change, mark) =>
      new Promise((resolve) => {
        const end = async (outcome: QueuedSave<string>) => {
          pending.splice(
            pending.findIndex((one) => one.mark === mark && one.change === change),
            1,
          );
          resolve(outcome);
          for (let i = 0; i < 5; i += 1) await Promise.resolve();
        };
        pending.push({ change, mark, end });
      }),
    onState: (state) => states.push(state),
    newMark: () => `mark ${++marks}`,
    later: (milliseconds, work) => {
      const timer = { milliseconds, work };
      timers.push(timer);
      return () => {
        const i = timers.indexOf(timer);
        if (i >= 0) timers.splice(i, 1);
      };
    },
  });
  return { queue, pending, states, timers, last: () => states.at(-1) };
}

const saved: QueuedSave<string> = { kind: "saved", at: "noon" };
const full: QueuedSave<string> = { kind: "notSaved", refusal: "noRoom", passing: false };
const lost: QueuedSave<string> = { kind: "notSaved", refusal: "lost", passing: true };

describe("the queue of saves", () => {
  it("saves at once, one at a time, and of those that wait only the newest", async () => {
    const { queue, pending, last } = watchedQueue();
    for (const change of [1, 2, 3, 4]) queue.offer(change);
    expect(pending.map(({ change }) => change)).toEqual([1]);
    expect(last()).toEqual({ kind: "saving" });
    await pending[0]?.end(saved);
    expect(last()).toEqual({ kind: "saving" });
    expect(pending.map(({ change }) => change)).toEqual([4]);
    await pending[0]?.end(saved);
    expect(last()).toEqual({ kind: "saved", at: "noon" });
    expect(await queue.settled()).toBe(true);
  });

  it("says not saved and why, keeps the change, and takes it up again with the same mark", async () => {
    const { queue, pending, last, timers } = watchedQueue();
    queue.offer(1);
    const mark = pending[0]?.mark;
    await pending[0]?.end(full);
    expect(last()).toEqual({ kind: "notSaved", refusal: "noRoom" });
    expect(timers).toEqual([]);
    expect(await queue.settled()).toBe(false);
    queue.retry();
    expect(pending).toMatchObject([{ change: 1, mark }]);
    await pending[0]?.end(saved);
    expect(last()?.kind).toBe("saved");
  });

  it("tries again by itself after a passing trouble, more and more patiently", async () => {
    const { queue, pending, timers } = watchedQueue();
    queue.offer(1);
    for (const pause of [...pauses, pauses.at(-1)]) {
      await pending[0]?.end(lost);
      expect(timers).toMatchObject([{ milliseconds: pause }]);
      timers.splice(0)[0]?.work();
    }
    await pending[0]?.end(saved);
    expect(timers).toEqual([]);
  });

  it("does not wait for the pause when there is a new change", async () => {
    const { queue, pending, timers } = watchedQueue();
    queue.offer(1);
    await pending[0]?.end(lost);
    queue.offer(2);
    expect(timers).toEqual([]);
    expect(pending).toMatchObject([{ change: 2 }]);
  });

  it("stops without a word about what it dropped", async () => {
    const { queue, pending, states } = watchedQueue();
    queue.offer(1);
    queue.stop();
    await pending[0]?.end(saved);
    expect(states).toEqual([{ kind: "saving" }]);
  });

  it("saves a change that is offered while it says saved", async () => {
    const seen: number[] = [];
    const queue = saveQueue<number, string>({
      save: async (change) => {
        seen.push(change);
        return saved;
      },
      onState: (state) => {
        if (state.kind === "saved" && seen.length < 3) queue.offer(seen.length + 1);
      },
      newMark: () => "mark",
      later: () => () => {},
    });
    queue.offer(1);
    expect(await queue.settled()).toBe(true);
    expect(seen).toEqual([1, 2, 3]);
  });

  it("never says saved unless the newest change offered was kept, in any order of events", async () => {
    const event = fc.oneof(fc.constant("offer"), fc.constant("retry"), fc.constantFrom(saved, full, lost));
    let saves = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(event, { maxLength: 40 }), async (events) => {
        const { queue, pending, last } = watchedQueue();
        let [offered, kept] = [0, 0];
        for (const what of events) {
          if (what === "offer") queue.offer(++offered);
          else if (what === "retry") queue.retry();
          else if (typeof what === "object" && pending[0]) {
            if (what.kind === "saved") kept = pending[0].change;
            await pending[0].end(what);
          }
          expect(pending.length).toBeLessThanOrEqual(1);
          if (last()?.kind === "saved") {
            saves += 1;
            expect(kept).toBe(offered);
          }
        }
      }),
      { numRuns: 500 },
    );
    expect(saves).toBeGreaterThan(100);
  });
});
