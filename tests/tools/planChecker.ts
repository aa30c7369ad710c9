import { checkBookkeeping } from "./planCheckerBooks";
import type { CheckedLevelName, FileLevel, FilePiece, FileReading, PlanFile, ReadingKey } from "./planCheckerFile";
import { readingKeys } from "./planCheckerFile";
import type { Finding } from "./planCheckerFinding";
import { bareReading, readingsWhilePinning, statedRules, type TapeRules } from "./planCheckerTape";

/**
 * Checks a plan file from outside: rebuilds every level's stack from the file's own numbers with a general-purpose
 * geometry library and says where the file disagrees with the tape, with the body, or with itself. It was written from
 * the description of the format, not from the planner. An empty list means that nothing was found.
 */
export function checkPlan(plan: PlanFile): readonly Finding[] {
  const books = checkBookkeeping(plan);
  // With a broken skeleton (a level missing, a number that is no number) there is nothing to rebuild.
  return books.some((finding) => finding.rule === "skeleton") ? books : checkRebuilt(plan, rebuildReadings(plan));
}

/** The same check of a plan that was rebuilt before. */
export function checkRebuilt(plan: PlanFile, rebuilt: readonly RebuiltLevel[]): readonly Finding[] {
  return [
    ...checkBookkeeping(plan),
    ...plan.levels.flatMap((level) => checkBareForm(level)),
    ...rebuilt.flatMap((levelReadings) => checkPredicted(plan, levelReadings)),
    ...plan.levels.flatMap((level) => checkAgainstBody(plan, level)),
  ];
}

/** How far the checker and the file may differ before it is a finding: a tape is read to 1 mm. */
export const agreementMm = 1;

/** The simulated tape reads the bare form back to half a millimetre. */
export const readBackMm = 0.5;

/** Law 2: every girth and arc without a shortfall is met this closely. */
export const bodyAgreementMm = 3;

/** What whole layers and the narrowest tuning layer may leave where the form itself is no reason: 1/4 in, which is on target. */
export const quantumMm = 6;

/** One level of a plan rebuilt: the readings over the bare form, then after each piece, the side seam still unmoved. */
export interface RebuiltLevel {
  readonly level: FileLevel;
  readonly pieces: readonly FilePiece[];
  readonly whilePinning: readonly FileReading[];
}

export function rebuildReadings(plan: PlanFile, rules: TapeRules = statedRules): readonly RebuiltLevel[] {
  const pieces = [...plan.pieces].sort((p, q) => p.order - q.order);
  return plan.levels.map((level) => ({ level, pieces, whilePinning: readingsWhilePinning(level, pieces, rules) }));
}

/** The reading once the side seam's mark has moved as the plan says: towards the front the front arc gets shorter. */
export function afterSeamShift(plan: PlanFile, levelName: string, reading: FileReading): FileReading {
  const towardsBack = plan.seamShifts
    .filter((shift) => shift.level === levelName)
    .reduce((sum, shift) => sum + (shift.towards === "back" ? 2 : -2) * shift.perSideMm, 0);
  return {
    girthMm: reading.girthMm,
    frontArcMm: reading.frontArcMm + towardsBack,
    backArcMm: reading.backArcMm - towardsBack,
  };
}

function checkBareForm(level: FileLevel): readonly Finding[] {
  const rebuilt = bareReading(level.form);
  return readingKeys.flatMap((key) =>
    differs(rebuilt[key], level.form[key], readBackMm)
      ? [{ rule: "bareForm" as const, level: level.name, reading: key, got: level.form[key], expected: rebuilt[key] }]
      : [],
  );
}

/** What the file promises after every piece, and at the end, against the rebuilt stack. */
function checkPredicted(plan: PlanFile, { level, pieces, whilePinning }: RebuiltLevel): readonly Finding[] {
  const name = level.name as CheckedLevelName;
  const last = afterSeamShift(plan, name, whilePinning[whilePinning.length - 1] as FileReading);
  const compare = (rule: "predicted" | "readingsAfter", claimed: FileReading, rebuilt: FileReading, piece?: number) =>
    readingKeys.flatMap((key): readonly Finding[] =>
      differs(claimed[key], rebuilt[key], agreementMm)
        ? [
            {
              rule,
              level: name,
              reading: key,
              got: claimed[key],
              expected: rebuilt[key],
              ...(piece === undefined ? {} : { piece }),
            },
          ]
        : [],
    );
  return [
    ...compare("predicted", level.predicted, last),
    ...pieces.flatMap((piece, i) => {
      const rebuilt = afterSeamShift(plan, name, whilePinning[i + 1] as FileReading);
      return compare("readingsAfter", piece.readingsAfter[name], rebuilt, piece.order);
    }),
  ];
}

/** Law 2, and that a listed shortfall says the amount it has. */
function checkAgainstBody(plan: PlanFile, level: FileLevel): readonly Finding[] {
  return readingKeys.flatMap((key): readonly Finding[] => {
    const gap = level.predicted[key] - level.body[key];
    const listed = plan.shortfalls.filter((s) => s.level === level.name && s.what === shortfallWord[key]);
    const told = listed.reduce((sum, s) => sum + Math.abs(s.amountMm), 0);
    const place = { level: level.name, reading: key, got: level.predicted[key], expected: level.body[key] };
    if (listed.length === 0) return Math.abs(gap) > bodyAgreementMm ? [{ rule: "body" as const, ...place }] : [];
    const excuse = largestExcuse(
      level,
      key,
      listed.every((s) => s.sense === "tooLarge"),
    );
    return [
      ...(differs(told, Math.abs(gap), bodyAgreementMm)
        ? [{ rule: "shortfallAmount" as const, ...place, got: told, expected: Math.abs(gap) }]
        : []),
      ...(told <= excuse + quantumMm
        ? []
        : [{ rule: "shortfallExcuse" as const, ...place, got: told, expected: `at most ${excuse}` }]),
    ];
  });
}

/**
 * The most that the bare form itself can be the reason for: a girth is over only by what the form's own girth is over, and
 * never short; an arc may miss by what the form has too much of anywhere at that level.
 */
function largestExcuse({ body, form }: FileLevel, key: ReadingKey, isOver: boolean): number {
  const over = (reading: ReadingKey) => Math.max(0, form[reading] - body[reading]);
  if (key === "girthMm") return isOver ? over(key) : 0;
  return Math.max(...readingKeys.map(over));
}

const shortfallWord: { readonly [key in ReadingKey]: string } = {
  girthMm: "girth",
  frontArcMm: "frontArc",
  backArcMm: "backArc",
};

const differs = (p: number, q: number, allowed: number): boolean => !(Math.abs(p - q) <= allowed);
