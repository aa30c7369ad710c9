import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

/**
 * The project as the walls see it: the text of every file that belongs to it, by its path from the top, and every
 * TypeScript module parsed, with what it imports. It is read from a folder, or made up from texts to test a wall.
 */
export interface Project {
  readonly files: ReadonlyMap<string, string>;
  readonly modules: ReadonlyMap<string, Module>;
}

export interface Module {
  readonly path: string;
  readonly syntax: ts.SourceFile;
  readonly imports: readonly Import[];
}

/** One import, of values or of types alone; both count. */
export interface Import {
  readonly specifier: string;
  readonly line: number;
  readonly target: ImportTarget;
}

export type ImportTarget =
  | { readonly kind: "file"; readonly path: string }
  | { readonly kind: "package"; readonly name: string }
  | { readonly kind: "nothing" };

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
  return { files, modules: new Map(paths.map((path) => [path, parsedModule(path, files)])) };
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

function parsedModule(path: string, files: ReadonlyMap<string, string>): Module {
  const syntax = ts.createSourceFile(path, files.get(path) ?? "", ts.ScriptTarget.ES2023, true);
  const imports = [...nodesOf(syntax)].flatMap((node) => {
    const literal = importedName(node);
    if (literal === undefined) return [];
    return [{ specifier: literal.text, line: lineOf(literal), target: importTarget(path, literal.text, files) }];
  });
  return { path, syntax, imports };
}

/** The quoted name of what a node imports: by statement, re-export, type, call, or the address of a worker. */
function importedName(node: ts.Node): ts.StringLiteralLike | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return literalOf(node.moduleSpecifier);
  if (ts.isExternalModuleReference(node)) return literalOf(node.expression);
  if (ts.isImportTypeNode(node))
    return ts.isLiteralTypeNode(node.argument) ? literalOf(node.argument.literal) : undefined;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    return literalOf(node.arguments[0]);
  if (ts.isNewExpression(node) && node.arguments?.[1]?.getText() === "import.meta.url")
    return literalOf(node.arguments[0]);
  return undefined;
}

function literalOf(node: ts.Node | undefined): ts.StringLiteralLike | undefined {
  return node !== undefined && ts.isStringLiteralLike(node) ? node : undefined;
}

function importTarget(from: string, specifier: string, files: ReadonlyMap<string, string>): ImportTarget {
  if (!/^[./]/.test(specifier)) return { kind: "package", name: packageName(specifier) };
  const base = specifier.startsWith("/") ? specifier.slice(1) : joined(from, specifier);
  const bare = base.replace(/\?.*$/, "");
  const candidates = [
    bare,
    `${bare}.ts`,
    `${bare}.tsx`,
    bare.replace(/\.js$/, ".ts"),
    `${bare}/index.ts`,
    `${bare}/index.tsx`,
  ];
  const path = candidates.find((candidate) => files.has(candidate));
  return path === undefined ? { kind: "nothing" } : { kind: "file", path };
}

function packageName(specifier: string): string {
  if (specifier.startsWith("node:")) return "node:*";
  const parts = specifier.split("/");
  return specifier.startsWith("@") ? parts.slice(0, 2).join("/") : (parts[0] ?? specifier);
}

function joined(from: string, relative: string): string {
  const parts = from.split("/").slice(0, -1);
  for (const part of relative.split("/")) {
    if (part === "..") parts.pop();
    else if (part !== ".") parts.push(part);
  }
  return parts.join("/");
}
