import { posix } from "node:path";
import { coreFolders, type Layer, layers } from "./architectureLayers";
import type { Import, Module, Violation, Wall } from "./architectureProject";

/** Each layer imports only from the layers its row names; what is imported must exist. */
export const importDirection: Wall = (project) =>
  sourceImports(project.modules).flatMap(({ module, layer, edge }) => {
    const { target } = edge;
    if (target.kind === "package") return [];
    if (target.kind === "nothing") return [violation(module, edge, `imports "${edge.specifier}", which is not there`)];
    const other = layerOf(target.path);
    if (other !== undefined && (other === layer || layer.mayImport.includes(other.name))) return [];
    return [violation(module, edge, `${layer.name} may not import from ${other?.name ?? target.path}`)];
  });

/** Each layer uses only the packages its row names; the core uses none. */
export const packages: Wall = (project) =>
  sourceImports(project.modules).flatMap(({ module, layer, edge }) => {
    if (edge.target.kind !== "package" || layer.packages.includes(edge.target.name)) return [];
    return [violation(module, edge, `${layer.name} may not use the package ${edge.target.name}`)];
  });

/** Every module of src belongs to a layer, and there is no layer without a module. */
export const layersFilled: Wall = (project) => {
  const paths = [...project.modules.keys()].filter((path) => path.startsWith("src/"));
  const strays = paths.filter((path) => layerOf(path) === undefined);
  const empty = layers.filter((layer) => layer.name !== "data" && !paths.some((path) => layerOf(path) === layer));
  return [
    ...strays.map((path) => ({ path, line: 1, message: "belongs to no layer" })),
    ...empty.map(({ name, folder }) => ({ path: folder, line: 1, message: `no module of ${name} was read` })),
  ];
};

/** Inside the core a folder imports only from folders above it in the river. */
export const coreFolderOrder: Wall = (project) =>
  sourceImports(project.modules).flatMap(({ module, edge }) => {
    const from = coreFolder(module.path);
    const to = edge.target.kind === "file" ? coreFolder(edge.target.path) : undefined;
    if (from === undefined || to === undefined || from === to) return [];
    const unknown = [from, to].find((folder) => !coreFolders.includes(folder));
    if (unknown !== undefined) return [violation(module, edge, `the folder ${unknown} has no place in the order`)];
    if (coreFolders.indexOf(to) < coreFolders.indexOf(from)) return [];
    return [violation(module, edge, `${from || "the top of the core"} lies above ${to} and may not import from it`)];
  });

/** No module imports itself round a ring of others, types counted. */
export const fileRings: Wall = (project) => {
  const modules = [...project.modules.values()].filter(({ path }) => path.startsWith("src/"));
  const edges = modules.map((module): Edges => [module.path, module.imports.flatMap(importedPath)]);
  return rings(new Map(edges)).map((ring) => ringViolation(ring, "files"));
};

/** Folders that need each other, whether or not their files do; types count. */
export const folderRings: Wall = (project) => {
  const graph = new Map<string, string[]>();
  for (const { path, imports } of project.modules.values()) {
    const from = posix.dirname(path);
    const to = imports.flatMap(importedPath).map((imported) => posix.dirname(imported));
    graph.set(from, [...(graph.get(from) ?? []), ...to.filter((folder) => folder !== from)]);
  }
  return rings(graph).map((ring) => ringViolation(ring, "folders"));
};

type Edges = readonly [string, readonly string[]];

interface SourceImport {
  readonly module: Module;
  readonly layer: Layer;
  readonly edge: Import;
}

function sourceImports(modules: ReadonlyMap<string, Module>): readonly SourceImport[] {
  return [...modules.values()].flatMap((module) => {
    const layer = layerOf(module.path);
    return layer === undefined ? [] : module.imports.map((edge) => ({ module, layer, edge }));
  });
}

function layerOf(path: string): Layer | undefined {
  return layers.find(({ folder }) => path.startsWith(`${folder}/`));
}

function coreFolder(path: string): string | undefined {
  if (!path.startsWith("src/core/")) return undefined;
  const parts = path.split("/");
  return parts.length === 3 ? "" : parts[2];
}

function importedPath({ target }: Import): readonly string[] {
  return target.kind === "file" ? [target.path] : [];
}

function violation(module: Module, edge: Import, message: string): Violation {
  return { path: module.path, line: edge.line, message };
}

function ringViolation(ring: readonly string[], what: string): Violation {
  return { path: ring[0] ?? "", line: 1, message: `ring of ${what}: ${[...ring, ring[0]].join(" → ")}` };
}

/**
 * One ring through each node that can reach itself, each ring once. Breadth first from every node gives the shortest
 * way round; the graphs have a few hundred nodes at most.
 */
function rings(graph: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const found = new Map<string, readonly string[]>();
  for (const start of graph.keys()) {
    const ring = shortestRing(graph, start);
    if (ring !== undefined) found.set([...ring].sort().join(), found.get([...ring].sort().join()) ?? ring);
  }
  return [...found.values()];
}

function shortestRing(graph: ReadonlyMap<string, readonly string[]>, start: string): readonly string[] | undefined {
  const seen = new Set<string>();
  let ways: (readonly string[])[] = [[start]];
  while (ways.length > 0) {
    const longer: (readonly string[])[] = [];
    for (const way of ways) {
      for (const next of graph.get(way[way.length - 1] ?? "") ?? []) {
        if (next === start) return way;
        if (seen.has(next)) continue;
        seen.add(next);
        longer.push([...way, next]);
      }
    }
    ways = longer;
  }
  return undefined;
}
