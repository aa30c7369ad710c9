import { type ByLevel, type LevelName, levelNames, type MeasurementName } from "../../core/body/vocabulary";
import type { Plan, PlannedPiece, TapeReading } from "../../core/plan/plan";
import { type Millimetres, mm } from "../../core/units";
import { type AnyPieceFile, entryLength, type Fitting } from "../../document/fitting";

/**
 * How far the padding has come: which pieces are on the form, which one is next, and what the tape reads now at every
 * level. A reading stays what it was until a further piece is pinned over that level; from then on the tool knows only
 * what it expects, and says so.
 */
export interface PadProgress {
  readonly pieces: readonly PieceState[];
  readonly pinnedCount: number;
  readonly next: PlannedPiece | null;
  readonly now: ByLevel<LevelNow>;
}

export interface PieceState {
  readonly piece: PlannedPiece;
  readonly pinned: boolean;
}

export const tapeParts = ["girth", "frontArc", "backArc"] as const;
export type TapePart = (typeof tapeParts)[number];

/**
 * What the tape reads now over one stretch: read off it by a person while the padding was underway, following from two
 * such readings, known of the bare form and untouched since, or only expected from the form and the pieces pinned since.
 */
export type NowReading = { readonly kind: "read" | "follows" | "bare" | "expected"; readonly value: Millimetres };

/** Only a reading confirms: what is known of the bare form says what to expect over the padding, and no more. */
export const isConfirmed = ({ kind }: NowReading): boolean => kind === "read" || kind === "follows";
export type LevelNow = { readonly [part in TapePart]: NowReading };

export const readingName = (level: LevelName, part: TapePart): MeasurementName =>
  part === "girth" ? `${level}Girth` : part === "frontArc" ? `${level}FrontArc` : `${level}BackArc`;

export function padProgress(plan: Plan, { work, unit }: Pick<Fitting, "work" | "unit">): PadProgress {
  const pinned = new Set<string>();
  let now = bareNow(plan);
  for (const entry of work) {
    if (entry.did === "pinned") {
      pinned.add(entry.piece.id);
      now = movedBy(now, pieceGain(plan, entry.piece), 1);
    }
    if (entry.did === "unpinned" && pinned.delete(entry.pieceId)) {
      const piece = lastPinned(work, entry.pieceId);
      if (piece) now = movedBy(now, pieceGain(plan, piece), -1);
    }
    if (entry.did === "measured")
      now = levelsNow((level) => levelAfterReading(now[level], level, entry.readings, unit));
  }
  const pieces = plan.pieces.map((piece) => ({ piece, pinned: pinned.has(piece.id) }));
  return {
    pieces,
    pinnedCount: pieces.filter((state) => state.pinned).length,
    next: pieces.find((state) => !state.pinned)?.piece ?? null,
    now,
  };
}

/** How much each reading grows when this piece goes on, in the order of the plan it belongs to. */
export function pieceGain(plan: Plan, piece: AnyPieceFile | PlannedPiece): ByLevel<TapeReading> {
  const at = plan.pieces.findIndex(({ id }) => id === piece.id);
  const planned = plan.pieces[at];
  if (planned === undefined) return levelsNow(() => noGain);
  const before = plan.pieces[at - 1]?.readingsAfter ?? plan.bareForm;
  return levelsNow((level) => ({
    girth: mm(planned.readingsAfter[level].girth - before[level].girth),
    frontArc: mm(planned.readingsAfter[level].frontArc - before[level].frontArc),
    backArc: mm(planned.readingsAfter[level].backArc - before[level].backArc),
  }));
}

const noGain: TapeReading = { girth: mm(0), frontArc: mm(0), backArc: mm(0) };

const levelsNow = <Value>(of: (level: LevelName) => Value): ByLevel<Value> =>
  Object.fromEntries(levelNames.map((level) => [level, of(level)])) as ByLevel<Value>;

