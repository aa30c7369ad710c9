import type { LengthUnit } from "../core/lengthText";
import type { Fitting } from "../document/fitting";
import { battingWords } from "./text/batting";

/**
 * The fitting a person starts with: nothing measured, a form of the commonest table in whatever size suits the body,
 * and a wadding of the weight that is used for padding, until she says otherwise.
 */
export const newFitting = (unit: LengthUnit): Fitting => ({
  version: 1,
  unit,
  title: "",
  notes: "",
  body: {},
  form: { table: "misses" },
  batting: { name: battingWords.usual, layerThickness: usualLayer },
  drafts: { body: {}, form: {}, other: {} },
  settings: { roundInches: "1/8" },
  work: [],
  extra: {},
});

/** Bonded wadding of 140 to 170 g/m² under a snug tape: 4 to 8 mm a layer, a guess to be overwritten by the tape. */
const usualLayer = "6 mm";

/** Inches where the language of the browser is that of a country that sews in inches. */
export const unitOfLanguage = (language: string): LengthUnit => (/^en(-US|-LR)?$|-US$/.test(language) ? "in" : "cm");
