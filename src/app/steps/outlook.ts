import { armReading } from "../../core/arm/armReadings";
import { type BuildAbove, isToDo } from "../../core/above/buildAbove";
import { type LevelName, mapLevels, type MeasurementName, measurementNames } from "../../core/body/vocabulary";
import type { LevelPosterior } from "../../core/calibration/calibration";
import type { Reread, TapeReadingName } from "../../core/calibration/evidence";
import type { PlanInput } from "../../core/plan/basis";
import type { Correction } from "../../core/plan/corrections";
import { corrected } from "../../core/plan/corrected";
import type { Plan, PlannedPiece, TapeReading, TapeReadings } from "../../core/plan/plan";
import type { Replan } from "../../core/plan/replanFitting";
import { coversLines, isStructure, type Piece } from "../../core/padding/piece";
import type { Half } from "../../core/padding/sideLevel";
import { entryLength, type Fitting } from "../../document/fitting";
import { onTargetAsRead, tapeAgreement } from "../../core/tolerances";
import { frontChangeAt } from "../../core/plan/shortfalls";
import { mm } from "../../core/units";
import { basisOf, type Replay } from "../progress/replay";
import type { Outlook } from "./stepOutlook";
import { expectedReadings } from "./expectedReadings";
import { coverOutlook } from "./coverOutlook";
import { turnsAbove } from "../above/madeAbove";
import { isReadAtLines } from "./isReadAtLines";
import type { TuneAct, TuneOff } from "./step";
import { type PlaceReading, readingsOfPlace, readingsSinceChange } from "./placeReadings";
import { tunePlaces } from "./workFacts";
import type { TunePlace } from "./workState";

/** What the outlook is taken from: the plan in force, what would be planned now, and the log. */
export interface OutlookFrom {
  readonly above: readonly BuildAbove[];
  readonly plan: Plan;
  readonly replan: Replan;
  readonly input: PlanInput;
  readonly replay: Replay;
  readonly fitting: Pick<Fitting, "work" | "form" | "unit">;
}

export function outlook({ above, plan, replan, input, replay, fitting }: OutlookFrom): Outlook {
  const { pinned } = replay.now;
  const on = new Set(pinned.map(({ id }) => id));
  const structure = plan.pieces.filter((piece) => !on.has(piece.id) && isStructure(piece));
  const tuned = new Set(pinned.flatMap((piece) => tunePlaces(piece) ?? []));
  const last = replan.plan.pieces.filter((piece) => !isStructure(piece));
  const right = rightLevels(replan, replay.now.rereads);
  // Once a tuning layer is in and every line reads right, the padding is left as it is, whatever a finer plan would add.
  const isRight = pinned.some(({ kind }) => kind === "tuning") && right.size === plan.levels.length;
  const outer = [...plan.pieces, ...last].filter(({ kind, id }) => kind === "outerWrap" && !on.has(id));
  return {
    structure,
    tuning: [
      ...last.filter((piece) => piece.kind === "tuning" && !liesOn(piece, tuned) && !isRight),
      ...(isRight || isFirstTuned(pinned, last) ? outer.slice(0, 1) : []),
    ],
    coversLines: new Set(pinned.filter(coversLines).map(({ id }) => id)),
    expectedNow: expectedReadings(mapLevels((level) => mostProbable(replan.calibration.levels[level]))),
    isTrialNews: isTrialNews({ structure, replan }, fitting),
    isLayerMissing: !isRight && pinned.length > 0 && structure.length === 0 && replan.plan.pieces.some(isStructure),
    tunes: [...narrowing(replan, pinned, input, right), ...adding(replan, last, tuned, right)],
    doubtful: doubtful(replan, replay, fitting),
    twice: pinned.length === 0 ? [] : twiceRead(replay, fitting),
    isAtLines: isReadAtLines(plan, fitting),
    hasArm: armReading(input.body).kind === "whole",
    above: above.filter(isToDo),
    turnsAbove: turnsAbove(above, fitting),
    ...coverOutlook(plan, replan, fitting),
  };
}

const halfOf = ({ anchor }: Piece): Half => (anchor === "centerBack" ? "back" : "front");

