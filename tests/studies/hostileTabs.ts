import { readLink, shareLink } from "../../src/app/share/shareLink";
import { readFile, writeBundle } from "../../src/app/share/fittingFile";
import { failureReasons } from "../../src/app/storage/objectStores";
import { readRecord } from "../../src/app/storage/fittingRecord";
import { fittingText } from "../../src/app/storage/fittingText";
import { sampleTitled } from "../app/storage/sampleFittings";
import { type Chance, chance } from "../tools/peopleChance";
import type { HostileFault } from "./hostileFault";
import { type HostileBrowser, hostileBrowser, type HostileTab } from "./hostileTab";

/**
 * Two tabs of one browser, driven at random: typing, files, links, every wish of the list, while the storage fails, the
 * clock jumps, tabs are killed, and somebody empties or damages the database under them. A model beside them knows what was
 * said to be saved, and what must never be said.
 */
export interface TabsCounts {
  readonly rounds: number;
  readonly done: { readonly [deed: string]: number };
  /** Times that "saved" was held against what lay in the stores. */
  readonly savedChecked: number;
  /** Fittings that were taken away under the tabs, and how many of these losses were told. */
  readonly lost: number;
  readonly told: number;
  readonly faults: readonly TabsFault[];
}

export type TabsFault = HostileFault<"threw" | "untrue" | "lost" | "untold">;

export async function hostileTabs(rounds: number, firstSeed: number): Promise<TabsCounts> {
  const done: { [deed: string]: number } = {};
  const faults: TabsFault[] = [];
  const sums = { savedChecked: 0, lost: 0, told: 0 };
  for (let seed = firstSeed; seed < firstSeed + rounds; seed += 1) {
    const round = new Round(seed);
    const stop = hearThrown((detail) => faults.push({ seed, what: "threw", detail }));
    await round.run().catch((thrown: unknown) => faults.push({ seed, what: "threw", detail: stackOf(thrown) }));
    stop();
    for (const [deed, count] of round.done) done[deed] = (done[deed] ?? 0) + count;
    sums.savedChecked += round.savedChecked;
    sums.lost += round.lostCount;
    sums.told += round.toldCount;
    faults.push(...round.faults);
  }
  return { rounds, done, ...sums, faults };
}

const stackOf = (thrown: unknown): string =>
  (thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown)).split("\n").slice(0, 5).join(" ");

function hearThrown(heard: (detail: string) => void): () => void {
  const listener = (thrown: unknown): void => heard(stackOf(thrown));
  process.on("unhandledRejection", listener);
  return () => process.off("unhandledRejection", listener);
}

/** What was last said to be saved of a fitting. */
interface Said {
  readonly text: string;
  readonly revision: number;
}

class Round {
  readonly faults: TabsFault[] = [];
  readonly done = new Map<string, number>();
  savedChecked = 0;
  lostCount = 0;
  toldCount = 0;
  private readonly seed: number;
  private readonly luck: Chance;
  private readonly browser: HostileBrowser = hostileBrowser();
  private readonly tabs: [HostileTab, HostileTab];
  private readonly said = new Map<string, Said>();
  /** Taken away by somebody else and not there again; those of them that the person has been told and knows of. */
  private readonly lost = new Set<string>();
  private readonly known = new Set<string>();
  /** What was ever done to a fitting by somebody other than the tab that says something of it. */
  private readonly everGone = new Set<string>();
  private readonly everRemoved = new Set<string>();
  private readonly everDamaged = new Set<string>();
  /** Touched behind the tabs since they last said that it was saved. */
  private readonly touched = new Set<string>();
  private readonly raw = new Map<string, string>();
  /** Tabs whose newest change has not been seen in the stores yet. */
  private readonly changed = new Set<HostileTab>();
  private isFaulty = false;
  /** The other tab is at work as well, so what a tab has just said may be out of date already. */
  private isOverlapping = false;
  private typed = 0;

