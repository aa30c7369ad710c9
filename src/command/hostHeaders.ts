import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import type { Plugin } from "vite";

/**
 * The headers that `public/_headers` asks of a host, sent by our own server as well, for every path that a rule matches.
 * Strict transport is left out: this server speaks plain HTTP, where it means nothing.
 */
export function hostHeaders(): Plugin {
  return {
    name: "padwright-host-headers",
    configurePreviewServer({ middlewares }) {
      const rules = headerRules(readFileSync(rulesFile, "utf8"));
      middlewares.use((request, response, next) => {
        for (const [name, value] of headersFor(rules, request.url ?? "/")) response.setHeader(name, value);
        next();
      });
    },
  };
}

const rulesFile = resolve(import.meta.dirname, "../../public/_headers");

/** The headers for the paths that one pattern matches: a whole path, or the beginning of one followed by `*`. */
export interface HeaderRule {
  readonly pattern: string;
  readonly headers: readonly (readonly [name: string, value: string])[];
}

/** Reads the file: a pattern at the beginning of a line, its headers set in under it, and remarks behind `#`. */
export function headerRules(text: string): readonly HeaderRule[] {
  const rules: { readonly pattern: string; readonly headers: (readonly [string, string])[] }[] = [];
  for (const line of text.split("\n")) {
    const said = line.trim();
    if (said === "" || said.startsWith("#")) continue;
    if (said === line.trimEnd()) {
      rules.push({ pattern: said, headers: [] });
      continue;
    }
    const [, name, value] = /^([A-Za-z-]+):\s*(.+)$/.exec(said) ?? [];
    if (name === undefined || value === undefined) throw new Error(`“${said}” is not a header.`);
    rules.at(-1)?.headers.push([name, value]);
  }
  return rules;
}

/** What is sent with one address over plain HTTP. */
export function headersFor(rules: readonly HeaderRule[], address: string): HeaderRule["headers"] {
  const path = address.replace(/[?#].*$/, "");
  return rules
    .filter(({ pattern }) => (pattern.endsWith("*") ? path.startsWith(pattern.slice(0, -1)) : path === pattern))
    .flatMap(({ headers }) => headers)
    .filter(([name]) => name !== "Strict-Transport-Security");
}
