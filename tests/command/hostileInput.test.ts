import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";

/** Files and streams made to keep the command busy end in a sentence. */
const root = resolve(import.meta.dirname, "../..");
const tsx = join(root, "node_modules/tsx/dist/cli.mjs");
const start = (names: readonly string[], input?: Buffer) =>
  spawnSync(process.execPath, [tsx, join(root, "src/command/plan.ts"), ...names], {
    encoding: "utf8",
    cwd: root,
    input,
    timeout: 50_000,
  });

describe("the program", () => {
  // Seen to fail when the whole of a file was read before anything was looked at: it never ended.
  test.skipIf(!existsSync("/dev/zero"))("ends at a file without an end", () => {
    const { status, stdout, stderr } = start(["/dev/zero"]);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^[^\n]*\n$/);
  });

  // Seen to fail when the limits were held against what had been built from the text: it took a minute and more.
  test("refuses 30 MB of ones, from a file and from standard input, and says that a folder is no file", () => {
    const folder = mkdtempSync(join(tmpdir(), "padwright-command-"));
    try {
      const ones = Buffer.from(`[${"1,".repeat(15_000_000)}1]`);
      const file = join(folder, "ones.json");
      writeFileSync(file, ones);
      const { status, stdout, stderr } = start([file, "-", folder], ones);
      expect([status, stdout]).toEqual([2, ""]);
      const [ofFile = "", ofInput = "", ...rest] = stderr.split("\n");
      for (const [name, said] of [
        [file, ofFile],
        ["-", ofInput],
      ] as const)
        expect(said.startsWith(`${name}: The file holds more than a fitting can: `), said).toBe(true);
      expect(rest).toEqual([`${folder}: “${folder}” cannot be read as a file.`, ""]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
