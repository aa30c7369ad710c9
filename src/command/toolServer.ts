import type { AddressInfo } from "node:net";
import { preview } from "vite";
import { classRemote } from "./classRemote";

/** The tool as it was built, served from this machine. */
export interface ToolServer {
  /** Where this machine itself opens it. */
  readonly local: string;
  /** Where other devices reach it; nothing unless it is shared, and where this machine is in no network. */
  readonly network: readonly string[];
  /** The address it listens on: the machine's own loop, or every network it is in. */
  readonly boundTo: string;
  close(): Promise<void>;
}

export interface ToolServerOptions {
  /** Whether other devices may reach it. */
  readonly isShared: boolean;
  /** The built folder, and the port, where they are not the usual ones. */
  readonly folder?: string;
  readonly port?: number;
}

/** Serves the built tool to this machine alone, or, when asked, to every device in its networks. */
export async function toolServer({ isShared, folder, port }: ToolServerOptions): Promise<ToolServer> {
  let network: readonly string[] = [];
  const server = await preview({
    logLevel: "warn",
    preview: { host: isShared ? "0.0.0.0" : "127.0.0.1", ...(port === undefined ? {} : { port }) },
    ...(isShared ? { plugins: [classRemote(() => network)] } : {}),
    ...(folder === undefined ? {} : { build: { outDir: folder } }),
  });
  const { address: boundTo, port: boundPort } = server.httpServer.address() as AddressInfo;
  network = server.resolvedUrls?.network ?? [];
  return {
    // What a browser keeps belongs to an address: shared or not, this machine opens the tool at the same one.
    local: `http://127.0.0.1:${boundPort}/`,
    network,
    boundTo,
    close: () => server.close(),
  };
}
