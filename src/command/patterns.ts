import { namedText } from "./namedText";
import { folderProblem, patternFiles, writeFolder } from "./patternFolder";
import { patternsHelp } from "./patternsHelp";
import { patternsOfText } from "./patternsOfText";
import { patternWish } from "./patternWish";
import { plainText } from "./plainText";
import { patternProblems } from "../text/patterns";

/** The command for who cuts by plotter or paper without a screen: a fitting file in, a folder of patterns out. */
process.exitCode = await run(process.argv.slice(2));

async function run(names: readonly string[]): Promise<number> {
  const wish = patternWish(names);
  if (wish.kind === "help") {
    process.stdout.write(patternsHelp);
    return 0;
  }
  if (wish.kind === "refused") return complain([wish.sentence]);
  const { name, folder, cloth } = wish;
  const text = namedText(name);
  if (text === null) return complain([`“${name}” cannot be read as a file.`]);
  const patterns = patternsOfText(text, cloth);
  if (!patterns.ok) return complain(patterns.problem);
  const problem = folderProblem(folder);
  if (problem !== null) return complain([problem]);
  try {
    writeFolder(folder, await patternFiles(patterns.value));
    complain(patterns.value.notes);
    return 0;
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    complain([patternProblems.notWritten(folder)]);
    return 1;
  }
}

function complain(problems: readonly string[]): number {
  process.stderr.write(problems.map((problem) => `${plainText(problem)}\n`).join(""));
  return 2;
}
