// @vitest-environment node
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mostPutOffs, pauses, type QueuedSave, type SaveState, saveQueue } from "../../../src/app/storage/saveQueue";

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

  it("saves what is written letter by letter after a pause, together, and says so from the first letter on", async () => {
    const { queue, pending, states, timers } = watchedQueue();
    for (const letter of [1, 2, 3]) queue.offer(letter, 500);
    expect(states).toEqual([{ kind: "saving" }]);
    expect(pending).toEqual([]);
    expect(timers).toMatchObject([{ milliseconds: 500 }]);
    timers.splice(0)[0]?.work();
    expect(pending).toMatchObject([{ change: 3 }]);
    queue.offer(4, 500);
    await pending[0]?.end(saved);
    expect(states).toEqual([{ kind: "saving" }]);
    timers.splice(0)[0]?.work();
    await pending[0]?.end(saved);
    expect(states).toEqual([{ kind: "saving" }, { kind: "saved", at: "noon" }]);
  });

  it("puts a save off only so often, and what waits shortly is not put off by a letter", () => {
    const { queue, pending, timers } = watchedQueue();
    queue.offer(0, 500);
    const seen = Array.from({ length: mostPutOffs + 3 }, (_, i) => {
      queue.offer(i + 1, 500);
      return timers[0];
    });
    expect(new Set(seen).size).toBe(mostPutOffs);
    timers.splice(0)[0]?.work();
    expect(pending).toMatchObject([{ change: mostPutOffs + 3 }]);

    const other = watchedQueue();
    other.queue.offer(1, 20);
    other.queue.offer(2, 500);
    expect(other.timers).toMatchObject([{ milliseconds: 20 }]);
    other.queue.offer(3);
    expect(other.timers).toEqual([]);
    expect(other.pending).toMatchObject([{ change: 3 }]);
  });

  it("ends a pause when the page is put aside or closed", async () => {
    const { queue, pending } = watchedQueue();
    queue.hurry();
    queue.offer(1, 500);
    queue.hurry();
    expect(pending).toMatchObject([{ change: 1 }]);
    await pending[0]?.end(saved);
    queue.offer(2, 500);
    const settled = queue.settled();
    expect(pending).toMatchObject([{ change: 2 }]);
    await pending[0]?.end(saved);
    expect(await settled).toBe(true);
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
    const event = fc.oneof(
      fc.constantFrom("offer", "letter", "time"),
      fc.constantFrom("retry", "hurry"),
      fc.constantFrom(saved, full, lost),
    );
    let saves = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(event, { maxLength: 40 }), async (events) => {
        const { queue, pending, last, timers } = watchedQueue();
        let [offered, kept] = [0, 0];
        for (const what of events) {
          if (what === "offer") queue.offer(++offered);
          else if (what === "letter") queue.offer(++offered, 500);
          else if (what === "time") timers.shift()?.work();
          else if (what === "retry") queue.retry();
          else if (what === "hurry") queue.hurry();
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
      { numRuns: 1_000 },
    );
    expect(saves).toBeGreaterThan(100);
  });
});
