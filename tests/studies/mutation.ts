import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { Stryker } from "@stryker-mutator/core";
import { chance } from "../tools/peopleChance";

/**
 * Lines of the core and of the document changed one at a time (a sign, a limit, a condition, a word of a key), and whether a
 * test notices. Of every file one in so many blocks of lines is drawn, at least one; 1 changes everything, which takes a night.
 * Prints every change that nobody noticed, as soon as it is known, and at the end how many were noticed, by folder.
 *
 *   npm run study:mutation -- [one block in so many] [seed] [part of a path]
 */
const [everySo = "6", seed = "1", part = "src/"] = process.argv.slice(2);
const root = resolve(import.meta.dirname, "../..");
const blockLines = 4;
const luck = chance(Number(seed));
const say = (line = "") => process.stdout.write(`${line}\n`);

const files = ["src/core", "src/document"]
  .flatMap((room) =>
    readdirSync(join(root, room), { recursive: true, encoding: "utf8" }).map((path) => join(room, path)),
  )
  .filter((path) => path.endsWith(".ts") && path.includes(part))
  .sort();

/** The blocks of a file that are changed, as ranges of lines. */
function drawnBlocks(path: string): readonly string[] {
  const { length } = readFileSync(join(root, path), "utf8").split("\n");
  const blocks = Array.from({ length: Math.ceil(length / blockLines) }, (_, i) => i);
  const share = Number(everySo);
  const sure = Math.floor(luck.between(0, blocks.length));
  const drawn = share <= 1 ? blocks : blocks.filter((i) => i === sure || luck.happens(1 / share));
  return drawn.map((i) => `${path}:${i * blockLines + 1}-${Math.min(length, (i + 1) * blockLines)}`);
}

const results = await new Stryker({
  testRunner: "vitest",
  vitest: { configFile: "tests/tools/mutation.config.ts", related: false },
  plugins: ["@stryker-mutator/vitest-runner", resolve(import.meta.dirname, "../tools/mutationReporter.ts")],
  mutate: files.flatMap(drawnBlocks),
  coverageAnalysis: "perTest",
  // What is worked out once when a file is read (tables, limits) would need every test for every change.
  ignoreStatic: true,
  concurrency: 2,
  timeoutMS: 5_000,
  timeoutFactor: 2,
  dryRunTimeoutMinutes: 15,
  tempDirName: "node_modules/.cache/mutation",
  reporters: ["progress-append-only", "unnoticed"],
  allowConsoleColors: false,
}).runMutationTest();

type Changed = (typeof results)[number];
const noticed = ({ status }: Changed) => status === "Killed" || status === "Timeout";
/** What cannot be compiled, or was left out on purpose with the reason beside it, is not counted. */
const counted = results.filter(
  ({ status }) => status !== "CompileError" && status !== "Ignored" && status !== "RuntimeError",
);
const place = ({ fileName }: Changed) => relative(root, fileName);
const folder = (one: Changed) => place(one).split("/").slice(0, 3).join("/");

function row(title: string, ones: readonly Changed[]): string {
  const kept = ones.filter(noticed).length;
  const share = ((100 * kept) / ones.length).toFixed(1);
  const late = ones.filter(({ status }) => status === "Timeout").length;
  const unseen = ones.filter(({ status }) => status === "NoCoverage").length;
  return `| ${title} | ${ones.length} | ${kept} (${late}) | ${unseen} | ${share} % |`;
}

say();
say("| where | changes | noticed (by running on) | no test comes by | share |");
say("| --- | --- | --- | --- | --- |");
const folders = [...new Set(counted.map(folder))].map((name) =>
  name.endsWith(".ts") ? name.split("/").slice(0, 2).join("/") : name,
);
for (const name of [...new Set(folders)].sort()) {
  const inside = counted.filter(
    (one) => (folder(one).endsWith(".ts") ? folder(one).split("/").slice(0, 2).join("/") : folder(one)) === name,
  );
  say(row(name, inside));
}
say(row("all", counted));
