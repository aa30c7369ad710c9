/**
 * The service worker: it keeps every file of one build, checked against the build's own list, and answers from what it
 * kept, so that the tool opens with the network gone and the server dead. A build is kept whole or not at all, and a
 * page never gets files of two builds. A newer build waits until the person asks for it. What was kept is checked again
whenever it is handed out: a file that was damaged or lost meanwhile is fetched anew, and never handed out as it is.
 *
 * It is built into one script of its own and so imports nothing; the build lays the list of files before it.
 */
interface KeptFile {
  /** Relative to the worker; the page itself is "index.html". */
  readonly path: string;
  /** SHA-256 of the file's bytes, in base64. */
  readonly hash: string;
}

interface WaitingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Message extends MessageEvent<unknown>, WaitingEvent {}
interface FileRequest extends WaitingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Worker {
  readonly registration: { readonly scope: string };
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(name: "install" | "activate", listener: (event: WaitingEvent) => void): void;
  addEventListener(name: "fetch", listener: (event: FileRequest) => void): void;
  addEventListener(name: "message", listener: (event: Message) => void): void;
}

declare const padwrightBuild: {
  readonly version: string;
  readonly files: readonly KeptFile[];
  /** Folders below this one, each ending in a stroke, that hold another build with a worker of its own. */
  readonly others: readonly string[];
};

const worker = self as unknown as Worker;
const prefix = "padwright build ";
const ownCache = prefix + padwrightBuild.version;
const { scope } = worker.registration;
const address = (path: string): string => new URL(path, scope).href;
const page = address("index.html");
const kept: ReadonlyMap<string, KeptFile> = new Map(padwrightBuild.files.map((file) => [address(file.path), file]));
const others = padwrightBuild.others.map(address);
/** Where a build keeps the list of its own files, for the worker of the build after it. */
const listAddress = address("sw.js?files");

worker.addEventListener("install", (event) => event.waitUntil(keepBuild()));
worker.addEventListener("activate", (event) => event.waitUntil(takeOver()));
worker.addEventListener("message", (event) => {
  if (event.data === "take over") void worker.skipWaiting();
  if (event.data === "are you whole") event.waitUntil(madeWhole().then((is) => event.ports[0]?.postMessage(is)));
});
worker.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(scope)) return;
  if (others.some((other) => request.url.startsWith(other))) return;
  event.respondWith(answer(request));
});

async function keepBuild(): Promise<void> {
  const cache = await caches.open(ownCache);
  try {
    // First, for by its list a cache is known as one of this place.
    await cache.put(listAddress, new Response(JSON.stringify(padwrightBuild.files)));
    for (const file of padwrightBuild.files) await cache.put(address(file.path), await checkedFile(file));
  } catch (trouble) {
    await caches.delete(ownCache);
    throw trouble;
  }
}

/** A file any build kept with the same bytes, else the server's, refused where it is not what was built. */
async function checkedFile(file: KeptFile): Promise<Response> {
  for (const name of await ourCaches()) {
    const before = await (await caches.open(name)).match(address(file.path));
    if (before && (await isAsBuilt(before, file))) return before;
  }
  // The browser's own store may hold the same damage, and "not changed since" would give it back: then past it.
  for (const cache of ["no-cache", "reload"] as const) {
    const fetched = await fetch(address(file.path), { cache, redirect: "error" });
    if (fetched.ok && (await isAsBuilt(fetched, file))) return fetched;
  }
  throw new Error(`${file.path} is not the file that was built`);
}

async function isAsBuilt(response: Response, { hash }: KeptFile): Promise<boolean> {
  const digest = await crypto.subtle.digest("SHA-256", await response.clone().arrayBuffer());
  return btoa(String.fromCharCode(...new Uint8Array(digest))) === hash;
}

/** Those of this place alone, newest last: the tool in another language keeps its own beside them. */
async function ourCaches(): Promise<readonly string[]> {
  const ours: string[] = [];
  for (const name of (await caches.keys()).filter((name) => name.startsWith(prefix))) {
    if (await (await caches.open(name)).match(listAddress)) ours.push(name);
  }
  return ours;
}

/** Pages of the build before may still be open and may still want its files, so that one is kept as well. */
async function takeOver(): Promise<void> {
  const before = (await ourCaches()).filter((name) => name !== ownCache);
  for (const name of before.slice(0, -1)) await caches.delete(name);
  await worker.clients.claim();
}

/** Looks through everything that is kept and mends it; whether the tool now opens without a network. */
async function madeWhole(): Promise<boolean> {
  try {
    for (const file of padwrightBuild.files) await ownFile(file);
    return true;
  } catch {
    return false;
  }
}

/** A file of this build as it was built, mended first where what was kept of it is damaged or gone. */
async function ownFile(file: KeptFile): Promise<Response> {
  const cache = await caches.open(ownCache);
  const found = await cache.match(address(file.path));
  if (found && (await isAsBuilt(found, file))) return found;
  const mended = await checkedFile(file);
  await cache.put(address(file.path), mended.clone());
  return mended;
}

/** A file of the build before, for a page of it that is still open. */
async function olderFile(wanted: string): Promise<Response | null> {
  for (const name of await ourCaches()) {
    const cache = await caches.open(name);
    const [list, found] = [await cache.match(listAddress), await cache.match(wanted)];
    const files = list ? ((await list.json()) as readonly KeptFile[]) : [];
    const file = files.find(({ path }) => address(path) === wanted);
    if (found && file && (await isAsBuilt(found, file))) return found;
  }
  return null;
}

/**
 * Every path that is no file of ours leads to the page. It is reached by its own address only, from which its files are
 * found; what stands behind the `#` goes along by itself.
 */
async function answer(request: Request): Promise<Response> {
  const wanted = request.url.replace(/[?#].*$/, "");
  const isPage = wanted === scope || wanted === page;
  const file = kept.get(isPage ? page : wanted);
  if (file === undefined) {
    if (request.mode === "navigate") return Response.redirect(scope);
    return (await olderFile(wanted)) ?? (await fetch(request));
  }
  // A page that cannot be mended is the server's, as on a first visit: a newer release is better than none.
  return isPage ? await ownFile(file).catch(() => fetch(request)) : await ownFile(file);
}
