import type { Result } from "../core/result";
import { plainLines, plainText } from "./plainText";

/** What a command touches of the world: the text of a named file (null where it cannot be read), and two outputs. */
export interface CommandWorld {
  readonly read: (name: string) => string | null;
  readonly print: (text: string) => void;
  readonly complain: (text: string) => void;
}

/** What a command answers for the text of one file, and how it is used. */
export interface FileCommand {
  readonly help: string;
  readonly answer: (text: string) => Result<object, readonly string[]>;
}

/** Answers for the named files, one as it is and several as a list, and returns the exit code. */
export function fileCommand(names: readonly string[], { help, answer }: FileCommand, world: CommandWorld): number {
  if (names.includes("--help") || names.includes("-h")) {
    world.print(help);
    return 0;
  }
  const { answers, problems } = answersOf(names, answer, world);
  if (problems.length > 0) {
    world.complain(problems.map((problem) => `${plainText(problem)}\n`).join(""));
    return 2;
  }
  world.print(`${plainLines(JSON.stringify(names.length > 1 ? answers : answers[0], null, 2))}\n`);
  return 0;
}

interface Answers {
  readonly answers: readonly object[];
  readonly problems: readonly string[];
}

function answersOf(names: readonly string[], answer: FileCommand["answer"], { read }: CommandWorld): Answers {
  const unknown = names.find((name) => name.startsWith("-") && name !== "-");
  if (unknown !== undefined) return { answers: [], problems: [`“${unknown}” is not an option; try --help.`] };
  if (names.length === 0) {
    return {
      answers: [],
      problems: ["No fitting file was named; name one, or “-” for standard input, or try --help."],
    };
  }
  const results = names.map((name): readonly [string, Result<object, readonly string[]>] => {
    const text = read(name);
    return [name, text === null ? { ok: false, problem: [`“${name}” cannot be read as a file.`] } : answer(text)];
  });
  return {
    answers: results.flatMap(([, found]) => (found.ok ? [found.value] : [])),
    problems: results.flatMap(([name, found]) =>
      found.ok ? [] : found.problem.map((sentence) => (names.length > 1 ? `${name}: ${sentence}` : sentence)),
    ),
  };
}
