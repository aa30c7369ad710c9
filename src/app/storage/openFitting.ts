import type { Fitting } from "../../document/fitting";
import type { FittingEntry } from "./fittingRecord";
import { type FittingHistory, type FoundBySave, type LoadOutcome, type NotSaved, notSaved } from "./fittingOutcome";
import type { FittingStorage } from "./fittingStorage";
import { type Locks, type Pen, takePen, waitForPen } from "./pen";
import { type QueuedSave, type SaveQueue, type SaveState, saveQueue } from "./saveQueue";
import type { TabChannel } from "./tabChannel";

/**
 * A fitting that is open in this tab: whether this tab may write in it, and whether the newest change is kept. It holds
 * the pen, saves every change at once, tells the other tabs, and reads anew when another tab has written.
 */
export interface OpenFitting {
  readonly id: string;
  state(): OpenState;
  /**
   * Keeps a change with the steps around it, at once or after a pause in milliseconds. Refused, and said so, while another tab
   * writes.
   */
  keep(fitting: Fitting, history: FittingHistory, pause?: number): void;
  /** Ends the pause before a save. */
  hurry(): void;
  /** Tries again to save what was not saved. */
  retry(): void;
  /** Tries no more to save what was not saved; the next change is kept again. */
  stopTrying(): void;
  /** Asks the tab that writes to save and let go; takes the pen by force if no answer comes. */
  takeOver(): Promise<void>;
  /** Reads what is kept and lets go of changes that were refused. */
  readAnew(): Promise<void>;
  /** Waits for the saves under way, and tells whether the newest change has been kept. */
  isKept(): Promise<boolean>;
  /** Saves what is left, lets go of the pen; tells whether everything was kept. */
  close(): Promise<boolean>;
}

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
  readonly onState: (state: OpenState) => void;
  /** What is kept has changed under us, and is now this. */
  readonly onRead: (fitting: Fitting, history: FittingHistory) => void;
  /** A save found something else than what was kept there before. */
  readonly onFound?: (found: FoundBySave) => void;
}

export interface Desk {
  readonly storage: FittingStorage;
  readonly locks: Locks | undefined;
  readonly channel: TabChannel;
  readonly later: (milliseconds: number, work: () => void) => () => void;
  /** How long a change waits before it is saved; at once where nothing is said. */
  readonly pauses?: SavePauses;
  /** How long a writing tab has to save and let go before its pen is taken, in milliseconds. */
  readonly takeOverPatience?: number;
}

/** Milliseconds of quiet before a save: after a letter of a text that is not finished, and after everything else. */
export interface SavePauses {
  readonly letter: number;
  readonly change: number;
}

export type OpenOutcome =
  | {
      readonly kind: "open";
      readonly open: OpenFitting;
      readonly fitting: Fitting;
      readonly history: FittingHistory;
      readonly historyLost: boolean;
    }
  | Exclude<LoadOutcome, { readonly kind: "loaded" }>;

/** Opens a fitting that is kept. Whatever cannot be opened for writing comes back as the storage told it. */
export async function openFitting(desk: Desk, id: string, events: OpenEvents): Promise<OpenOutcome> {
  const answer = await takePen(desk.locks, id, "ifFree");
  const loaded = await desk.storage.load(id);
  if (loaded.kind !== "loaded") {
    if (answer.kind === "held") answer.pen.letGo();
    return loaded;
  }
  const open = new FittingAtDesk(desk, id, events, loaded.entry);
  if (answer.kind === "held") open.hold(answer.pen);
  if (answer.kind === "elsewhere") open.follow();
  const { fitting, history, historyLost } = loaded;
  return { kind: "open", open, fitting, history, historyLost };
}

/** Opens a new fitting under a new id; the first change kept is its first save. */
export async function openNewFitting(desk: Desk, events: OpenEvents): Promise<OpenFitting> {
  const id = desk.storage.newId();
  const answer = await takePen(desk.locks, id, "ifFree");
  const open = new FittingAtDesk(desk, id, events, null);
  if (answer.kind === "held") open.hold(answer.pen);
  return open;
}