  constructor(seed: number) {
    this.seed = seed;
    this.luck = chance(seed * 2_654_435 + 7);
    this.tabs = [this.browser.newTab(), this.browser.newTab()];
  }

  async run(): Promise<void> {
    const steps = Math.round(this.luck.between(20, 60));
    for (let step = 0; step < steps; step += 1) {
      const before = this.browser.notes.everything();
      const tab = this.luck.pick(this.tabs);
      this.isOverlapping = this.luck.happens(0.3);
      const going = this.step(tab, before);
      if (this.isOverlapping) await this.overlap(tab);
      await going;
      await settled();
      await this.checkAtRest();
    }
    await this.end();
  }

  /** Somebody types in the other tab, or time passes there, in the middle of what the first is doing. */
  private async overlap(tab: HostileTab): Promise<void> {
    for (let i = Math.round(this.luck.between(0, 80)); i > 0; i -= 1) await Promise.resolve();
    const other = this.tabs[tab === this.tabs[0] ? 1 : 0];
    if (this.luck.happens(0.6)) this.type(other, 1);
    else other.passTime();
  }

  private async step(tab: HostileTab, notesBefore: readonly (readonly [string, string])[]): Promise<void> {
    const deed = this.luck.pick(deeds);
    this.done.set(deed, (this.done.get(deed) ?? 0) + 1);
    switch (deed) {
      case "typed":
      case "typed twice":
        return this.type(tab, deed === "typed" ? 1 : 2);
      case "typed in both":
        for (const one of this.tabs) this.type(one, 1);
        return;
      case "time":
        for (const one of this.tabs) one.passTime();
        return;
      case "opened":
        return await this.leave(tab, (id) => tab.autosave.open(id));
      case "new":
        return await this.leave(tab, () => tab.autosave.put(sampleTitled(`New ${this.typed}`)));
      case "file":
        return await this.openFile(tab);
      case "link":
        return await this.openLink(tab);
      case "wish":
        return await this.wish(tab);
      case "erased":
        return await this.erase(tab);
      case "erased everything":
        return await this.eraseEverything(tab);
      case "taken over":
        void tab.autosave.takeOver();
        return;
      case "decided":
        return await this.decide(tab);
      case "retried":
        return tab.autosave.retry();
      case "storage fails":
        return this.fail();
      case "storage works":
        return this.work();
      case "clock":
        return this.browser.setClock(Date.UTC(Math.round(this.luck.between(1990, 2060)), 5, 1));
      case "killed":
        return await this.kill(tab, notesBefore);
      case "taken away":
        return this.takeAway(tab);
      case "damaged":
        return this.damage();
    }
  }

  private type(tab: HostileTab, times: number): void {
    const before = tab.store.getState().fitting;
    for (let i = 0; i < times; i += 1) {
      this.typed += 1;
      const text = `${60 + (this.typed % 50)}`;
      if (this.luck.happens(0.4)) tab.store.dispatch({ does: "measure", whose: "body", name: "waistGirth", text });
      else tab.store.dispatch({ does: "rename", title: `Person ${this.typed}` });
      if (this.luck.happens(0.1)) tab.store.undo();
    }
    if (tab.store.getState().fitting !== before) this.changed.add(tab);
  }

  /** Something else is opened: what lay there must have been kept, or stay. */
  private async leave(tab: HostileTab, come: (id: string) => Promise<string>): Promise<void> {
    const { fitting } = tab.store.getState();
    const isChanged = this.changed.has(tab);
    const outcome = await come(this.anyId());
    await settled();
    const isStill = tab.store.getState().fitting === fitting;
    if (outcome === "notKept" && !isStill) this.fault("lost", "what was not kept left the table");
    if (isStill || !["put", "open", "looking"].includes(outcome)) return;
    this.changed.delete(tab);
    const isKept = this.ids().some((id) => this.record(id)?.text === fittingText({ ...fitting, id }));
    if (isChanged && !isKept) this.fault("lost", `${outcome} took the place of a change that was not kept`);
  }

