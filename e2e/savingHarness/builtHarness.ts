import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { offlineFiles } from "../../src/app/offline/build/offlineFiles";

/** Builds the page without screens, with its service worker, into a folder of its own and says where. */
export async function builtHarness(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), "padwright-harness-"));
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
