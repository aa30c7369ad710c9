import type { LevelReadings, QuarterReadings } from "../body/levelReadings";
import { estimated, type Reading } from "../body/reading";
import type { Section } from "../body/section";
import { sectionOfLengths } from "../body/sectionOfLengths";
import type { FormLevel } from "../form/formAtDepths";
import { arcMovesByDeviations, leastSeamShift, mostSeamShift, tapeAgreement } from "../tolerances";
import { mm } from "../units";
import { frontShareOfGain } from "../body/estimates";

/**
 * What the tape must read at one level, over the padding, in the four quarters between centre front, the bare form's
 * side seams and centre back; with everything that had to give way to get there.
 */
export interface Target {
  readonly quarters: QuarterReadings;
  /** The body as the plan takes it: its arcs, where nobody read them, follow from the form's and the gain. */
  readonly body: { readonly girth: Reading; readonly frontArc: Reading; readonly backArc: Reading };
  /** The bare form, an estimated arc of it moved where the body asks for that. */
  readonly form: FormLevel;
  /** How far the side seam is re-marked on each side (mm), positive towards the back. */
  readonly seamBack: number;
  /** No padding at all here: the form is already larger round than the body. */
  readonly isTooLarge: boolean;
}

/**
 * Works out the target at a level in the order of giving way of the model: estimates first, then the seam, then a
 * shortfall.
 */
export function levelTarget(body: LevelReadings, form: FormLevel): Target {
  const known = bodyArcs(body, form);
  const gain = body.girth.value - form.girth.value;
  if (form.known.kind === "off") return unpadded(known, body, form);
  const isTooLarge = gain < -tapeAgreement;
  const settled = isTooLarge ? form : moveFormArcs(form, known.frontArc.value, known.backArc.value);
  const girth = Math.max(body.girth.value, settled.girth.value);
  const [bareFront, bareBack] = [settled.frontArc.value, settled.backArc.value];
  // Girth before arcs: what one half cannot lose, the other half gives up.
  const front = isTooLarge ? bareFront : Math.min(girth - bareBack, Math.max(bareFront, known.frontArc.value));
  const seamBack = seamMove(front, girth - front, known);
  return {
    quarters: quarterTargets(body.quarters, front, girth - front, bareFront, bareBack),
    body: { girth: body.girth, ...known },
    form: settled,
    seamBack,
    isTooLarge,
  };
}

/** Below the form's lower edge nothing can be pinned: the target is the bare form. */
function unpadded(known: Arcs, { girth }: LevelReadings, form: FormLevel): Target {
  const [front, back] = [form.frontArc.value, form.backArc.value];
  return {
    quarters: quarterTargets(null, front, back, front, back),
    body: { girth, ...known },
    form,
    seamBack: 0,
    isTooLarge: true,
  };
}

interface Arcs {
  readonly frontArc: Reading;
  readonly backArc: Reading;
}

/** The body's arcs; where nobody read them, the form's and two parts of the gain in front to one behind. */
function bodyArcs(body: LevelReadings, form: FormLevel): Arcs {
  if (body.frontArc.kind === "measured" || body.backArc.kind === "measured") {
    return { frontArc: body.frontArc, backArc: body.backArc };
  }
  const gain = body.girth.value - form.girth.value;
  const share = gain > 0 ? frontShareOfGain : form.frontArc.value / form.girth.value;
  const front = form.frontArc.value + share * gain;
  return {
    frontArc: estimated(mm(front), body.frontArc.standardDeviation),
    backArc: estimated(mm(body.girth.value - front), body.backArc.standardDeviation),
  };
}

/**
 * Where a half of the form reads more than the body's and nobody read it, it is taken as smaller, within its standard
 * deviation.
 */
function moveFormArcs(form: FormLevel, front: number, back: number): FormLevel {
  const { frontArc, backArc, girth } = form;
  if (frontArc.kind === "measured" || backArc.kind === "measured") return form;
  const most = arcMovesByDeviations * frontArc.standardDeviation;
  const overFront = Math.max(0, Math.min(most, frontArc.value - front));
  const overBack = Math.max(0, Math.min(most, backArc.value - back));
  if (overFront === 0 && overBack === 0) return form;
  const moved: FormLevel = {
    ...form,
    frontArc: estimated(mm(frontArc.value - overFront + overBack), frontArc.standardDeviation),
    backArc: estimated(mm(backArc.value + overFront - overBack), backArc.standardDeviation),
  };
  const { section } = form;
  return { ...moved, girth, section: resolved(section, moved) };
}

/** The same breadth and exponents with other lengths in front and behind; a traced section is what it is. */
const resolved = (section: Section, { frontArc, backArc }: FormLevel): Section =>
  "frontDepth" in section ? sectionOfLengths(section, frontArc.value, backArc.value) : section;

/** The seam moves so that what the halves miss their readings by is shared, up to the most a seam may be re-marked. */
function seamMove(front: number, back: number, want: Arcs): number {
  if (want.frontArc.kind === "estimated") return 0;
  const missFront = front - want.frontArc.value;
  const missBack = back - want.backArc.value;
  const move = Math.max(-mostSeamShift, Math.min(mostSeamShift, (missBack - missFront) / 4));
  return Math.abs(move) < leastSeamShift ? 0 : move;
}

/**
 * Each quarter's reading, no quarter below the bare form's: padding takes nothing away, the other side then keeps the
 * half right.
 */
function quarterTargets(
  body: QuarterReadings | null,
  front: number,
  back: number,
  bareFront: number,
  bareBack: number,
): QuarterReadings {
  const split = (whole: number, bare: number, left: number, right: number): readonly [number, number] => {
    const ideal = (whole * left) / (left + right);
    const held = Math.min(whole - bare / 2, Math.max(bare / 2, ideal));
    return [held, whole - held];
  };
  const [leftFront, rightFront] = split(front, bareFront, body?.leftFront ?? 1, body?.rightFront ?? 1);
  const [leftBack, rightBack] = split(back, bareBack, body?.leftBack ?? 1, body?.rightBack ?? 1);
  return { leftFront: mm(leftFront), rightFront: mm(rightFront), leftBack: mm(leftBack), rightBack: mm(rightBack) };
}
