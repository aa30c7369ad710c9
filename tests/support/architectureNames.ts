import ts from "typescript";
import { emptyNames, toolConfigurations, topLevelNames } from "./architectureLayers";
import type { Wall } from "./architectureProject";
import { pageTestFolders, plainTestFolders } from "./testFolders";

/** No file is a list of what other files export: who imports from a place should see the place. */
export const barrels: Wall = (project) =>
  [...project.modules.values()].flatMap(({ path, syntax }) => {
    const { statements } = syntax;
    const exportsOthers = (node: ts.Statement) => ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined;
    const everything = statements.some(
      (node) => exportsOthers(node) && ts.isExportDeclaration(node) && !node.exportClause,
    );
    const nothingOwn = statements.every((node) => ts.isImportDeclaration(node) || ts.isExportDeclaration(node));
    const isBarrel = everything || (nothingOwn && statements.some(ts.isExportDeclaration));
    const isIndex = /(?:^|\/)index\.tsx?$/.test(path);
    return isBarrel || isIndex ? [{ path, line: 1, message: "a barrel: import from the file that has it" }] : [];
  });

/** A file, and a folder, is called after what is in it. */
export const sayingNames: Wall = (project) =>
  [...project.files.keys()].filter(isOurs).flatMap((path) => {
    const parts = path.split("/").map((part) => part.replace(/\..*$/, "").toLowerCase());
    const empty = parts.find((part) => emptyNames.includes(part));
    return empty === undefined ? [] : [{ path, line: 1, message: `"${empty}" does not say what is in it` }];
  });

/** The top of the project holds what a newcomer expects there and nothing else. */
export const topLevel: Wall = (project) => {
  const tops = new Set([...project.files.keys()].map((path) => path.split("/")[0] ?? ""));
  return [...tops]
    .filter((name) => !name.startsWith(".") && !topLevelNames.includes(name) && !toolConfigurations.test(name))
    .map((path) => ({ path, line: 1, message: "has no place at the top of the project" }));
};

/** Every test lies where one of the runners looks; one that nobody runs would never fail. */
export const testsAreRun: Wall = (project) => {
  const folders = [...plainTestFolders, ...pageTestFolders].join("|");
  const isRun = new RegExp(
    `^tests/architecture\\.test\\.ts$|^tests/(?:${folders})/.*\\.test\\.tsx?$|^e2e/.*\\.spec\\.ts$`,
  );
  return [...project.files.keys()]
    .filter((path) => isOurs(path) && /\.(?:test|spec)\.[a-z]+$/.test(path) && !isRun.test(path))
    .map((path) => ({ path, line: 1, message: "no runner looks here for tests" }));
};

function isOurs(path: string): boolean {
  return /^(?:src|tests|e2e)\//.test(path);
}
