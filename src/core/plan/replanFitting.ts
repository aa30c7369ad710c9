import type { QuarterReadings } from "../body/levelReadings";
import { measured, type Reading } from "../body/reading";
import { type ByLevel, type LevelName, levelNames, mapLevels } from "../body/vocabulary";
import { belief } from "../calibration/belief";
import type { Belief, BelievedWorth, LevelBelief } from "../calibration/believed";
import type { BareSpread, Evidence, Reread } from "../calibration/evidence";
import type { LimitsFrom } from "../calibration/readingLimits";
import type { Batting } from "../material";
import { shapeBatch } from "../padding/shapeBatch";
import type { Pad } from "../padding/pad";
import { type FirstLayer, noBonus, paddedTape } from "../padding/paddedTape";
import type { Piece } from "../padding/piece";
import { stackThickness, type Station } from "../padding/stack";
import { levelTarget, type Target } from "../padding/targets";
import { tapeAgreement } from "../tolerances";
import { mm } from "../units";
import { assemblePlan } from "./assemblePlan";
import { type Basis, basis, type PlanInput } from "./basis";
import { type Correction, corrections } from "./corrections";
import { type CutUse, useOfCut } from "./cutUse";
import { shiftedReading } from "./givingWay";
import type { Plan, TapeReadings } from "./plan";
import { oneSidedNinety, type RestingPlace, restingPlace } from "./restingPlace";
import type { Start } from "./start";

/** The work done so far: what is pinned now, what was read while, and which pieces are cut but not pinned. */
export interface PaddingSoFar {
  readonly pinned: readonly Piece[];
  readonly rereads: readonly Reread[];
  readonly cut: readonly Piece[];
  /** The error that nine in ten of this person's tape readings stay within (mm). */
  readonly readingError: number;
}

/** A new plan from where the tape says the padding stands. */
export interface Replan {
  readonly belief: Belief;
  /** The pieces that remain, numbered from 1 again, and the readings they lead to. */
  readonly plan: Plan;
  /** For each remaining piece, the cut piece it can be made of, if there is one. */
  readonly cutUses: readonly (CutUse | null)[];
  /** Where the tape already reads too much, what to do about it. */
  readonly corrections: readonly Correction[];
  /** What the tape reads now, by the belief, side seams re-marked as the plan says. */
  readonly now: TapeReadings;
  /** Where to rest and read the tape again. */
  readonly rest: RestingPlace;
}

/**
 * Plans the rest from the tape: what has been pinned stays pinned, what the padded form is believed to read now is the new form,
 * and a layer is worth what the readings have taught. With nothing pinned and nothing read it is the first plan again.
 */
export function replanFitting(input: PlanInput, soFar: PaddingSoFar): Replan {
  const first = basis(input);
  const learned = belief(evidence(input, first, soFar));
  const from = soFar.rereads.length === 0 ? first : { ...first, targets: believedTargets(first, learned) };
  const start = believedStart(from, soFar, learned);
  const targets = levelNames.map((name, level) =>
    openTargets(from.targets[name].quarters, learned.levels[level] as LevelBelief, soFar.pinned.length > 0),
  );
  const shaped = () =>
    shapeBatch({
      surface: from.surface,
      stations: from.stations,
      targets,
      sides: from.sides,
      apex: from.body.apex,
      layers: {
        building: stackedWorth(learned.building),
        finishing: input.finishingBatting === undefined ? null : stackedWorth(learned.finishing),
      },
      caution: soFar.rereads.length === 0 ? 0 : oneSidedNinety * (learned.building.spread / learned.building.layer),
      ...start,
    });
  const pads = leftAsCut(from, start, targets, soFar, learned) ?? shaped();
  const plan = assemblePlan(input, from, start, pads);
  const now = believedReadings(from, learned);
  return {
    belief: learned,
    plan,
    now,
    rest: restingPlace(plan, now, learned, (level) => (isFresh(soFar, level) ? "fresh" : "stale")),
    cutUses: useOfCut(plan.pieces, soFar.cut),
    corrections: corrections(from, start, soFar.pinned, learned),
  };
}

