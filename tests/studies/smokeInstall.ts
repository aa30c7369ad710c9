import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";

/**
 * Where the first of these programs is that can be run. As root on Debian the packages are installed when none is
 * there; elsewhere the person is told what is missing and how to get it, and nothing is downloaded.
 */
export function installedProgram(names: readonly string[], packages: readonly string[]): string {
  const found = onPath(names);
  if (found !== undefined) return found;
  if (process.getuid?.() === 0 && isDebian()) install(packages);
  const installed = onPath(names);
  if (installed !== undefined) return installed;
  throw new Error(
    `${names.join(" or ")} is not installed, so this browser was not tried. On Debian or Ubuntu:\n  sudo apt-get install ${packages.join(" ")}`,
  );
}

function onPath(names: readonly string[]): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isExecutable);
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function isDebian(): boolean {
  const release = "/etc/os-release";
  return existsSync(release) && /^ID=debian$/m.test(readFileSync(release, "utf8"));
}

function install(packages: readonly string[]): void {
  console.log(`Installing ${packages.join(" and ")} with apt-get.`);
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const call of [
    ["update", "-qq"],
    ["install", "-y", "-qq", "--no-install-recommends", ...packages],
  ]) {
    spawnSync("apt-get", call, { env, stdio: ["ignore", "ignore", "inherit"] });
  }
}