const bareNow = (plan: Plan): ByLevel<LevelNow> =>
  levelsNow((level) => {
    const bare = plan.bareForm[level];
    const form = plan.levels.find(({ name }) => name === level)?.form;
    const kind = (part: TapePart): NowReading["kind"] => (form?.[part].kind === "measured" ? "bare" : "expected");
    return {
      girth: { kind: kind("girth"), value: bare.girth },
      frontArc: { kind: kind("frontArc"), value: bare.frontArc },
      backArc: { kind: kind("backArc"), value: bare.backArc },
    };
  });

const movedBy = (now: ByLevel<LevelNow>, gain: ByLevel<TapeReading>, sign: 1 | -1): ByLevel<LevelNow> =>
  levelsNow((level) => ({
    girth: moved(now[level].girth, gain[level].girth * sign),
    frontArc: moved(now[level].frontArc, gain[level].frontArc * sign),
    backArc: moved(now[level].backArc, gain[level].backArc * sign),
  }));

const moved = (reading: NowReading, by: number): NowReading =>
  Math.abs(by) < untouchedMm ? reading : { kind: "expected", value: mm(reading.value + by) };

/** A tape is read to a millimetre, so a piece that moves a reading by less than half of one did not touch it. */
const untouchedMm = 0.5;

/**
 * A reading replaces what was expected, and stands beside others of the same level until a piece goes over it. Front and back
 * make up the girth: two that were read give the third, and a girth alone shares its news between front and back as
 * they were expected.
 */
function levelAfterReading(
  now: LevelNow,
  level: LevelName,
  readings: Extract<Fitting["work"][number], { readonly did: "measured" }>["readings"],
  unit: Fitting["unit"],
): LevelNow {
  const read = (part: TapePart): Millimetres | undefined => {
    const entry = readings[readingName(level, part)];
    const length = entry === undefined ? undefined : entryLength(entry, unit);
    return length?.ok ? length.value : undefined;
  };
  return levelWithReadings(now, { girth: read("girth"), frontArc: read("frontArc"), backArc: read("backArc") });
}

export function levelWithReadings(
  now: LevelNow,
  read: { readonly [part in TapePart]: Millimetres | undefined },
): LevelNow {
  const known = (part: TapePart): NowReading =>
    read[part] === undefined ? now[part] : { kind: "read", value: read[part] };
  const [girth, frontArc, backArc] = [known("girth"), known("frontArc"), known("backArc")];
  if (tapeParts.every((part) => read[part] === undefined)) return now;
  const [isGirth, isFront, isBack] = [girth, frontArc, backArc].map(({ kind }) => kind === "read");
  if (isFront && isBack) {
    return {
      girth: isGirth ? girth : { kind: "follows", value: mm(frontArc.value + backArc.value) },
      frontArc,
      backArc,
    };
  }
  if (isFront) return { girth, frontArc, backArc: rest(girth, frontArc) };
  if (isBack) return { girth, frontArc: rest(girth, backArc), backArc };
  return shareGirth(now, girth);
}

/** What is left of a girth beside one half of it; no surer than the girth itself. */
const rest = (girth: NowReading, half: NowReading): NowReading => ({
  kind: girth.kind === "expected" || half.kind === "expected" ? "expected" : "follows",
  value: mm(girth.value - half.value),
});

/** A girth read alone: a front that is known and untouched since stands, else the difference is halved. */
function shareGirth(now: LevelNow, girth: NowReading): LevelNow {
  const { frontArc, backArc } = now;
  const isKnown = ({ kind }: NowReading): boolean => kind === "read" || kind === "bare";
  if (isKnown(frontArc)) return { girth, frontArc, backArc: rest(girth, frontArc) };
  if (isKnown(backArc)) return { girth, backArc, frontArc: rest(girth, backArc) };
  const news = (girth.value - now.girth.value) / 2;
  return {
    girth,
    frontArc: { kind: "expected", value: mm(frontArc.value + news) },
    backArc: { kind: "expected", value: mm(backArc.value + news) },
  };
}

function lastPinned(work: Fitting["work"], id: string): AnyPieceFile | undefined {
  const found = work.findLast((entry) => entry.did === "pinned" && entry.piece.id === id);
  return found?.did === "pinned" ? found.piece : undefined;
}