interface Change {
  readonly fitting: Fitting;
  readonly history: FittingHistory;
}

/** Troubles that may pass by themselves; after the others only the person or another change can help. */
const passingReasons: ReadonlySet<NotSaved["reason"]> = new Set(["noRoom", "lost", "slow", "failed"]);

class FittingAtDesk implements OpenFitting {
  readonly id: string;
  private readonly desk: Desk;
  private readonly events: OpenEvents;
  private readonly queue: SaveQueue<Change>;
  private readonly stopHearing: () => void;
  private shown: OpenState;
  private revision: number;
  private triedMarks: readonly string[] = [];
  private pen: Pen | null = null;
  private waiting: AbortController | null = null;
  private penArrived: () => void = () => {};
  /** There is a change that cannot be kept, because another tab has the pen. It stays until the person decides. */
  private isStranded = false;

  constructor(desk: Desk, id: string, events: OpenEvents, entry: FittingEntry | null) {
    this.desk = desk;
    this.id = id;
    this.events = events;
    this.revision = entry?.revision ?? 0;
    const saving = entry ? ({ kind: "saved", at: entry.changedAt } as const) : ({ kind: "nothingYet" } as const);
    this.shown = { access: "writing", saving, entry };
    this.queue = saveQueue<Change, NotSaved>({
      save: (change, mark) => this.save(change, mark),
      onState: (saved) => this.show({ saving: saved }),
      newMark: desk.storage.newId,
      later: desk.later,
    });
    this.stopHearing = desk.channel.hear((message) => {
      if (message.kind === "saved" && message.id === id && message.revision > this.revision) void this.catchUp();
      if (message.kind === "penWanted" && message.id === id && this.pen) void this.handOver();
      if (message.kind === "listChanged") void this.lookWhetherErased();
    });
  }

  state(): OpenState {
    return this.shown;
  }

  keep(fitting: Fitting, history: FittingHistory, pause = 0): void {
    if (this.shown.access === "writing") {
      this.queue.offer({ fitting, history }, pause);
      return;
    }
    this.isStranded = true;
    this.refuse("changedElsewhere", "another tab has the pen");
  }

  hurry(): void {
    this.queue.hurry();
  }

  retry(): void {
    this.queue.retry();
  }

  stopTrying(): void {
    this.queue.stop();
  }

  async takeOver(): Promise<void> {
    const { locks, channel, takeOverPatience = 3_000 } = this.desk;
    if (locks === undefined || this.shown.access === "writing") return;
    const arrived = new Promise<void>((resolve) => {
      this.penArrived = resolve;
      this.desk.later(takeOverPatience, resolve);
    });
    channel.send({ kind: "penWanted", id: this.id });
    await arrived;
    if (this.pen !== null) return;
    this.waiting?.abort();
    const answer = await takePen(locks, this.id, "byForce");
    if (answer.kind === "held") await this.holdAndReadAnew(answer.pen);
  }

  async readAnew(): Promise<void> {
    await this.showKept(() => true);
  }

  /** What cannot be read takes the place of nothing. Nor does what came too late, after a change of our own. */
  private async showKept(isWanted: () => boolean): Promise<void> {
    const loaded = await this.desk.storage.load(this.id);
    if (!isWanted() || (loaded.kind !== "loaded" && loaded.kind !== "newer")) return;
    this.queue.stop();
    if (loaded.kind === "newer") return this.refuse("newerRecord", "a newer release wrote it in another tab");
    this.revision = loaded.entry.revision;
    this.triedMarks = [];
    this.isStranded = false;
    this.show({ entry: loaded.entry, saving: { kind: "saved", at: loaded.entry.changedAt } });
    this.events.onRead(loaded.fitting, loaded.history);
  }

