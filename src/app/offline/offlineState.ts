/**
 * Whether the tool opens without a network on this device, and whether a newer release waits. A newer release is taken
 * only when the person asks for it, in the tab where she asks; another open tab is told and keeps what it has.
 */
export type OfflineState =
  /** This browser, or this address, has no service workers: the tool works, but only while its server answers. */
  | { readonly kind: "unsupported" }
  | { readonly kind: "preparing" }
  | { readonly kind: "ready" }
  | { readonly kind: "newReleaseWaits" }
  /** Another tab has taken a newer release; this one goes on and should be loaded again when it suits. */
  | { readonly kind: "newReleaseElsewhere" }
  | { readonly kind: "failed"; readonly detail: string };

export interface Offline {
  state(): OfflineState;
  /** Takes the waiting release and loads the page anew. Save what is open first. */
  takeNewRelease(): void;
  /** Asks the server whether there is a newer release; without a network nothing happens. */
  lookForRelease(): Promise<void>;
}

export interface OfflineOptions {
  readonly container: ServiceWorkerContainer | undefined;
  readonly workerAddress: string;
  readonly onState: (state: OfflineState) => void;
  readonly loadAnew: () => void;
}

export function startOffline(options: OfflineOptions): Offline {
  const { container, workerAddress, onState, loadAnew } = options;
  let state: OfflineState = container === undefined ? { kind: "unsupported" } : { kind: "preparing" };
  let registration: ServiceWorkerRegistration | null = null;
  let isAsked = false;
  const show = (next: OfflineState): void => {
    // A page of an older release stays one until it is loaded anew, whatever its new worker goes through.
    if (state.kind === "newReleaseElsewhere") return;
    state = next;
    onState(next);
  };
  // A worker of another language, whose scope lies around this one, may have opened the page: ours was not here before.
  const controller = container?.controller ?? null;
  const hadWorker = controller !== null && controller.scriptURL === new URL(workerAddress, document.baseURI).href;
  container?.addEventListener("controllerchange", () => {
    if (isAsked) loadAnew();
    else if (hadWorker) show({ kind: "newReleaseElsewhere" });
  });
  // What blocks workers may also answer with nothing at all, which fails here like a refusal.
  container
    ?.register(workerAddress, { updateViaCache: "none" })
    .then((registered) => {
      watchReleases(registered, show);
      registration = registered;
    })
    .catch((trouble: unknown) => show({ kind: "failed", detail: String(trouble) }));
  onState(state);
  return {
    state: () => state,
    takeNewRelease: () => {
      isAsked = true;
      registration?.waiting?.postMessage("take over");
    },
    lookForRelease: async () => {
      await registration?.update().catch(() => {});
    },
  };
}

function watchReleases(registration: ServiceWorkerRegistration, show: (state: OfflineState) => void): void {
  let sound: ServiceWorker | null = null;
  const tell = (): void => {
    const { installing, waiting, active } = registration;
    if (waiting && active) show({ kind: "newReleaseWaits" });
    else if (active && sound === active) show({ kind: "ready" });
    else if (active) void isWhole(active).then((is) => (is ? found(active) : notKept()));
    else if (!installing && !waiting) notKept();
  };
  const found = (worker: ServiceWorker): void => {
    sound = worker;
    tell();
  };
  const notKept = (): void => show({ kind: "failed", detail: "the files could not be kept" });
  const watch = (worker: ServiceWorker | null): void => {
    worker?.addEventListener("statechange", tell);
  };
  registration.addEventListener("updatefound", () => watch(registration.installing));
  watch(registration.installing);
  watch(registration.waiting);
  tell();
}

/** Whether the worker has every file of its build as it was built, after mending what it could. */
function isWhole(worker: ServiceWorker): Promise<boolean> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    const answered = (is: boolean): void => {
      clearTimeout(patience);
      port1.close();
      resolve(is);
    };
    // A worker that was ended while it looked answers nothing.
    const patience = setTimeout(() => answered(false), wholePatience);
    port1.onmessage = ({ data }) => answered(data === true);
    worker.postMessage("are you whole", [port2]);
  });
}

/** Milliseconds: fetching everything anew over a slow network is still within it. */
const wholePatience = 60_000;
