import { readdirSync, readFileSync } from "node:fs";
import { relative, resolve } from "node:path";
import ts from "typescript";
import type { Sentence } from "./glossary";

const root = resolve(import.meta.dirname, "../..");
const read = (path: string): string => readFileSync(resolve(root, path), "utf8");

/**
 * Every text that somebody may read, as it stands in the source: sentences of src/text, words in components, names in
 * drawings, the command's help and errors, the schemas' descriptions, the page's own head, the README, and the sample people. Where a value is
 * put in, it says "…".
 */
export const productSentences = (): readonly Sentence[] => [
  ...sourceFiles("src").flatMap((path) => sourceSentences(path)),
  ...["public/fitting.schema.json", "public/plan.schema.json"].flatMap((path) => describedIn(path)),
  ...["public/manifest.webmanifest"].flatMap((path) => describedIn(path)),
  ...htmlSentences("index.html"),
  ...prose("README.md"),
  ...readdirSync(resolve(root, "shared/demo")).flatMap((name) => demoSentences(`shared/demo/${name}`)),
  ...demoSentences("shared/demo-fitting.json"),
];

const sourceFiles = (folder: string): readonly string[] =>
  readdirSync(resolve(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => relative(root, resolve(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    // The glossary is one of English words; a translation has its own test.
    .filter((path) => !/^src\/(core|text\/[a-z]{2})\//.test(path))
    .toSorted();

/** In src/text and src/command every literal is read; elsewhere names of kinds and keys stand among them, so only what looks like words. */
export function sourceSentences(path: string, text: string = read(path)): readonly Sentence[] {
  const isText = /^src\/(ui\/text|command)\//.test(path);
  const kind = path.endsWith("x") ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind);
  const found: Sentence[] = [];
  const add = (words: string, isRead = isText): void => {
    const plain = words.replaceAll(/\s+/g, " ").trim();
    if (/[a-z]{2}/i.test(plain) && (isRead || looksLikeWords(plain))) found.push({ from: path, text: plain });
  };
  const walk = (node: ts.Node): void => {
    if (isNotRead(node)) return;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) add(node.text);
    else if (ts.isTemplateExpression(node))
      add([node.head.text, ...node.templateSpans.map((span) => `…${span.literal.text}`)].join(""));
    else if (ts.isJsxText(node)) add(node.text, true);
    ts.forEachChild(node, walk);
  };
  walk(file);
  return found;
}

const looksLikeWords = (text: string): boolean => /\s/.test(text) && !/[;{}=]|^\(/.test(text);

/** Names of modules, of types, of properties, and what is only compared. */
function isNotRead(node: ts.Node): boolean {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return true;
  if (ts.isCaseClause(node)) return false;
  if (ts.isJsxAttribute(node)) return /^(className|type|id|d|role|data-.*|href|key|viewBox)$/.test(node.name.getText());
  const { parent } = node;
  if (parent === undefined || !ts.isStringLiteralLike(node)) return false;
  if (ts.isCaseClause(parent) || ts.isElementAccessExpression(parent)) return true;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return true;
  if (ts.isPropertyAssignment(parent) && /^(kind|code|cause|did|cut|fit)$/.test(parent.name.getText())) return true;
  return ts.isBinaryExpression(parent) && /^[!=]==$/.test(parent.operatorToken.getText());
}

/** The titles and descriptions in a file of JSON, wherever they stand. */
function describedIn(path: string): readonly Sentence[] {
  const found: Sentence[] = [];
  JSON.parse(read(path), (key, value: unknown) => {
    if ((key === "description" || key === "title") && typeof value === "string")
      found.push({ from: path, text: value });
    return value;
  });
  return found;
}

function demoSentences(path: string): readonly Sentence[] {
  const {
    title = "",
    notes = "",
    batting,
  } = JSON.parse(read(path)) as {
    readonly title?: string;
    readonly notes?: string;
    readonly batting?: { readonly name?: string };
  };
  return [title, notes, batting?.name ?? ""].filter((text) => text !== "").map((text) => ({ from: path, text }));
}

const htmlSentences = (path: string): readonly Sentence[] =>
  [...read(path).matchAll(/<(title|noscript)>([^<]+)</g)].map(([, , text = ""]) => ({ from: path, text }));

/** Paragraph by paragraph, without code and addresses. */
const prose = (path: string): readonly Sentence[] =>
  read(path)
    .replaceAll(/```[\s\S]*?```/g, "")
    .split(/\n\s*\n/)
    .map((text) =>
      text
        .replaceAll(/^ {4}.*$/gm, "")
        .replaceAll(/\]\([^)]*\)/g, "]")
        .replaceAll(/`[^`]*`/g, "…")
        .replaceAll(/\s+/g, " ")
        .trim(),
    )
    .filter((text) => text !== "")
    .map((text) => ({ from: path, text }));
