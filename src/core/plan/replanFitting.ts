import type { QuarterReadings } from "../body/levelReadings";
import { measured } from "../body/reading";
import { type ByLevel, type LevelName, levelNames, mapLevels } from "../body/vocabulary";
import { learn } from "../calibration/calibrate";
import type { Calibration, PosteriorThickness, LevelPosterior } from "../calibration/calibration";
import type { Laid, LevelOutline } from "../padding/layerThickness";
import { paddedThickness } from "../padding/paddedThickness";
import type { Layer } from "../padding/layer";
import type { LaidPiece } from "../padding/laidPiece";
import type { Piece } from "../padding/piece";
import { shapePieces } from "../padding/shapePieces";
import type { LayerThickness } from "../padding/sideLevel";
import { levelTarget, type Target } from "../padding/targets";
import { tapeQuarters } from "../tape/tape";
import { onTarget, tapeAgreement } from "../tolerances";
import { mm } from "../units";
import { assemblePlan } from "./assemblePlan";
import { type Basis, basis, type PlanInput } from "./basis";
import { type Correction, corrections } from "./corrections";
import { type CutUse, useOfCut } from "./cutUse";
import { evidence } from "./planEvidence";
import { shiftedReading } from "./shortfalls";
import type { PaddingSoFar } from "./paddingSoFar";
import type { Plan, TapeReadings } from "./plan";
import { type RestingPlace, restingPlace } from "./restingPlace";
import { shapingProblem } from "./planShaping";
import type { Start } from "./start";

/** A new plan from where the tape says the padding stands. */
export interface Replan {
  readonly calibration: Calibration;
  /** The pieces that remain, numbered from 1 again, and the readings they lead to. */
  readonly plan: Plan;
  /** For each remaining piece, the cut piece it can be made of, if there is one. */
  readonly cutUses: readonly (CutUse | null)[];
  /** Where the tape already reads too much, what to do about it. */
  readonly corrections: readonly Correction[];
  /** What the tape reads now, by the calibration, side seams re-marked as the plan says. */
  readonly now: TapeReadings;
  /** Where to rest and read the tape again. */
  readonly rest: RestingPlace;
  /** What the tape will read with the remaining pieces on, as it is known now. */
  readonly finished: ByLevel<LevelPosterior>;
}

/**
 * Plans the rest from the tape: what has been pinned stays pinned, what the padded form is taken to read now is the new form,
 * and a layer is as thick as the readings have taught. With nothing pinned and nothing read it is the first plan again.
 */
export function replanFitting(input: PlanInput, soFar: PaddingSoFar): Replan {
  const first = basis(input);
  const { calibrate: learned, over } = learn(evidence(input, first, soFar));
  const from = soFar.rereads.length === 0 ? first : { ...first, targets: knownTargets(first, learned) };
  const start = knownStart(from, soFar, learned);
  const targets = levelNames.map((name) =>
    openTargets(from.targets[name].quarters, learned.levels[name], soFar.pinned.length > 0),
  );
  const counted = shapingLayer(start, soFar, learned);
  const shaped = () =>
    shapePieces(
      shapingProblem(from, { ...start, layer: counted }, targets),
      input.finishingBatting === undefined ? null : stackedThickness(learned.finishing),
    );
  const laid =
    leftAsCut(from, start, targets, soFar, learned) ?? shaped().map((piece) => atStackedThickness(piece, learned));
  const agreement = hasReadPadding(soFar) ? onTarget : tapeAgreement;
  const assembled = (at: Start, pieces: readonly LaidPiece[]) => assemblePlan(input, from, at, pieces, agreement);
  const likely = assembled(start, laid);
  const share = counted.each / start.layer.each;
  const plan = share === 1 ? likely : whatStays(likely, assembled(...asCounted(start, counted, laid, share)));
  const now = knownReadings(from, learned);
  return {
    calibration: learned,
    plan,
    now,
    rest: restingPlace(plan, now, learned, (level) => (isFresh(soFar, level) ? "fresh" : "stale")),
    cutUses: useOfCut(plan.pieces, soFar.cut),
    corrections: corrections(from, start, soFar.pinned, learned),
    finished: over([...soFar.pinned, ...plan.pieces]),
  };
}

