import { requiredMeasurementNames } from "../../core/body/vocabulary";
import { firstChart } from "../../core/form/formTable";
import type { LengthUnit } from "../../core/lengthText";
import type { Fitting } from "../../document/fitting";
import { formTables } from "../../document/formTables";
import { startingBatting } from "../../document/startingBatting";

/**
 * The fitting a person starts with: nothing measured, a form of the size chart of best standing that
 * gives all it needs, in whatever size suits the person, and a batting of the weight that is used for padding, until the person says otherwise.
 */
export const newFitting = (unit: LengthUnit): Fitting => ({
  version: 1,
  unit,
  title: "",
  notes: "",
  body: {},
  form: { table: firstChart(formTables, requiredMeasurementNames, undefined)?.id ?? "misses" },
  batting: startingBatting(unit),
  drafts: { body: {}, form: {}, other: {} },
  settings: { roundInches: "1/8" },
  work: [],
  extra: {},
});

/** Inches where the language of the browser is that of a country that sews in inches. */
export const unitOfLanguage = (language: string): LengthUnit => (/^en(-US|-LR)?$|-US$/.test(language) ? "in" : "cm");

/**
 * Whether the batting is only supposed: the one every fitting starts with, which nobody chose, renamed, gave another
 * thickness or tried under the tape.
 */
export function isBattingSupposed({ batting, unit, work }: Pick<Fitting, "batting" | "unit" | "work">): boolean {
  const usual = newFitting(unit).batting;
  const isUsual = batting.name === usual.name && batting.layerThickness === usual.layerThickness;
  return isUsual && !work.some(({ did }) => did === "trial");
}