  private async openFile(tab: HostileTab): Promise<void> {
    const count = Math.round(this.luck.between(1, 3));
    const fittings = Array.from({ length: count }, () => {
      const number = Math.round(this.luck.between(0, 6));
      const title = this.luck.happens(0.7) ? `File ${number}` : `File ${number}, changed ${this.typed}`;
      return sampleTitled(title, this.luck.happens(0.8) ? `file-000${number}` : undefined);
    });
    const read = readFile(new TextEncoder().encode(writeBundle(fittings, "2026-01-01T00:00:00.000Z")));
    if (!read.ok) return this.fault("untrue", "a backup of ours was refused");
    const outcome = await tab.storage.add(read.value);
    if (outcome.kind !== "added" || this.isOverlapping) return;
    outcome.fittings.forEach(({ kind, id }, i) => {
      const record = this.record(id);
      const wanted = fittings[i];
      const isThere = record !== null && record.deletedAt === null && wanted !== undefined;
      if (!isThere || record.text !== fittingText({ ...wanted, id })) {
        this.fault("untrue", `${kind} was said of ${id}, which is not there as it was in the file`);
        return;
      }
      this.isSaid(id, record);
    });
  }

  private async openLink(tab: HostileTab): Promise<void> {
    const made = await shareLink(tab.store.getState().fitting, { names: true, work: true }, "https://sewing.example/");
    if (made.kind !== "link") return;
    const hash = made.link.slice(made.link.indexOf("#"));
    const isCut = this.luck.happens(0.3);
    const read = await readLink(isCut ? hash.slice(0, -Math.ceil(this.luck.between(1, 40))) : hash);
    if (read.ok && isCut) return this.fault("untrue", "a link that was cut was read");
    if (read.ok) await this.leave(tab, () => tab.autosave.put(read.value));
    else if (!isCut) this.fault("untrue", `a whole link was refused: ${read.problem.code}`);
  }

  /** The person keeps a refused change as a fitting of its own, or lets go of it. */
  private async decide(tab: HostileTab): Promise<void> {
    if (this.luck.happens(0.5)) return await tab.autosave.keepAsCopy();
    await tab.autosave.readAnew();
    this.changed.delete(tab);
  }

  private async wish(tab: HostileTab): Promise<void> {
    const id = this.anyId();
    const wish = this.luck.pick(["remove", "restore", "archive"]);
    const isRemoval = wish === "remove";
    if (isRemoval && !(await this.isOffTheTable(tab, id))) return;
    if (isRemoval) this.everRemoved.add(id);
    const outcome =
      wish === "archive" ? await tab.storage.setArchived(id, this.luck.happens(0.5)) : await tab.storage[wish](id);
    tab.autosave.context.channel.send({ kind: "listChanged" });
    if (outcome.kind !== "changed" || wish === "archive" || this.isOverlapping) return;
    const record = this.record(id);
    if (record === null || (record.deletedAt !== null) !== isRemoval)
      this.fault("untrue", `${wish} was said to be done of ${id}`);
  }

  private async erase(tab: HostileTab): Promise<void> {
    const id = this.anyId();
    const found = this.browser.stores.kept.get(`fittings/${id}`);
    if (!(await this.isOffTheTable(tab, id))) return;
    this.everGone.add(id);
    const outcome = await tab.storage.erase(id);
    tab.autosave.context.channel.send({ kind: "listChanged" });
    if (this.isFaulty) this.touched.add(id);
    if (outcome.kind !== "erased") return this.askedToGo([id]);
    const isThere = this.browser.stores.kept.has(`fittings/${id}`);
    if (isThere && !this.isOverlapping) return this.fault("untrue", `${id} was said to be erased`);
    if (found !== undefined) this.lost.delete(id);
    this.said.delete(id);
  }

