import ts from "typescript";
import { budgets } from "./architectureLayers";
import { lineOf, type Module, nodesOf, type Violation, type Wall } from "./architectureProject";

/** A file of the core, and a file with a component, can be read in one sitting. Tables of constants do not count. */
export const fileBudgets: Wall = (project) =>
  [...project.modules.values()].flatMap((module) => {
    const budget = fileBudget(module.path);
    const lines = linesIn(module.syntax, module.syntax) - tableLines(module.syntax);
    if (budget === undefined || lines <= budget) return [];
    return [{ path: module.path, line: 1, message: `${lines} lines without tables, and the budget is ${budget}` }];
  });

/** A function fits on a screen. A component is as long as its file may be, for its markup is not a train of thought. */
export const functionBudgets: Wall = (project) =>
  [...project.modules.values()]
    .filter(({ path }) => path.startsWith("src/"))
    .flatMap((module) => [...nodesOf(module.syntax)].flatMap((node) => longFunction(module, node)));

function fileBudget(path: string): number | undefined {
  if (path.startsWith("src/core/")) return budgets.coreFileLines;
  return /^src\/ui\/.*\.tsx$/.test(path) ? budgets.componentFileLines : undefined;
}

/** Lines from the first character of a node to its last; a line break at the very end begins no line. */
function linesIn(node: ts.Node, source: ts.SourceFile): number {
  const start = ts.isSourceFile(node) ? 0 : node.getStart(source);
  return source.text.slice(start, node.end).trimEnd().split("\n").length;
}

function tableLines(source: ts.SourceFile): number {
  return source.statements
    .filter(ts.isVariableStatement)
    .filter(({ declarationList }) => declarationList.declarations.every(({ initializer }) => isTable(initializer)))
    .reduce((sum, statement) => sum + linesIn(statement, source), 0);
}

/** A list or record of values, with no thought in it: nothing inside decides or runs. */
function isTable(node: ts.Expression | undefined): boolean {
  if (node === undefined) return false;
  if (ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node)) {
    return isTable(node.expression);
  }
  if (!ts.isArrayLiteralExpression(node) && !ts.isObjectLiteralExpression(node)) return false;
  return ![...nodesOf(node)].some((inside) => ts.isFunctionLike(inside) || ts.isConditionalExpression(inside));
}

function longFunction(module: Module, node: ts.Node): readonly Violation[] {
  if (!ts.isFunctionLike(node) || !("body" in node) || node.body === undefined) return [];
  const name = functionName(node);
  if (module.path.endsWith(".tsx") && /^[A-Z]/.test(name)) return [];
  const lines = linesIn(node, module.syntax);
  if (lines <= budgets.functionLines) return [];
  const message = `${name || "a function without a name"} has ${lines} lines, and the budget is ${budgets.functionLines}`;
  return [{ path: module.path, line: lineOf(node), message }];
}

/** Its own name, or that of the constant or property it is the value of. */
function functionName(node: ts.SignatureDeclaration): string {
  const { parent } = node;
  const named =
    node.name ?? (ts.isVariableDeclaration(parent) || ts.isPropertyAssignment(parent) ? parent.name : undefined);
  return named?.getText() ?? "";
}
