import type { ImportWall } from "./architectureRules";
import type { WallName } from "./architectureWalls";

/** A made-up project, and the path at which a wall must find fault; undefined where it must be content. */
export interface Plant {
  readonly what: string;
  readonly files: Readonly<Record<string, string>>;
  readonly foundAt: string | undefined;
}

const leaf = "export const leaf = 1;";
const usesLeaf = 'import { leaf } from "ADDRESS";\nexport const use = leaf;';

const good = (what: string, files: Plant["files"]): Plant => ({ what, files, foundAt: undefined });
const bad = (foundAt: string, what: string, files: Plant["files"]): Plant => ({ what, files, foundAt });

const coreFile = "src/core/planted.ts";
const goodCore = (text: string) => good(text.slice(0, 80), { [coreFile]: text });
const badCore = (text: string) => bad(coreFile, text.slice(0, 80), { [coreFile]: text });

/** Two files, the first importing the second by the statement given. */
function edge(from: string, to: string, statement: string): Plant["files"] {
  const up = "../".repeat(from.split("/").length - 1);
  return { [from]: statement.replace("ADDRESS", `${up}${to}`.replace(/\.tsx?$/, "")), [to]: leaf };
}
const goodEdge = (from: string, to: string) => good(`${from} imports ${to}`, edge(from, to, usesLeaf));
const badEdge = (from: string, to: string, statement = usesLeaf) =>
  bad(from, `${from} imports ${to} with ${statement.split("\n")[0]}`, edge(from, to, statement));

/** A module that starts a worker beside two that can be started. */
const address = (from: string, to: string): Plant["files"] => ({
  [from]: `new Worker(new URL("${to}", import.meta.url));`,
  "src/app/answers/answerWorker.ts": leaf,
  "src/ui/answerWorker.ts": leaf,
});

const usesPackage = (name: string) => `import type { Thing } from "${name}";`;
const goodPackage = (from: string, name: string) => good(`${from} uses ${name}`, { [from]: usesPackage(name) });
const badPackage = (from: string, name: string) => bad(from, `${from} uses ${name}`, { [from]: usesPackage(name) });

/** Statements, one a line. */
const lines = (amount: number) => Array.from({ length: amount }, (_, i) => `use(${i});`).join("\n");
/** A function of this many lines, counting the lines with its braces. */
const longFunction = (amount: number) => `export function long() {\n${lines(amount - 2)}\n}`;
const longTable = (amount: number) => `export const table = [\n${"  1,\n".repeat(amount)}] as const;\n`;

const policy = (content: string, rest = "") =>
  `<meta http-equiv="Content-Security-Policy" content="${content}" />${rest}<script src="/a.js"></script>`;

const everyLayer: Plant["files"] = {
  "src/core/units.ts": leaf,
  "src/document/fitting.ts": leaf,
  "src/app/offline/build/offlineFiles.ts": leaf,
  "src/app/store.ts": leaf,
  "src/text/en.ts": leaf,
  "src/ui/main.tsx": leaf,
};

