import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";
import { type FolderServer, folderServer } from "../../e2e/savingHarness/folderServer";

/**
 * The tool as it is released, built into a folder of its own so that nobody else's build is disturbed, and served.
 * `E2E_BUILT` names a folder that holds a build already.
 */
export interface BuiltTool {
  readonly server: FolderServer;
  remove(): Promise<void>;
}

export async function builtTool(): Promise<BuiltTool> {
  const given = process.env.E2E_BUILT;
  const folder = given ?? mkdtempSync(join(tmpdir(), "padwright-built-"));
  const root = fileURLToPath(new URL("../../", import.meta.url));
  const clear = () => given ?? rmSync(folder, { recursive: true, force: true });
  if (given === undefined) {
    const options = { root, logLevel: "error", build: { outDir: folder, emptyOutDir: true } } as const;
    await build(options).catch((problem: unknown) => {
      clear();
      throw problem;
    });
  }
  const server = await folderServer(folder);
  return {
    server,
    remove: async () => {
      await server.stop();
      clear();
    },
  };
}
