import type { StepName } from "../app/steps/step";
import type { CautionName } from "./cautions";

/**
 * What is said in a class at each step where something can hurt, the hand's own danger first. The form made ready says its own in its
 * steps. Common practice, no source.
 */
export const stepCautions: { readonly [name in StepName]?: readonly CautionName[] } = {
  "mark-lines": ["pinsIn"],
  cut: ["blades", "dust"],
  stack: ["needles", "glue"],
  pin: ["pinsIn", "pinsDropped"],
  tune: ["pinsOut", "pinsIn"],
  "carry-lines": ["needles"],
  baste: ["pinsOut", "needles"],
  "build-above": ["pinsIn", "pinsOut", "needles"],
  "correct-above": ["pinsOut", "needles"],
  "mark-armhole": ["pinsIn"],
  look: ["lifting", "base"],
  "cut-cover": ["shears"],
  "sew-cover": ["iron", "needles"],
  "fit-cover": ["pinsIn", "iron"],
  "close-cover": ["pinsOut", "iron"],
  "correct-cover": ["pinsOut", "iron"],
  "hem-cover": ["needles", "iron"],
  "waist-tape": ["needles"],
  "style-lines": ["needles"],
  "cut-arm": ["shears"],
  "sew-arm": ["iron", "needles"],
  "fill-arm": ["fiber"],
  "hang-arm": ["needles"],
  "put-away": ["pinsOut", "lifting"],
};
