import { type ByLevel, type LevelName, levelNames, mapLevels, type MeasurementName } from "../../core/body/vocabulary";
import type { LevelBelief } from "../../core/calibration/believed";
import type { PlanInput } from "../../core/plan/basis";
import type { Correction } from "../../core/plan/corrections";
import { corrected } from "../../core/plan/corrected";
import type { Plan, PlannedPiece, TapeReadings } from "../../core/plan/plan";
import type { Replan } from "../../core/plan/replanFitting";
import type { Piece } from "../../core/padding/piece";
import type { Half } from "../../core/padding/sideLevel";
import { entryLength, type Fitting, type WorkEntry } from "../../document/fitting";
import { tapeAgreement } from "../../core/tolerances";
import { mm } from "../../core/units";
import { basisOf, type Replay } from "../replay";
import type { Outlook } from "./nextStep";
import type { TuneAct } from "./step";
import { tunePlaces } from "./workFacts";
import type { TunePlace } from "./workState";

/** What the outlook is taken from: the plan in force, what would be planned now, and the log. */
export interface OutlookFrom {
  readonly plan: Plan;
  readonly replan: Replan;
  readonly input: PlanInput;
  readonly replay: Replay;
  readonly fitting: Pick<Fitting, "work" | "form" | "unit">;
}

export function outlook({ plan, replan, input, replay, fitting }: OutlookFrom): Outlook {
  const { pinned } = replay.now;
  const on = new Set(pinned.map(({ id }) => id));
  const isStructure = ({ kind }: Piece) => kind !== "tuning" && kind !== "outerWrap";
  const structure = plan.pieces.filter((piece) => !on.has(piece.id) && isStructure(piece));
  const tuned = new Set(pinned.flatMap((piece) => tunePlaces(piece) ?? []));
  const last = replan.plan.pieces.filter((piece) => !isStructure(piece));
  const outer = [...plan.pieces, ...last].filter(({ kind, id }) => kind === "outerWrap" && !on.has(id));
  return {
    structure,
    tuning: [
      ...last.filter((piece) => piece.kind === "tuning" && !liesOn(piece, tuned)),
      ...(isFirstTuned(pinned, last) ? outer.slice(0, 1) : []),
    ],
    coversLines: new Set(pinned.filter(({ kind }) => kind !== "cup" && kind !== "tuning").map(({ id }) => id)),
    expectedNow: expectedNow(replan.belief.levels),
    isTrialNews: isTrialNews(fitting.work),
    isLayerMissing: pinned.length > 0 && structure.length === 0 && replan.plan.pieces.some(isStructure),
    tunes: [...narrowing(replan, pinned, input), ...adding(replan, last, tuned)],
    doubtful: doubtful(replan, replay, fitting),
    isAtLines: fitting.form.readAtBodyLines === true || plan.basis === "lines",
  };
}

const halfOf = ({ anchor }: Piece): Half => (anchor === "centerBack" ? "back" : "front");

const liesOn = (piece: Piece, places: ReadonlySet<TunePlace>): boolean =>
  tunePlaces(piece)?.some((place) => places.has(place)) ?? false;

/** What goes over everything waits until every tuning layer of the plan is in. */
const isFirstTuned = (pinned: readonly Piece[], last: readonly Piece[]): boolean =>
  pinned.length > 0 && !last.some(({ kind }) => kind === "tuning");

function expectedNow(levels: ByLevel<LevelBelief>): Outlook["expectedNow"] {
  return Object.fromEntries(
    levelNames.flatMap((level) => {
      const { girth, frontArc, backArc } = levels[level];
      return [
        [`${level}Girth`, girth.value],
        [`${level}FrontArc`, frontArc.value],
        [`${level}BackArc`, backArc.value],
      ];
    }),
  ) as Outlook["expectedNow"];
}

/** A trial that told something since the last plan was made. */
const isTrialNews = (work: Fitting["work"]): boolean =>
  work
    .slice(work.findLastIndex(({ did }) => did === "replanned") + 1)
    .some((entry) => entry.did === "trial" && entry.before !== undefined && entry.after !== undefined);

