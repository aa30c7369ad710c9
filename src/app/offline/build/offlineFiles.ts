import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { join, relative, sep } from "node:path";
import type { Plugin } from "vite";

/**
 * Builds the service worker beside the page and lays before it the list of all files of the build with their hashes.
 * The version is the hash of that list: any change of any file is a new version, and nothing else is.
 */
export function offlineFiles(): Plugin {
  return {
    name: "padwright-offline-files",
    apply: "build",
    buildStart() {
      this.emitFile({ type: "chunk", id: workerSource, fileName: workerName });
    },
    writeBundle: {
      // Last, when everything that lies in the folder is written.
      order: "post",
      sequential: true,
      handler({ dir }) {
        if (dir !== undefined) layList(dir);
      },
    },
  };
}

const workerName = "sw.js";
/** What the host reads for itself and hands to nobody. */
const hostFile = "_headers";
const workerSource = fileURLToPath(new URL("../worker.ts", import.meta.url));

/**
 * Writes the list of everything in the built folder into its worker. A folder in it that has a worker of its own is another
 * build, the tool in another language, and keeps its own files.
 */
export function layList(folder: string): void {
  const all = filesIn(folder);
  const others = all.filter((path) => path.endsWith(`/${workerName}`)).map((path) => path.slice(0, -workerName.length));
  const own = all.filter((path) => isKept(path) && !others.some((other) => path.startsWith(other)));
  const files = own.map((path) => ({ path, hash: sha256(readFileSync(join(folder, path))) }));
  const build = { version: sha256(JSON.stringify([files, others])).slice(0, 16), files, others };
  const worker = join(folder, workerName);
  const code = readFileSync(worker, "utf8").replace(/^const padwrightBuild=.*\n/, "");
  if (/^\s*(?:import|export)\b/m.test(code)) throw new Error("The service worker must be one script of its own.");
  writeFileSync(worker, `const padwrightBuild=${JSON.stringify(build)};\n${code}`);
}

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .toSorted();

const isKept = (path: string): boolean => path !== workerName && path !== hostFile && !path.endsWith(".map");

const sha256 = (bytes: Uint8Array | string): string => createHash("sha256").update(bytes).digest("base64");