  /** As the list does it: what is removed or erased is closed first, if it can. */
  private async isOffTheTable(tab: HostileTab, id: string): Promise<boolean> {
    if (tab.autosave.openId() !== id) return true;
    await this.leave(tab, () => tab.autosave.put(sampleTitled("In its place")));
    return tab.autosave.openId() !== id;
  }

  private async eraseEverything(tab: HostileTab): Promise<void> {
    const { fitting } = tab.store.getState();
    const ids = this.ids();
    for (const id of ids) this.everGone.add(id);
    const outcome = await tab.autosave.eraseEverything(sampleTitled("After everything"));
    tab.autosave.context.channel.send({ kind: "listChanged" });
    // What the other tab saved meanwhile went as well, and where nothing can be read that tab cannot know it.
    if (this.isFaulty) for (const id of [...ids, ...this.openIds()]) this.touched.add(id);
    const isStill = tab.store.getState().fitting === fitting;
    if (outcome.kind !== "erased") {
      this.askedToGo(ids);
      if (!isStill && this.changed.has(tab)) this.fault("lost", "erasing failed, and the change on the table is gone");
      return;
    }
    this.changed.delete(tab);
    if (this.ids().length > 0 && !this.isOverlapping) this.fault("untrue", "everything was said to be erased");
    this.said.clear();
    this.lost.clear();
    this.raw.clear();
  }

  /** A storage may erase, and fail only then: what the person wanted gone and is gone is no loss. */
  private askedToGo(ids: readonly string[]): void {
    for (const id of ids) {
      if (this.browser.stores.kept.has(`fittings/${id}`)) continue;
      this.said.delete(id);
      // Where the note of it is taken away as well, the tool can only say that it was there and is not any more.
      this.known.add(id);
    }
    const everything = JSON.stringify([...this.browser.stores.kept]);
    for (const [junk, id] of this.raw) if (ids.includes(id) && !everything.includes(junk)) this.raw.delete(junk);
  }

  private fail(): void {
    const share = this.luck.pick([0.02, 0.1, 0.5, 1]);
    this.isFaulty = true;
    this.browser.stores.failFrom((_call, name) => {
      if (!this.luck.happens(share)) return null;
      const isLate = name === "keep" && this.luck.happens(0.3);
      return {
        reason: this.luck.pick(failureReasons as unknown as readonly ["lost"]),
        when: isLate ? "after" : "before",
      };
    });
  }

  private work(): void {
    this.isFaulty = false;
    this.browser.stores.failFrom(() => null);
  }

  /** A tab dies, the note beside the database may fall behind, and the person opens another tab. */
  private async kill(tab: HostileTab, notesBefore: readonly (readonly [string, string])[]): Promise<void> {
    tab.kill();
    if (this.luck.happens(0.5)) {
      this.browser.notes.put(notesBefore);
      // Of what the note has never heard, or not any more, nobody can tell that it is gone.
      for (const id of this.lost) if (!this.isNoted(id)) this.forgetLost(id);
    }
    const next = this.browser.newTab();
    this.tabs[tab === this.tabs[0] ? 0 : 1] = next;
    await this.look(next);
    await settled();
    await next.autosave.open(this.anyId());
  }

  private takeAway(tab: HostileTab): void {
    const ids = this.ids();
    const all = this.luck.happens(0.4);
    const { kept } = this.browser.stores;
    const gone = all ? ids : ids.filter(() => this.luck.happens(0.3));
    const noted = gone.filter((id) => this.isNoted(id));
    for (const place of [...kept.keys()]) {
      const id = place.slice(place.indexOf("/") + 1);
      if (all || gone.includes(id)) kept.delete(place);
    }
    for (const id of gone) {
      this.everGone.add(id);
      this.touched.add(id);
      for (const [junk, of] of this.raw) if (of === id) this.raw.delete(junk);
      if (!noted.includes(id) && !this.isFaulty && tab.state() !== null) this.notNoted(id);
      if (noted.includes(id)) this.lost.add(id);
      else this.said.delete(id);
      this.lostCount += noted.includes(id) ? 1 : 0;
    }
    if (all) this.raw.clear();
  }

