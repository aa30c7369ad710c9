import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { coreComplaints } from "./support/architectureCompiler";
import { plants } from "./support/architecturePlants";
import { projectOf, readProject } from "./support/architectureProject";
import { type ImportFault, importWalls, readImports } from "./support/architectureRules";
import { type WallName, walls } from "./support/architectureWalls";

const root = resolve(import.meta.dirname, "..");
const project = readProject(root);
const wallNames = Object.keys(walls) as WallName[];

describe("the walls stand", () => {
  test.each(wallNames)("%s", (name) => {
    const found = walls[name](project).map(({ path, line, message }) => `${path}:${line} ${message}`);
    expect(found).toEqual([]);
  });

  test("and every import is one of the plan", { timeout: 60_000 }, async () => {
    const { amount, faults } = await readImports(root);
    expect(amount).toBeGreaterThan(project.modules.size);
    expect(faults.map(({ wall, message }) => `${wall}: ${message}`)).toEqual([]);
  });
});

describe.each([...wallNames, ...importWalls])("planted for %s", (name) => {
  test("both faults and their innocent neighbours", () => {
    expect(plants[name].some(({ foundAt }) => foundAt !== undefined)).toBe(true);
    expect(plants[name].some(({ foundAt }) => foundAt === undefined)).toBe(true);
  });

  test.each(plants[name])("$what → $foundAt", async ({ files, foundAt }) => {
    const paths = name in walls ? walls[name as WallName](projectOf(files)) : await planted(files, name);
    if (foundAt === undefined) expect(paths).toEqual([]);
    else expect(paths.map(({ path }) => path)).toContain(foundAt);
  });
});

/** The faults of one wall in a project that is laid down for the moment. */
async function planted(files: Readonly<Record<string, string>>, wall: string): Promise<readonly ImportFault[]> {
  const folder = mkdtempSync(join(tmpdir(), "planted-"));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(folder, dirname(path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  const { faults } = await readImports(folder);
  rmSync(folder, { recursive: true });
  return faults.filter((fault) => fault.wall === wall);
}

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