  async isKept(): Promise<boolean> {
    return (await this.queue.settled()) && !this.isStranded;
  }

  async close(): Promise<boolean> {
    this.stopHearing();
    this.waiting?.abort();
    const isKept = await this.isKept();
    this.queue.stop();
    this.pen?.letGo();
    return isKept;
  }

  hold(pen: Pen): void {
    this.pen = pen;
    this.penArrived();
    this.show({ access: "writing" });
    void pen.gone.then((how) => {
      if (this.pen !== pen) return;
      this.pen = null;
      if (how === "taken") void this.stepAside();
    });
  }

  /** Another tab writes: read along, and queue for the pen in case it is let go. */
  follow(): void {
    const { locks } = this.desk;
    if (locks === undefined) return;
    this.show({ access: "elsewhere" });
    const waiting = new AbortController();
    this.waiting = waiting;
    void waitForPen(locks, this.id, waiting.signal).then((pen) => {
      if (pen === null) return;
      if (waiting.signal.aborted) pen.letGo();
      else void this.holdAndReadAnew(pen);
    });
  }

  private async stepAside(): Promise<void> {
    this.show({ access: "elsewhere" });
    this.isStranded = !(await this.queue.settled());
    this.queue.stop();
    if (this.isStranded) this.refuse("changedElsewhere", "another tab took the pen before this change was saved");
    this.follow();
  }

  private async holdAndReadAnew(pen: Pen): Promise<void> {
    if (!this.isStranded) await this.showKept(() => this.isWithoutChange());
    this.hold(pen);
  }

  /** Another tab has written. Without changes of our own to lose we follow; otherwise our next save is refused. */
  private async catchUp(): Promise<void> {
    if (this.isStranded) return;
    if (this.shown.access === "elsewhere" || (await this.queue.settled()))
      await this.showKept(() => this.isWithoutChange());
  }

  /** What another tab has erased is not called saved any longer. It stays on the screen, and is kept with the next change. */
  private async lookWhetherErased(): Promise<void> {
    const loaded = await this.desk.storage.load(this.id);
    if (loaded.kind === "missing" && this.isWithoutChange() && this.shown.saving.kind === "saved")
      this.show({ saving: { kind: "nothingYet" } });
  }

  private isWithoutChange(): boolean {
    return !this.isStranded && this.queue.isIdle();
  }

  private async handOver(): Promise<void> {
    const isKept = await this.queue.settled();
    if (!isKept || this.pen === null) return;
    const { pen } = this;
    this.pen = null;
    pen.letGo();
    await pen.gone;
    this.follow();
  }

  private async save({ fitting, history }: Change, mark: string): Promise<QueuedSave<NotSaved>> {
    const { id, revision, triedMarks } = this;
    const request = { id, baseRevision: revision, mark, earlierMarks: triedMarks, fitting, history };
    const outcome = await this.desk.storage.save(request);
    if (outcome.kind === "notSaved") {
      this.triedMarks = [...triedMarks, mark].slice(-50);
      return { kind: "notSaved", refusal: outcome, passing: passingReasons.has(outcome.reason) };
    }
    this.revision = outcome.entry.revision;
    this.triedMarks = [];
    // A change holds all of the fitting, so what was refused before is in it.
    if (this.shown.access === "writing") this.isStranded = false;
    this.show({ entry: outcome.entry });
    for (const found of outcome.found) this.events.onFound?.(found);
    this.desk.channel.send({ kind: "saved", id, revision: outcome.entry.revision });
    return { kind: "saved", at: outcome.entry.changedAt };
  }

  private refuse(reason: NotSaved["reason"], detail: string): void {
    this.show({ saving: { kind: "notSaved", refusal: notSaved(reason, detail) } });
  }

  private show(part: Partial<OpenState>): void {
    this.shown = { ...this.shown, ...part };
    this.events.onState(this.shown);
  }
}
