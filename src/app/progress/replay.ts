import { isTapeReading, readingPlace, type Reread, type TapeReadingName } from "../../core/calibration/evidence";
import { type ReadingLimits, readingLimits } from "../../core/calibration/readingLimits";
import { levelNames } from "../../core/body/vocabulary";
import type { FormLines } from "../../core/form/formLines";
import type { Piece } from "../../core/padding/piece";
import { type Basis, basis, type PlanInput } from "../../core/plan/basis";
import { trimmed } from "../../core/plan/corrected";
import { limitsFrom } from "../../core/plan/planEvidence";
import { trialPiece } from "../../core/plan/trialPiece";
import type { Millimetres } from "../../core/units";
import { entryLength, type Fitting, pieceFromWork, trialLayers, type WorkEntry } from "../../document/fitting";

export type Work = Pick<Fitting, "work" | "unit">;

/** What lies on the form at one point of the log, and every round of reading with what lay there then. */
export interface Replayed {
  readonly pinned: readonly Piece[];
  readonly rereads: readonly Reread[];
  /** Pieces that were cut so far; null where the log tells of no such steps. */
  readonly cut: ReadonlySet<string> | null;
  /** Ids of all pieces that ever lay on the form. */
  readonly everPinned: readonly string[];
  /** Whether the trial was passed over. */
  readonly isUntried: boolean;
}

/** A reading that this form with these pieces on cannot give: the entry of the log, what was read (mm) and what can be. */
export interface ImpossibleReading extends ReadingLimits {
  readonly entry: number;
  readonly name: TapeReadingName;
  readonly read: Millimetres;
}

/** The whole log: how things stood each time the rest was planned anew, how they stand now, and the readings left out. */
export interface Replay {
  readonly atReplans: readonly Replayed[];
  readonly now: Replayed;
  readonly impossible: readonly ImpossibleReading[];
}

/**
 * Goes through the log once. A reading beyond what can be read is left out of everything that is learned, however often
 * it is typed. A plan that was made anew twice with nothing done between is one plan, and of very many only the last
 * count, so that no log takes longer than a person waits.
 */
export function replay(input: PlanInput, { work, unit }: Work, readingError: Millimetres): Replay {
  const limits = readingLimits(limitsFrom(input, basisOf(input), readingError));
  let pinned: readonly Piece[] = [];
  let cut: ReadonlySet<string> | null = null;
  const everPinned = new Set<string>();
  let isChanged = true;
  let isUntried = false;
  const rereads: Reread[] = [];
  const atReplans: Replayed[] = [];
  const impossible: ImpossibleReading[] = [];
  for (const [entry, step] of work.entries()) {
    if (step.did === "replanned") {
      if (isChanged) atReplans.push({ pinned, rereads: [...rereads], cut, everPinned: [...everPinned], isUntried });
      isChanged = false;
      continue;
    }
    const read = readingsOf(step, input, unit, pinned);
    const beyond = read.flatMap((reread) => beyondLimits(reread, entry, limits));
    impossible.push(...beyond);
    // Of a trial the two readings are only worth something together.
    // What is read over the cover tells of the cover, never of the batting.
    if (step.did === "measured" && step.over === undefined)
      addReading(rereads, pinned, without(read[0]?.readings ?? {}, beyond));
    else if (step.did === "trial" && beyond.length === 0) rereads.push(...read);
    pinned = pinnedAfter(pinned, step, input);
    cut = cutAfter(cut, step);
    if (step.did === "pinned") everPinned.add(step.piece.id);
    if (step.did === "trial") isUntried = step.before === undefined || step.after === undefined;
    isChanged = true;
  }
  return {
    atReplans: atReplans.slice(-mostReplans),
    now: { pinned, rereads, cut, everPinned: [...everPinned], isUntried },
    impossible,
  };
}

/** A person who plans the rest anew after every piece of a usual plan does so fewer times than this. */
const mostReplans = 24;

const known = new WeakMap<PlanInput, Basis>();

/** The basis of a plan, worked out once for an input. */
export function basisOf(input: PlanInput): Basis {
  const found = known.get(input) ?? basis(input);
  known.set(input, found);
  return found;
}

/** The log without the readings that cannot be; every entry keeps its place. */
export function possibleWork(work: Fitting["work"], impossible: readonly ImpossibleReading[]): Fitting["work"] {
  if (impossible.length === 0) return work;
  return work.map((step, at): WorkEntry => {
    const beyond = impossible.filter(({ entry }) => entry === at);
    return beyond.length === 0 || step.did !== "measured"
      ? step
      : { ...step, readings: without(step.readings, beyond) };
  });
}

const without = <Readings extends object>(readings: Readings, beyond: readonly ImpossibleReading[]): Readings =>
  beyond.length === 0
    ? readings
    : (Object.fromEntries(
        Object.entries(readings).filter(([name]) => !beyond.some((reading) => reading.name === name)),
      ) as Readings);

