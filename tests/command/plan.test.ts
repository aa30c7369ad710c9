import { spawnSync } from "node:child_process";
import { closeSync, existsSync, mkdtempSync, openSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { outputProblem } from "../../src/command/outputProblem";
import { fileCommand } from "../../src/command/fileCommand";
import { planHelp as help } from "../../src/command/planHelp";
import { planOfText } from "../../src/command/planOfText";
import { formatLength } from "../../src/core/lengthText";
import { mm } from "../../src/core/units";
import { planFileSchema } from "../../src/document/planFile";

// Some tests start a program of their own.
vi.setConfig({ testTimeout: 120_000 });

const root = resolve(import.meta.dirname, "../..");
const demo = (name: string) => readFileSync(join(root, "shared/demo", `${name}.json`), "utf8");
const start = (names: readonly string[], input = "") => {
  const program = [join(root, "node_modules/tsx/dist/cli.mjs"), join(root, "src/command/plan.ts"), ...names];
  const { status, stdout, stderr } = spawnSync(process.execPath, program, { input, encoding: "utf8", cwd: root });
  return { status, stdout, stderr };
};
/** The command in this process, with files made up. */
const run = (names: readonly string[], files: { readonly [name: string]: string } = {}) => {
  const said = { stdout: "", stderr: "" };
  const status = fileCommand(
    names,
    { help, answer: planOfText },
    {
      read: (name) => files[name] ?? null,
      print: (text) => {
        said.stdout += text;
      },
      complain: (text) => {
        said.stderr += text;
      },
    },
  );
  return { status, ...said };
};

const fitting = {
  version: 1,
  unit: "cm",
  body: { bustGirth: 89, waistGirth: 77, fullHipGirth: 97 },
  form: { table: "misses", size: "8" },
  batting: { name: "batting", layerThickness: "6 mm" },
};
const planned = (change: object) => planOfText(JSON.stringify({ ...fitting, ...change }));
const sentences = (change: object) => {
  const plan = planned(change);
  return plan.ok ? [] : plan.problem;
};

describe("a draft", () => {
  const girths = { bustGirth: 80, underbustGirth: 70, waistGirth: 62, highHipGirth: 78, fullHipGirth: 88 };
  const value = (change: object) => {
    const plan = planned(change);
    if (!plan.ok) throw new Error(plan.problem.join(" "));
    return plan.value;
  };

  test("says so in words, with what it may miss by", () => {
    const { basis, mayMissMm, say } = value({});
    expect(basis).toBe("draft");
    expect(say).toContain(
      `This plan is a draft: measurements may come out up to ${formatLength(mm(mayMissMm), "0.5 cm")} off`,
    );
  });

  test("is none where the bare form was measured on the lines, in the form or in the work", () => {
    const at = "2026-01-02T03:04:05.000Z";
    for (const change of [
      { form: { ...girths, readAtBodyLines: true } },
      { work: Object.entries(girths).map(([name, girth]) => ({ did: "measured", readings: { [name]: girth }, at })) },
    ]) {
      const { basis, say, levels, mayMissMm } = value(change);
      expect(basis).toBe("lines");
      expect(say).toBeUndefined();
      expect(mayMissMm).toBeLessThan(value({}).mayMissMm);
      expect(levels.map(({ form }) => Math.round(form.girthMm))).toEqual(
        Object.values(girths).map((girth) => girth * 10),
      );
    }
  });
});

describe("the program", () => {
  test("prints the plan of a file and nothing else", () => {
    const { status, stdout, stderr } = start(["shared/demo/first.json"]);
    expect([status, stderr]).toEqual([0, ""]);
    expect(planFileSchema.parse(JSON.parse(stdout)).pieces.length).toBeGreaterThan(3);
  });

  test("reads standard input", () => {
    const { status, stdout } = start(["-"], demo("three-girths"));
    expect(status).toBe(0);
    expect(stdout).toBe(run(["-"], { "-": demo("three-girths") }).stdout);
  });

  test("refuses a bad file and a missing one with exit code 2, sentences on standard error, nothing printed", () => {
    const { status, stdout, stderr } = start(["nowhere.json", "-", "shared/demo/first.json"], "{");
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toBe(
      "nowhere.json: “nowhere.json” cannot be read as a file.\n-: This file is not a fitting, or a part of it is lost. Open the file that was saved here; in one written by hand, look for a missing comma, quote or bracket.\n",
    );
  });
});

describe("the program in a hostile world", () => {
  /** The program with its standard output on a device that takes nothing, as a full disk does. */
  const startOnFullDisk = (names: readonly string[]) => {
    const program = [join(root, "node_modules/tsx/dist/cli.mjs"), join(root, "src/command/plan.ts"), ...names];
    const full = openSync("/dev/full", "w");
    const { status, stderr } = spawnSync(process.execPath, program, {
      encoding: "utf8",
      cwd: root,
      stdio: ["ignore", full, "pipe"],
    });
    closeSync(full);
    return { status, stderr };
  };

  test.skipIf(!existsSync("/dev/full"))("says in one sentence that a full disk took nothing", () => {
    const { status, stderr } = startOnFullDisk(["shared/demo/first.json"]);
    expect(stderr).toBe("The plan could not be written: there is no room left where it should go (ENOSPC).\n");
    expect(status).toBe(1);
  });

  test("reads files that begin with a byte-order mark: UTF-8, UTF-16 with the small and with the large end first", () => {
    const folder = mkdtempSync(join(tmpdir(), "padwright-command-"));
    const marked = `\uFEFF${demo("first")}`;
    const texts = [
      Buffer.from(marked, "utf8"),
      Buffer.from(marked, "utf16le"),
      Buffer.from(marked, "utf16le").swap16(),
    ];
    try {
      const names = texts.map((bytes, i) => {
        const name = join(folder, `marked-${i}.json`);
        writeFileSync(name, bytes);
        return name;
      });
      const { status, stdout, stderr } = start(names);
      expect([status, stderr]).toEqual([0, ""]);
      const plan = JSON.parse(run(["one"], { one: demo("first") }).stdout);
      expect(JSON.parse(stdout)).toEqual(texts.map(() => plan));
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

describe("failed writing", () => {
  const failure = (code: string) => Object.assign(new Error(`${code}: write`), { code });

  test("a reader that has seen enough is no failure; anything else is a sentence", () => {
    expect(outputProblem(failure("EPIPE"))).toBeNull();
    expect(outputProblem(failure("ENOSPC"))).toMatch(/no room left .*\(ENOSPC\)\.$/);
    expect(outputProblem(failure("EIO"))).toMatch(/device .*\(EIO\)\.$/);
    expect(outputProblem(failure("EFBIG"))).toMatch(/\(EFBIG\)\.$/);
    expect(outputProblem(new Error("odd\nthing"))).toMatch(/^The plan could not be written[^\n]*\.$/);
  });
});

describe("the command", () => {
  test("writes no character that a terminal would obey, neither in sentences nor in the plan", () => {
    const wild = "\u001b]0;owned\u0007\u009b31m\u202e\u007f";
    const named = JSON.stringify({ ...fitting, batting: { ...fitting.batting, name: `cotton ${wild}` } });
    const bad = JSON.stringify({ ...fitting, body: { ...fitting.body, [`hip\n${wild}`]: 3 } });
    const good = run(["good"], { good: named });
    expect(good.status).toBe(0);
    const [refused, missing] = [run(["bad"], { bad }), run([`no${wild}where`])];
    expect([refused.status, missing.status]).toEqual([2, 2]);
    for (const said of [good.stdout, refused.stderr, missing.stderr])
      expect(said.replaceAll("\n", "")).not.toMatch(/[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/u);
    expect(refused.stderr.trimEnd().split("\n")).toHaveLength(1);
    expect(refused.stderr).toContain("\\u001b]0;owned");
  });

  test("gives several plans as a list, in order", () => {
    const files = { one: demo("long-back"), two: demo("first") };
    const { status, stdout } = run(["one", "two"], files);
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toEqual(["one", "two"].map((name) => JSON.parse(run([name], files).stdout)));
  });

  test.each(["first", "long-back", "three-girths", "two-sides"])(
    "the demo %s is planned, with no girth and no arc left short",
    (name) => {
      const plan = planOfText(demo(name));
      expect(plan.ok && plan.value.pleaseCheck).toEqual([]);
      expect(plan.ok && plan.value.shortfalls.filter(({ length }) => length !== "apexHeight")).toEqual([]);
      expect(plan.ok && plan.value.pieces.length).toBeLessThanOrEqual(16);
    },
  );

  test("a bust much lower than the form's is told, and by how much", () => {
    const plan = planOfText(demo("long-back"));
    expect(plan.ok && plan.value.shortfalls).toMatchObject([
      { level: "bust", length: "apexHeight", sense: "staysShort" },
    ]);
    // The way to the apex runs forward as well as down, so the heights differ by less than the two readings.
    const { body, form } = JSON.parse(demo("long-back")) as Record<"body" | "form", { shoulderToApex: number }>;
    const apart = 10 * (body.shoulderToApex - form.shoulderToApex);
    const amount = plan.ok ? (plan.value.shortfalls[0]?.amountMm ?? 0) : 0;
    expect(amount).toBeLessThan(apart);
    expect(amount).toBeGreaterThan(apart / 2);
  });

  test("--help says what to do and where the schemas are, with an example that can be planned", () => {
    expect(run(["--help"])).toEqual({ status: 0, stdout: help, stderr: "" });
    for (const word of ["FILE", "fitting.schema.json", "plan.schema.json", "Exit code"]) expect(help).toContain(word);
    const example = /\{ "version"[\s\S]*?\} \}/.exec(help)?.[0];
    expect(example && planOfText(example).ok).toBe(true);
  });

  test.each([
    ["no file named", [], /^No fitting file was named/],
    ["a file that is not there", ["nowhere.json"], /^“nowhere.json” cannot be read/],
    ["an option nobody knows", ["--fast", "good"], /^“--fast” is not an option/],
    ["no JSON", ["bad"], /^This file is not a fitting/],
  ])("%s: exit code 2, a sentence, nothing printed", (_what, names, sentence) => {
    const { status, stdout, stderr } = run(names, { bad: "{", good: demo("first") });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(sentence);
  });

  test("one bad file among good ones: nothing printed, the file named, one line a problem", () => {
    const bad = JSON.stringify({ ...fitting, body: { bustGirth: 89, waistGirth: "wide", hip: 97 } });
    const { status, stdout, stderr } = run(["good.json", "bad.json"], { "good.json": demo("first"), "bad.json": bad });
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toBe("bad.json: body has “hip”, which this tool does not know. Did you mean “fullHipGirth”?\n");
  });
});

describe("what stands in the way is said in the person's unit", () => {
  test.each([
    [
      "missing",
      { body: { bustGirth: 89 } },
      [
        "The person’s waist all around is missing. Measure it: the plan starts from it.",
        "The person’s full hip all around is missing. Measure it: the plan starts from it.",
      ],
    ],
    [
      "front and back that miss the girth",
      { body: { ...fitting.body, waistFrontArc: 41, waistBackArc: 34 } },
      [
        "The person’s front waist and back waist come to 75 cm together, and that does not go with the waist all around. Check both marks at the sides, and measure all three again.",
      ],
    ],
    [
      "a front longer than the waist all around, in inches",
      { unit: "in", body: { bustGirth: 35, waistGirth: 29, fullHipGirth: 37, waistFrontArc: "30 1/2" } },
      [expect.stringContaining("reads 30 1/2 in")],
    ],
    [
      "inches typed as centimeters",
      { body: { bustGirth: 35, waistGirth: 29, fullHipGirth: 37 } },
      [expect.stringContaining("inches typed as centimeters")],
    ],
    [
      "a form of nothing",
      { form: {} },
      [
        expect.stringContaining("The form’s bust all around is missing"),
        expect.stringContaining("The form’s waist all around"),
        expect.stringContaining("The form’s full hip all around"),
      ],
    ],
    [
      "a batting in centimetres",
      { batting: { name: "batting", layerThickness: 6 } },
      [expect.stringContaining("One layer of “batting” is given as 60 mm; under a snug tape a layer is at most 30 mm")],
    ],
    [
      "body and form at once",
      { body: { ...fitting.body, waistFrontArc: 90 }, form: { ...fitting.form, waistFrontArc: 80 } },
      [expect.stringContaining("The person’s front waist"), expect.stringContaining("The form’s front waist")],
    ],
    [
      "a body that cannot be, with a form to choose",
      { body: { ...fitting.body, waistFrontArc: 90 }, form: { table: "misses" } },
      [expect.stringContaining("The person’s front waist")],
    ],
  ] as const)("%s", (_what, change, expected) => {
    expect(sentences(change)).toEqual(expected);
  });

  test("what is only unusual stands in the plan, not in the way", () => {
    const plan = planned({ body: { ...fitting.body, waistFrontArc: 46 } });
    expect(plan.ok && plan.value.pleaseCheck).toEqual([
      expect.stringContaining("Please check: the person’s front waist reads 46 cm"),
    ]);
    const plain = planned({});
    expect(plain.ok && plain.value.pleaseCheck).toEqual([]);
  });
});

describe("the form", () => {
  test("the chosen size is named, with all sizes ranked", () => {
    const plan = planned({ form: { table: "misses" } });
    expect(plan.ok && plan.value.form.ranking.map(({ size }) => size).sort()).toEqual([
      "10",
      "12",
      "14",
      "16",
      "18",
      "20",
      "6",
      "8",
    ]);
    expect(plan.ok && plan.value.form.size).toBe(plan.ok && plan.value.form.ranking[0]?.size);
    expect(plan.ok && plan.value.shortfalls).toEqual([]);
  });

  test("what was measured on the form wins over its table", () => {
    const [byTable, measured] = [planned({}), planned({ form: { ...fitting.form, waistGirth: 64 } })];
    if (!byTable.ok || !measured.ok) throw new Error("no plan");
    expect(measured.value.levels[2]?.form.girthMm).toBeGreaterThan((byTable.value.levels[2]?.form.girthMm ?? 0) + 15);
    expect(measured.value.form.measured).toEqual(["waistGirth"]);
  });

  test("a plan in inches is the plan of the same lengths in centimetres (law 7)", () => {
    const body = { bustGirth: "35 1/2", waistGirth: "30 1/4", fullHipGirth: "38" };
    const [inches, centimetres] = [
      planned({ unit: "in", body, form: { bustGirth: 32, waistGirth: "24.5", fullHipGirth: 34 } }),
      planned({
        body: { bustGirth: 90.17, waistGirth: "76,835", fullHipGirth: "965.2 mm" },
        form: { bustGirth: 81.28, waistGirth: 62.23, fullHipGirth: 86.36 },
      }),
    ];
    if (!inches.ok || !centimetres.ok) throw new Error("no plan");
    expect(inches.value.levels).toEqual(centimetres.value.levels);
    const bones = (plan: typeof inches.value) => plan.pieces.map(({ place: _place, ...bone }) => bone);
    expect(bones(inches.value)).toEqual(bones(centimetres.value));
  });
});
