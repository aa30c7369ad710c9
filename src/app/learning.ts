import { type LevelName, levelNames, type MeasurementName } from "../core/body/vocabulary";
import type { Reread, TapeReadingName } from "../core/calibration/evidence";
import type { Piece } from "../core/padding/piece";
import { basis, type PlanInput } from "../core/plan/basis";
import { trimmed } from "../core/plan/corrected";
import type { Plan, PlannedPiece } from "../core/plan/plan";
import { type PlanChange, planChange } from "../core/plan/planChange";
import { type PaddingSoFar, type Replan, replanFitting } from "../core/plan/replanFitting";
import { trialPiece } from "../core/plan/trialPiece";
import { type Millimetres, mm } from "../core/units";
import { entryLength, type Fitting, type WorkEntry } from "../document/fitting";
import { pieceFromFile } from "../document/pieceFile";

/**
 * What the tape has taught so far, and the plan that would follow from it. Nothing changes under a person's hands: the plan in force is
 * the first one, or the one of the last time she asked for the rest to be planned anew.
 */
export interface Learning {
  readonly replan: Replan;
  /** How many tape readings the belief rests on, trials and their bare readings included. */
  readonly readingCount: number;
  /** Whether anything was read since the plan in force was made. */
  readonly isNews: boolean;
  /** What a new plan would change of the pieces that are left. */
  readonly change: PlanChange;
}

/** The work of a fitting replayed up to a point: what lies on the form, and every round of reading with what lay there then. */
export interface Replayed {
  readonly pinned: readonly Piece[];
  readonly rereads: readonly Reread[];
}

export type Work = Pick<Fitting, "work" | "unit">;

/** The plan in force: the first plan, or, once the rest was planned anew, what was pinned then and the plan made there. */
export function planInForce(first: Plan, input: PlanInput, fitting: Work, readingError: Millimetres): Plan {
  const at = fitting.work.findLastIndex((entry) => entry.did === "replanned");
  if (at === -1) return first;
  const before = { ...fitting, work: fitting.work.slice(0, at) };
  const { replan, logged } = replanAt(first, input, before, readingError);
  return joined(logged, replan);
}

/** What was learned by all the work so far; null while nothing has been read. */
export function learning(inForce: Plan, input: PlanInput, fitting: Work, readingError: Millimetres): Learning | null {
  const { pinned, rereads } = replayed(input, fitting);
  if (rereads.length === 0) return null;
  const left = leftOf(inForce, pinned);
  const replan = replanFitting(input, { pinned, rereads, cut: left, readingError });
  const lastReplan = fitting.work.findLastIndex((entry) => entry.did === "replanned");
  return {
    replan,
    readingCount: rereads.reduce((count, { readings }) => count + Object.keys(readings).length, 0),
    isNews: fitting.work.slice(lastReplan + 1).some((entry) => entry.did === "measured" || entry.did === "trial"),
    change: planChange(left, replan.plan.pieces, basis(input).drops, input.batting, replan.belief.building),
  };
}

const leftOf = ({ pieces }: Plan, pinned: readonly Piece[]): readonly PlannedPiece[] =>
  pieces.filter((piece) => !pinned.some(({ id }) => id === piece.id));

function replanAt(first: Plan, input: PlanInput, fitting: Work, readingError: Millimetres) {
  const { pinned, rereads } = replayed(input, fitting);
  const inForce = planInForce(first, input, fitting, readingError);
  const soFar: PaddingSoFar = { pinned, rereads, cut: leftOf(inForce, pinned), readingError };
  const files = new Map(
    fitting.work.flatMap((entry) => (entry.did === "pinned" ? [[entry.piece.id, entry.piece] as const] : [])),
  );
  const logged = pinned.flatMap((piece): readonly PlannedPiece[] => {
    const file = files.get(piece.id);
    return file === undefined ? [] : [{ ...piece, readingsAfter: readingsOf(file) }];
  });
  return { replan: replanFitting(input, soFar), logged };
}

/** Pinned pieces first, as they were pinned, then the new plan's; the last pinned one ends where the tape is believed to stand. */
function joined(logged: readonly PlannedPiece[], { plan, now }: Replan): Plan {
  const pinned = logged.map((piece, i) => ({
    ...piece,
    order: i + 1,
    readingsAfter: i === logged.length - 1 ? now : piece.readingsAfter,
  }));
  const rest = plan.pieces.map((piece) => ({ ...piece, order: piece.order + pinned.length }));
  return { ...plan, pieces: [...pinned, ...rest] };
}

const readingsOf = (file: Extract<WorkEntry, { readonly did: "pinned" }>["piece"]): PlannedPiece["readingsAfter"] => {
  const at = (level: LevelName) => {
    const { girthMm, frontArcMm, backArcMm } = file.readingsAfter[level];
    return { girth: mm(girthMm), frontArc: mm(frontArcMm), backArc: mm(backArcMm) };
  };
  return {
    bust: at("bust"),
    underbust: at("underbust"),
    waist: at("waist"),
    highHip: at("highHip"),
    fullHip: at("fullHip"),
  };
};

export function replayed(input: PlanInput, { work, unit }: Work): Replayed {
  let pinned: readonly Piece[] = [];
  const rereads: Reread[] = [];
  for (const entry of work) {
    if (entry.did === "measured") addReading(rereads, pinned, lengths(entry.readings, unit));
    else if (entry.did === "trial") rereads.push(...trialReadings(input, entry, unit));
    else pinned = pinnedAfter(pinned, entry, input);
  }
  return { pinned, rereads };
}

function pinnedAfter(pinned: readonly Piece[], entry: WorkEntry, input: PlanInput): readonly Piece[] {
  switch (entry.did) {
    case "pinned":
      return [...pinned.filter(({ id }) => id !== entry.piece.id), pieceFromFile(entry.piece)];
    case "unpinned":
      return pinned.filter(({ id }) => id !== entry.pieceId);
    case "trimmed":
      return pinned.map((piece) =>
        piece.id === entry.pieceId ? trimmed(piece, basis(input).drops[entry.level], entry.eachSideMm) : piece,
      );
    default:
      return pinned;
  }
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
    return isTapeReading(name as MeasurementName) && length.ok ? [[name, length.value] as const] : [];
  });
  return Object.fromEntries(read);
}

const isTapeReading = (name: MeasurementName): name is TapeReadingName =>
  levelNames.some((level) => name.startsWith(level)) && /(Girth|Arc)$/.test(name);

function trialReadings(
  input: PlanInput,
  entry: Extract<WorkEntry, { readonly did: "trial" }>,
  unit: Fitting["unit"],
): readonly Reread[] {
  const [before, after] = [entryLength(entry.before, unit), entryLength(entry.after, unit)];
  // The trial is wrapped at the waist; one tried elsewhere teaches nothing here.
  if (!before.ok || !after.ok || entry.level !== "waist") return [];
  const name = "waistGirth";
  const batting =
    entry.batting === input.finishingBatting?.name && entry.batting !== input.batting.name ? "finishing" : "building";
  const trial = { ...trialPiece(basis(input), input.batting.layerThickness), plies: entry.plies, batting } as const;
  return [
    { pinned: [], readings: { [name]: before.value } },
    { pinned: [trial], readings: { [name]: after.value } },
  ];
}
