import type { Result } from "../core/result";
import { fileCommand } from "./fileCommand";
import { namedText } from "./namedText";
import { outputProblem } from "./outputProblem";

/** A program of files in and JSON out: the named files of this process, its two outputs and its exit code. */
export function runFileCommand(help: string, answer: (text: string) => Result<object, readonly string[]>): void {
  process.stdout.on("error", (error) => {
    const problem = outputProblem(error);
    if (problem === null) return;
    process.exitCode = 1;
    process.stderr.write(`${problem}\n`);
  });
  // Whom nobody hears cannot complain of it either.
  process.stderr.on("error", () => {});
  process.exitCode = fileCommand(
    process.argv.slice(2),
    { help, answer },
    {
      read: namedText,
      print: (text) => process.stdout.write(text),
      complain: (text) => process.stderr.write(text),
    },
  );
}