  /** What is there and not noted can only be what a dying browser had not noted yet, or what could not be listed. */
  private notNoted(id: string): void {
    if (!this.done.has("killed") && !this.done.has("storage fails")) this.fault("untold", `${id} was never noted`);
  }

  private damage(): void {
    const id = this.anyId();
    const { kept } = this.browser.stores;
    if (!kept.has(`fittings/${id}`)) return;
    this.typed += 1;
    for (const [before, of] of this.raw) if (of === id) this.raw.delete(before);
    const junk = { half: `a record ${this.typed}` };
    kept.set(`fittings/${id}`, junk);
    this.everDamaged.add(id);
    this.touched.add(id);
    this.said.delete(id);
    this.raw.set(`a record ${this.typed}`, id);
  }

  /** What a tab tells of losses is exactly what was taken away and has not come back. */
  private async look(tab: HostileTab): Promise<void> {
    const told = await tab.autosave.lost();
    if (told === null) return;
    await settled();
    for (const { id } of told)
      if (!this.lost.has(id) && !this.known.has(id)) this.fault("untrue", `${id} was called lost`);
    const openId = tab.autosave.openId();
    for (const id of this.lost) {
      const isTold = told.some((one) => one.id === id);
      if (!isTold && id !== openId && !this.browser.stores.kept.has(`fittings/${id}`))
        this.fault("untold", `${id} was taken away and not told`);
    }
    if (this.luck.happens(0.3))
      this.goOnWithout(
        tab,
        told.map(({ id }) => id),
      );
  }

  private goOnWithout(tab: HostileTab, ids: readonly string[]): void {
    tab.storage.forgetGone(ids);
    for (const id of ids) {
      if (this.lost.has(id)) this.toldCount += 1;
      this.known.add(id);
      this.forgetLost(id);
    }
  }

  private forgetLost(id: string): void {
    this.lost.delete(id);
    this.said.delete(id);
  }

  private async checkAtRest(): Promise<void> {
    for (const id of this.lost) if (this.record(id) !== null) this.lost.delete(id);
    for (const tab of this.tabs) {
      this.checkFound(tab);
      this.checkSaved(tab);
    }
    if (!this.isFaulty && this.luck.happens(0.5)) await this.look(this.luck.pick(this.tabs));
  }

  private checkFound(tab: HostileTab): void {
    for (const what of tab.found()) {
      const causes = { recreated: this.everGone, quarantined: this.everDamaged, restored: this.everRemoved }[what];
      if (causes.size === 0) this.fault("untrue", `a save said ${what}, and nothing was`);
    }
  }

  private checkSaved(tab: HostileTab): void {
    const state = tab.state();
    const id = tab.autosave.openId();
    // The person has erased it in the other tab, and this one knows.
    if (state?.saving.kind === "nothingYet") this.changed.delete(tab);
    if (state?.saving.kind !== "saved" || id === null) return;
    const record = this.record(id);
    const isThere = record !== null && record.text === fittingText({ ...tab.store.getState().fitting, id });
    // A tab that hands its write lock over keeps its newest change first.
    if (isThere) this.changed.delete(tab);
    if (state.access !== "writing") return;
    this.savedChecked += 1;
    if (isThere) {
      this.isSaid(id, record);
      this.touched.delete(id);
    } else if (!this.touched.has(id) && !this.isWrittenElsewhere(tab, id))
      this.fault("untrue", `saved was said of ${id}, and something else lies there`);
  }

  private isWrittenElsewhere(tab: HostileTab, id: string): boolean {
    return (this.record(id)?.revision ?? 0) > (tab.state()?.entry?.revision ?? 0);
  }

  private isSaid(id: string, { text, revision }: Said): void {
    this.said.set(id, { text, revision });
    this.lost.delete(id);
    this.known.delete(id);
  }

