import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { longestWait, pauses, type QueuedSave, type SaveState, SaveQueue } from "../../../src/app/storage/saveQueue";

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
  const queue = new SaveQueue<number, string>({
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

/** A queue on a clock of its own, whose every save takes as long; what waited how long from its offer to its end. */
function clockedQueue(saveMs: number) {
  let now = 0;
  let timers: readonly { readonly at: number; readonly work: () => void }[] = [];
  const later = (milliseconds: number, work: () => void) => {
    const timer = { at: now + milliseconds, work };
    timers = [...timers, timer];
    return () => {
      timers = timers.filter((one) => one !== timer);
    };
  };
  const offered = new Map<number, number>();
  const waits: number[] = [];
  let saves = 0;
  const queue = new SaveQueue<number, string>({
    save: (change) =>
      new Promise((resolve) => {
        saves += 1;
        later(saveMs, () => {
          for (const [letter, at] of offered) {
            if (letter > change) continue;
            waits.push(now - at);
            offered.delete(letter);
          }
          resolve(saved);
        });
      }),
    onState: () => {},
    newMark: () => `mark ${saves}`,
    later,
  });
  const passTime = async (milliseconds: number) => {
    for (const end = now + milliseconds; now < end; now += 5) {
      const due = timers.filter(({ at }) => at <= now);
      timers = timers.filter(({ at }) => at > now);
      for (const { work } of due) work();
      for (let i = 0; i < 8; i += 1) await Promise.resolve();
    }
  };
  const offer = (letter: number, pause: number) => {
    offered.set(letter, now);
    queue.offer(letter, pause);
  };
  return { queue: { offer }, waits, saves: () => saves, passTime };
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

  it("says saving again after it was stopped, whatever was said before", async () => {
    for (const outcome of [null, full, lost]) {
      const { queue, pending, states } = watchedQueue();
      queue.offer(1, 500);
      if (outcome !== null) {
        queue.hurry();
        await pending[0]?.end(outcome);
      }
      queue.stop();
      const before = states.length;
      queue.offer(2, 500);
      expect(states.slice(before)).toEqual([{ kind: "saving" }]);
    }
  });

  it("saves what is written letter by letter after a pause, together, and says so from the first letter on", async () => {
    const { queue, pending, states, timers } = watchedQueue();
    for (const letter of [1, 2, 3]) queue.offer(letter, 500);
    expect(states).toEqual([{ kind: "saving" }]);
    expect(pending).toEqual([]);
    timers.find(({ milliseconds }) => milliseconds === 500)?.work();
    expect(timers).toEqual([]);
    expect(pending).toMatchObject([{ change: 3 }]);
    queue.offer(4, 500);
    await pending[0]?.end(saved);
    expect(states).toEqual([{ kind: "saving" }]);
    timers.find(({ milliseconds }) => milliseconds === 500)?.work();
    await pending[0]?.end(saved);
    expect(states).toEqual([{ kind: "saving" }, { kind: "saved", at: "noon" }]);
  });

  it.each([20, 130, 300, 390])(
    "saves within its time whoever writes a letter every %i ms without a rest",
    async (gap) => {
      const run = clockedQueue(60);
      for (let letter = 1; letter <= 6_000 / gap; letter += 1) {
        run.queue.offer(letter, 500);
        await run.passTime(gap);
      }
      await run.passTime(2_000);
      expect(run.waits.length).toBeGreaterThan(10);
      // A letter written while the save before it is under way waits for that one to end.
      expect(Math.max(...run.waits)).toBeLessThanOrEqual(longestWait + 60 + 60);
      expect(run.saves()).toBeLessThan(6_000 / longestWait + 3);
    },
  );

  it("counts the time from the first letter that waits, behind a slow save as well", async () => {
    const run = clockedQueue(900);
    run.queue.offer(1, 500);
    await run.passTime(600);
    for (let letter = 2; letter <= 20; letter += 1) {
      run.queue.offer(letter, 500);
      await run.passTime(100);
    }
    await run.passTime(3_000);
    expect(run.waits).toHaveLength(20);
    expect(Math.max(...run.waits)).toBeLessThanOrEqual(900 + 900);
  });

  it("does not put what waits shortly off for a letter", () => {
    const { queue, pending, timers } = watchedQueue();
    queue.offer(1, 20);
    queue.offer(2, 500);
    expect(timers.map(({ milliseconds }) => milliseconds)).toContain(20);
    expect(timers.map(({ milliseconds }) => milliseconds)).not.toContain(500);
    queue.offer(3);
    expect(timers).toEqual([]);
    expect(pending).toMatchObject([{ change: 3 }]);
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
    const queue = new SaveQueue<number, string>({
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