type Tune = Outlook["tunes"][number];

const placesOf = (levels: readonly LevelName[], half: Half): readonly TunePlace[] =>
  levels.map((level): TunePlace => `${half}-${level}`);

/** The worst place that reads over, and what else is to be narrowed of the same piece. */
function narrowing({ corrections, now }: Replan, pinned: readonly Piece[], input: PlanInput): readonly Tune[] {
  const able = corrections.filter(({ how }) => how.kind !== "pullThin").toSorted((a, b) => b.over - a.over);
  const pieceIds = [...new Set(able.map(({ pieceId }) => pieceId))];
  return pieceIds.flatMap((id): readonly Tune[] => {
    const own = able.filter(({ pieceId }) => pieceId === id);
    const [worst] = own;
    const before = pinned.find((piece) => piece.id === id);
    if (worst === undefined || before === undefined) return [];
    if (worst.how.kind === "peel") {
      const act: TuneAct = { kind: "takeOut", piece: before, level: worst.level, half: worst.half };
      return [{ places: placesOf([worst.level], worst.half), levels: [worst.level], act }];
    }
    const narrowed = own.filter(({ how }) => how.kind === "trim");
    const [piece] = corrected([before], narrowed, basisOf(input));
    if (piece === undefined) return [];
    const at = narrowed.flatMap(({ level, how }) => (how.kind === "trim" ? [{ level, eachSide: how.eachSide }] : []));
    const readingsAfter = readingsLess(now, narrowed);
    const act: TuneAct = { kind: "narrow", piece: { ...piece, readingsAfter }, at };
    const levels = at.map(({ level }) => level);
    return [{ places: placesOf(levels, worst.half), levels, act }];
  });
}

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
function adding({ plan, now }: Replan, last: readonly PlannedPiece[], tuned: ReadonlySet<TunePlace>): readonly Tune[] {
  return last.flatMap((piece): readonly Tune[] => {
    if (!liesOn(piece, tuned)) return [];
    const before = plan.pieces[plan.pieces.indexOf(piece) - 1]?.readingsAfter ?? now;
    const part = halfOf(piece) === "front" ? "frontArc" : "backArc";
    const levels = plan.levels.flatMap(({ name, body }): readonly LevelName[] => {
      const gain = piece.readingsAfter[name][part] - before[name][part];
      return gain > 0 && body[part].value - before[name][part] > tapeAgreement ? [name] : [];
    });
    return levels.length === 0
      ? []
      : [{ places: placesOf(levels, halfOf(piece)), levels, act: { kind: "addLayer", piece } }];
  });
}

/**
 * Readings that cannot be, as long as they are the last of their place and the only ones since the form changed: whoever
 * has read twice goes on, and the plan goes by what stands without them.
 */
function doubtful(
  { belief }: Replan,
  { impossible }: Replay,
  { work, unit }: OutlookFrom["fitting"],
): readonly MeasurementName[] {
  const since = work.slice(work.findLastIndex(({ did }) => did === "pinned" || did === "unpinned") + 1);
  const readings = since.filter((entry): entry is Measured => entry.did === "measured");
  if (readings.some((entry) => Object.keys(entry.readings).length === 0)) return [];
  const isOnlyReading = ({ name, read }: { readonly name: MeasurementName; readonly read: number }): boolean => {
    const typed = readings.flatMap((entry) => entry.readings[name] ?? []);
    const length = typed[0] === undefined ? null : entryLength(typed[0], unit);
    return typed.length === 1 && length?.ok === true && Math.abs(length.value - read) < samePlace;
  };
  return [...new Set([...impossible, ...belief.surprises].filter(isOnlyReading).map(({ name }) => name))];
}

/** The same reading, whatever its unit (mm). */
const samePlace = 0.01;

type Measured = Extract<WorkEntry, { readonly did: "measured" }>;
