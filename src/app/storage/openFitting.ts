import type { Fitting } from "../../document/fitting";
import type { FittingEntry } from "./fittingRecord";
import { type FittingHistory, type FoundBySave, type LoadOutcome, type NotSaved, notSaved } from "./fittingOutcome";
import type { FittingStorage } from "./fittingStorage";
import { type Locks, type WriteLock, takeWriteLock } from "./writeLock";
import { type Later, type QueuedSave, SaveQueue, type SaveState } from "./saveQueue";
import type { TabChannel } from "./tabChannel";

export interface OpenState {
  /**
   * elsewhere: another tab is writing; this one shows what is kept and follows. newer: a newer release kept it; it is
   * shown as far as this one understands it, and changed by nobody here.
   */
  readonly access: "writing" | "elsewhere" | "newer";
  readonly saving: SaveState<NotSaved>;
  readonly entry: FittingEntry | null;
}

/** What happens to an open fitting without the person's doing in this tab. */
export interface OpenEvents {
  readonly onState: (state: OpenState, open: OpenFitting) => void;
  /** What is kept has changed under us, and is now this. */
  readonly onRead: (fitting: Fitting, history: FittingHistory, open: OpenFitting) => void;
  /** A save found something else than what was kept there before. */
  readonly onFound?: (found: FoundBySave) => void;
}

export interface StorageContext {
  readonly storage: FittingStorage;
  readonly locks: Locks | undefined;
  readonly channel: TabChannel;
  readonly later: Later;
  /** Milliseconds of quiet before a save: after a letter of a text that is not finished, and after everything else. */
  readonly pauses?: { readonly letter: number; readonly change: number };
  /** How long a writing tab has to save and let go before its write lock is taken, in milliseconds. */
  readonly takeOverPatience?: number;
}

type Loaded = Extract<LoadOutcome, { readonly kind: "loaded" }>;
export type OpenOutcome =
  | (Omit<Loaded, "kind"> & { readonly kind: "open"; readonly open: OpenFitting })
  | Exclude<LoadOutcome, Loaded>;

/** Opens a fitting that is kept. Whatever cannot be opened for writing comes back as the storage told it. */
export async function openFitting(context: StorageContext, id: string, events: OpenEvents): Promise<OpenOutcome> {
  const writeLock = await takeWriteLock(context.locks, id, { ifAvailable: true });
  const loaded = await context.storage.load(id);
  if (loaded.kind !== "loaded") {
    writeLock?.letGo();
    return loaded;
  }
  const open = new OpenFitting(context, id, events, loaded.entry);
  void open.live(writeLock);
  return { ...loaded, kind: "open", open };
}

/** Opens a new fitting under a new id, whose write lock nobody else can want; the first change kept is its first save. */
export function openNewFitting(context: StorageContext, events: OpenEvents): OpenFitting {
  const open = new OpenFitting(context, context.storage.newId(), events, null);
  void takeWriteLock(context.locks, open.id, { ifAvailable: true }).then((writeLock) => open.live(writeLock));
  return open;
}

interface Change {
  readonly fitting: Fitting;
  readonly history: FittingHistory;
}

/** Troubles that may pass by themselves; after the others only the person or another change can help. */
const passingReasons: ReadonlySet<NotSaved["reason"]> = new Set(["noRoom", "lost", "slow", "failed"]);

/** A fitting that is open in this tab: whether this tab may write in it, and whether the newest change is kept. */
export class OpenFitting {
  readonly id: string;
  readonly saves: SaveQueue<Change, NotSaved>;
  private readonly context: StorageContext;
  private readonly events: OpenEvents;
  private readonly stopHearing: () => void;
  private shown: OpenState;
  private revision: number;
  private triedMarks: readonly string[] = [];
  private writeLock: WriteLock | null = null;
  /** Calls off the waiting for the write lock of another tab. */
  private waiting = new AbortController();
  /** Those who wait until this tab has the write lock, or cannot have it. */
  private onWriteLock: readonly (() => void)[] = [];
  private isClosed = false;
  /** There is a change that cannot be kept, because another tab has the write lock. It stays until the person decides. */
  private isStranded = false;

  constructor(context: StorageContext, id: string, events: OpenEvents, entry: FittingEntry | null) {
    this.context = context;
    this.id = id;
    this.events = events;
    this.revision = entry?.revision ?? 0;
    this.shown = { access: "writing", saving: entry ? savedAt(entry) : { kind: "nothingYet" }, entry };
    this.saves = new SaveQueue<Change, NotSaved>({
      save: (change, mark) => this.save(change, mark),
      onState: (saving) => this.show({ saving }),
      newMark: context.storage.newId,
      later: context.later,
    });
    this.stopHearing = context.channel.hear((message) => {
      if (message.kind === "listChanged") void this.lookWhetherErased();
      else if (message.id !== id) return;
      else if (message.kind === "penWanted") void this.handOver();
      else if (message.revision > this.revision) void this.catchUp();
    });
  }

  state(): OpenState {
    return this.shown;
  }

  /** Keeps a change with the steps around it. Refused, and said so, while another tab writes. */
  keep(fitting: Fitting, history: FittingHistory, pause = 0): void {
    if (this.shown.access === "writing") this.saves.offer({ fitting, history }, pause);
    else this.strand("another tab has the write lock");
  }