/**
 * The targets once the tape has told more about the bare form: what it truly reads takes the place of what was measured of it, so
 * that a half which is already larger than the body's is given up and the girth stays right. The body stays as the first plan took it.
 */
function believedTargets({ body, targets }: Basis, learned: Belief): ByLevel<Target> {
  return mapLevels((name) => {
    const { form, body: known } = targets[name];
    const { quarters, simulated } = learned.levels[levelNames.indexOf(name)] as LevelBelief;
    const beyond = (quarter: keyof QuarterReadings) => quarters[quarter].value - simulated[quarter];
    const frontArc = measured(mm(form.frontArc.value + beyond("leftFront") + beyond("rightFront")));
    const backArc = measured(mm(form.backArc.value + beyond("leftBack") + beyond("rightBack")));
    const believed = { ...form, frontArc, backArc, girth: measured(mm(frontArc.value + backArc.value)) };
    const settled = {
      ...body.levels[name],
      frontArc: measured(known.frontArc.value),
      backArc: measured(known.backArc.value),
    };
    return { ...levelTarget(settled, believed), form, body: known };
  });
}

/**
 * What is still asked of a level: a half that already agrees is left as it reads, so that nobody adds a piece for a hair. What
 * agrees is what the first plan calls true: with less, a plan carried out to the letter would ask for one piece more.
 */
function openTargets(quarters: QuarterReadings, now: LevelBelief, isUnderWay: boolean): QuarterReadings {
  const agrees = (left: "leftFront" | "leftBack", right: "rightFront" | "rightBack") =>
    isUnderWay &&
    Math.abs(now.quarters[left].value + now.quarters[right].value - quarters[left] - quarters[right]) <= tapeAgreement;
  const reads = ({ quarters: q }: LevelBelief) => q;
  const front = agrees("leftFront", "rightFront") ? reads(now) : null;
  const back = agrees("leftBack", "rightBack") ? reads(now) : null;
  return {
    leftFront: front?.leftFront.value ?? quarters.leftFront,
    rightFront: front?.rightFront.value ?? quarters.rightFront,
    leftBack: back?.leftBack.value ?? quarters.leftBack,
    rightBack: back?.rightBack.value ?? quarters.rightBack,
  };
}

/** Whether a level was read with just these pieces on. */
const isFresh = ({ rereads, pinned }: PaddingSoFar, level: LevelName): boolean =>
  rereads.some(
    (reread) =>
      reread.readings[`${level}Girth`] !== undefined &&
      reread.pinned.length === pinned.length &&
      reread.pinned.every((pad, i) => pad.rows === pinned[i]?.rows),
  );

function believedReadings({ targets }: Basis, learned: Belief): TapeReadings {
  return mapLevels((name) => {
    const { girth, frontArc, backArc } = learned.levels[levelNames.indexOf(name)] as LevelBelief;
    return shiftedReading({ girth: girth.value, frontArc: frontArc.value, backArc: backArc.value }, targets[name]);
  });
}

/** What a layer adds to a stack: its worth less what the stack squeezes out of it. */
export const stackedWorth = ({ layer, squeeze }: BelievedWorth): number => layer * (1 - squeeze);

/** The evidence of the work so far. */
export const evidence = (input: PlanInput, from: Basis, soFar: PaddingSoFar): Evidence => ({
  ...limitsFrom(input, from, soFar.readingError),
  rereads: soFar.rereads,
  pinnedNow: soFar.pinned,
});

/** What is known of the form and the battings before the tape. A packet speaks of a layer in a stack, as the first plan takes it. */
export function limitsFrom(input: PlanInput, { stations, targets }: Basis, readingError: number): LimitsFrom {
  const finishing: Batting = input.finishingBatting ?? input.batting;
  const spread = readingError / ninetyInSpreads;
  return {
    stations,
    battings: { building: input.batting, finishing },
    bareSpreads: levelNames.map((name) => bareSpread(targets[name].form, spread)),
    readingError: spread,
  };
}

/**
 * The pieces that are left, just as they were cut, if with them every front and back still comes as near its target as
 * readings can tell so far: then nothing is cut anew, and the next readings tell more. Null if they do not.
 */
