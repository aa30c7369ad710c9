import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { offlineFiles } from "../../src/app/offline/build/offlineFiles";

const newFolder = (): string => mkdtempSync(join(tmpdir(), "padwright-harness-"));

let first: Promise<string> | null = null;

/** The page without screens, with its service worker: built once, and a copy of its own for everybody who asks. */
export async function builtHarness(): Promise<string> {
  first ??= freshHarness();
  const folder = newFolder();
  cpSync(await first, folder, { recursive: true });
  return folder;
}

async function freshHarness(): Promise<string> {
  const folder = newFolder();
  process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
  await build({
    configFile: false,
    root: fileURLToPath(new URL(".", import.meta.url)),
    base: "./",
    logLevel: "error",
    plugins: [offlineFiles()],
    build: { outDir: folder, assetsInlineLimit: 0 },
  });
  return folder;
}
