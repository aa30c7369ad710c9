/**
 * The plan of the house, as data. A new edge is one line here, where a reviewer sees it.
 */
export interface Layer {
  readonly name: string;
  readonly folder: string;
  /** The layers it may import from, besides itself. */
  readonly mayImport: readonly string[];
  readonly packages: readonly string[];
}

/**
 * A module belongs to the first layer whose folder it lies in, so a folder inside another comes before it. "build" runs
 * in Node while the page is being built and is no part of it.
 */
export const layers: readonly Layer[] = [
  { name: "core", folder: "src/core", mayImport: [], packages: [] },
  { name: "document", folder: "src/document", mayImport: ["core", "data"], packages: ["zod"] },
  { name: "build", folder: "src/app/offline/build", mayImport: ["app"], packages: ["node:*", "vite"] },
  {
    name: "app",
    folder: "src/app",
    mayImport: ["core", "document", "data"],
    packages: ["zustand", "idb", "uqr", "@cantoo/pdf-lib", "maxrects-packer"],
  },
  { name: "text", folder: "src/text", mayImport: ["core", "document", "app"], packages: [] },
  {
    name: "ui",
    folder: "src/ui",
    mayImport: ["core", "document", "app", "text", "data"],
    packages: ["react", "react-dom", "zustand", "@fontsource-variable/atkinson-hyperlegible-next"],
  },
  {
    name: "command",
    folder: "src/command",
    mayImport: ["core", "document", "app", "text", "data"],
    packages: ["node:*", "vite", "uqr"],
  },
  { name: "data", folder: "shared", mayImport: [], packages: [] },
];

/**
 * The folders of the core in the order of the river, from the source down; "" is the files that lie in src/core
 * itself. A folder may import from those above it, never from those below.
 */
export const coreFolders: readonly string[] = [
  "",
  "numerics",
  "geometry",
  "tape",
  "body",
  "form",
  "padding",
  "pattern",
  "supplies",
  "surface",
  "learning",
  "calibration",
  "plan",
  "cover",
  "arm",
  "above",
];

export const budgets = {
  coreFileLines: 300,
  componentFileLines: 150,
  functionLines: 60,
} as const;

/** What may lie at the top besides files whose names begin with a dot and one configuration for each tool. */
export const topLevelNames: readonly string[] = [
  "README.md",
  "DEVELOPERS.md",
  "package.json",
  "package-lock.json",
  "index.html",
  "src",
  "tests",
  "e2e",
  "shared",
  "public",
];

export const toolConfigurations = /^(tsconfig|biome)\.json$|^[a-z]+\.config\.ts$/;

/** A name for a drawer of odds and ends says nothing about what is in it. */
export const emptyNames: readonly string[] = ["util", "utils", "helper", "helpers", "common", "type", "types", "misc"];
