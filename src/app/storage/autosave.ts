import type { Fitting } from "../../document/fitting";
import { type FittingState, type FittingStore, writtenByLetter } from "../session/store";
import type { EraseOutcome } from "./changeFitting";
import type { FoundBySave } from "./fittingOutcome";
import type { KnownFitting } from "./knownFittings";
import {
  type StorageContext,
  type OpenEvents,
  type OpenFitting,
  type OpenOutcome,
  type OpenState,
  openFitting,
  openNewFitting,
} from "./openFitting";

/** The newest change of the open fitting could not be kept yet: keep it, or let go of it, before something else comes there. */
export type NotKept = "notKept";

/** Asked at the last moment before something else is opened, for whoever comes without being asked for. */
export type MayReplace = (state: FittingState) => boolean;

/** changed: what is open may not be replaced any more. */
export type NotReplaced = NotKept | "changed";

export interface AutosaveEvents {
  /** The open fitting and how far it is kept; null while it has never been kept. */
  readonly onState: (state: OpenState | null) => void;
  /** The first fitting of this visit has been kept. */
  readonly onFirstSave: () => void;
  /** The fitting that was opened had steps to undo that could not be read. */
  readonly onHistoryLost: () => void;
  /** A save found something else than what was kept there before. */
  readonly onFound?: (found: FoundBySave) => void;
}

export type Autosave = Pick<StoreAutosave, keyof StoreAutosave>;

export const startAutosave = (store: FittingStore, context: StorageContext, events: AutosaveEvents): Autosave =>
  new StoreAutosave(store, context, events);

const always: MayReplace = () => true;

/**
 * Joins the store with the storage: what is open is kept from its first change on, under an id of its own.
 * Nothing is closed before its newest change is kept.
 */
class StoreAutosave {
  readonly context: StorageContext;
  private readonly store: FittingStore;
  private readonly events: AutosaveEvents;
  private current: OpenFitting | null = null;
  private isLoading = false;
  private hasSaved = false;

  constructor(store: FittingStore, context: StorageContext, events: AutosaveEvents) {
    this.store = store;
    this.context = context;
    this.events = events;
    store.subscribe((state, before) => this.follow(state, before));
  }

  /** The id of the open fitting, or null while nothing of it is to be kept. */
  openId(): string | null {
    return this.current?.id ?? null;
  }

  /**
   * Opens a kept fitting; one that a newer release kept only to be looked at. Where that fails, or what lies
   * there was changed meanwhile, the open fitting stays.
   */
  async open(id: string, mayReplace: MayReplace = always): Promise<OpenOutcome["kind"] | "looking" | NotReplaced> {
    if (this.current?.id === id) return "open";
    if (!(await this.isKept())) return "notKept";
    const outcome = await openFitting(this.context, id, this.openEvents);
    if (outcome.kind === "newer" && outcome.asUnderstood !== null) return await this.lookAt(outcome.asUnderstood);
    if (outcome.kind !== "open") return outcome.kind;
    const { open, fitting, history, historyLost } = outcome;
    if (!mayReplace(this.store.getState())) {
      await open.close();
      return "changed";
    }
    await this.replace(() => {
      this.current = open;
      this.load(() => this.store.load(fitting, history));
      this.events.onState(open.state());
      if (historyLost) this.events.onHistoryLost();
    });
    return "open";
  }

  /** Opens a fitting that is not kept yet. */
  async put(fitting: Fitting, mayReplace: MayReplace = always): Promise<"put" | NotReplaced> {
    if (!(await this.isKept())) return "notKept";
    if (!mayReplace(this.store.getState())) return "changed";
    await this.replace(() => this.load(() => this.store.load(fitting)));
    return "put";
  }

  /**
   * Erases everything kept, a newest change that could not be kept as well, and opens a fitting that is not
   * kept yet. Where erasing fails the open fitting stays.
   */
  async eraseEverything(inItsPlace: Fitting): Promise<EraseOutcome> {
    const isKept = await this.isKept();
    if (!isKept) this.current?.saves.stop();
    const outcome = await this.context.storage.eraseEverything();
    if (outcome.kind === "erased") await this.replace(() => this.load(() => this.store.load(inItsPlace)));
    else if (!isKept) this.keepNow();
    return outcome;
  }

  /** Waits for the saves under way, and tells whether the newest change of the open fitting has been kept. */
  async isKept(): Promise<boolean> {
    return (await this.current?.isKept()) ?? true;
  }

  /** Keeps what is open now, without waiting for a change. */
  keepNow(): void {
    const state = this.store.getState();
    if (state.cause !== "look") this.keep(state);
  }

  /** Ends the pause before a save: the page is about to be put aside. */
  hurry(): void {
    this.current?.saves.hurry();
  }

  retry(): void {
    this.current?.saves.retry();
  }

  async takeOver(): Promise<void> {
    await this.current?.takeOver();
  }

  /** Lets go of what was refused and shows what is kept. */
  async readAnew(): Promise<void> {
    await this.current?.readAnew();
  }

  /** Keeps what is open as a fitting of its own, beside the one that another tab has changed. */
  async keepAsCopy(): Promise<void> {
    await this.replace(() => this.keepNow());
  }

  /**
   * Which fittings are lost, or null where that cannot be found out. What is open is not: it is kept again at
   * once, which is told by itself.
   */
  async lost(): Promise<readonly KnownFitting[] | null> {
    const compared = await this.context.storage.gone();
    if (compared.kind !== "compared") return null;
    const openId = this.current?.state().access === "writing" ? this.current.id : null;
    if (compared.gone.some(({ id }) => id === openId)) this.keepNow();
    // What an older release kept is noted by name once it has been listed, which nobody waits for.
    if (!compared.isAllKnown) void this.context.storage.list();
    return compared.gone.filter(({ id }) => id !== openId);
  }

  private follow(state: FittingState, before: FittingState): void {
    if (this.isLoading || state.fitting === before.fitting || state.cause === "look") return;
    if (state.cause === "load") void this.replace(() => {});
    else this.keep(state);
  }

  private async lookAt(fitting: Fitting): Promise<"looking"> {
    await this.replace(() => {
      this.store.look(fitting);
      this.events.onState({ access: "newer", saving: { kind: "nothingYet" }, entry: null });
    });
    return "looking";
  }

  /** Opens something else, and sends what lay there back to its store. */
  private async replace(put: () => void): Promise<void> {
    const leaving = this.current;
    this.current = null;
    this.events.onState(null);
    put();
    await leaving?.close();
  }

  private keep({ cause, fitting, past, future }: FittingState): void {
    const isWrittenByLetter = cause === "draft" || writtenByLetter.has(cause);
    const pause = this.current ? this.context.pauses?.[isWrittenByLetter ? "letter" : "change"] : 0;
    this.current ??= openNewFitting(this.context, this.openEvents);
    this.current.keep(fitting, { past, future }, pause);
  }

  private readonly openEvents: OpenEvents = {
    onState: (state, open) => {
      if (open === this.current) this.show(state);
    },
    onRead: (fitting, history, open) => {
      if (open === this.current) this.load(() => this.store.load(fitting, history));
    },
    onFound: (found) => this.events.onFound?.(found),
  };

  private show(state: OpenState): void {
    if (state.saving.kind === "saved" && !this.hasSaved) {
      this.hasSaved = true;
      this.events.onFirstSave();
    }
    this.events.onState(state);
  }

  /** Loads the store without taking that for a change. */
  private load(into: () => void): void {
    this.isLoading = true;
    into();
    this.isLoading = false;
  }
}
