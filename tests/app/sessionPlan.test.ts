import { describe, expect, test } from "vitest";
import { madeUpPeople, madeUpPerson } from "../../src/app/classView/classPeople";
import {
  minutesLeft,
  type SessionPlan,
  sessionDays,
  sessionLengths,
  sessionPlan,
  sessionRows,
} from "../../src/app/classView/sessionPlan";
import { stepMinutes } from "../../src/app/steps/stepMinutes";

const jobs = Array.from({ length: madeUpPeople }, (_, place) => madeUpPerson(place).job);
const minutesOf = ({ steps }: SessionPlan): number => steps.reduce((sum, step) => sum + stepMinutes(step), 0);

/** Where rows of the printed plan end: the work at one piece is not left in its middle. */
const rowEndsOf = (job: (typeof jobs)[number]): ReadonlySet<number> => new Set(sessionRows(job).map(({ to }) => to));

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
    for (const job of jobs) {
      const ends = rowEndsOf(job);
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
            if (!ends.has(other) || pinsAfter(job, other).size > 0) continue;
            if (plan.isLonger) expect(other).toBeGreaterThanOrEqual(end);
            else if (minutes <= lasts) expect(other).toBeLessThanOrEqual(end);
          }
          if (plan.isLonger) longer += 1;
          else within += 1;
        }
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
        expect(row.minutes).toBe(minutesOf({ steps: row.steps, minutes: 0, isLonger: false, toNextStop: null }));
        expect(row.isDone).toBe(false);
        const last = row.steps.at(-1);
        expect(row.mayStop, `${last?.do} ${end}`).toBe(pinsAfter(job, end).size === 0);
        if (row.mayStop) stops += 1;
      }
      expect(rows.map(({ from, to, steps }) => to - from + 1 - steps.length)).toEqual(rows.map(() => 0));
      const half = sessionRows({ ...job, now: 7 });
      expect(half.filter(({ isDone }) => isDone).flatMap((row) => row.steps).length).toBeLessThanOrEqual(7);
      expect(half.filter(({ isDone }) => isDone).length).toBeGreaterThan(3);
    }
    expect(stops).toBeGreaterThan(4 * jobs.length);
  });

  test("of a job that is done has no step", () => {
    for (const job of jobs)
      expect(sessionPlan(job, job.steps.length - 1, 90)).toEqual({
        steps: [],
        minutes: 0,
        isLonger: false,
        toNextStop: null,
      });
  });

  /** Seen to fail: while the class view stopped after a stack, in the middle of a row of the printed plan. */
  test("stops on the screen where it may stop on paper, tells how far the next place is, and counts the days alike", () => {
    let [told, twoDays] = [0, 0];
    for (const job of jobs) {
      const rows = sessionRows(job);
      const stops = new Set(rows.filter(({ mayStop }) => mayStop).map(({ to }) => to));
      for (const lasts of sessionLengths)
        for (let at = 0; at < job.steps.length - 1; at += 1) {
          const { steps, minutes, toNextStop } = sessionPlan(job, at, lasts);
          expect(stops.has(at + steps.length)).toBe(true);
          if (toNextStop === null) continue;
          const next = Math.min(...[...stops].filter((stop) => stop > at + steps.length));
          expect(toNextStop).toBe(minutesLeft(job, at) - minutesLeft(job, next));
          expect(toNextStop).toBeGreaterThan(Math.max(lasts, minutes));
          told += 1;
        }
      const ends = rows.flatMap(({ endsDay, to }) => (endsDay === null ? [] : [[endsDay, to]]));
      expect(ends.map(([day]) => day)).toEqual(ends.map((_, i) => i + 1));
      expect(ends.at(-1)?.[1]).toBe(job.steps.length - 1);
      const days = sessionDays(job, 0, 720);
      let at = 0;
      for (const [i, day] of days.entries()) {
        at += day.steps.length;
        expect(ends[i]).toEqual([i + 1, at]);
      }
      if (days.length === 2) twoDays += 1;
    }
    expect(told).toBeGreaterThan(50);
    expect(twoDays).toBe(jobs.length);
  });
});
