import { execFileSync, spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";

/**
 * The browser that the end-to-end tests drive: the one `CHROMIUM_PATH` names, else a chromium of the system, else
 * (undefined) the one that Playwright downloads for itself.
 */
export function systemChromium(): string | undefined {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== "") return named;
  const folders = (process.env.PATH ?? "").split(delimiter);
  const places = ["chromium", "chromium-browser"].flatMap((name) => folders.map((folder) => join(folder, name)));
  return places.find(isExecutable);
}

/**
 * Sees to it that a browser and a fixed font are there, installing what is missing, and says in one line what will be
 * used. Throws an error that tells the person what to do when it cannot.
 */
export function ensureBrowser(): string {
  const found = systemChromium();
  if (found !== undefined && !isExecutable(found)) {
    throw new Error(`No browser can be started at ${found}; correct CHROMIUM_PATH.`);
  }
  const isDebianRoot = process.getuid?.() === 0 && isDebian();
  const missing = [
    ...(found === undefined ? ["chromium"] : []),
    ...(existsSync(debianFont) ? [] : ["fonts-dejavu-core"]),
  ];
  if (isDebianRoot && missing.length > 0) installWithApt(missing);
  const chromium = systemChromium();
  if (chromium === undefined) {
    installWithPlaywright();
    return "Browser: the chromium that Playwright downloaded.";
  }
  const version = execFileSync(chromium, ["--version"], { encoding: "utf8" }).trim();
  return `Browser: ${version} (${chromium}).`;
}

/** Printed pages are counted in tests, and the count depends on the font: Debian machines all use this one. */
const debianFont = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";

function isDebian(): boolean {
  const release = "/etc/os-release";
  return existsSync(release) && /^ID=debian$/m.test(readFileSync(release, "utf8"));
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function installWithApt(packages: readonly string[]): void {
  console.log(`Installing ${packages.join(" and ")} with apt-get.`);
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  const calls = [
    ["update", "-qq"],
    ["install", "-y", "-qq", "--no-install-recommends", ...packages],
  ];
  for (const call of calls) {
    const { status } = spawnSync("apt-get", call, { env, stdio: ["ignore", "ignore", "inherit"] });
    if (status !== 0) throw new Error(`apt-get ${call.join(" ")} failed; install ${packages.join(" and ")} by hand.`);
  }
}

function installWithPlaywright(): void {
  const { status } = spawnSync("npx", ["playwright", "install", "chromium"], {
    stdio: "inherit",
    shell: process.platform === "win32",
  });
  if (status === 0) return;
  throw new Error("No browser could be downloaded. Install chromium, or set CHROMIUM_PATH to the one you have.");
}