function leftAsCut(
  { stations }: Basis,
  start: Start,
  targets: readonly QuarterReadings[],
  { cut, rereads }: PaddingSoFar,
  learned: Belief,
): readonly Pad[] | null {
  if (rereads.length === 0 || cut.length === 0) return null;
  const left = cut.filter(({ id }) => !start.takenIds.includes(id));
  const pads = left.map(
    (piece): Pad => ({ ...piece, thickness: mm(piece.plies * stackedWorth(learned[piece.batting])) }),
  );
  const isTrue = stations.every((station, level) => {
    const read = paddedTape(station, stackThickness([...start.pinned, ...pads], station), start.firstLayer);
    const [offset, target] = [start.offsets[level] as QuarterReadings, targets[level] as QuarterReadings];
    const { quarters: now } = learned.levels[level] as LevelBelief;
    const isNear = (...half: readonly (keyof QuarterReadings)[]) => {
      const finished = half.reduce((sum, part) => sum + read[part] + offset[part], 0);
      const miss = half.reduce((left, part) => left - target[part], finished);
      const gain = half.reduce((left, part) => left - now[part].value, finished);
      return Math.abs(miss) <= tapeAgreement + stillOpen * gain;
    };
    return isNear("leftFront", "rightFront") && isNear("leftBack", "rightBack");
  });
  return isTrue ? pads : null;
}

/**
 * The share of what is still to gain that pieces to come can make up for, and readings to come will tell better. With none,
 * a tape that read just what was planned had the rest planned anew after most pieces; from a fifth to three tenths `study:loop`
 * ends as true, with fewer pieces. The lower end of that.
 */
const stillOpen = 0.2;

/** Nine in ten of Gaussian errors stay within this many standard deviations. */
const ninetyInSpreads = 1.645;

/**
 * How unsure the bare form is: a measured girth by the error of one reading, arcs by that of two that were made to sum to it;
 * estimates by their spreads. Left and right of a form are as even as a seam is sewn.
 */
function bareSpread(
  { girth, frontArc }: { readonly girth: Reading; readonly frontArc: Reading },
  readingError: number,
): BareSpread {
  const round = girth.kind === "estimated" ? girth.spread : readingError;
  const halves = frontArc.kind === "estimated" ? 2 * frontArc.spread : Math.SQRT2 * readingError;
  return { girth: round, frontLessBack: halves, leftLessRight: seamEvenness };
}

/** Left and right halves of a sewn form differ by this much (mm, one standard deviation of left less right). A judgement. */
const seamEvenness = 5;

/** The pinned pads at what their layers are believed to be worth, and what the tape reads beyond that. */
function believedStart({ stations }: Basis, { pinned, rereads }: PaddingSoFar, learned: Belief): Start {
  const pads = pinned.map(
    (piece): Pad => ({ ...piece, thickness: mm(piece.plies * stackedWorth(learned[piece.batting])) }),
  );
  // Before anything is read the packet is taken at its word, as the first plan takes it.
  const firstLayer = rereads.length === 0 ? noBonus : bonusOf(learned.building);
  const offsets = stations.map((station, level) =>
    offsetAt(station, pads, firstLayer, learned.levels[level] as LevelBelief),
  );
  return { pinned: pads, offsets, firstLayer, takenIds: pinned.map((piece) => piece.id) };
}

const bonusOf = (worth: BelievedWorth): FirstLayer => ({
  layer: stackedWorth(worth),
  bonus: worth.layer - stackedWorth(worth),
});

function offsetAt(station: Station, pads: readonly Pad[], firstLayer: FirstLayer, { quarters }: LevelBelief) {
  const simulated = paddedTape(station, stackThickness(pads, station), firstLayer);
  return {
    leftFront: mm(quarters.leftFront.value - simulated.leftFront),
    rightFront: mm(quarters.rightFront.value - simulated.rightFront),
    leftBack: mm(quarters.leftBack.value - simulated.leftBack),
    rightBack: mm(quarters.rightBack.value - simulated.rightBack),
  };
}
