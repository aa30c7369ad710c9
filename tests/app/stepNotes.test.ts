import { describe, expect, test } from "vitest";
import { madeUpPeople, madeUpPerson } from "../../src/app/classView/classPeople";
import { demoFitting } from "../../src/app/session/demoFitting";
import { fittingStore } from "../../src/app/session/store";
import { namelessCopy } from "../../src/app/share/namelessCopy";
import { readLink, shareLink } from "../../src/app/share/shareLink";
import { stepKeys } from "../../src/app/steps/stepKeys";
import { writeFitting } from "../../src/document/fitting";
import { longestStepNote } from "../../src/document/fittingLimits";
import { readFitting } from "../../src/document/readFitting";

const write = (key: string, text: string) => ({ does: "noteStep", key, text }) as const;

describe("the keys of steps", () => {
  /** Broken on purpose: no number behind a step that comes again. Seen to fail. */
  test("tell every step of a job from every other, and name what a step is about", () => {
    for (let person = 0; person < madeUpPeople; person += 1) {
      const { job, plan } = madeUpPerson(person);
      const steps = job.steps.map(({ step }) => step);
      const keys = stepKeys(steps);
      expect(new Set(keys).size).toBe(steps.length);
      expect(steps.length).toBeGreaterThan(25);
      for (const { id } of plan.pieces) expect(keys).toEqual(expect.arrayContaining([`cut/${id}`, `pin/${id}`]));
      expect(keys).toEqual(expect.arrayContaining(["prepare-form", "trial", "baste", "look"]));
      // Without the first piece every later step is called the same.
      const [first] = plan.pieces;
      const others = steps.filter(({ piece, pieceIds }) => piece?.id !== first?.id && pieceIds.at(-1) !== first?.id);
      const isAbout = (key: string) => key.endsWith(`/${first?.id ?? ""}`);
      expect(stepKeys(others)).toEqual(keys.filter((key) => !isAbout(key)));
    }
  });
});

describe("notes to steps", () => {
  /** Broken on purpose: letters of two steps taken for one text. Seen to fail. */
  test("are kept letter by letter, taken away when they are empty, and undone step by step", () => {
    const store = fittingStore(demoFitting);
    const notes = () => store.getState().fitting.stepNotes;
    for (const text of ["S", "Sh", "Show"]) store.dispatch(write("trial", text));
    for (const text of ["P", "Pins"]) store.dispatch(write("baste", text));
    expect(notes()).toEqual({ trial: "Show", baste: "Pins" });
    store.dispatch(write("trial", "Show it"));
    store.undo();
    expect(notes()).toEqual({ trial: "Show", baste: "Pins" });
    store.undo();
    expect(notes()).toEqual({ trial: "Show" });
    store.undo();
    expect(store.getState().fitting).toEqual(demoFitting);
    store.redo();
    store.dispatch(write("trial", ""));
    expect(store.getState().fitting).not.toHaveProperty("stepNotes");
  });

  test("lie in the fitting's file and come back from it; one that is too long is told of, and old files have none", () => {
    const fitting = { ...demoFitting, stepNotes: { trial: "Show\nthe strip", "pin/waist-wrap": "Two hands" } };
    const read = readFitting(JSON.parse(JSON.stringify(writeFitting(fitting))));
    expect(read).toMatchObject({ ok: true, value: { stepNotes: fitting.stepNotes } });
    const longest = { ...fitting, stepNotes: { trial: "x".repeat(longestStepNote) } };
    expect(readFitting(writeFitting(longest)).ok).toBe(true);
    const tooLong = readFitting(writeFitting({ ...longest, stepNotes: { trial: "x".repeat(longestStepNote + 1) } }));
    expect(tooLong.ok).toBe(false);
    const old = readFitting(writeFitting(demoFitting));
    expect(old.ok && old.value.stepNotes).toBe(undefined);
  });

  /** Broken on purpose: the notes left in the copy. Seen to fail. */
  test("stay out of a copy without names, and of a link unless names are wished", async () => {
    const fitting = { ...demoFitting, stepNotes: { trial: "Ask Anna" } };
    expect(namelessCopy(fitting, "Person 1")).not.toHaveProperty("stepNotes");
    for (const names of [true, false]) {
      const made = await shareLink(fitting, { names, work: true }, "https://tool.example/");
      if (made.kind !== "link") throw new Error(made.kind);
      const read = await readLink(new URL(made.link).hash);
      expect(read.ok && read.value.stepNotes).toEqual(names ? fitting.stepNotes : undefined);
    }
  });
});
