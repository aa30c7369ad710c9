import { apexDepthFromTape } from "../body/estimates";
import type { Measurements } from "../body/measurements";
import { type ByLevel, type LevelName, levelNames } from "../body/vocabulary";
import type { Target } from "../padding/targets";
import { lengthAgreement } from "../tolerances";
import { type Millimetres, mm } from "../units";
import type { PlannedLevel, SeamShift, Shortfall, TapeReading } from "./plan";

/** A reading with the side seams re-marked as the plan says: the girth stays, front and back change places with the seam. */
export function shiftedReading({ girth, frontArc, backArc }: TapeReading, { seamBack }: Target): TapeReading {
  return { girth, frontArc: mm(frontArc + 2 * seamBack), backArc: mm(backArc - 2 * seamBack) };
}

export function seamShifts(targets: ByLevel<Target>): readonly SeamShift[] {
  return levelNames.flatMap((level): readonly SeamShift[] => {
    const { seamBack } = targets[level];
    if (seamBack === 0) return [];
    return [{ level, perSide: mm(Math.abs(seamBack)), towards: seamBack > 0 ? "back" : "front" }];
  });
}

/** How much longer the front reads at a level once its side seams are re-marked as planned (mm); the back as much shorter. */
export function frontChangeAt(shifts: readonly SeamShift[], level: LevelName): number {
  const shift = shifts.find((one) => one.level === level);
  return shift === undefined ? 0 : (shift.towards === "back" ? 2 : -2) * shift.perSide;
}

/** What padding cannot do: levels first, from the top down, then the lengths that only the form decides. */
export function shortfalls(
  levels: ByLevel<PlannedLevel>,
  body: Measurements,
  form: Measurements,
  agreement: Millimetres,
): readonly Shortfall[] {
  return [
    ...levelNames.flatMap((name) => levelShortfalls(levels[name], agreement)),
    ...lengthShortfalls(body, form),
    ...apexShortfall(body, form),
  ];
}

/**
 * The readings that the padded form will miss by more than agreement: because the form is larger there, or because levels that lie
 * too close together leave the padding no room.
 */
function levelShortfalls({ name, body, predicted }: PlannedLevel, agreement: Millimetres): readonly Shortfall[] {
  return (["girth", "frontArc", "backArc"] as const).flatMap((what): readonly Shortfall[] => {
    const miss = predicted[what] - body[what].value;
    if (Math.abs(miss) <= agreement) return [];
    return [{ what, level: name, amount: mm(Math.abs(miss)), sense: miss > 0 ? "tooLarge" : "staysShort" }];
  });
}

const formLengths = ["shoulderLength", "neckGirth", "acrossShoulders", "upperBackWidth", "shoulderDrop"] as const;

/** Lengths that padding hardly changes: told where body and form were both measured and differ by more than agreement. */
function lengthShortfalls(body: Measurements, form: Measurements): readonly Shortfall[] {
  const level: LevelName = "bust";
  return formLengths.flatMap((length): readonly Shortfall[] => {
    const [wanted, has] = [body[length], form[length]];
    if (wanted === undefined || has === undefined || Math.abs(has - wanted) <= lengthAgreement) return [];
    return [
      {
        what: "length",
        level,
        length,
        amount: mm(Math.abs(has - wanted)),
        sense: has > wanted ? "tooLarge" : "staysShort",
      },
    ];
  });
}

/**
 * The form's own bust stands at a fixed height: told where both tapes from the shoulder to the apex were read and the apexes lie
 * further apart in height than a fill above or below can hide.
 */
function apexShortfall(body: Measurements, form: Measurements): readonly Shortfall[] {
  const [wanted, has] = [apexTape(body), apexTape(form)];
  if (wanted === undefined || has === undefined || Math.abs(has - wanted) <= apexAgreement) return [];
  const amount = mm(Math.abs(apexDepthFromTape(has).value - apexDepthFromTape(wanted).value));
  return [
    { what: "length", level: "bust", length: "apexHeight", amount, sense: has > wanted ? "tooLarge" : "staysShort" },
  ];
}

function apexTape({ shoulderToApex, leftShoulderToApex, rightShoulderToApex }: Measurements): number | undefined {
  const [left, right] = [leftShoulderToApex ?? shoulderToApex, rightShoulderToApex ?? shoulderToApex];
  return left === undefined || right === undefined ? (left ?? right) : (left + right) / 2;
}

/** Apexes closer than this along the tape (mm) are filled over; the conversion from tape to height is no surer. Army 1988, RMSE 14.8 mm. */
const apexAgreement = 15;