const liesOn = (piece: Piece, places: ReadonlySet<TunePlace>): boolean =>
  tunePlaces(piece)?.some((place) => places.has(place)) ?? false;

/** What goes over everything waits until every tuning layer of the plan is in. */
const isFirstTuned = (pinned: readonly Piece[], last: readonly Piece[]): boolean =>
  pinned.length > 0 && !last.some(({ kind }) => kind === "tuning");

const mostProbable = ({ girth, frontArc, backArc }: LevelPosterior): TapeReading => ({
  girth: girth.value,
  frontArc: frontArc.value,
  backArc: backArc.value,
});

/** A trial since the last plan was made: what it told, or, where it was passed over, that the structure is counted with care. */
const isTrialSince = (work: Fitting["work"]): boolean =>
  work.slice(work.findLastIndex(({ did }) => did === "replanned") + 1).some(({ did }) => did === "trial");

/** Whether a trial since the last plan asks for other pieces of the structure than are left of it. */
export const isTrialNews = (
  { structure, replan }: { readonly structure: readonly Piece[]; readonly replan: Replan },
  { work }: Pick<Fitting, "work">,
): boolean => isTrialSince(work) && !areAlike(structure, replan.plan.pieces.filter(isStructure));

/** Whether the same pieces would be cut, of as many layers: then there is nothing to update, whatever the trial told. */
const areAlike = (left: readonly Piece[], anew: readonly Piece[]): boolean =>
  left.length === anew.length &&
  left.every((piece, i) => {
    const other = anew[i] as Piece;
    const { kind, zone, level } = piece;
    return (
      kind === other.kind && zone === other.zone && level === other.level && piece.layers.length === other.layers.length
    );
  });

/** The levels whose girth and front last read within a quarter inch of the person's, side seams re-marked as planned. */
function rightLevels({ plan }: Replan, rereads: readonly Reread[]): ReadonlySet<LevelName> {
  const over = rereads.filter(({ pinned }) => pinned.length > 0);
  const lastRead = (name: TapeReadingName) =>
    over.findLast(({ readings }) => readings[name] !== undefined)?.readings[name];
  const right = plan.levels.filter(({ name, body }) => {
    const [girth, front] = [lastRead(`${name}Girth`), lastRead(`${name}FrontArc`)];
    const moved = frontChangeAt(plan.seamShifts, name);
    const isNear = (read: number | undefined, wanted: number) =>
      read !== undefined && Math.abs(read - wanted) <= onTargetAsRead;
    return isNear(girth, body.girth.value) && isNear(front, body.frontArc.value - moved);
  });
  return new Set(right.map(({ name }) => name));
}

type Tune = Outlook["tunes"][number];

const placesOf = (levels: readonly LevelName[], half: Half): readonly TunePlace[] =>
  levels.map((level): TunePlace => `${half}-${level}`);

/** The worst place that reads over, and what else is to be narrowed of the same piece. */
function narrowing(
  { corrections, now }: Replan,
  pinned: readonly Piece[],
  input: PlanInput,
  right: ReadonlySet<LevelName>,
): readonly Tune[] {
  const able = corrections
    .filter(({ how, level }) => how.kind !== "pullThin" && !right.has(level))
    .toSorted((a, b) => b.over - a.over);
  const pieceIds = [...new Set(able.map(({ pieceId }) => pieceId))];
  return pieceIds.flatMap((id): readonly Tune[] => {
    const own = able.filter(({ pieceId }) => pieceId === id);
    const [worst] = own;
    const before = pinned.find((piece) => piece.id === id);
    if (worst === undefined || before === undefined) return [];
    if (worst.how.kind === "peel") {
      const act: TuneAct = { kind: "takeOut", piece: before, off: offOf(worst) };
      return [{ places: placesOf([worst.level], worst.half), levels: [worst.level], act }];
    }
    const narrowed = own.filter(({ how }) => how.kind === "trim");
    const [piece] = corrected([before], narrowed, basisOf(input));
    if (piece === undefined) return [];
    const at = narrowed.flatMap(({ level, how }) => (how.kind === "trim" ? [{ level, eachSide: how.eachSide }] : []));
    const readingsAfter = readingsLess(now, narrowed);
    const act: TuneAct = { kind: "narrow", piece: { ...piece, readingsAfter }, at, off: offOf(worst) };
    const levels = at.map(({ level }) => level);
    return [{ places: placesOf(levels, worst.half), levels, act }];
  });
}

