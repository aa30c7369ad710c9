import { describe, expect, test } from "vitest";
import { madeUpPeople, madeUpPerson } from "../../src/app/classView/classPeople";
import { type SessionPlan, sessionLengths, sessionPlan, sessionRows } from "../../src/app/classView/sessionPlan";
import { stepMinutes } from "../../src/app/steps/stepMinutes";

const jobs = Array.from({ length: madeUpPeople }, (_, place) => madeUpPerson(place).job);
const minutesOf = ({ steps }: SessionPlan): number => steps.reduce((sum, step) => sum + stepMinutes(step), 0);

/** The pins that are in the form after so many steps, told from the steps themselves. */
function pinsAfter(job: (typeof jobs)[number], count: number): ReadonlySet<string> {
  const pins = new Set<string>();
  for (const { step } of job.steps.slice(0, count)) {
    if (step.do === "pin" && step.piece !== null) pins.add(step.piece.id);
    if (step.do === "baste") for (const id of step.pieceIds) pins.delete(id);
    if (step.do === "fit-cover") pins.add("cover");
    if (step.do === "close-cover") pins.delete("cover");
  }
  return pins;
}

describe("the session plan", () => {
  /** Broken on purpose: a stop with pins in the form, a cover left pinned, a class overrun although it could have stopped. Seen to fail. */
  test("from any step goes to the last place within the class where no pin is in the form, or to the next one", () => {
    let [within, longer] = [0, 0];
    for (const job of jobs)
      for (const lasts of sessionLengths)
        for (let at = 0; at < job.steps.length - 1; at += 1) {
          const plan = sessionPlan(job, at, lasts);
          const end = at + plan.steps.length;
          expect(plan.steps).toEqual(job.steps.slice(at, end).map(({ step }) => step));
          expect(plan.steps.length).toBeGreaterThan(0);
          expect(pinsAfter(job, end).size).toBe(0);
          expect(plan.minutes).toBe(minutesOf(plan));
          expect(plan.isLonger).toBe(plan.minutes > lasts);
          // No other place to stop lies between: none before a longer one, none after a shorter one that the class still reaches.
          for (let other = at + 1; other < job.steps.length; other += 1) {
            const minutes = job.steps.slice(at, other).reduce((sum, { step }) => sum + stepMinutes(step), 0);
            if (pinsAfter(job, other).size > 0) continue;
            if (plan.isLonger) expect(other).toBeGreaterThanOrEqual(end);
            else if (minutes <= lasts) expect(other).toBeLessThanOrEqual(end);
          }
          if (plan.isLonger) longer += 1;
          else within += 1;
        }
    expect(within).toBeGreaterThan(100);
    expect(longer).toBeGreaterThan(50);
  });

  /** Broken on purpose: a stop told of a row while its pins are in, rows that leave a step out. Seen to fail. */
  test("on paper has every step once, with its minutes and every place where no pin is in the form", () => {
    let stops = 0;
    for (const job of jobs) {
      const rows = sessionRows(job);
      const steps = rows.flatMap((row) => row.steps);
      expect(steps).toEqual(job.steps.slice(0, -1).map(({ step }) => step));
      let end = 0;
      for (const row of rows) {
        end += row.steps.length;
        expect(row.minutes).toBe(minutesOf({ steps: row.steps, minutes: 0, isLonger: false }));
        expect(row.isDone).toBe(false);
        const last = row.steps.at(-1);
        expect(row.mayStop, `${last?.do} ${end}`).toBe(pinsAfter(job, end).size === 0);
        if (row.mayStop) stops += 1;
      }
      const half = sessionRows({ ...job, now: 7 });
      expect(half.filter(({ isDone }) => isDone).flatMap((row) => row.steps).length).toBeLessThanOrEqual(7);
      expect(half.filter(({ isDone }) => isDone).length).toBeGreaterThan(3);
    }
    expect(stops).toBeGreaterThan(4 * jobs.length);
  });

  test("of a job that is done has no step", () => {
    for (const job of jobs)
      expect(sessionPlan(job, job.steps.length - 1, 90)).toEqual({ steps: [], minutes: 0, isLonger: false });
  });
});
