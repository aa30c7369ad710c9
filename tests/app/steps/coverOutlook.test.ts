import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, test, vi } from "vitest";
import { derivation } from "../../../src/app/session/derived";
import { coverOutlook } from "../../../src/app/steps/coverOutlook";
import type { CurrentStep } from "../../../src/app/steps/currentStep";
import { levelNames, type LevelName } from "../../../src/core/body/vocabulary";
import type { Fitting, WorkEntry } from "../../../src/document/fitting";
import { commandWalk, fittingOf } from "../../tools/commandWalk";

vi.setConfig({ testTimeout: 120_000, hookTimeout: 240_000 });

const file = JSON.parse(readFileSync("shared/demo/whole-job.json", "utf8")) as object;
const at = "2026-01-02T03:04:05.000Z";
/** What a cover takes off unless it was read: the share of what the batting adds, as it stands in the design page. */
const usualShare = 0.04;
/** What calibration may move a reading by on its way into what is expected (mm). */
const near = 1.5;

/** What the log says that the tape read over the padding last, all around and in front (mm). */
interface ReadByTape {
  readonly girth: number;
  readonly front: number;
}
function readByTape({ work }: Fitting): ReadonlyMap<LevelName, ReadByTape> {
  const read = new Map<string, number>();
  for (const entry of work) {
    if (entry.did !== "measured" || entry.over !== undefined) continue;
    for (const [name, typed] of Object.entries(entry.readings)) read.set(name, 10 * Number(typed));
  }
  const of = (name: string) => {
    const length = read.get(name);
    if (length === undefined) throw new Error(`${name} was not read`);
    return length;
  };
  return new Map(
    levelNames.map((level) => [level, { girth: of(`${level}Girth`), front: of(`${level}FrontArc`) }] as const),
  );
}

describe("what the tape should read over a cover", () => {
  let fitting: Fitting;
  let current: CurrentStep;
  let padded: ReadonlyMap<LevelName, ReadByTape>;
  beforeAll(() => {
    fitting = commandWalk(fittingOf(file), { until: "read-cover" }).last;
    const found = derivation()(fitting).step();
    if (found === null) throw new Error("no step");
    current = found;
    padded = readByTape(fitting);
  });
  const outlook = (over: { readonly [name: string]: number } = {}) => {
    const readings = Object.fromEntries(Object.entries(over).map(([name, length]) => [name, length / 10]));
    const entry: WorkEntry = { did: "measured", readings, over: "cover", at };
    const work = Object.keys(over).length === 0 ? fitting.work : [...fitting.work, entry];
    return coverOutlook(current.plan, current.replan, { work, unit: "cm" });
  };
  const tape = (level: LevelName) => {
    const on = padded.get(level);
    if (on === undefined) throw new Error(level);
    const { girth, frontArc } = current.plan.bareForm[level];
    return { on, added: { girth: on.girth - girth, front: on.front - frontArc } };
  };

  /** Seen to fail: front and back exchanged; 5 mm more expected everywhere; nothing taken off. */
  test("is what it read over the padding, all around and in front, less a share of what the batting adds", () => {
    const { expectedOverCover, coverOff } = outlook();
    expect(coverOff).toEqual([]);
    for (const level of levelNames) {
      const { on, added } = tape(level);
      const [girth = 0, front = 0] = [expectedOverCover[`${level}Girth`], expectedOverCover[`${level}FrontArc`]];
      expect(Math.abs(girth - on.girth + usualShare * added.girth), level).toBeLessThan(near);
      expect(Math.abs(front - on.front + usualShare * added.front), level).toBeLessThan(near);
    }
    // Not empty: halves that differ, and a cover that takes something off.
    expect(
      levelNames.filter((level) => Math.abs(2 * tape(level).on.front - tape(level).on.girth) > 10).length,
    ).toBeGreaterThan(1);
    expect(Math.max(...levelNames.map((level) => usualShare * tape(level).added.girth))).toBeGreaterThan(3);
  });

  /** Seen to fail: front and back of what is added exchanged; the share held at the usual one. */
  test("follows what the cover took off where it was read already, in front by what was added in front", () => {
    const twice = Object.fromEntries(
      levelNames.map((level) => [`${level}Girth`, tape(level).on.girth - 2 * usualShare * tape(level).added.girth]),
    );
    const [{ expectedOverCover: before }, { expectedOverCover: after }] = [outlook(), outlook(twice)];
    let lost = 0;
    for (const level of levelNames) {
      const { added } = tape(level);
      const share = ((before[`${level}Girth`] ?? 0) - (after[`${level}Girth`] ?? 0)) / added.girth;
      expect(share, level).toBeGreaterThan(0.2 * usualShare);
      expect(share, level).toBeLessThan(usualShare);
      const front = (before[`${level}FrontArc`] ?? 0) - (after[`${level}FrontArc`] ?? 0);
      expect(Math.abs(front - share * added.front), level).toBeLessThan(0.05);
      lost += front;
    }
    expect(lost).toBeGreaterThan(1);
  });

  /** Seen to fail: 5 mm more read than was; the front taken for the girth; what the cover pressed in called missing. */
  test("asks for a correction by what a level reads more than the person, and no more than the cover stands out", () => {
    for (const level of levelNames) {
      const person = current.plan.levels.find(({ name }) => name === level)?.body.girth.value ?? 0;
      const { on, added } = tape(level);
      const off = (girth: number) => outlook({ [`${level}Girth`]: girth }).coverOff;
      expect(off(person + 4), level).toEqual([]);
      expect(off(person - 4), level).toEqual([]);
      const [loose] = off(Math.max(person, on.girth) + 9);
      expect(loose?.level).toBe(level);
      expect(Math.abs((loose?.over ?? 0) - 9), level).toBeLessThan(near);
      const short = 8 + usualShare * added.girth;
      const [tight] = off(person - short);
      expect(Math.abs((tight?.over ?? 0) + short), level).toBeLessThan(0.1);
      expect(outlook({ [`${level}FrontArc`]: person + 30 }).coverOff).toEqual([]);
    }
  });
});
