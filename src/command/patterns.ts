import { fileText } from "./fileText";
import { firstBytes } from "./firstBytes";
import { folderProblem, patternFiles, writeFolder } from "./patternFolder";
import { patternsHelp } from "./patternsHelp";
import { patternsOfText } from "./patternsOfText";
import { plainText } from "./plainText";
import { patternProblems } from "../text/patterns";

/** Bytes; several times what the largest fitting takes. */
const largestFile = 32_000_000;

/** The command for who cuts by plotter or paper without a screen: a fitting file in, a folder of patterns out. */
process.exitCode = await run(process.argv.slice(2));

async function run(names: readonly string[]): Promise<number> {
  if (names.includes("--help") || names.includes("-h")) {
    process.stdout.write(patternsHelp);
    return 0;
  }
  const [name, folder, ...others] = names;
  if (name === undefined || folder === undefined || others.length > 0) return complain([patternProblems.noFolder]);
  const text = readText(name);
  if (text === null) return complain([`“${name}” cannot be read as a file.`]);
  const patterns = patternsOfText(text);
  if (!patterns.ok) return complain(patterns.problem);
  const problem = folderProblem(folder);
  if (problem !== null) return complain([problem]);
  try {
    writeFolder(folder, await patternFiles(patterns.value));
    return 0;
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    complain([patternProblems.notWritten(folder)]);
    return 1;
  }
}

function readText(name: string): string | null {
  try {
    return fileText(firstBytes(name, largestFile));
  } catch (error) {
    if (error instanceof Error && "code" in error) return null;
    throw error;
  }
}

function complain(problems: readonly string[]): number {
  process.stderr.write(problems.map((problem) => `${plainText(problem)}\n`).join(""));
  return 2;
}
