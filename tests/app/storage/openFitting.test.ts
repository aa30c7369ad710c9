import { describe, expect, it } from "vitest";
import { fittingStorage } from "../../../src/app/storage/fittingStorage";
import {
  type StorageContext,
  type OpenFitting,
  openFitting,
  openNewFitting,
} from "../../../src/app/storage/openFitting";
import type { Locks } from "../../../src/app/storage/writeLock";
import type { Fitting } from "../../../src/document/fitting";
import { fakeChannels, fakeLocks } from "./fakeTabs";
import { memoryStores } from "./memoryStores";
import { sampleWithWaist, waistOf } from "./sampleFittings";

/** Lets everything that is under way come to rest. */
const rest = async () => {
  for (let i = 0; i < 200; i += 1) await Promise.resolve();
};

function browser(locks: Locks | undefined = fakeLocks()) {
  const stores = memoryStores();
  const channels = fakeChannels();
  let ids = 0;
  let seconds = 0;
  const timers: (() => void)[] = [];
  const newContext = (): StorageContext => ({
    storage: fittingStorage(stores, {
      now: () => new Date(Date.UTC(2026, 0, 1, 12, 0, seconds++)).toISOString(),
      newId: () => `id-${++ids}-000000`,
    }),
    locks,
    channel: channels(),
    later: (_, work) => {
      timers.push(work);
      return () => timers.splice(timers.indexOf(work) >>> 0, 1);
    },
  });
  const passTime = async () => {
    for (const work of timers.splice(0)) work();
    await rest();
  };
  return { stores, newContext, passTime };
}

const noSteps = { past: [], future: [] };

async function tab(context: StorageContext, id: string) {
  const reads: Fitting[] = [];
  const outcome = await openFitting(context, id, { onState: () => {}, onRead: (fitting) => reads.push(fitting) });
  if (outcome.kind !== "open") throw new Error(outcome.kind);
  return {
    open: outcome.open,
    first: outcome.fitting,
    reads,
    lastWaist: () => waistOf(reads.at(-1) ?? outcome.fitting),
  };
}

async function firstTab(context: StorageContext, waist: number): Promise<OpenFitting> {
  const open = await openNewFitting(context, { onState: () => {}, onRead: () => {} });
  open.keep(sampleWithWaist(waist), noSteps);
  await rest();
  expect(open.state().saving.kind).toBe("saved");
  return open;
}

describe("one tab", () => {
  it("opens again where it was, with undo and redo", async () => {
    const { newContext } = browser();
    const open = await firstTab(newContext(), 80);
    const history = { past: [78, 79].map(sampleWithWaist), future: [82].map(sampleWithWaist) };
    open.keep(sampleWithWaist(81), history);
    expect(await open.close()).toBe(true);
    const again = await openFitting(newContext(), open.id, { onState: () => {}, onRead: () => {} });
    if (again.kind !== "open") throw new Error(again.kind);
    expect(waistOf(again.fitting)).toBe(81);
    expect(again.history.past.map(waistOf)).toEqual([78, 79]);
    expect(again.history.future.map(waistOf)).toEqual([82]);
  });

  it("says not saved and why, and saves by itself once the trouble has passed", async () => {
    const { newContext, stores, passTime } = browser();
    const open = await firstTab(newContext(), 80);
    stores.failFrom(() => ({ reason: "noRoom", when: "before" }));
    open.keep(sampleWithWaist(81), noSteps);
    await rest();
    expect(open.state().saving).toMatchObject({ kind: "notSaved", refusal: { reason: "noRoom" } });
    stores.failFrom(() => null);
    await passTime();
    expect(open.state().saving.kind).toBe("saved");
  });

  it.each([
    ["is there no more", undefined],
    ["cannot be read", { half: "a record" }],
  ])("drops no change for what %s", async (_, found) => {
    const { newContext, stores, passTime } = browser();
    const open = await firstTab(newContext(), 80);
    open.keep(sampleWithWaist(81), noSteps, 350);
    if (found === undefined) stores.kept.delete(`fittings/${open.id}`);
    else stores.kept.set(`fittings/${open.id}`, found);
    await open.readAnew();
    await passTime();
    expect(open.state().saving.kind).toBe("saved");
    expect(JSON.stringify(stores.kept.get(`fittings/${open.id}`))).toContain("81");
  });

  it("says saving of the first change after what was kept was read anew", async () => {
    const { newContext } = browser();
    const open = await firstTab(newContext(), 80);
    open.keep(sampleWithWaist(81), noSteps, 350);
    await open.readAnew();
    expect(open.state().saving.kind).toBe("saved");
    open.keep(sampleWithWaist(82), noSteps, 350);
    expect(open.state().saving.kind).toBe("saving");
  });

  it("knows its own save again when the answer to it was lost and more has changed since", async () => {
    const { newContext, stores } = browser();
    const open = await firstTab(newContext(), 80);
    stores.failFrom((_, name) => (name === "keep" ? { reason: "lost", when: "after" } : null));
    open.keep(sampleWithWaist(81), noSteps);
    await rest();
    expect(open.state().saving.kind).toBe("notSaved");
    stores.failFrom(() => null);
    open.keep(sampleWithWaist(82), noSteps);
    await rest();
    expect(open.state()).toMatchObject({ saving: { kind: "saved" }, entry: { revision: 3 } });
  });
});