function readingsOf(
  entry: WorkEntry,
  input: PlanInput,
  unit: Fitting["unit"],
  pinned: readonly Piece[],
): readonly Reread[] {
  if (entry.did === "measured") {
    const readings = lengths(entry.readings, unit);
    return [{ pinned, readings: pinned.length === 0 ? notOfForm(readings, input.lines ?? {}) : readings }];
  }
  return entry.did === "trial" ? trialReadings(input, entry, unit) : [];
}

/**
 * The readings of the bare form that say more than the form itself already does: what was read on a line is the form's there
 * and would else count twice. A form is taken as even, so which side of it reads more is news.
 */
function notOfForm(readings: Reread["readings"], lines: FormLines): Reread["readings"] {
  return Object.fromEntries(
    Object.entries(readings).filter(([name]) => {
      const level = levelNames[readingPlace(name)?.level ?? -1];
      const ofLine = level === undefined ? undefined : lines[level]?.readings;
      if (level === undefined || ofLine?.Girth === undefined) return true;
      if (name === `${level}LeftFrontArc` || name === `${level}LeftBackArc`) return true;
      if (name === `${level}RightFrontArc`) return ofLine.LeftFrontArc === undefined;
      return name === `${level}RightBackArc` && ofLine.LeftBackArc === undefined;
    }),
  );
}

function beyondLimits(
  { pinned, readings }: Reread,
  entry: number,
  limits: ReturnType<typeof readingLimits>,
): readonly ImpossibleReading[] {
  return Object.entries(readings).flatMap(([name, read]): readonly ImpossibleReading[] => {
    if (!isTapeReading(name)) return [];
    const { least, most } = limits(name, pinned);
    return read >= least && read <= most ? [] : [{ entry, name, read, least, most }];
  });
}

function pinnedAfter(pinned: readonly Piece[], entry: WorkEntry, input: PlanInput): readonly Piece[] {
  switch (entry.did) {
    case "pinned":
      return [...pinned.filter(({ id }) => id !== entry.piece.id), pieceFromWork(entry.piece)];
    case "unpinned":
      return pinned.filter(({ id }) => id !== entry.pieceId);
    case "trimmed":
      return pinned.map((piece) =>
        piece.id === entry.pieceId ? trimmed(piece, basisOf(input).depths[entry.level], entry.eachSideMm) : piece,
      );
    default:
      return pinned;
  }
}

/** A log that tells how the form was made ready tells of cuts as well. */
function cutAfter(cut: ReadonlySet<string> | null, entry: WorkEntry): ReadonlySet<string> | null {
  if (entry.did === "cut" || entry.did === "stacked") return new Set(cut).add(entry.pieceId);
  return entry.did === "prepared" || entry.did === "marked" ? new Set(cut) : cut;
}

/** Readings taken one after the other with the same pieces on are one round, unless a place is read twice. */
function addReading(rereads: Reread[], pinned: readonly Piece[], readings: Reread["readings"]): void {
  const last = rereads[rereads.length - 1];
  const names = Object.keys(readings) as TapeReadingName[];
  if (last !== undefined && last.pinned === pinned && names.every((name) => last.readings[name] === undefined)) {
    rereads[rereads.length - 1] = { pinned, readings: { ...last.readings, ...readings } };
  } else if (names.length > 0) {
    rereads.push({ pinned, readings });
  }
}

function lengths(
  entries: Extract<WorkEntry, { readonly did: "measured" }>["readings"],
  unit: Fitting["unit"],
): Reread["readings"] {
  const read = Object.entries(entries).flatMap(([name, entry]) => {
    const length = entryLength(entry, unit);
    return isTapeReading(name) && length.ok ? [[name, length.value] as const] : [];
  });
  return Object.fromEntries(read);
}

function trialReadings(
  input: PlanInput,
  entry: Extract<WorkEntry, { readonly did: "trial" }>,
  unit: Fitting["unit"],
): readonly Reread[] {
  if (entry.before === undefined || entry.after === undefined) return [];
  const [before, after] = [entryLength(entry.before, unit), entryLength(entry.after, unit)];
  // The trial is wrapped at the waist; one tried elsewhere teaches nothing here.
  if (!before.ok || !after.ok || entry.level !== "waist") return [];
  const name = "waistGirth";
  const batting =
    entry.batting === input.finishingBatting?.name && entry.batting !== input.batting.name ? "finishing" : "building";
  const trial = trialPiece(basisOf(input), input.batting.layerThickness, trialLayers(entry), batting);
  return [
    { pinned: [], readings: { [name]: before.value } },
    { pinned: [trial], readings: { [name]: after.value } },
  ];
}