export const plants: Readonly<Record<WallName | ImportWall, readonly Plant[]>> = {
  layersFilled: [
    good("a module in every layer", { ...everyLayer, "src/command/plan.ts": leaf }),
    bad("src/command", "a layer of which nothing was read", everyLayer),
    bad("src/core", "an empty project", {}),
    bad("src/odd/place.ts", "a module outside the layers", { ...everyLayer, "src/odd/place.ts": leaf }),
  ],
  importDirection: [
    goodEdge("src/core/plan/plan.ts", "src/core/units.ts"),
    goodEdge("src/document/fitting.ts", "src/core/units.ts"),
    goodEdge("src/document/tables.ts", "shared/tables.json"),
    goodEdge("src/app/store.ts", "src/document/fitting.ts"),
    goodEdge("src/ui/steps/Body.tsx", "src/app/store.ts"),
    goodEdge("src/ui/steps/Body.tsx", "src/text/en.ts"),
    goodEdge("src/command/plan.ts", "src/text/en.ts"),
    goodEdge("src/command/plan.ts", "src/app/store.ts"),
    goodEdge("src/text/en.ts", "src/app/store.ts"),
    badEdge("src/core/plan.ts", "src/document/fitting.ts"),
    badEdge("src/core/plan.ts", "src/text/en.ts"),
    badEdge("src/core/plan.ts", "shared/tables.json"),
    badEdge("src/core/plan.ts", "src/app/store.ts", 'import type { Leaf } from "ADDRESS";'),
    badEdge("src/core/plan.ts", "src/app/store.ts", 'export type { Leaf } from "ADDRESS";'),
    badEdge("src/core/plan.ts", "src/app/store.ts", 'type Leaf = import("ADDRESS").Leaf;'),
    badEdge("src/core/plan.ts", "src/app/store.ts", 'const later = () => import("ADDRESS");'),
    badEdge("src/document/fitting.ts", "src/app/store.ts"),
    badEdge("src/app/store.ts", "src/ui/steps/Body.tsx"),
    badEdge("src/app/store.ts", "src/command/plan.ts"),
    badEdge("src/app/store.ts", "src/app/offline/build/offlineFiles.ts"),
    badEdge("src/command/plan.ts", "src/ui/steps/Body.tsx"),
    badEdge("src/text/en.ts", "src/ui/steps/Body.tsx"),
    badEdge("src/ui/steps/Body.tsx", "src/command/plan.ts"),
    badEdge("src/ui/steps/Body.tsx", "tests/support/people.ts"),
    bad(coreFile, "an import of nothing", { [coreFile]: 'import { gone } from "./gone";' }),
  ],
  workerAddresses: [
    good("a worker of app, from a page", address("src/ui/plan/useAnswer.ts", "../../app/answers/answerWorker.ts")),
    good("a worker of app, from app", address("src/app/answers/ask.ts", "./answerWorker.ts")),
    bad("src/core/plan.ts", "one from the core", address("src/core/plan.ts", "../app/answers/answerWorker.ts")),
    bad("src/app/ask.ts", "a page as a worker", address("src/app/ask.ts", "../ui/answerWorker.ts")),
    bad("src/app/ask.ts", "a worker that is not there", address("src/app/ask.ts", "./gone.ts")),
  ],
  packages: [
    goodPackage("src/document/fitting.ts", "zod"),
    goodPackage("src/document/fitting.ts", "zod/mini"),
    goodPackage("src/app/store.ts", "zustand/vanilla"),
    goodPackage("src/ui/main.tsx", "react-dom/client"),
    goodPackage("src/command/plan.ts", "node:fs"),
    badPackage("src/core/plan.ts", "zod"),
    badPackage("src/core/plan.ts", "node:fs"),
    badPackage("src/app/store.ts", "zod"),
    badPackage("src/app/store.ts", "react"),
    badPackage("src/document/fitting.ts", "react"),
    badPackage("src/ui/main.tsx", "zod"),
    badPackage("src/text/en.ts", "react"),
    badPackage("src/command/plan.ts", "react"),
  ],
  coreFolderOrder: [
    goodEdge("src/core/plan/plan.ts", "src/core/padding/piece.ts"),
    goodEdge("src/core/plan/plan.ts", "src/core/plan/checklist.ts"),
    goodEdge("src/core/tape/tape.ts", "src/core/units.ts"),
    badEdge("src/core/tape/tape.ts", "src/core/body/section.ts"),
    badEdge("src/core/padding/piece.ts", "src/core/plan/plan.ts", 'import type { Plan } from "ADDRESS";'),
    badEdge("src/core/material.ts", "src/core/plan/plan.ts"),
    badEdge("src/core/unheard/of.ts", "src/core/units.ts"),
  ],
  fileRings: [
    goodEdge("src/app/store.ts", "src/app/commands.ts"),
    bad("src/app/a.ts", "two files that import each other", {
      "src/app/a.ts": 'import { b } from "./b";',
      "src/app/b.ts": 'import { a } from "./a";',
    }),
    bad("src/app/a.ts", "a ring of three, closed by a type", {
      "src/app/a.ts": 'import { b } from "./b";',
      "src/app/b.ts": 'import { c } from "./c";',
      "src/app/c.ts": 'import type { A } from "./a";',
    }),
    bad("src/app/a.ts", "a file that imports itself", { "src/app/a.ts": 'import { a } from "./a";' }),
  ],
  folderRings: [
    goodEdge("src/core/plan/plan.ts", "src/core/body/section.ts"),
    bad("src/core/tape", "two folders that need each other, without a ring of files", {
      "src/core/tape/tape.ts": 'import { section } from "../body/section";',
      "src/core/body/section.ts": leaf,
      "src/core/body/solve.ts": 'import type { Tape } from "../tape/tape";',
    }),
    bad("src/ui/plan", "the same of pages", {
      "src/ui/plan/Plan.tsx": 'import { sheet } from "../print/sheet";',
      "src/ui/print/sheet.ts": leaf,
      "src/ui/print/Print.tsx": 'import { Plan } from "../plan/Plan";',
    }),
  ],
  clockAndChance: [
    goodCore("export const root = Math.sqrt(2);"),
    goodCore("export const dated = { Date: 1 }.Date;"),
    badCore("export const now = new Date();"),
    badCore("export const now = Date.now();"),
    badCore("export interface Reading { readonly taken: Date }"),
    badCore("export const chance = Math.random();"),
    badCore('export const chance = Math["random"]();'),
    badCore("const { random } = Math;"),
    badCore('export const hidden = globalThis["performance"];'),
    good("a clock outside the core", { "src/app/clock.ts": "export const now = () => new Date();" }),
  ],
  compilerComments: [
    goodCore("// The reference is the nape.\nexport const nape = 0;"),
    badCore('/// <reference lib="dom" />'),
    badCore("// @ts-expect-error\nexport const wrong: string = 1;"),
    badCore("/* @ts-nocheck */"),
  ],
  readonlyTypes: [
    goodCore("export interface Ring { readonly points: readonly (readonly [number, number])[] }"),
    goodCore("export function ring() { const points: number[] = []; return points; }"),
    goodCore("export type Known = { readonly [name in Name]?: number };"),
    badCore("export interface Ring { points: readonly number[] }"),
    badCore("export interface Ring { readonly points: number[] }"),
    badCore("export type Pair = [number, number];"),
    badCore("export type Known = { [name in Name]?: number };"),
  ],
  fileBudgets: [
    goodCore(lines(300)),
    badCore(lines(301)),
    good("a long table in a file of the core", { [coreFile]: `${longTable(400)}${lines(290)}` }),
    badCore(`export const table = [\n${"  () => 1,\n".repeat(400)}];`),
    good("a component of 150 lines", { "src/ui/steps/Body.tsx": lines(150) }),
    bad("src/ui/steps/Body.tsx", "a component of 151 lines", { "src/ui/steps/Body.tsx": lines(151) }),
  ],
  functionBudgets: [
    goodCore(longFunction(60)),
    badCore(longFunction(61)),
    badCore(`export const long = () => {\n${lines(59)}\n};`),
    badCore(`class Long {\n  long() {\n${lines(59)}\n  }\n}`),
    good("a comment above a function is not part of it", {
      [coreFile]: `/**\n${" * so\n".repeat(20)} */\n${longFunction(60)}`,
    }),
    bad("src/app/store.ts", "a long function outside the core", { "src/app/store.ts": longFunction(61) }),
    good("a component longer than a function", { "src/ui/Body.tsx": longFunction(100).replace("long", "Body") }),
    bad("src/ui/Body.tsx", "a long function beside a component", { "src/ui/Body.tsx": longFunction(61) }),
  ],
  bareTolerances: [
    goodCore('import { tapeReading } from "./tolerances";\nexport const near = (gap: number) => gap < tapeReading;'),
    goodCore("export const halfway = (at: number, width: number) => at < width * 0.5;"),
    goodCore("export const some = (amount: number) => amount > 0 && amount < 12.5;"),
    good("the place for tolerances", { "src/core/tolerances.ts": "export const close = mm(1e-6);" }),
    badCore("export const close = 1e-9;"),
    badCore("export const near = (gap: number) => gap < 0.001;"),
    badCore("export const near = (gap: number) => Math.abs(gap) <= mm(0.5);"),
    badCore("export const far = (gap: number) => gap > -0.25;"),
    badCore("export const near = (gap: number) => 0.1 > (gap);"),
    badCore("export const near = (gap: number, width: number) => gap < width * 0.01;"),
    badCore("export const same = (gap: number) => gap < Number.EPSILON;"),
    badCore("const tolerance = 0.02;"),
    badCore("export const solve = (stopTolerance = mm(2)) => stopTolerance;"),
  ],
  barrels: [
    good("a file that passes on one thing beside its own", {
      "src/app/store.ts": 'export { dispatch } from "./dispatch";\nexport const store = 1;',
    }),
    bad("src/app/all.ts", "everything passed on", {
      "src/app/all.ts": 'export * from "./store";\nexport const own = 1;',
    }),
    bad("src/app/all.ts", "nothing of its own", { "src/app/all.ts": 'export { store } from "./store";' }),
    bad("src/app/index.ts", "an index", { "src/app/index.ts": leaf }),
  ],
  sayingNames: [
    good("names that say something", { "src/core/geometry/hull.ts": leaf, "tests/support/people.ts": leaf }),
    bad("src/app/utils.ts", "a drawer", { "src/app/utils.ts": leaf }),
    bad("src/core/common/hull.ts", "a folder of odds and ends", { "src/core/common/hull.ts": leaf }),
    bad("src/app/types.d.ts", "a file of types", { "src/app/types.d.ts": leaf }),
    bad("tests/support/Helpers.tsx", "help with what?", { "tests/support/Helpers.tsx": leaf }),
  ],
  topLevel: [
    good("what belongs there", { "README.md": "", ".npmrc": "", "vite.config.ts": "", "src/core/units.ts": leaf }),
    bad("scripts", "a folder of scripts", { "scripts/serve.mjs": "" }),
    bad("NOTES.md", "a note", { "NOTES.md": "" }),
  ],
  testsAreRun: [
    good("tests where the runners look", {
      "tests/core/units.test.ts": leaf,
      "tests/ui/Body.test.tsx": leaf,
      "tests/architecture.test.ts": leaf,
      "e2e/firstPlan.spec.ts": leaf,
    }),
    bad("tests/elsewhere/units.test.ts", "a folder without a runner", { "tests/elsewhere/units.test.ts": leaf }),
    bad("src/core/units.test.ts", "a test in src", { "src/core/units.test.ts": leaf }),
    bad("e2e/plan.test.ts", "the ending of the other runner", { "e2e/plan.test.ts": leaf }),
  ],
  ownWordsOnly: [
    good("plain words", { "README.md": "A work of hands; see tmp and the library.\n" }),
    bad("README.md", "a folder of one machine", { "README.md": ["", "work", "main"].join("/") }),
    bad("src/core/units.ts", "a comment about who wrote it", { "src/core/units.ts": `// by a ${"Sub"}${"agent"}` }),
    bad("package.json", "a server", { "package.json": `{ "from": "https:${"//registry"}.example" }` }),
  ],
  lockWithoutHosts: [
    good("versions and sums alone", { "package-lock.json": '{ "version": "1.0.0", "integrity": "sha512-x" }' }),
    bad("package-lock.json", "a server's name", {
      "package-lock.json": '{ "resolved": "https://packages.example/a" }',
    }),
  ],
  pagePolicy: [
    good("a strict page", { "index.html": policy("default-src 'none'; script-src 'self'") }),
    bad("index.html", "no policy", { "index.html": '<script src="/a.js"></script>' }),
    bad("index.html", "a default that allows", { "index.html": policy("default-src 'self'") }),
    bad("index.html", "inline allowed", { "index.html": policy("default-src 'none'; style-src 'unsafe-inline'") }),
    bad("index.html", "another origin", { "index.html": policy("default-src 'none'; img-src https://cdn.example") }),
    bad("index.html", "a script in the page", { "index.html": policy("default-src 'none'", "<script>x()</script>") }),
    bad("index.html", "a style in the page", { "index.html": policy("default-src 'none'", '<p style="color:red">') }),
  ],
};
