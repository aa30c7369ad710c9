import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";

/**
 * Times planning as it is shipped: the planner and its bench are built as the tool's own builder builds the tool, and run by themselves,
 * because a loader that translates sources as they are loaded makes every function slower.
 *
 *   npm run bench:plan -- [how many people] [how often each]
 */
const folder = mkdtempSync(join(tmpdir(), "planning-"));
await build({
  configFile: false,
  publicDir: false,
  logLevel: "error",
  build: {
    ssr: true,
    minify: true,
    outDir: folder,
    emptyOutDir: true,
    rolldownOptions: { input: "tests/studies/benchPlanning.ts", output: { entryFileNames: "planning.mjs" } },
  },
});
const { status } = spawnSync(process.execPath, [join(folder, "planning.mjs"), ...process.argv.slice(2)], {
  stdio: "inherit",
});
rmSync(folder, { recursive: true });
process.exitCode = status ?? 1;
