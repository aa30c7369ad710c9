import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

/**
 * What a browser must fetch of JavaScript before the first screen works: the scripts that the built page names and
 * the modules it preloads. Parts that are loaded later, when asked for, do not count.
 */
export interface FirstLoad {
  readonly scripts: readonly { readonly path: string; readonly gzipBytes: number }[];
  readonly gzipBytes: number;
}

/** 130 KB after gzip: the app without any 3-D library took 94 KB when the tools were chosen, and slow tablets wait. */
export const firstLoadBudgetBytes = 95_000;

export function firstLoad(builtFolder: string): FirstLoad {
  const page = readFileSync(join(builtFolder, "index.html"), "utf8");
  const scripts = [...new Set(scriptAddresses(page))].map((path) => ({
    path,
    gzipBytes: gzipSync(readFileSync(join(builtFolder, path)), { level: 9 }).length,
  }));
  if (scripts.length === 0) throw new Error("The built page names no script, so there is nothing to weigh.");
  return { scripts, gzipBytes: scripts.reduce((sum, script) => sum + script.gzipBytes, 0) };
}

function scriptAddresses(page: string): readonly string[] {
  const tags = page.match(/<(?:script|link)\b[^>]*>/g) ?? [];
  return tags.flatMap((tag) => {
    if (tag.startsWith("<script")) return attribute(tag, "src");
    return attribute(tag, "rel")[0] === "modulepreload" ? attribute(tag, "href") : [];
  });
}

function attribute(tag: string, name: string): readonly string[] {
  const value = new RegExp(`\\s${name}\\s*=\\s*"([^"]*)"`).exec(tag)?.[1];
  return value === undefined ? [] : [value];
}
