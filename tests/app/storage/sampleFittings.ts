import type { Fitting } from "../../../src/document/fitting";
import { readFitting } from "../../../src/document/readFitting";

/** Invented people and forms to keep, damage and send round. */
export function fittingFrom(file: unknown): Fitting {
  const read = readFitting(file);
  if (!read.ok) throw new Error(`the sample is no fitting: ${JSON.stringify(read.problem)}`);
  return read.value;
}

const bare = {
  version: 1,
  unit: "cm",
  title: "Odile, spring jacket",
  notes: "Stands very straight; breathes high.",
  body: { bustGirth: 89.8, waistGirth: "76,5 cm", fullHipGirth: "38 1/2 in", waistFrontArc: 41.2 },
  form: { bustGirth: 84, waistGirth: 64, fullHipGirth: 90 },
  batting: { name: "cotton, the thick one", layerThickness: "6 mm" },
};

export const sampleFitting: Fitting = fittingFrom(bare);

/** The sample with another waist: a different number gives a different fitting. */
export const sampleWithWaist = (waist: number): Fitting =>
  fittingFrom({ ...bare, body: { ...bare.body, waistGirth: waist } });

export const sampleTitled = (title: string, id?: string): Fitting =>
  fittingFrom({ ...bare, title, ...(id === undefined ? {} : { id }) });

export const waistOf = (fitting: Fitting): unknown => fitting.body.waistGirth;
