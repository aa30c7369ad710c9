import { indexedStores } from "../../src/app/storage/indexedStores";
import { type FittingStorage, fittingStorage } from "../../src/app/storage/fittingStorage";
import { type StorageContext, type OpenFitting, openFitting, openNewFitting } from "../../src/app/storage/openFitting";
import { tabChannel } from "../../src/app/storage/tabChannel";
import { type Offline, startOffline } from "../../src/app/offline/offlineState";
import type { Fitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";

/**
 * A page without screens over the real storage, for tests and studies that need to look at it closely: two tabs, a full
 * disk, a cleared origin, a browser that dies while it saves.
 */
export interface Harness {
  readonly storage: FittingStorage;
  /** What the stores have told: "outdated" or "dropped", oldest first. */
  readonly told: readonly string[];
  readonly offline: () => Offline;
  fittingWithWaist(waist: number, title?: string): Fitting;
  openNew(waist: number): Promise<string>;
  open(id: string): Promise<string>;
  current(): OpenFitting;
  keepWaist(waist: number): void;
  settledSaving(): Promise<string>;
  lastWaist(): unknown;
  takeOver(): Promise<void>;
  /** Saves waists 1, 2, 3… one after the other and reports each through `savedWaist` once it is said to be saved. */
  stream(from: number): void;
}

declare global {
  interface Window {
    harness: Harness;
    savedWaist?: (waist: number) => void;
  }
}

const told: string[] = [];
const storage = fittingStorage(
  indexedStores({
    name: "padwright",
    onOutdated: () => told.push("outdated"),
    onDropped: () => told.push("dropped"),
  }),
  { now: () => new Date().toISOString(), newId: () => crypto.randomUUID() },
);
const context: StorageContext = {
  storage,
  locks: navigator.locks,
  channel: tabChannel(new BroadcastChannel("padwright")),
  later: (milliseconds, work) => {
    const timer = setTimeout(work, milliseconds);
    return () => clearTimeout(timer);
  },
};
let current: OpenFitting | null = null;
let offline: Offline | null = null;
let shown: Fitting | null = null;
let waist = 0;

const events = {
  onState: () => show(),
  onRead: (fitting: Fitting) => {
    shown = fitting;
    show();
  },
};

function show(): void {
  const state = current?.state();
  const place = document.getElementById("state");
  if (place) place.textContent = `${state?.access} ${state?.saving.kind} ${String(shown?.body.waistGirth)}`;
  if (state?.saving.kind === "saved" && shown?.body.waistGirth === waist) window.savedWaist?.(waist);
}

function opened(): OpenFitting {
  if (current === null) throw new Error("nothing is open");
  return current;
}

window.harness = {
  storage,
  told,
  offline: () => {
    offline ??= startOffline({
      container: navigator.serviceWorker,
      workerAddress: "./sw.js",
      onState: (state) => {
        document.title = state.kind;
      },
      loadAnew: () => location.reload(),
    });
    return offline;
  },
  fittingWithWaist: (girth, title = "Odile") => {
    const read = readFitting({
      version: 1,
      unit: "cm",
      title,
      body: { bustGirth: 89.8, waistGirth: girth, fullHipGirth: 98 },
      form: { bustGirth: 84, waistGirth: 64, fullHipGirth: 90 },
      batting: { name: "cotton", layerThickness: "6 mm" },
    });
    if (!read.ok) throw new Error(JSON.stringify(read.problem));
    return read.value;
  },
  openNew: async (girth) => {
    current = await openNewFitting(context, events);
    window.harness.keepWaist(girth);
    return opened().id;
  },
  open: async (id) => {
    const outcome = await openFitting(context, id, events);
    if (outcome.kind !== "open") return outcome.kind;
    current = outcome.open;
    shown = outcome.fitting;
    show();
    return `open, ${current.state().access}`;
  },
  current: opened,
  keepWaist: (girth) => {
    const past = shown ? [shown] : [];
    waist = girth;
    shown = window.harness.fittingWithWaist(girth);
    opened().keep(shown, { past, future: [] });
  },
  settledSaving: async () => {
    for (let state = opened().state(); ; state = opened().state()) {
      if (state.saving.kind !== "saving") return JSON.stringify(state.saving);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  },
  lastWaist: () => shown?.body.waistGirth,
  takeOver: () => opened().takeOver(),
  stream: (from) => {
    let girth = from;
    const next = async (): Promise<void> => {
      window.harness.keepWaist(girth);
      girth += 1;
      await window.harness.settledSaving();
      setTimeout(() => void next(), 0);
    };
    void next();
  },
};
