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
    writeBundle({ dir }) {
      if (dir !== undefined) layList(dir);
    },
  };
}

const workerName = "sw.js";
/** What the host reads for itself and hands to nobody. */
const hostFile = "_headers";
const workerSource = fileURLToPath(new URL("../worker.ts", import.meta.url));

/** Writes the list of everything in the built folder into its worker. */
export function layList(folder: string): void {
  const files = builtFiles(folder).map((path) => ({ path, hash: sha256(readFileSync(join(folder, path))) }));
  const build = { version: sha256(JSON.stringify(files)).slice(0, 16), files };
  const worker = join(folder, workerName);
  const code = readFileSync(worker, "utf8").replace(/^const padwrightBuild=.*\n/, "");
  if (/^\s*(?:import|export)\b/m.test(code)) throw new Error("The service worker must be one script of its own.");
  writeFileSync(worker, `const padwrightBuild=${JSON.stringify(build)};\n${code}`);
}

function builtFiles(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter((path) => path !== workerName && path !== hostFile && !path.endsWith(".map"))
    .toSorted();
}

const sha256 = (bytes: Uint8Array | string): string => createHash("sha256").update(bytes).digest("base64");
