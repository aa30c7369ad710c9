import type { Result } from "../core/result";
import type { PlanFile } from "../document/planFile";
import { plainLines, plainText } from "./plainText";
import { planOfText } from "./planOfText";

/** What the command touches of the world: the text of a named file (null where it cannot be read), and two outputs. */
export interface CommandWorld {
  readonly read: (name: string) => string | null;
  readonly print: (text: string) => void;
  readonly complain: (text: string) => void;
}

export const help = `Reads fitting files and prints the plan: which pieces of batting to pin on a dress form, and in which order.

  npm run --silent plan -- FILE         print the plan of one fitting
  npm run --silent plan -- FILE FILE    print the plans of several, as one JSON list
  npm run --silent plan -- -            read the fitting from standard input
  npm run --silent plan -- --help       print this

The fitting file is JSON (public/fitting.schema.json), and so is the plan (public/plan.schema.json):

  { "version": 1, "unit": "in",
    "body": { "bustGirth": "34 1/2", "waistGirth": 29, "fullHipGirth": "37 3/4", "waistFrontArc": "15 3/4 in" },
    "form": { "table": "misses", "size": "8" },
    "batting": { "name": "bonded polyester", "layerThickness": "6 mm" } }

Without "size" the tool chooses the size. What is measured on the form itself, typed beside the size chart, always wins.
A plan is a draft ("basis") until the bare form was measured on the person's lines: with "readAtBodyLines": true in
"form" its measurements are taken as such, as are those of the bare form in "work". "mayMissMm" is what it may miss by.
Exit code: 0 when every plan was printed, 2 when a file could not be planned; then standard error says why,
one sentence a problem, and nothing is printed; 1 when the plans could not be written.
`;

/** Plans the named fitting files and returns the exit code. */
export function planCommand(names: readonly string[], world: CommandWorld): number {
  if (names.includes("--help") || names.includes("-h")) {
    world.print(help);
    return 0;
  }
  const { plans, problems } = plansOf(names, world);
  if (problems.length > 0) {
    world.complain(problems.map((problem) => `${plainText(problem)}\n`).join(""));
    return 2;
  }
  world.print(`${plainLines(JSON.stringify(names.length > 1 ? plans : plans[0], null, 2))}\n`);
  return 0;
}

interface Planned {
  readonly plans: readonly PlanFile[];
  readonly problems: readonly string[];
}

function plansOf(names: readonly string[], { read }: CommandWorld): Planned {
  const unknown = names.find((name) => name.startsWith("-") && name !== "-");
  if (unknown !== undefined) return { plans: [], problems: [`“${unknown}” is not an option; try --help.`] };
  if (names.length === 0) {
    return { plans: [], problems: ["No fitting file was named; name one, or “-” for standard input, or try --help."] };
  }
  const results = names.map((name): readonly [string, Result<PlanFile, readonly string[]>] => {
    const text = read(name);
    return [name, text === null ? { ok: false, problem: [`“${name}” cannot be read as a file.`] } : planOfText(text)];
  });
  return {
    plans: results.flatMap(([, plan]) => (plan.ok ? [plan.value] : [])),
    problems: results.flatMap(([name, plan]) =>
      plan.ok ? [] : plan.problem.map((sentence) => (names.length > 1 ? `${name}: ${sentence}` : sentence)),
    ),
  };
}
