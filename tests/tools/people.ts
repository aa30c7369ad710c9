import type { Measurements } from "../../src/core/body/measurements";
import type { Batting } from "../../src/core/material";
import { mm, ratio } from "../../src/core/units";
import { drawWholeBody, type WholeBody } from "./peopleBody";
import { chance, type Chance } from "./peopleChance";
import { drawForm, type FormKind } from "./peopleForm";
import { type SurveyName, surveyNames } from "./peopleGirths";

/**
 * Made-up people with a form and a batting each, for laws, studies and checks: the same seed gives the same person for
 * ever. Bodies come from two surveys by turns (peopleGirths, peopleBody), then somebody measures them: everything, a
 * usual lot, the girths alone, or only the three required girths. Tapes are read to the millimetre, and where both arcs
 * were read they may miss the girth by a few.
 */
export interface Person {
  readonly seed: number;
  readonly survey: SurveyName;
  readonly care: Care;
  readonly formKind: FormKind;
  readonly body: Measurements;
  readonly form: Measurements;
  readonly batting: Batting;
}

/** How much of the body was measured. */
export const cares = ["required-girths", "girths-and-lengths", "some-arcs", "all-arcs", "left-and-right"] as const;
export type Care = (typeof cares)[number];

export function person(seed: number): Person {
  const luck = chance(seed);
  const survey = surveyNames[seed % surveyNames.length] ?? "spanish";
  const whole = drawWholeBody(luck, survey);
  const care = luck.pick([
    "required-girths",
    "girths-and-lengths",
    "some-arcs",
    "all-arcs",
    "all-arcs",
    "left-and-right",
  ]);
  const { kind, form } = drawForm(luck, whole);
  return {
    seed,
    survey,
    care,
    formKind: kind,
    body: measuredBody(luck, whole, care),
    form,
    batting: drawBatting(luck),
  };
}

export const people = (count: number, firstSeed = 1): readonly Person[] =>
  Array.from({ length: count }, (_, i) => person(firstSeed + i));

/** Compressed thickness of one layer, 3 to 12 mm: published lofts of one weight differ more than twofold. */
const drawBatting = (luck: Chance): Batting => ({
  name: "batting",
  layerThickness: mm(Math.round(2 * luck.between(3, 12)) / 2),
  relativeDeviation: ratio(0.4),
});

function measuredBody(luck: Chance, whole: WholeBody, care: Care): Measurements {
  const { girth } = whole;
  const required = { bustGirth: read(girth.bust), waistGirth: read(girth.waist), fullHipGirth: read(girth.fullHip) };
  if (care === "required-girths") return required;
  const lengths = {
    ...required,
    underbustGirth: read(girth.underbust),
    highHipGirth: read(girth.highHip),
    ...measuredLengths(luck, whole),
  };
  if (care === "girths-and-lengths") return lengths;
  const levels =
    care === "some-arcs"
      ? (["bust", "waist", "fullHip"] as const)
      : (["bust", "underbust", "waist", "highHip", "fullHip"] as const);
  const arcs = levels.map((level) => measuredArcs(luck, whole, level, care));
  const breadths = luck.happens(0.25)
    ? { waistBreadth: read(whole.breadth.waist), fullHipBreadth: read(whole.breadth.fullHip) }
    : {};
  const bustBreadth = luck.happens(0.1) ? { bustBreadth: read(whole.breadth.bust) } : {};
  return Object.assign({}, lengths, ...arcs, breadths, bustBreadth) as Measurements;
}

const read = (value: number) => mm(Math.round(value));

function measuredLengths(luck: Chance, whole: WholeBody): Measurements {
  const bothApexes = luck.happens(0.3);
  return {
    ...(bothApexes
      ? { leftShoulderToApex: read(whole.leftShoulderToApex), rightShoulderToApex: read(whole.rightShoulderToApex) }
      : { shoulderToApex: read((whole.leftShoulderToApex + whole.rightShoulderToApex) / 2) }),
    apexToApex: read(whole.apexToApex),
    napeToWaist: read(whole.napeToWaist),
    waistToFullHip: read(whole.waistToFullHip),
    ...(luck.happens(0.6) ? { waistToHighHip: read(whole.waistToHighHip) } : {}),
    ...(luck.happens(0.4)
      ? {
          shoulderLength: read(whole.shoulderLength),
          neckGirth: read(whole.neckGirth),
          upperArmGirth: read(whole.upperArmGirth),
          wristGirth: read(whole.wristGirth),
        }
      : {}),
  };
}

/** Front and back arc, or the front arc alone; with "left-and-right" care the four quarters besides. */
function measuredArcs(luck: Chance, whole: WholeBody, level: keyof WholeBody["girth"], care: Care): Measurements {
  const girth = whole.girth[level];
  const front = girth * whole.frontShare[level];
  const back = girth - front;
  const missed = Math.max(-4, Math.min(4, luck.normal(0, 1.5)));
  if (care !== "left-and-right") {
    const alone = luck.happens(0.3);
    return { [`${level}FrontArc`]: read(front), ...(alone ? {} : { [`${level}BackArc`]: read(back + missed) }) };
  }
  return {
    [`${level}FrontArc`]: read(front),
    [`${level}BackArc`]: read(back),
    [`${level}LeftFrontArc`]: read((front + whole.leftMore.front) / 2),
    [`${level}RightFrontArc`]: read((front - whole.leftMore.front) / 2),
    [`${level}LeftBackArc`]: read((back + whole.leftMore.back) / 2),
    [`${level}RightBackArc`]: read((back - whole.leftMore.back) / 2),
  };
}

/** A person as a fitting file in millimetres, as somebody could have typed it. */
export const fittingFileOf = ({ body, form, batting }: Pick<Person, "body" | "form" | "batting">) => ({
  version: 1,
  unit: "mm",
  body,
  form,
  batting: { name: batting.name, layerThickness: batting.layerThickness, spread: batting.relativeDeviation },
});