/**
 * The targets once the tape has told more about the bare form: what it truly reads takes the place of what was measured
 * of it, so that a half which is already larger than the body's is given up and the girth stays right. The body stays
 * as the first plan took it.
 */
function knownTargets({ body, targets }: Basis, learned: Calibration): ByLevel<Target> {
  return mapLevels((name) => {
    const { form, body: known } = targets[name];
    const { bare } = learned.levels[name];
    const frontArc = measured(mm(form.frontArc.value + bare.leftFront + bare.rightFront));
    const backArc = measured(mm(form.backArc.value + bare.leftBack + bare.rightBack));
    const asRead = { ...form, frontArc, backArc, girth: measured(mm(frontArc.value + backArc.value)) };
    const settled = {
      ...body.levels[name],
      frontArc: measured(known.frontArc.value),
      backArc: measured(known.backArc.value),
    };
    return { ...levelTarget(settled, asRead), form, body: known };
  });
}

/**
 * What is still asked of a level: a half that already agrees is left as it reads, so that nobody adds a piece for a hair. What
 * agrees is what the first plan calls true: with less, a plan carried out to the letter would ask for one piece more.
 */
function openTargets(quarters: QuarterReadings, now: LevelPosterior, isUnderWay: boolean): QuarterReadings {
  const agrees = (left: "leftFront" | "leftBack", right: "rightFront" | "rightBack") =>
    isUnderWay &&
    Math.abs(now.quarters[left].value + now.quarters[right].value - quarters[left] - quarters[right]) <= tapeAgreement;
  const reads = ({ quarters: q }: LevelPosterior) => q;
  const front = agrees("leftFront", "rightFront") ? reads(now) : null;
  const back = agrees("leftBack", "rightBack") ? reads(now) : null;
  return {
    leftFront: front?.leftFront.value ?? quarters.leftFront,
    rightFront: front?.rightFront.value ?? quarters.rightFront,
    leftBack: back?.leftBack.value ?? quarters.leftBack,
    rightBack: back?.rightBack.value ?? quarters.rightBack,
  };
}

/**
 * Layers that were counted thicker than they most probably are leave readings short on purpose, to be made good once
 * the tape has read the structure. A shortfall is what stays either way.
 */
const whatStays = (likely: Plan, counted: Plan): Plan => ({
  ...likely,
  shortfalls: likely.shortfalls.filter((one) =>
    counted.shortfalls.some(
      ({ level, what, sense }) => level === one.level && what === one.what && sense === one.sense,
    ),
  ),
});

/** What is pinned and what is to come, every layer as thick as it was counted. */
function asCounted(
  start: Start,
  layer: LayerThickness,
  laid: readonly LaidPiece[],
  share: number,
): readonly [Start, readonly LaidPiece[]] {
  const thicker = <Kind extends Laid>(piece: Kind): Kind => ofThickness(piece, ({ thickness }) => share * thickness);
  return [{ ...start, pinned: start.pinned.map(thicker), layer }, laid.map(thicker)];
}

/** Whether the tape has read anything over padding: what it then misses is told from where it no longer counts as right. */
const hasReadPadding = ({ rereads }: PaddingSoFar): boolean => rereads.some(({ pinned }) => pinned.length > 0);

/** Whether a level was read with just these pieces on. */
const isFresh = ({ rereads, pinned }: PaddingSoFar, level: LevelName): boolean =>
  rereads.some(
    (reread) =>
      reread.readings[`${level}Girth`] !== undefined &&
      reread.pinned.length === pinned.length &&
      reread.pinned.every((piece, i) => piece.layers === pinned[i]?.layers),
  );

function knownReadings({ targets }: Basis, learned: Calibration): TapeReadings {
  return mapLevels((name) => {
    const { girth, frontArc, backArc } = learned.levels[name];
    return shiftedReading({ girth: girth.value, frontArc: frontArc.value, backArc: backArc.value }, targets[name]);
  });
}

/** What a layer adds to a stack: its thickness less what the stack presses out of it. */
export const stackedThickness = ({ layer, stackCompression }: PosteriorThickness): number =>
  layer * (1 - stackCompression);

/**
 * The pieces that are left, just as they were cut, if with them every front and back still comes as near its target as
 * readings can tell so far: then nothing is cut anew, and the next readings tell more. Null if they do not.
 */