describe("two tabs", () => {
  it("let one write while the other follows", async () => {
    const { newContext } = browser();
    const writer = await firstTab(newContext(), 80);
    const reader = await tab(newContext(), writer.id);
    expect(reader.open.state().access).toBe("elsewhere");
    writer.keep(sampleWithWaist(85), noSteps);
    await rest();
    expect(reader.lastWaist()).toBe(85);
    reader.open.keep(sampleWithWaist(99), noSteps);
    await rest();
    expect(reader.open.state().saving).toMatchObject({ kind: "notSaved", refusal: { reason: "changedElsewhere" } });
    expect(writer.state().saving.kind).toBe("saved");
  });

  it("never replace what is typed in one while it reads what the other has saved", async () => {
    const { newContext } = browser();
    const first = await firstTab(newContext(), 80);
    const context = newContext();
    let [reading, release]: [Promise<void>, () => void] = [Promise.resolve(), () => {}];
    const load: StorageContext["storage"]["load"] = async (id) => {
      const loaded = await context.storage.load(id);
      await reading;
      return loaded;
    };
    const second = await tab({ ...context, storage: { ...context.storage, load } }, first.id);
    reading = new Promise((resolve) => {
      release = resolve;
    });
    first.keep(sampleWithWaist(81), noSteps);
    await rest();
    second.open.keep(sampleWithWaist(99), noSteps);
    release();
    await rest();
    expect(second.reads.map(waistOf)).toEqual([]);
    expect(second.open.state().saving).toMatchObject({ kind: "notSaved", refusal: { reason: "changedElsewhere" } });
  });

  it("call kept what was saved after the write lock came back to a tab with a refused change", async () => {
    const { newContext, stores } = browser();
    const first = await firstTab(newContext(), 80);
    const second = await tab(newContext(), first.id);
    second.open.keep(sampleWithWaist(99), noSteps);
    await rest();
    expect(second.open.state()).toMatchObject({ access: "elsewhere", saving: { kind: "notSaved" } });
    await first.close();
    await rest();
    expect(second.open.state()).toMatchObject({ access: "writing", saving: { kind: "notSaved" } });
    expect(await second.open.isKept()).toBe(false);
    second.open.keep(sampleWithWaist(98), noSteps);
    await rest();
    expect(second.open.state().saving.kind).toBe("saved");
    expect(JSON.stringify(stores.kept.get(`fittings/${first.id}`))).toContain("98");
    expect(await second.open.isKept()).toBe(true);
  });

  it("no longer call saved what was erased in the other, and keep it again with the next change", async () => {
    const { newContext, stores } = browser();
    const first = await firstTab(newContext(), 80);
    const context = newContext();
    await context.storage.setArchived(first.id, true);
    context.channel.send({ kind: "listChanged" });
    await rest();
    expect(first.state().saving.kind).toBe("saved");
    await context.storage.erase(first.id);
    context.channel.send({ kind: "listChanged" });
    await rest();
    expect(first.state().saving.kind).toBe("nothingYet");
    first.keep(sampleWithWaist(81), noSteps);
    await rest();
    expect(first.state().saving.kind).toBe("saved");
    expect(stores.kept.has(`fittings/${first.id}`)).toBe(true);
  });

  it("hand the write lock on when the first is closed", async () => {
    const { newContext } = browser();
    const writer = await firstTab(newContext(), 80);
    const reader = await tab(newContext(), writer.id);
    await writer.close();
    await rest();
    expect(reader.open.state().access).toBe("writing");
    reader.open.keep(sampleWithWaist(86), noSteps);
    await rest();
    expect(reader.open.state().saving.kind).toBe("saved");
  });

  it("hand the write lock over when asked, with everything saved, and back again", async () => {
    const { newContext } = browser();
    const first = await firstTab(newContext(), 80);
    const second = await tab(newContext(), first.id);
    first.keep(sampleWithWaist(87), noSteps);
    await second.open.takeOver();
    await rest();
    expect(second.open.state().access).toBe("writing");
    expect(first.state().access).toBe("elsewhere");
    expect(second.lastWaist()).toBe(87);
    await first.takeOver();
    await rest();
    expect([first.state().access, second.open.state().access]).toEqual(["writing", "elsewhere"]);
  });

  it("take the write lock by force from a tab that cannot save, which keeps its change on the screen", async () => {
    const { newContext, stores, passTime } = browser();
    const first = await firstTab(newContext(), 80);
    const second = await tab(newContext(), first.id);
    stores.failFrom(() => ({ reason: "lost", when: "before" }));
    first.keep(sampleWithWaist(88), noSteps);
    await rest();
    const takingOver = second.open.takeOver();
    await rest();
    stores.failFrom(() => ({ reason: "lost", when: "before" }));
    await passTime();
    stores.failFrom(() => null);
    await passTime();
    await takingOver;
    await rest();
    expect(second.open.state().access).toBe("writing");
    expect(first.state()).toMatchObject({ access: "elsewhere", saving: { kind: "notSaved" } });
    second.open.keep(sampleWithWaist(70), noSteps);
    await passTime();
    expect(second.open.state().saving.kind).toBe("saved");
    expect(first.state().saving.kind).toBe("notSaved");
    await first.readAnew();
    expect(first.state().saving.kind).toBe("saved");
  });

  it("without locks, refuse the one whose work was built on an older state, and never merge", async () => {
    const { newContext } = browser({ request: () => Promise.reject(new DOMException("no", "SecurityError")) } as Locks);
    const first = await firstTab(newContext(), 80);
    const second = await tab(newContext(), first.id);
    expect(second.open.state().access).toBe("writing");
    first.keep(sampleWithWaist(81), noSteps);
    second.open.keep(sampleWithWaist(95), noSteps);
    await rest();
    const kinds = [first, second.open].map((open) => open.state().saving.kind);
    expect(kinds.toSorted()).toEqual(["notSaved", "saved"]);
    const kept = await newContext().storage.load(first.id);
    expect(kept.kind === "loaded" && waistOf(kept.fitting)).toBe(kinds[0] === "saved" ? 81 : 95);
  });
});
