import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { coreComplaints } from "./support/architectureCompiler";
import { plants } from "./support/architecturePlants";
import { projectOf, readProject } from "./support/architectureProject";
import { type WallName, walls } from "./support/architectureWalls";

const root = resolve(import.meta.dirname, "..");
const project = readProject(root);
const wallNames = Object.keys(walls) as WallName[];

describe("the walls stand", () => {
  test("modules and the imports between them were read", () => {
    const modules = [...project.modules.values()].filter(({ path }) => path.startsWith("src/"));
    const edges = modules.flatMap(({ imports }) => imports).filter(({ target }) => target.kind === "file");
    expect(modules.length).toBeGreaterThan(0);
    expect(edges.length).toBeGreaterThan(0);
  });

  test.each(wallNames)("%s", (name) => {
    const found = walls[name](project).map(({ path, line, message }) => `${path}:${line} ${message}`);
    expect(found).toEqual([]);
  });
});

describe.each(wallNames)("planted for %s", (name) => {
  test("both faults and their innocent neighbours", () => {
    expect(plants[name].some(({ foundAt }) => foundAt !== undefined)).toBe(true);
    expect(plants[name].some(({ foundAt }) => foundAt === undefined)).toBe(true);
  });

  test.each(plants[name])("$what → $foundAt", ({ files, foundAt }) => {
    const paths = walls[name](projectOf(files)).map(({ path }) => path);
    if (foundAt === undefined) expect(paths).toEqual([]);
    else expect(paths).toContain(foundAt);
  });
});

describe("the core's compiler", () => {
  const text = (lastLine: string) =>
    [
      'import { mm, type Millimetres, type Radians } from "./units";',
      "export const girth: Millimetres = mm(900);",
      "export const turned = (angle: Radians): number => angle;",
      lastLine,
    ].join("\n");

  test("takes a module that keeps to the rules", () => {
    expect(coreComplaints(root, text("export const half = mm(girth / 2);"))).toEqual([]);
  });

  test.each([
    ["the page", "export const title = document.title;", "Cannot find name 'document'"],
    ["the process", "export const place = process.cwd();", "Cannot find name 'process'"],
    ["the console", "console.log(girth);", "Cannot find name 'console'"],
    ["timers", "setTimeout(() => girth, 1);", "Cannot find name 'setTimeout'"],
    ["storage", 'localStorage.getItem("girth");', "Cannot find name 'localStorage'"],
    ["the network", 'fetch("girth");', "Cannot find name 'fetch'"],
    [
      "Node's modules",
      'import { readFileSync } from "node:fs"; export const read = readFileSync;',
      "Cannot find name 'node:fs'",
    ],
    ["a length for an angle", "export const wrong = turned(girth);", "'Millimetres' is not assignable"],
    ["a bare number for a length", "export const wrong: Millimetres = 900;", "'number' is not assignable"],
    ["a file outside the core", 'export { build } from "../document/frozen";', "is not under 'rootDir'"],
  ])("refuses %s", (_what, lastLine, complaint) => {
    expect(coreComplaints(root, text(lastLine)).join("\n")).toContain(complaint);
  });
});
