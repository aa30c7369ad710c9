import { execFileSync, spawnSync } from "node:child_process";
import { accessSync, constants, existsSync, readFileSync } from "node:fs";
import { delimiter, join } from "node:path";

/**
 * The browser that the end-to-end tests drive: the one `CHROMIUM_PATH` names, else a chromium of the system, the build
 * without windows first (it draws the same in two thirds of the time), else (undefined) the one that Playwright
 * downloads for itself.
 */
export function systemChromium(): string | undefined {
  return named() ?? onPath(windowless) ?? chromiumWithWindows();
}

/** What a browser is started with: it asks nobody for anything on its own, and what is named more. */
export function browserLaunch(...more: readonly string[]): {
  readonly executablePath?: string;
  readonly args: string[];
} {
  const executablePath = systemChromium();
  return { ...(executablePath === undefined ? {} : { executablePath }), args: [...quietly(), ...more] };
}

export const quietly = (): readonly string[] => [
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** The browser as people start it, which has windows: for what asks how it dies or what it keeps. */
export function chromiumWithWindows(): string | undefined {
  return named() ?? onPath("chromium") ?? onPath("chromium-browser");
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
  if (aptHasPackages()) installOnDebian();
  const chromium = systemChromium();
  if (chromium === undefined) {
    installWithPlaywright();
    return "Browser: the chromium that Playwright downloaded.";
  }
  const version = execFileSync(chromium, ["--version"], { encoding: "utf8" }).trim();
  return `Browser: ${version} (${chromium}).`;
}

const windowless = "chromium-headless-shell";

function named(): string | undefined {
  return process.env.CHROMIUM_PATH || undefined;
}

/** Where a program is that can be run. */
export function onPath(name: string): string | undefined {
  return (process.env.PATH ?? "")
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find(isExecutable);
}

/** A font that is missing is an error; of the browsers one is enough. */
function installOnDebian(): void {
  const fonts = existsSync(debianFont) ? [] : ["fonts-dejavu-core"];
  const isSwift = named() !== undefined || onPath(windowless) !== undefined;
  try {
    if (!isSwift || fonts.length > 0) installWithApt([...(isSwift ? [] : [windowless]), ...fonts]);
  } catch (problem) {
    if (systemChromium() !== undefined && fonts.length === 0) return;
    if (systemChromium() !== undefined) throw problem;
    installWithApt(["chromium", ...fonts]);
  }
}

/** Printed pages are counted in tests, and the count depends on the font: Debian machines all use this one. */
const debianFont = "/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf";

/** Whether packages can be installed without asking anybody: as root on Debian. */
export function aptHasPackages(): boolean {
  const release = "/etc/os-release";
  return process.getuid?.() === 0 && existsSync(release) && /^ID=debian$/m.test(readFileSync(release, "utf8"));
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Throws an error that says what to install by hand when it cannot. */
export function installWithApt(packages: readonly string[]): void {
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