  /** Quiet returns: every tab comes to rest, and all that was ever said to be saved is there, or told to be lost. */
  private async end(): Promise<void> {
    this.work();
    for (let i = 0; i < 12; i += 1) {
      for (const tab of this.tabs) if (tab.state()?.saving.kind === "notSaved") await tab.autosave.keepAsCopy();
      for (const tab of this.tabs) tab.passTime();
      await settled();
    }
    for (const tab of this.tabs) {
      const kind = tab.state()?.saving.kind;
      if (kind === "saving" || kind === "notSaved") this.fault("lost", `a tab is left ${kind} although storage works`);
    }
    await this.checkAtRest();
    for (const tab of this.tabs) await this.look(tab);
    await settled();
    for (const [id, said] of this.said) this.checkThere(id, said);
    await this.checkRaw();
    await this.checkList();
  }

  private checkThere(id: string, said: Said): void {
    if (this.lost.has(id)) return;
    const record = this.record(id);
    if (record === null) {
      this.fault("lost", `${id} was said to be saved and is not there`);
      return;
    }
    const isLater = record.revision > said.revision;
    if (record.text !== said.text && !isLater && !this.everGone.has(id) && !this.everDamaged.has(id))
      this.fault("lost", `${id} is there as it was before it was said to be saved`);
  }

  /** Whatever was damaged lies raw somewhere, until the person takes it away. */
  private async checkRaw(): Promise<void> {
    const everything = JSON.stringify([...this.browser.stores.kept]);
    for (const [junk, id] of this.raw) {
      if (!everything.includes(junk)) this.fault("lost", `the raw text of ${id} is nowhere`);
    }
  }

  private async checkList(): Promise<void> {
    const [tab] = this.tabs;
    await tab.storage.read("all");
    const listed = await tab.storage.list();
    if (listed.kind !== "listed") return this.fault("untrue", "the list cannot be read although storage works");
    const shown = listed.fittings.map((one) => (one.kind === "fitting" ? JSON.stringify(one.entry) : one.kind));
    const there = this.ids().map((id) => {
      const record = this.record(id);
      if (record === null) return "unreadable";
      const { title, changedAt, archived, deletedAt, revision } = record;
      return JSON.stringify({ id, title, changedAt, archived, deletedAt, revision });
    });
    if (shown.toSorted().join() !== there.toSorted().join())
      this.fault("untrue", "the list differs from what is there");
  }

  private record(id: string) {
    const found = this.browser.stores.kept.get(`fittings/${id}`);
    const reading = found === undefined ? null : readRecord(id, found);
    return reading?.kind === "whole" ? reading.record : null;
  }

  private openIds(): readonly string[] {
    return this.tabs.flatMap((tab) => tab.autosave.openId() ?? []);
  }

  private ids(): readonly string[] {
    const places = [...this.browser.stores.kept.keys()].filter((place) => place.startsWith("fittings/"));
    return places.map((place) => place.slice("fittings/".length));
  }

  private anyId(): string {
    const ids = this.ids();
    return ids[Math.floor(this.luck.between(0, ids.length))] ?? "nobody-000";
  }

  private isNoted(id: string): boolean {
    return this.browser.notes.everything().some(([name]) => name.endsWith(` ${id}`));
  }

  private fault(what: TabsFault["what"], detail: string): void {
    this.faults.push({ seed: this.seed, what, detail });
  }
}

const deeds = [
  "typed",
  "typed",
  "typed twice",
  "typed in both",
  "time",
  "time",
  "time",
  "opened",
  "opened",
  "new",
  "file",
  "link",
  "wish",
  "wish",
  "erased",
  "erased everything",
  "taken over",
  "decided",
  "retried",
  "storage fails",
  "storage works",
  "clock",
  "killed",
  "taken away",
  "damaged",
] as const;

/** Everything that waits for nothing but its turn has had it. */
async function settled(): Promise<void> {
  for (let i = 0; i < 4; i += 1) await new Promise((resolve) => setImmediate(resolve));
}