const offOf = ({ level, half, over }: Correction): TuneOff => ({ level, half, amount: over, sense: "over" });

/** What the tape should read once what is over is gone. */
function readingsLess(now: TapeReadings, narrowed: readonly Correction[]): TapeReadings {
  return mapLevels((level) => {
    const over = (half: Half) =>
      narrowed.reduce((sum, one) => sum + (one.level === level && one.half === half ? one.over : 0), 0);
    const [frontArc, backArc] = [mm(now[level].frontArc - over("front")), mm(now[level].backArc - over("back"))];
    return { girth: mm(frontArc + backArc), frontArc, backArc };
  });
}

/** One more tuning layer where a half that has one reads short by more than nobody's tape can tell. */
function adding(
  { plan, now }: Replan,
  last: readonly PlannedPiece[],
  tuned: ReadonlySet<TunePlace>,
  right: ReadonlySet<LevelName>,
): readonly Tune[] {
  return last.flatMap((piece): readonly Tune[] => {
    if (!liesOn(piece, tuned)) return [];
    const before = plan.pieces[plan.pieces.indexOf(piece) - 1]?.readingsAfter ?? now;
    const part = halfOf(piece) === "front" ? "frontArc" : "backArc";
    const short = plan.levels
      .map(({ name, body }) => ({ level: name, amount: body[part].value - before[name][part] }))
      .filter(
        ({ level, amount }) =>
          !right.has(level) && piece.readingsAfter[level][part] > before[level][part] && amount > tapeAgreement,
      );
    const [worst] = short.toSorted((a, b) => b.amount - a.amount);
    if (worst === undefined) return [];
    const [half, levels] = [halfOf(piece), short.map(({ level }) => level)];
    const act: TuneAct = { kind: "addLayer", piece, off: { ...worst, half, sense: "short" } };
    return [{ places: placesOf(levels, half), levels, act }];
  });
}

/**
 * Readings that cannot be, as long as they are the last of their place and the only ones since the form changed: whoever
 * has read twice goes on, and the plan goes by what stands without them.
 */
function doubtful(
  { calibration }: Replan,
  { impossible }: Replay,
  fitting: OutlookFrom["fitting"],
): readonly MeasurementName[] {
  const { unit } = fitting;
  const readings = readingsSinceChange(fitting).map(({ entry }) => entry);
  if (readings.some((entry) => Object.keys(entry.readings).length === 0)) return [];
  const isOnlyReading = ({ name, read }: { readonly name: MeasurementName; readonly read: number }): boolean => {
    const typed = readings.flatMap((entry) => entry.readings[name] ?? []);
    const length = typed[0] === undefined ? null : entryLength(typed[0], unit);
    return typed.length === 1 && length?.ok === true && Math.abs(length.value - read) < samePlace;
  };
  return [...new Set([...impossible, ...calibration.outliers].filter(isOnlyReading).map(({ name }) => name))];
}

/** The same reading, whatever its unit (mm). */
const samePlace = 0.01;

/** Two readings of one place that are further apart than this (mm) cannot both be right: twice what is on target. */
const apart = 12;

/** Places read just twice since the form changed, so far apart that one of the two is wrong. */
function twiceRead({ impossible }: Replay, fitting: OutlookFrom["fitting"]): readonly MeasurementName[] {
  return measurementNames.filter((name) => {
    const [one, other, ...more] = readingsOfPlace(fitting, name);
    if (one === undefined || other === undefined || more.length > 0) return false;
    const isUsed = ({ at }: PlaceReading) => !impossible.some((left) => left.entry === at && left.name === name);
    return isUsed(one) && isUsed(other) && Math.abs(one.length - other.length) > apart;
  });
}
