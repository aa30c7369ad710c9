import type { Fitting } from "../../document/fitting";
import { type FittingState, type FittingStore, writtenByLetter } from "../session/store";
import type { EraseOutcome } from "./changeFitting";
import type { FittingHistory, FoundBySave } from "./fittingOutcome";
import type { KnownFitting } from "./knownFittings";
import {
  type Desk,
  type OpenEvents,
  type OpenFitting,
  type OpenOutcome,
  type OpenState,
  openFitting,
  openNewFitting,
} from "./openFitting";

/**
 * Joins the store with the storage: what lies on the table is kept from its first change on, under an id of its own.
 * A fitting put there that was never kept (a new one, the made-up person, one out of a link) becomes a fitting of its
 * own when it is first changed. Nothing leaves the table before its newest change is kept.
 */
export interface Keeping {
  readonly desk: Desk;
  /** The id of the fitting on the table, or null while it has never been kept. */
  openId(): string | null;
  /**
   * Puts a kept fitting on the table; one that a newer release kept is put there to be looked at, as far as it is
   * understood. Where that fails, or what lies there was changed meanwhile, the table stays as it is.
   */
  open(id: string, mayReplace?: MayReplace): Promise<OpenOutcome["kind"] | "looking" | NotReplaced>;
  /** Puts a fitting on the table that is not kept yet. */
  put(fitting: Fitting, mayReplace?: MayReplace): Promise<"put" | NotReplaced>;
  /**
   * Erases everything kept, and puts a fitting on the table that is not kept yet. Where erasing fails the table stays as
   * it is; where it does not, a newest change that could not be kept goes as well.
   */
  eraseEverything(inItsPlace: Fitting): Promise<EraseOutcome>;
  /** Waits for the saves under way, and tells whether the newest change on the table has been kept. */
  isKept(): Promise<boolean>;
  /** Keeps what lies on the table now, without waiting for a change. */
  keepNow(): void;
  /** Ends the pause before a save: the page is about to be put aside. */
  hurry(): void;
  retry(): void;
  takeOver(): Promise<void>;
  /** Lets go of what was refused and shows what is kept. */
  readAnew(): Promise<void>;
  /**
   * Which fittings are lost, or null where that cannot be found out. What lies on the table is not: it is kept again at
   * once, which is told by itself.
   */
  lost(): Promise<readonly KnownFitting[] | null>;
  /** Keeps what is on the table as a fitting of its own, beside the one that another tab has changed. */
  keepAsCopy(): Promise<void>;
}

/** The newest change on the table could not be kept yet: keep it, or let go of it, before something else comes there. */
export type NotKept = "notKept";

/** Asked at the last moment before something else comes on the table, for whoever comes without being asked for. */
export type MayReplace = (state: FittingState) => boolean;

/** changed: what lies on the table may not be replaced any more. */
export type NotReplaced = NotKept | "changed";

export interface KeepingEvents {
  /** The fitting on the table and how far it is kept; null while it has never been kept. */
  readonly onState: (state: OpenState | null) => void;
  /** The first fitting of this visit has been kept. */
  readonly onFirstSave: () => void;
  /** The fitting that was opened had steps to undo that could not be read. */
  readonly onHistoryLost: () => void;
  /** A save found something else than what was kept there before. */
  readonly onFound?: (found: FoundBySave) => void;
}

export function startKeeping(store: FittingStore, desk: Desk, events: KeepingEvents): Keeping {
  const table = new Table(store, desk, events);
  store.subscribe((state, before) => table.follow(state, before));
  return table;
}

/** A new fitting on its way to its first save, with the newest change that is to be in it. */
interface Beginning {
  newest: FittingState;
  readonly open: Promise<OpenFitting>;
}

const always: MayReplace = () => true;

class Table implements Keeping {
  readonly desk: Desk;
  private readonly store: FittingStore;
  private readonly events: KeepingEvents;
  private current: OpenFitting | null = null;
  private beginning: Beginning | null = null;
  private isLoading = false;
  private hasSaved = false;

  constructor(store: FittingStore, desk: Desk, events: KeepingEvents) {
    this.store = store;
    this.desk = desk;
    this.events = events;
  }

  follow(state: FittingState, before: FittingState): void {
    if (this.isLoading || state.fitting === before.fitting || state.cause === "look") return;
    if (state.cause === "load") void this.clear();
    else this.keep(state);
  }

  openId(): string | null {
    return this.current?.id ?? null;
  }

