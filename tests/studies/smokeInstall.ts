import { aptHasPackages, installWithApt, onPath } from "../support/browser";

/**
 * Where the first of these programs is that can be run. As root on Debian the packages are installed when none is
 * there; elsewhere the person is told what is missing and how to get it, and nothing is downloaded.
 */
export function installedProgram(names: readonly string[], packages: readonly string[]): string {
  const found = firstOnPath(names);
  if (found !== undefined) return found;
  if (aptHasPackages()) installWithApt(packages);
  const installed = firstOnPath(names);
  if (installed !== undefined) return installed;
  throw new Error(
    `${names.join(" or ")} is not installed, so this browser was not tried. On Debian or Ubuntu:\n  sudo apt-get install ${packages.join(" ")}`,
  );
}

const firstOnPath = (names: readonly string[]): string | undefined =>
  names.map(onPath).find((path) => path !== undefined);
