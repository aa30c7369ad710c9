/**
 * The service worker: it keeps every file of one build, checked against the build's own list, and answers from what it
 * kept, so that the tool opens with the network gone and the server dead. A build is kept whole or not at all, and a
 * page never gets files of two builds. A newer build waits until the person asks for it.
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
  addEventListener(name: "message", listener: (event: MessageEvent<unknown>) => void): void;
}

declare const padwrightBuild: { readonly version: string; readonly files: readonly KeptFile[] };

const worker = self as unknown as Worker;
const prefix = "padwright build ";
const ownCache = prefix + padwrightBuild.version;
const address = (path: string): string => new URL(path, worker.registration.scope).href;
const page = address("index.html");
const kept: ReadonlySet<string> = new Set(padwrightBuild.files.map(({ path }) => address(path)));

worker.addEventListener("install", (event) => event.waitUntil(keepBuild()));
worker.addEventListener("activate", (event) => event.waitUntil(takeOver()));
worker.addEventListener("message", ({ data }) => {
  if (data === "take over") void worker.skipWaiting();
});
worker.addEventListener("fetch", (event) => {
  const { request } = event;
  if (request.method !== "GET" || !request.url.startsWith(worker.registration.scope)) return;
  event.respondWith(answer(request));
});

async function keepBuild(): Promise<void> {
  const cache = await caches.open(ownCache);
  try {
    for (const file of padwrightBuild.files) await cache.put(address(file.path), await checkedFile(file));
  } catch (trouble) {
    await caches.delete(ownCache);
    throw trouble;
  }
}

/** A file an older build kept with the same bytes, else the server's, refused where it is not what was built. */
async function checkedFile(file: KeptFile): Promise<Response> {
  const before = await caches.match(address(file.path));
  if (before && (await isAsBuilt(before, file))) return before;
  const fetched = await fetch(address(file.path), { cache: "no-cache", redirect: "error" });
  if (fetched.ok && (await isAsBuilt(fetched, file))) return fetched;
  throw new Error(`${file.path} is not the file that was built (status ${fetched.status})`);
}

async function isAsBuilt(response: Response, { hash }: KeptFile): Promise<boolean> {
  const digest = await crypto.subtle.digest("SHA-256", await response.clone().arrayBuffer());
  return btoa(String.fromCharCode(...new Uint8Array(digest))) === hash;
}

/** Pages of the build before may still be open and may still want its files, so that one is kept as well. */
async function takeOver(): Promise<void> {
  const ours = (await caches.keys()).filter((name) => name.startsWith(prefix) && name !== ownCache);
  for (const name of ours.slice(0, -1)) await caches.delete(name);
  await worker.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const wanted = request.url.replace(/[?#].*$/, "");
  const isPage = request.mode === "navigate" && !kept.has(wanted);
  const own = await (await caches.open(ownCache)).match(isPage ? page : wanted);
  return own ?? (await caches.match(wanted)) ?? (await fetch(request));
}