  /** Asks the tab that writes to save and let go; takes the write lock by force if no answer comes. */
  async takeOver(): Promise<void> {
    const { channel, later, takeOverPatience = 3_000 } = this.context;
    if (this.shown.access === "writing") return;
    channel.send({ kind: "penWanted", id: this.id });
    const callOff = later(takeOverPatience, () => this.waiting.abort());
    await new Promise<void>((resolve) => {
      this.onWriteLock = [...this.onWriteLock, resolve];
    });
    callOff();
  }

  /** Reads what is kept and lets go of changes that were refused. */
  async readAnew(): Promise<void> {
    await this.showKept(() => true);
  }

  /** Waits for the saves under way, and tells whether the newest change has been kept. */
  async isKept(): Promise<boolean> {
    return (await this.saves.settled()) && !this.isStranded;
  }

  /** Saves what is left, lets go of the write lock; tells whether everything was kept. */
  async close(): Promise<boolean> {
    this.isClosed = true;
    this.stopHearing();
    this.waiting.abort();
    const isKept = await this.isKept();
    this.saves.stop();
    this.writeLock?.letGo();
    return isKept;
  }

  /** Writes while it has the write lock, and otherwise follows the tab that has it, until it is closed. */
  async live(first: WriteLock | null): Promise<void> {
    for (let writeLock = first ?? (await this.follow()); writeLock !== null; writeLock = await this.follow()) {
      this.writeLock = writeLock;
      if (this.isClosed) writeLock.letGo();
      this.tellWriteLock();
      this.show({ access: "writing" });
      const how = await writeLock.gone;
      this.writeLock = null;
      if (this.isClosed) return;
      if (how === "taken") await this.stepAside();
    }
    this.tellWriteLock();
  }

  /** Another tab writes: reads along until the write lock is let go, or has to be taken. */
  private async follow(): Promise<WriteLock | null> {
    const { locks } = this.context;
    this.show({ access: "elsewhere" });
    this.waiting = new AbortController();
    const { signal } = this.waiting;
    let writeLock = await takeWriteLock(locks, this.id, { signal });
    if (writeLock === null && signal.aborted && !this.isClosed)
      writeLock = await takeWriteLock(locks, this.id, { steal: true });
    if (writeLock !== null && !this.isStranded) await this.showKept(() => this.isWithoutChange());
    return writeLock;
  }

  private async stepAside(): Promise<void> {
    this.show({ access: "elsewhere" });
    const isKept = await this.saves.settled();
    this.saves.stop();
    if (!isKept) this.strand("another tab took the write lock before this change was saved");
  }

  private tellWriteLock(): void {
    for (const tell of this.onWriteLock) tell();
    this.onWriteLock = [];
  }

  private async handOver(): Promise<void> {
    if (this.writeLock !== null && (await this.saves.settled())) this.writeLock?.letGo();
  }

  /** Another tab has written. Without changes of our own to lose we follow; otherwise our next save is refused. */
  private async catchUp(): Promise<void> {
    if (this.isStranded) return;
    if (this.shown.access === "elsewhere" || (await this.saves.settled()))
      await this.showKept(() => this.isWithoutChange());
  }

  /** What cannot be read takes the place of nothing. Nor does what came too late, after a change of our own. */
  private async showKept(isWanted: () => boolean): Promise<void> {
    const loaded = await this.context.storage.load(this.id);
    if (!isWanted() || (loaded.kind !== "loaded" && loaded.kind !== "newer")) return;
    this.saves.stop();
    if (loaded.kind === "newer") {
      this.refuse("newerRecord", "a newer release wrote it in another tab");
      return;
    }
    const { entry, fitting, history } = loaded;
    this.revision = entry.revision;
    this.triedMarks = [];
    this.isStranded = false;
    this.show({ entry, saving: savedAt(entry) });
    this.events.onRead(fitting, history, this);
  }

  /** What another tab has erased is not called saved any longer. It stays on the screen, and is kept with the next change. */
  private async lookWhetherErased(): Promise<void> {
    const loaded = await this.context.storage.load(this.id);
    if (loaded.kind === "missing" && this.isWithoutChange() && this.shown.saving.kind === "saved")
      this.show({ saving: { kind: "nothingYet" } });
  }

  private isWithoutChange(): boolean {
    return !this.isStranded && this.saves.isIdle();
  }

  private async save({ fitting, history }: Change, mark: string): Promise<QueuedSave<NotSaved>> {
    const { id, revision, triedMarks } = this;
    const request = { id, baseRevision: revision, mark, earlierMarks: triedMarks, fitting, history };
    const outcome = await this.context.storage.save(request);
    if (outcome.kind === "notSaved") {
      this.triedMarks = [...triedMarks, mark].slice(-50);
      return { kind: "notSaved", refusal: outcome, passing: passingReasons.has(outcome.reason) };
    }
    const { entry } = outcome;
    this.revision = entry.revision;
    this.triedMarks = [];
    // A change holds all of the fitting, so what was refused before is in it.
    if (this.shown.access === "writing") this.isStranded = false;
    this.show({ entry });
    for (const found of outcome.found) this.events.onFound?.(found);
    this.context.channel.send({ kind: "saved", id, revision: entry.revision });
    return savedAt(entry);
  }

  private strand(detail: string): void {
    this.isStranded = true;
    this.refuse("changedElsewhere", detail);
  }

  private refuse(reason: NotSaved["reason"], detail: string): void {
    this.show({ saving: { kind: "notSaved", refusal: notSaved(reason, detail) } });
  }

  private show(part: Partial<OpenState>): void {
    this.shown = { ...this.shown, ...part };
    this.events.onState(this.shown, this);
  }
}

const savedAt = ({ changedAt }: FittingEntry) => ({ kind: "saved", at: changedAt }) as const;
