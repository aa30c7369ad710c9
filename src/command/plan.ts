import { readFileSync } from "node:fs";
import type { Result } from "../core/result";
import type { PlanFile } from "../document/planFile";
import { planOfText } from "./planOfText";

/** The command: fitting files in, plan files out, for people who script and for programs that check us. */
const help = `Reads fitting files and prints the plan: which pieces of batting to pin on a dress form, in which order.

  npm run --silent plan -- FILE         print the plan of one fitting
  npm run --silent plan -- FILE FILE    print the plans of several, as one JSON list
  npm run --silent plan -- -            read the fitting from standard input
  npm run --silent plan -- --help       print this

The fitting file is JSON (public/fitting.schema.json), and so is the plan (public/plan.schema.json):

  { "version": 1, "unit": "in",
    "body": { "bustGirth": "38 1/2", "waistGirth": 33, "fullHipGirth": "41 1/4", "waistFrontArc": "18 in" },
    "form": { "table": "misses", "size": "12" },
    "batting": { "name": "bonded polyester", "layerThickness": "6 mm" } }

Without "size" the size is chosen. What is measured on the form itself, typed beside the table, always wins.
Exit code: 0 when every plan was printed, 2 when a file could not be planned; then standard error says why,
one sentence a problem, and nothing is printed.
`;

function main(names: readonly string[]): number {
  if (names.includes("--help") || names.includes("-h")) {
    process.stdout.write(help);
    return 0;
  }
  const unknown = names.find((name) => name.startsWith("-") && name !== "-");
  if (unknown !== undefined) return fail([`“${unknown}” is not an option; try --help.`]);
  if (names.length === 0)
    return fail(["No fitting file was named; name one, or “-” for standard input, or try --help."]);

  const plans = names.map((name) => ({ name, plan: planOfFile(name) }));
  const problems = plans.flatMap(({ name, plan }) =>
    plan.ok ? [] : plan.problem.map((sentence) => (names.length > 1 ? `${name}: ${sentence}` : sentence)),
  );
  if (problems.length > 0) return fail(problems);
  const files = plans.flatMap(({ plan }) => (plan.ok ? [plan.value] : []));
  process.stdout.write(`${JSON.stringify(names.length > 1 ? files : files[0], null, 2)}\n`);
  return 0;
}

function planOfFile(name: string): Result<PlanFile, readonly string[]> {
  try {
    return planOfText(readFileSync(name === "-" ? 0 : name, "utf8"));
  } catch (error) {
    if (error instanceof Error && "code" in error)
      return { ok: false, problem: [`“${name}” cannot be read as a file.`] };
    throw error;
  }
}

function fail(sentences: readonly string[]): number {
  process.stderr.write(sentences.map((sentence) => `${sentence}\n`).join(""));
  return 2;
}

process.exitCode = main(process.argv.slice(2));
