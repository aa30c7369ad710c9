import { existsSync } from "node:fs";
import { join } from "node:path";
import { cruise, type ICruiseResult, type IForbiddenRuleType } from "dependency-cruiser";
import { coreFolders, type Layer, layers } from "./architectureLayers";
import type { Violation } from "./architectureProject";

/** The walls that dependency-cruiser keeps. Types count, and so do imports that wait until they are called. */
export const importWalls = ["importDirection", "packages", "coreFolderOrder", "fileRings", "folderRings"] as const;
export type ImportWall = (typeof importWalls)[number];

export interface ImportFault extends Violation {
  readonly wall: string;
}

/** How many imports a project has, and those among them that its plan does not have. */
export async function readImports(root: string): Promise<{ readonly amount: number; readonly faults: ImportFault[] }> {
  const folders = ["src", "tests", "e2e"].filter((folder) => existsSync(join(root, folder)));
  const { output } = await cruise(folders, {
    baseDir: root,
    validate: true,
    ruleSet: { forbidden: rules.map((rule) => ({ severity: "error", ...rule })) },
    tsPreCompilationDeps: true,
    doNotFollow: { path: "node_modules" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "types"] },
  });
  const { violations, totalDependenciesCruised: amount = 0 } = (output as ICruiseResult).summary;
  const faults = violations.map(({ rule, from, to, cycle = [] }) => {
    const way = [from, ...(cycle.length > 0 ? cycle.map(({ name }) => name) : [to])];
    return { wall: rule.name, path: from, line: 1, message: way.join(" → ") };
  });
  return { amount, faults };
}

type Rule = IForbiddenRuleType & { readonly name: ImportWall };

/** A layer without the layers inside its folder. */
function placeOf({ folder }: Layer): string {
  const inside = layers.map((other) => other.folder).filter((other) => other.startsWith(`${folder}/`));
  return `^${folder}/${inside.map((other) => `(?!${other.slice(folder.length + 1)}/)`).join("")}`;
}

const layerRules = layers.flatMap((layer): readonly Rule[] => {
  const from = { path: placeOf(layer) };
  const reach = layers.filter((other) => other === layer || layer.mayImport.includes(other.name)).map(placeOf);
  const own = layer.packages.map((name) => `^(node_modules/)?(@types/)?${name}(/|$)`);
  const isNode = layer.packages.includes("node:*");
  return [
    { name: "importDirection", from, to: { dependencyTypes: ["local"], pathNot: reach } },
    {
      name: "packages",
      from,
      to: { dependencyTypesNot: isNode ? ["local", "core"] : ["local"], pathNot: ["^[.]", ...own] },
    },
  ];
});

/** Inside the core a folder imports only from folders above it in the river. */
const coreRules = coreFolders.slice(0, -1).map((folder, i): Rule => {
  const below = coreFolders.slice(i + 1).map((lower) => `^src/core/${lower}/`);
  return { name: "coreFolderOrder", from: { path: `^src/core/${folder || "[^/]+$"}` }, to: { path: below } };
});
const unknownCoreFolder = `^src/core/(?!(${coreFolders.slice(1).join("|")})/)[^/]+/`;

const rules: readonly Rule[] = [
  ...layerRules,
  { name: "importDirection", from: { path: "^src/" }, to: { couldNotResolve: true, path: "^[.]" } },
  ...coreRules,
  { name: "coreFolderOrder", from: { path: unknownCoreFolder }, to: {} },
  { name: "fileRings", from: { path: "^src/" }, to: { circular: true } },
  { name: "folderRings", scope: "folder", from: {}, to: { circular: true } },
];
