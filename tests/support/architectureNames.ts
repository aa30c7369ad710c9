import { posix } from "node:path";
import ts from "typescript";
import { emptyNames, layers, toolConfigurations, topLevelNames } from "./architectureLayers";
import { lineOf, nodesOf, type Wall } from "./architectureProject";
import { pageTestFolders, plainTestFolders } from "./testFolders";

/** Every module of src belongs to a layer, and there is no layer without a module. */
export const layersFilled: Wall = (project) => {
  const paths = [...project.modules.keys()].filter((path) => path.startsWith("src/"));
  const isIn = (path: string, folder: string) => path.startsWith(`${folder}/`);
  const strays = paths.filter((path) => !layers.some(({ folder }) => isIn(path, folder)));
  const empty = layers.filter(({ name, folder }) => name !== "data" && !paths.some((path) => isIn(path, folder)));
  return [
    ...strays.map((path) => ({ path, line: 1, message: "belongs to no layer" })),
    ...empty.map(({ name, folder }) => ({ path: folder, line: 1, message: `no module of ${name} was read` })),
  ];
};

/** The address of a worker is an import that dependency-cruiser does not see: from a page or app, to app. */
export const workerAddresses: Wall = (project) =>
  [...project.modules.values()]
    .filter(({ path }) => path.startsWith("src/"))
    .flatMap(({ path, syntax }) =>
      [...nodesOf(syntax)].filter(ts.isNewExpression).flatMap((node) => {
        const [address, base] = node.arguments ?? [];
        if (address === undefined || !ts.isStringLiteralLike(address) || base?.getText() !== "import.meta.url")
          return [];
        const target = posix.join(posix.dirname(path), address.text);
        const isAllowed = /^src\/(?:ui|app)\//.test(path) && target.startsWith("src/app/") && project.files.has(target);
        return isAllowed ? [] : [{ path, line: lineOf(node), message: `may not give the address of ${target}` }];
      }),
    );

/**
 * No file is a list of what other files export. (The linter's rule also forbids passing one thing on beside one's own.)
 */
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