  async open(id: string, mayReplace: MayReplace = always): Promise<OpenOutcome["kind"] | "looking" | NotReplaced> {
    if (this.current?.id === id) return "open";
    if (!(await this.isKept())) return "notKept";
    const self: { open: OpenFitting | null } = { open: null };
    const outcome = await openFitting(this.desk, id, this.eventsOf(self));
    if (outcome.kind === "newer" && outcome.asUnderstood !== null) return await this.lookAt(outcome.asUnderstood);
    if (outcome.kind !== "open") return outcome.kind;
    if (!mayReplace(this.store.getState())) {
      await outcome.open.close();
      return "changed";
    }
    const cleared = this.clear();
    self.open = outcome.open;
    this.current = outcome.open;
    this.load(outcome.fitting, outcome.history);
    this.events.onState(outcome.open.state());
    if (outcome.historyLost) this.events.onHistoryLost();
    await cleared;
    return "open";
  }

  async put(fitting: Fitting, mayReplace: MayReplace = always): Promise<"put" | NotReplaced> {
    if (!(await this.isKept())) return "notKept";
    if (!mayReplace(this.store.getState())) return "changed";
    await this.letGo(fitting);
    return "put";
  }

  async eraseEverything(inItsPlace: Fitting): Promise<EraseOutcome> {
    const isKept = await this.isKept();
    if (!isKept) this.current?.stopTrying();
    const outcome = await this.desk.storage.eraseEverything();
    if (outcome.kind === "erased") await this.letGo(inItsPlace);
    else if (!isKept) this.keepNow();
    return outcome;
  }

  private async letGo(fitting: Fitting): Promise<void> {
    const cleared = this.clear();
    this.load(fitting, { past: [], future: [] });
    await cleared;
  }

  private async lookAt(fitting: Fitting): Promise<"looking"> {
    const cleared = this.clear();
    this.store.look(fitting);
    this.events.onState({ access: "newer", saving: { kind: "nothingYet" }, entry: null });
    await cleared;
    return "looking";
  }

  async isKept(): Promise<boolean> {
    const open = this.current ?? (await this.beginning?.open);
    return open?.isKept() ?? true;
  }

  keepNow(): void {
    if (this.store.getState().cause === "look") return;
    this.keep(this.store.getState());
  }

  hurry(): void {
    this.current?.hurry();
  }

  retry(): void {
    this.current?.retry();
  }

  async takeOver(): Promise<void> {
    await this.current?.takeOver();
  }

  async readAnew(): Promise<void> {
    await this.current?.readAnew();
  }

  async keepAsCopy(): Promise<void> {
    const cleared = this.clear();
    this.keepNow();
    await cleared;
  }

  async lost(): Promise<readonly KnownFitting[] | null> {
    const compared = await this.desk.storage.gone();
    if (compared.kind !== "compared") return null;
    const openId = this.current?.state().access === "writing" ? this.current.id : null;
    if (compared.gone.some(({ id }) => id === openId)) this.keepNow();
    // What an older release kept is noted by name once it has been listed, which nobody waits for.
    if (!compared.isAllKnown) void this.desk.storage.list();
    return compared.gone.filter(({ id }) => id !== openId);
  }

  /** Sends the fitting on the table back to its drawer. From here on the table counts as never kept. */
  private async clear(): Promise<void> {
    const leaving = this.current ?? this.beginning?.open;
    this.current = null;
    this.beginning = null;
    this.events.onState(null);
    await (await leaving)?.close();
  }

  private keep(state: FittingState): void {
    const isWrittenByLetter = state.cause === "draft" || writtenByLetter.has(state.cause);
    const pause = this.desk.pauses?.[isWrittenByLetter ? "letter" : "change"];
    if (this.current) this.current.keep(state.fitting, { past: state.past, future: state.future }, pause);
    else if (this.beginning) this.beginning.newest = state;
    else this.begin(state);
  }

  private begin(newest: FittingState): void {
    const self: { open: OpenFitting | null } = { open: null };
    const opening = openNewFitting(this.desk, this.eventsOf(self)).then((open) => {
      self.open = open;
      if (this.beginning === beginning) {
        this.current = open;
        this.beginning = null;
      }
      const { fitting, past, future } = beginning.newest;
      open.keep(fitting, { past, future });
      return open;
    });
    const beginning: Beginning = { newest, open: opening };
    this.beginning = beginning;
  }

  private eventsOf(self: { readonly open: OpenFitting | null }): OpenEvents {
    const isOnTable = (): boolean => self.open !== null && this.current === self.open;
    return {
      onState: (state) => {
        if (isOnTable()) this.show(state);
      },
      onRead: (fitting, history) => {
        if (isOnTable()) this.load(fitting, history);
      },
      onFound: (found) => this.events.onFound?.(found),
    };
  }

  private show(state: OpenState): void {
    if (state.saving.kind === "saved" && !this.hasSaved) {
      this.hasSaved = true;
      this.events.onFirstSave();
    }
    this.events.onState(state);
  }

  private load(fitting: Fitting, history: FittingHistory): void {
    this.isLoading = true;
    this.store.load(fitting, history);
    this.isLoading = false;
  }
}
