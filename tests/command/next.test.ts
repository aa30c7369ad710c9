import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { fileCommand } from "../../src/command/fileCommand";
import { nextHelp } from "../../src/command/nextHelp";
import { nextOfText } from "../../src/command/nextOfText";
import { type Fitting, writeFitting } from "../../src/document/fitting";
import { stepFileSchema } from "../../src/document/stepFile";
import { drawRoom, type JobWalk, type Shortcuts, walkJob } from "../tools/jobWalk";
import { people } from "../tools/people";
import { chance } from "../tools/peopleChance";

// Whole jobs, each some dozens of plans, and a program of its own.
vi.setConfig({ testTimeout: 240_000 });

const root = resolve(import.meta.dirname, "../..");
const measured = people(60, 1).filter(({ formKind, care }) => formKind === "measured" && care === "all-arcs");

/** A whole job through the text of its file, as a program outside walks it; what is printed keeps to the published form. */
function walked(i: number, shortcuts: Shortcuts = {}): JobWalk & { readonly names: ReadonlyMap<string, Set<string>> } {
  const person = measured[i];
  if (person === undefined) throw new Error("nobody to pad for");
  const names = new Map<string, Set<string>>();
  const walk = walkJob(person, drawRoom(chance(900 + i)), shortcuts, (fitting: Fitting) => {
    const text = JSON.stringify(writeFitting(fitting));
    const next = nextOfText(text);
    if (next.ok) {
      expect(() => stepFileSchema.parse(JSON.parse(JSON.stringify(next.value)))).not.toThrow();
      expect(next.value.step.record === undefined).toBe(next.value.step.do === "done");
      expect(next.value.step.say.length).toBeGreaterThan(10);
      const pinned = fitting.work.flatMap((entry) => (entry.did === "pinned" ? [entry.piece] : []));
      for (const { id, name } of pinned) names.set(id, (names.get(id) ?? new Set()).add(name));
    }
    return next;
  });
  return { ...walk, names };
}

describe("a whole job walked with nothing but the next step", () => {
  test.each([2])("person %i: from the bare form to done, each reading near the body", (i) => {
    const { steps, misses, pieces, names, last } = walked(i, { isWhole: true });
    expect(steps.slice(0, 4)).toEqual(["prepare-form", "mark-lines", "read-lines", "trial"]);
    expect(steps.length).toBeLessThanOrEqual(25 + 8 * pieces);
    expect(misses.length).toBeGreaterThan(8);
    expect(misses.filter(({ miss }) => Math.abs(miss) > 12)).toEqual([]);
    for (const [id, called] of names) expect([...called], id).toHaveLength(1);
    expect(last.step.part).toBe("after");
    const making = steps.slice(steps.lastIndexOf("look") + 1);
    // A cover that is corrected is measured again where it was off.
    const corrected = making.indexOf("correct-cover");
    if (corrected >= 0) expect(making[corrected + 1]).toBe("read-cover");
    const over = corrected < 0 ? making : making.toSpliced(corrected, 2);
    expect(over).toEqual([
      ...[
        "choose-cover",
        "read-between",
        "cut-cover",
        "sew-cover",
        "fit-cover",
        "close-cover",
        "read-cover",
        "hem-cover",
      ],
      ...["waist-tape", "style-lines", "put-away", "done"],
    ]);
  });

  test("what may be passed over leads on as well: no trial, and no reading of the lines", () => {
    const { steps, readings } = walked(1, { trial: false, lines: false });
    expect(steps.filter((step) => step === "trial" || step === "read-lines")).toHaveLength(2);
    expect(steps.at(-1)).toBe("choose-cover");
    expect(readings).toBeGreaterThan(8);
  });
});

describe("the program", () => {
  const demo = (name: string) => readFileSync(join(root, "shared/demo", `${name}.json`), "utf8");
  const run = (names: readonly string[], files: { readonly [name: string]: string } = {}) => {
    const said = { stdout: "", stderr: "" };
    const world = {
      read: (name: string) => files[name] ?? null,
      print: (text: string) => {
        said.stdout += text;
      },
      complain: (text: string) => {
        said.stderr += text;
      },
    };
    return { status: fileCommand(names, { help: nextHelp, answer: nextOfText }, world), ...said };
  };

  test("prints the next step of a file and nothing else", () => {
    const program = [join(root, "node_modules/tsx/dist/cli.mjs"), join(root, "src/command/next.ts")];
    const { status, stdout, stderr } = spawnSync(process.execPath, [...program, "shared/demo/first.json"], {
      encoding: "utf8",
      cwd: root,
    });
    expect([status, stderr]).toEqual([0, ""]);
    expect(stepFileSchema.parse(JSON.parse(stdout)).step.do).toBe("prepare-form");
  });

  test("several files become one list, in their order", () => {
    const files = { a: demo("first"), b: demo("long-back") };
    const both = JSON.parse(run(["a", "b"], files).stdout) as unknown[];
    expect(both).toEqual([JSON.parse(run(["a"], files).stdout), JSON.parse(run(["b"], files).stdout)]);
  });

  test("the same file gives the same step", () => {
    const files = { a: demo("two-sides") };
    expect(run(["a"], files).stdout).toBe(run(["a"], files).stdout);
  });

  test("bad input: exit code 2, a sentence each, nothing printed", () => {
    const files = { a: '{ "version": 1 }', b: demo("first") };
    const { status, stdout, stderr } = run(["a", "b"], files);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr.split("\n").filter((line) => line !== "").length).toBeGreaterThan(1);
    expect(run(["nowhere"]).status).toBe(2);
    expect(run(["--no"]).stderr).toContain("--help");
    expect(run(["--help"]).stdout).toBe(nextHelp);
  });
});
