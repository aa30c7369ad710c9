import ts from "typescript";
import { lineOf, type Module, nodesOf, type Violation, type Wall } from "./architectureProject";

/**
 * In the core a tolerance has a name, a unit and a reason, and lives in tolerances.ts. Elsewhere three things give a
 * bare one away: a number written as 1e-9, a small decimal in a comparison, and a number given to something that is
 * called a tolerance.
 */
export const bareTolerances: Wall = (project) =>
  [...project.modules.values()]
    .filter(({ path }) => path.startsWith("src/core/") && path !== "src/core/tolerances.ts")
    .flatMap((module) => [...nodesOf(module.syntax)].flatMap((node) => bareTolerance(module, node)));

function bareTolerance(module: Module, node: ts.Node): readonly Violation[] {
  const found = (message: string) => [{ path: module.path, line: lineOf(node), message }];
  if (ts.isNumericLiteral(node) && /e-/i.test(node.getText())) return found(`bare tolerance ${node.getText()}`);
  if (ts.isPropertyAccessExpression(node) && node.getText() === "Number.EPSILON") return found("bare Number.EPSILON");
  if (ts.isBinaryExpression(node) && isComparison(node)) {
    const side = [node.left, node.right].find((operand) => isSmallDecimal(operand) || hasTinyFactor(operand));
    return side === undefined ? [] : found(`compared with the bare number ${side.getText()}`);
  }
  if (ts.isVariableDeclaration(node) || ts.isParameter(node) || ts.isPropertyAssignment(node)) {
    const isNamed = /tolerance|epsilon|^eps$/i.test(node.name.getText());
    const number = node.initializer === undefined ? undefined : bareNumber(node.initializer);
    return isNamed && number !== undefined ? found(`the tolerance ${node.name.getText()} is not in tolerances.ts`) : [];
  }
  return [];
}

function isComparison(node: ts.BinaryExpression): boolean {
  return ["<", ">", "<=", ">="].includes(node.operatorToken.getText());
}

function isSmallDecimal(node: ts.Expression): boolean {
  const number = bareNumber(node);
  return number !== undefined && !Number.isInteger(number) && Math.abs(number) < 1;
}

/** A length may be compared with half a width, but a hundredth of one is a tolerance in disguise. */
function hasTinyFactor(node: ts.Expression): boolean {
  if (ts.isParenthesizedExpression(node)) return hasTinyFactor(node.expression);
  if (!ts.isBinaryExpression(node) || isComparison(node)) return false;
  return [node.left, node.right].some((part) => {
    const number = bareNumber(part);
    return number === undefined ? hasTinyFactor(part) : number !== 0 && Math.abs(number) <= 0.01;
  });
}

/** The value of a number as written, with a sign, in brackets, or given a brand: 0.5, -0.5, (0.5), mm(0.5). */
function bareNumber(node: ts.Expression): number | undefined {
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return bareNumber(node.expression);
  if (ts.isPrefixUnaryExpression(node)) return bareNumber(node.operand);
  if (!ts.isCallExpression(node) || node.arguments.length !== 1) return undefined;
  const [argument] = node.arguments;
  const isBrand = ["mm", "radians", "ratio", "squareMm"].includes(node.expression.getText());
  return isBrand && argument !== undefined ? bareNumber(argument) : undefined;
}
