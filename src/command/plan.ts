import { fileText } from "./fileText";
import { firstBytes } from "./firstBytes";
import { outputProblem } from "./outputProblem";
import { planCommand } from "./planCommand";

process.stdout.on("error", (error) => {
  const problem = outputProblem(error);
  if (problem === null) return;
  process.exitCode = 1;
  process.stderr.write(`${problem}\n`);
});
// Whom nobody hears cannot complain of it either.
process.stderr.on("error", () => {});

/** Bytes; several times what the largest fitting takes. */
const largestFile = 32_000_000;

/** The command for people who script and for programs that check us: fitting files in, plan files out. */
process.exitCode = planCommand(process.argv.slice(2), {
  read: (name) => {
    try {
      return fileText(firstBytes(name, largestFile));
    } catch (error) {
      if (error instanceof Error && "code" in error) return null;
      throw error;
    }
  },
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
});
