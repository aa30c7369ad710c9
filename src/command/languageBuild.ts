import { existsSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join, resolve } from "node:path";
import { build, normalizePath, type Plugin, type ResolvedConfig } from "vite";
import * as de from "../text/de/language.ts";
import * as en from "../text/language.ts";

/**
 * The languages besides English, each built in a mode of its own into a folder of its own below the English page: the
 * same tool with other words. So no language makes the first load of another one longer, and since all of them lie on one
 * origin, they open the same saved fittings.
 */
const languages: { readonly [tag: string]: Pick<typeof en, "pageHead"> } = { de };

/** The folders below the English page in which the same tool lies once more. */
export const languageTags: readonly string[] = Object.keys(languages);

const textFolder = normalizePath(resolve(import.meta.dirname, "../text"));

/** What the build of a mode needs: the words of that language, or, after the English page, the builds of all others. */
export const languagePlugins = (mode: string): readonly Plugin[] => {
  const language = languages[mode];
  return language === undefined ? [otherLanguages()] : [wordsOf(mode), headOf(mode, language)];
};

/**
 * In the place of `src/text/NAME.ts` stands `src/text/de/NAME.ts`, if there is one; else the English words stay. The one
 * module that gets the English words of a twin is the twin itself.
 */
export function wordsOf(tag: string): Plugin {
  return {
    name: `padwright-words-${tag}`,
    enforce: "pre",
    resolveId: {
      filter: { id: /^\.{1,2}\// },
      async handler(source, importer, options) {
        const found = await this.resolve(source, importer, { ...options, skipSelf: true });
        if (found === null || dirname(found.id) !== textFolder) return found;
        const twin = `${textFolder}/${tag}/${basename(found.id)}`;
        return existsSync(twin) && importer !== twin ? twin : found;
      },
    },
  };
}

/** The page and its manifest in the language: its tag, and the few sentences that no script holds. */
function headOf(tag: string, { pageHead }: Pick<typeof en, "pageHead">): Plugin {
  return {
    name: `padwright-head-${tag}`,
    transformIndexHtml: (html) =>
      replaced(replaced(html, '<html lang="en">', `<html lang="${tag}">`), en.pageHead.noScript, pageHead.noScript),
    writeBundle: {
      // Before the list of files is laid, which holds what is written here.
      order: "pre",
      sequential: true,
      handler({ dir }) {
        if (dir !== undefined) ownManifest(dir, tag, pageHead.description);
      },
    },
  };
}

function ownManifest(folder: string, tag: string, description: string): void {
  // The host reads one such file, that of the folder above.
  rmSync(join(folder, "_headers"), { force: true });
  const path = join(folder, "manifest.webmanifest");
  // Without an id of its own it is known by where it starts, and so is another one than the English one.
  const { id: _id, ...manifest } = JSON.parse(readFileSync(path, "utf8")) as { readonly id: string };
  writeFileSync(path, `${JSON.stringify({ ...manifest, lang: tag, description }, null, 2)}\n`);
}

function replaced(text: string, from: string, to: string): string {
  if (!text.includes(from))
    throw new Error(`The page does not hold “${from}”, which is to be said in another language.`);
  return text.replace(from, () => to);
}

/** Builds every other language below the English page, before that lists its own files. */
function otherLanguages(): Plugin {
  let config: ResolvedConfig;
  return {
    name: "padwright-other-languages",
    apply: "build",
    configResolved(resolved) {
      config = resolved;
    },
    writeBundle: {
      order: "pre",
      sequential: true,
      async handler({ dir }) {
        if (dir === undefined) return;
        const { root, configFile, logLevel } = config;
        for (const mode of languageTags) {
          const inner = { outDir: join(dir, mode), emptyOutDir: true, reportCompressedSize: false };
          await build({
            root,
            mode,
            ...(configFile ? { configFile } : {}),
            logLevel: logLevel ?? "warn",
            build: inner,
          });
        }
      },
    },
  };
}
