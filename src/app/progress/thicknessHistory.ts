import { type LevelName, levelNames } from "../../core/body/vocabulary";
import { calibrate } from "../../core/calibration/calibrate";
import type { PosteriorThickness } from "../../core/calibration/calibration";
import type { BattingRole } from "../../core/material";
import type { PlanInput } from "../../core/plan/basis";
import { evidence } from "../../core/plan/planEvidence";
import type { Millimetres } from "../../core/units";
import type { Fitting, WorkEntry } from "../../document/fitting";
import { basisOf, replay, type Work } from "./replay";

/**
 * How the estimate of what a layer adds came about: what it was before anything was read, and after each of the last
 * readings.
 */
export interface ThicknessHistory {
  readonly before: Thicknesses;
  readonly after: readonly ThicknessAfter[];
}

export interface ThicknessAfter {
  /** Which entry of the log was read. */
  readonly entry: number;
  /** The level that was read, or that it was the trial. */
  readonly what: LevelName | "trial";
  readonly thicknesses: Thicknesses;
}

type Thicknesses = { readonly [role in BattingRole]: PosteriorThickness };

/** A picture of more readings than this tells no more. */
const shownReadings = 8;

/**
 * Remembers what it worked out: a further reading costs one further estimate, and a reading taken out costs those after it.
 * Readings of one level taken one after the other count as one.
 */
export function thicknessHistories(): (input: PlanInput, fitting: Work, readingError: Millimetres) => ThicknessHistory {
  let known: {
    readonly of: readonly unknown[];
    readonly told: readonly { readonly work: readonly WorkEntry[]; readonly thicknesses: Thicknesses }[];
  } = { of: [], told: [] };
  return (input, fitting, readingError) => {
    const of = [input.body, input.form, input.batting, input.finishingBatting, fitting.unit, readingError];
    const told = of.every((part, i) => part === known.of[i]) ? known.told : [];
    const thicknessesAfter = (work: Fitting["work"]): Thicknesses =>
      told.find((one) => isSame(one.work, work))?.thicknesses ??
      thicknessesOf(input, { ...fitting, work }, readingError);
    const points = readPoints(fitting.work).slice(-shownReadings);
    const cuts = [[], ...points.map(({ entry }) => fitting.work.slice(0, entry + 1))];
    const now = cuts.map((work) => ({ work, thicknesses: thicknessesAfter(work) }));
    known = { of, told: now };
    return {
      before: (now[0] as (typeof now)[number]).thicknesses,
      after: points.map((point, i) => ({ ...point, thicknesses: (now[i + 1] as (typeof now)[number]).thicknesses })),
    };
  };
}

const isSame = (a: readonly WorkEntry[], b: readonly WorkEntry[]): boolean =>
  a.length === b.length && a.every((entry, i) => entry === b[i]);

function thicknessesOf(input: PlanInput, fitting: Work, readingError: Millimetres): Thicknesses {
  const soFar = { ...replay(input, fitting, readingError).now, cut: [], readingError };
  const { building, finishing } = calibrate(evidence(input, basisOf(input), soFar));
  return { building, finishing };
}

/** Where the log was read over the form, the last of several readings of one level. */
export function readPoints(work: Fitting["work"]): readonly Pick<ThicknessAfter, "entry" | "what">[] {
  const points = work.flatMap((entry, i): readonly Pick<ThicknessAfter, "entry" | "what">[] => {
    if (entry.did === "trial") return [{ entry: i, what: "trial" }];
    const level =
      entry.did === "measured"
        ? levelNames.find((name) => Object.keys(entry.readings).some((read) => isOf(read, name)))
        : undefined;
    return level === undefined ? [] : [{ entry: i, what: level }];
  });
  return points.filter(({ entry, what }, i) => {
    const next = points[i + 1];
    return what === "trial" || next === undefined || next.entry !== entry + 1 || next.what !== what;
  });
}

const isOf = (reading: string, level: LevelName): boolean =>
  reading === `${level}Girth` || (reading.startsWith(level) && reading.endsWith("Arc"));
