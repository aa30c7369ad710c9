import { readFileSync } from "node:fs";
import { createServer, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";

/** Serves one folder on a port of this machine, so that a test can take it away in the middle. */
export interface FolderServer {
  readonly address: string;
  /** Paths asked for so far, oldest first. */
  readonly asked: readonly string[];
  /** Serves another folder from now on, as a host does after a new release. */
  serve(folder: string): void;
  stop(): Promise<void>;
}

export async function folderServer(first: string, wantedPort = 0): Promise<FolderServer> {
  let folder = first;
  const asked: string[] = [];
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent((request.url ?? "/").replace(/[?#].*$/, "")));
    asked.push(path);
    answer(response, join(folder, path.endsWith("/") ? `${path}index.html` : path));
  });
  await new Promise<void>((resolve) => server.listen(wantedPort, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    asked,
    serve: (next) => {
      folder = next;
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function answer(response: ServerResponse, file: string): void {
  try {
    const bytes = readFileSync(file);
    response.writeHead(200, { "content-type": kinds[extname(file)] ?? "application/octet-stream" }).end(bytes);
  } catch {
    response.writeHead(404).end("There is no such file.");
  }
}

const kinds: { readonly [ending: string]: string } = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};
