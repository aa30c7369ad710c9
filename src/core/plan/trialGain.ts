import { type Millimetres, mm } from "../units";

/** Turns of the trial's strip. */
export const trialTurns = 3;

/**
 * What the strip adds to the waist for each millimetre that one layer is thick under the tape: a turn around anything without hollows
 * adds 2 pi times its thickness (Steiner's formula).
 */
const gainOfThickness = 2 * Math.PI * trialTurns;

/** What the trial's strip adds to the waist of the bare form where one layer is so thick under the tape (mm). */
export const trialGain = (layer: Millimetres): Millimetres => mm(gainOfThickness * layer);

/** How thick one layer is under the tape where the trial's strip adds so much to the waist of the bare form (mm). */
export const layerOfTrial = (gain: Millimetres): Millimetres => mm(gain / gainOfThickness);
