import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/**
 * The project as the walls see it: the text of every file that belongs to it, by its path from the top, and every
 * TypeScript module parsed. It is read from a folder, or made up from texts to test a wall.
 */
export interface Project {
  readonly files: ReadonlyMap<string, string>;
  readonly modules: ReadonlyMap<string, Module>;
}

export interface Module {
  readonly path: string;
  readonly syntax: ts.SourceFile;
}

/** What a wall found, and where. */
export interface Violation {
  readonly path: string;
  readonly line: number;
  readonly message: string;
}

export type Wall = (project: Project) => readonly Violation[];

export function projectOf(texts: Readonly<Record<string, string>>): Project {
  const files = new Map(Object.entries(texts));
  const paths = [...files.keys()].filter((path) => /\.tsx?$/.test(path));
  const parsed = (path: string) => ts.createSourceFile(path, files.get(path) ?? "", ts.ScriptTarget.ES2023, true);
  return { files, modules: new Map(paths.map((path) => [path, { path, syntax: parsed(path) }])) };
}

/** Reads everything below a folder but what its .gitignore leaves out. */
export function readProject(root: string): Project {
  const isIgnored = ignoredNames(readFileSync(join(root, ".gitignore"), "utf8"));
  const texts: Record<string, string> = {};
  const visit = (folder: string) => {
    for (const entry of readdirSync(join(root, folder), { withFileTypes: true })) {
      const path = folder === "" ? entry.name : `${folder}/${entry.name}`;
      if (isIgnored(entry.name)) continue;
      if (entry.isDirectory()) visit(path);
      else if (entry.isFile()) texts[path] = readFileSync(join(root, path), "utf8");
    }
  };
  visit("");
  return projectOf(texts);
}

export function lineOf(node: ts.Node): number {
  const source = node.getSourceFile();
  return source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
}

/** A node and everything inside it, outermost first. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
  yield node;
  const children: ts.Node[] = [];
  ts.forEachChild(node, (child) => {
    children.push(child);
  });
  for (const child of children) yield* nodesOf(child);
}

/** Reads the two forms of line our .gitignore has: a folder's name, and a star with an ending. */
function ignoredNames(gitignore: string): (name: string) => boolean {
  const lines = gitignore.split("\n").filter((line) => line !== "");
  const names = new Set([".git", ...lines.map((line) => line.replace(/\/$/, ""))]);
  const endings = lines.filter((line) => line.startsWith("*")).map((line) => line.slice(1));
  return (name) => names.has(name) || endings.some((ending) => name.endsWith(ending));
}