function leftAsCut(
  { levelSections }: Basis,
  start: Start,
  targets: readonly QuarterReadings[],
  { cut, rereads, pinned }: PaddingSoFar,
  learned: Calibration,
): readonly Piece[] | null {
  if (rereads.length === 0 || cut.length === 0) return null;
  const left = cut.filter(({ id }) => !pinned.some((piece) => piece.id === id));
  const pieces = left.map((piece) => atStackedThickness(piece, learned));
  const isTrue = levelSections.every((levelSection, level) => {
    const read = tapeQuarters(
      levelSection.outline,
      paddedThickness([...start.pinned, ...pieces], levelSection, start.layer),
    );
    const [offset, target] = [start.offsets[level] as QuarterReadings, targets[level] as QuarterReadings];
    const { quarters: now } = learned.levels[levelNames[level] as LevelName];
    const isNear = (...half: readonly (keyof QuarterReadings)[]) => {
      const finished = half.reduce((sum, part) => sum + read[part] + offset[part], 0);
      const miss = half.reduce((left, part) => left - target[part], finished);
      const gain = half.reduce((left, part) => left - now[part].value, finished);
      return Math.abs(miss) <= tapeAgreement + stillOpen * gain;
    };
    return isNear("leftFront", "rightFront") && isNear("leftBack", "rightBack");
  });
  return isTrue ? pieces : null;
}

/**
 * The share of what is still to gain that pieces to come can make up for, and readings to come will tell better. With none,
 * a tape that read just what was planned had the rest planned anew after most pieces; from a fifth to three tenths `study:loop`
 * ends as true, with fewer pieces. The upper end of that, since hands are taken for less sure than they were.
 */
const stillOpen = 0.3;

/** A piece with every layer as thick as it is taken to be in a stack. */
const atStackedThickness = <Kind extends Laid>(piece: Kind, learned: Calibration): Kind =>
  ofThickness(piece, ({ batting }) => stackedThickness(learned[batting]));

const ofThickness = <Kind extends Laid>(piece: Kind, thickness: (layer: Layer) => number): Kind => ({
  ...piece,
  layers: piece.layers.map((layer) => ({ ...layer, thickness: mm(thickness(layer)) })),
});

/** The pinned pieces at what their layers are taken to add, and what the tape reads beyond that. */
function knownStart(
  { levelSections }: Basis,
  { pinned, rereads, everPinned = [] }: PaddingSoFar,
  learned: Calibration,
): Start {
  const pieces = pinned.map((piece) => atStackedThickness(piece, learned));
  // Before anything is read the packet is taken at its word, as the first plan takes it.
  const each = stackedThickness(learned.building);
  const layer = { each, bonus: rereads.length === 0 ? 0 : learned.building.layer - each };
  const offsets = levelSections.map((levelSection, level) =>
    offsetAt(levelSection, pieces, layer, learned.levels[levelNames[level] as LevelName]),
  );
  return { pinned: pieces, offsets, layer, takenIds: [...pinned.map((piece) => piece.id), ...everPinned] };
}

/**
 * What a layer is counted as when pieces are chosen. Until a trial was made or the tape has read any padding, that is
 * so much thicker than the packet says: what is then missing is added later, and nothing has to come off again. What is
 * foretold stays most probable.
 */
function shapingLayer({ layer }: Start, soFar: PaddingSoFar, { building }: Calibration): LayerThickness {
  if (soFar.isUntried !== true || hasReadPadding(soFar)) return layer;
  const thicker = Math.exp((cautiousDeviations * building.standardDeviation) / building.layer);
  return { each: thicker * layer.each, bonus: thicker * layer.bonus };
}

const cautiousDeviations = 1.5;

function offsetAt(
  levelSection: LevelOutline,
  pieces: readonly Laid[],
  layer: LayerThickness,
  { quarters }: LevelPosterior,
) {
  const simulated = tapeQuarters(levelSection.outline, paddedThickness(pieces, levelSection, layer));
  return {
    leftFront: mm(quarters.leftFront.value - simulated.leftFront),
    rightFront: mm(quarters.rightFront.value - simulated.rightFront),
    leftBack: mm(quarters.leftBack.value - simulated.leftBack),
    rightBack: mm(quarters.rightBack.value - simulated.rightBack),
  };
}
