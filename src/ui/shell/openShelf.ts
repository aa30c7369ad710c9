import { startOffline } from "../../app/offline/offlineState";
import { takeLink } from "../../app/share/linkAddress";
import { fittingStorage } from "../../app/storage/fittingStorage";
import { indexedStores } from "../../app/storage/indexedStores";
import { knownFittings } from "../../app/storage/knownFittings";
import { type Autosave, startAutosave } from "../../app/storage/autosave";
import { leavingGuard } from "../../app/storage/leavingGuard";
import type { StorageContext, OpenState } from "../../app/storage/openFitting";
import { askToKeep } from "../../app/storage/room";
import { tabChannel } from "../../app/storage/tabChannel";
import type { FittingState, FittingStore } from "../../app/session/store";
import { goTo } from "../kit/page";
import { failedLast, noteLeft, noteStart, OtherFittings } from "../kit/rescue/FailedPage";
import { lookForGone } from "../kit/shelf/useListing";
import { AutosaveNotice } from "./lateContents";
import { isUnchanged, receiveLink } from "./receiveLink";
import { listMayHaveChanged, reloadWhenKept, shelf, tell } from "../kit/shelf/shelf";

/** Opens the database, opens the last fitting (or the one out of a link), and keeps it from then on. */
export async function openShelf(store: FittingStore, shared: string | null): Promise<void> {
  const autosave = startAutosave(store, openContext(), {
    onState: show,
    onFirstSave: () => void askToKeep(navigator.storage),
    onHistoryLost: () => tell({ kind: "historyLost" }),
    onFound: (kind) => {
      tell({ kind });
      // Where one was cleared others may have been.
      if (kind === "recreated") void lookForGone(autosave);
    },
  });
  shelf.setState({ autosave });
  leavingGuard(window, () => shelf.getState().open);
  startListening(autosave);
  startWorker();
  AutosaveNotice.fetch();
  OtherFittings.fetch();
  // What was typed while the keeping was on its way is kept before anything else may be opened.
  if (!isUnchanged(store.getState())) autosave.keepNow();
  await lookForGone(autosave);
  if (shared !== null) await receiveLink(autosave, shared);
  else if (isUntouched(store.getState())) await openLast(autosave);
}

function openContext(): StorageContext {
  const stores = indexedStores({
    name: "padwright",
    onOutdated: () => tell({ kind: "outdated" }),
    onDropped: () => {
      listMayHaveChanged();
      const { autosave } = shelf.getState();
      if (autosave !== null) void lookForGone(autosave);
    },
  });
  return {
    storage: fittingStorage(stores, { now: () => new Date().toISOString(), newId, known: knownFittings(window) }),
    locks: navigator.locks as LockManager | undefined,
    channel: tabChannel(typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel("padwright")),
    later: (milliseconds, work) => {
      let isOff = false;
      const timer = setTimeout(() => whenIdle(() => (isOff ? undefined : work())), milliseconds);
      return () => {
        isOff = true;
        clearTimeout(timer);
      };
    },
    // The screen shows first what was done; the letters of one reading are saved together, or with the reading.
    pauses: { letter: 350, change: 20 },
  };
}

/** Between two letters rather than in the middle of one; soon in any case. */
function whenIdle(work: () => void): void {
  if (typeof requestIdleCallback === "function") requestIdleCallback(work, { timeout: 100 });
  else work();
}

/** A page without a secure origin has no randomUUID; the same form from the same randomness does there. */
function newId(): string {
  if (typeof crypto.randomUUID === "function") return crypto.randomUUID();
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

let remembered: string | null = null;

function show(open: OpenState | null): void {
  shelf.setState({ open });
  const { autosave } = shelf.getState();
  const id = autosave?.openId() ?? null;
  if (open === null || open.saving.kind === "nothingYet" || id === null) return;
  if (open.saving.kind === "saved") listMayHaveChanged();
  // Noted while it is being saved and not after: a page loaded anew the moment it says "saved" finds the way to it.
  if (id === remembered) return;
  remembered = id;
  void autosave?.context.storage.saveSettings({ lastFitting: id });
}

function startListening(autosave: Autosave): void {
  autosave.context.channel.hear(({ kind }) => {
    if (kind !== "penWanted") listMayHaveChanged();
  });
  // A page that is put aside may never run again.
  window.addEventListener("pagehide", () => {
    autosave.hurry();
    noteLeft();
  });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") autosave.hurry();
    else void lookForGone(autosave);
  });
  window.addEventListener("hashchange", () => {
    const shared = takeLink(window);
    if (shared !== null) void receiveLink(autosave, shared);
  });
}

function startWorker(): void {
  if (!import.meta.env.PROD) return;
  const offline = startOffline({
    container: navigator.serviceWorker as ServiceWorkerContainer | undefined,
    workerAddress: "./sw.js",
    onState: (state) => shelf.setState({ offline: state }),
    loadAnew: () => reloadWhenKept(),
  });
  shelf.setState({ takeNewRelease: offline.takeNewRelease });
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void offline.lookForRelease();
  });
}

async function openLast(autosave: Autosave): Promise<void> {
  const { lastFitting } = await autosave.context.storage.settings();
  if (typeof lastFitting !== "string") return;
  const read = await autosave.context.storage.read([lastFitting]);
  const [last] = read.kind === "read" ? read.fittings : [];
  if (last?.kind === "fitting" && last.entry.deletedAt !== null) return;
  if (last !== undefined && failedLast(lastFitting)) return stayHome();
  if (last !== undefined) noteStart(lastFitting);
  const outcome = last === undefined ? "missing" : await autosave.open(lastFitting, isUntouched);
  if (outcome === "unreadable") tell({ kind: "lastUnreadable" });
  if (outcome === "newer") tell({ kind: "lastNewer" });
  if (outcome === "open") remembered = lastFitting;
}

/** What made a page fail once is not opened again by itself; it waits in the list. */
function stayHome(): void {
  tell({ kind: "lastFailed" });
  goTo("home");
}

/** Nothing was done yet and nothing was opened, as the made-up person by her own address. */
const isUntouched = (state: FittingState): boolean =>
  isUnchanged(state) && state.fitting.id === undefined && Object.keys(state.fitting.body).length === 0;
