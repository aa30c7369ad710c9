import ts from "typescript";
import { lineOf, type Module, nodesOf, type Project, type Violation, type Wall } from "./architectureProject";

/** The core knows no clock, no chance and no way round: a result depends on what is handed in and nothing else. */
export const clockAndChance: Wall = (project) =>
  coreModules(project).flatMap((module) =>
    [...nodesOf(module.syntax)].filter(ts.isIdentifier).flatMap((name) => {
      const trouble = isPropertyName(name) ? undefined : unwantedGlobal(name);
      return trouble === undefined ? [] : [{ path: module.path, line: lineOf(name), message: trouble }];
    }),
  );

/** No comment in the core may bring back the browser's types or silence the compiler. */
export const compilerComments: Wall = (project) =>
  coreModules(project).flatMap(({ path, syntax }) =>
    syntax.text.split("\n").flatMap((text, index) => {
      const silenced = /^\s*\/\/\/\s*<reference|@ts-(?:ignore|nocheck|expect-error)/.test(text);
      return silenced ? [{ path, line: index + 1, message: "a comment tells the compiler to look away" }] : [];
    }),
  );

/** What the core hands about is read-only: every property of a type, and every list in one. */
export const readonlyTypes: Wall = (project) =>
  coreModules(project).flatMap((module) =>
    module.syntax.statements
      .filter((statement) => ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement))
      .flatMap((statement) => [...nodesOf(statement)].flatMap((node) => writable(module, node))),
  );

function coreModules(project: Project): readonly Module[] {
  return [...project.modules.values()].filter(({ path }) => path.startsWith("src/core/"));
}

/** Whether a name stands for a property of something else: `period.Date`, `{ Date: 1 }`. */
function isPropertyName(name: ts.Identifier): boolean {
  const { parent } = name;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === name;
  return (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === name;
}

function unwantedGlobal(name: ts.Identifier): string | undefined {
  if (["Date", "globalThis", "eval", "Function"].includes(name.text)) return `the core may not use ${name.text}`;
  if (name.text !== "Math") return undefined;
  const { parent } = name;
  const used = ts.isPropertyAccessExpression(parent) && parent.expression === name ? parent.name.text : undefined;
  if (used === undefined) return "the core may use Math only by naming one of its functions";
  return used === "random" ? "the core may not use Math.random" : undefined;
}

function writable(module: Module, node: ts.Node): readonly Violation[] {
  const found = (message: string) => [{ path: module.path, line: lineOf(node), message }];
  if (ts.isPropertySignature(node) || ts.isIndexSignatureDeclaration(node)) {
    const modifiers = ts.getModifiers(node) ?? [];
    const isReadonly = modifiers.some(({ kind }) => kind === ts.SyntaxKind.ReadonlyKeyword);
    return isReadonly ? [] : found("a property of a type is not readonly");
  }
  if (ts.isMappedTypeNode(node)) return node.readonlyToken === undefined ? found("a mapped type is not readonly") : [];
  if (!ts.isArrayTypeNode(node) && !ts.isTupleTypeNode(node)) return [];
  const { parent } = node;
  const isReadonly = ts.isTypeOperatorNode(parent) && parent.operator === ts.SyntaxKind.ReadonlyKeyword;
  return isReadonly ? [] : found("a list in a type is not readonly");
}
