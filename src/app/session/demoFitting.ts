import demoFile from "../../../shared/demo-fitting.json";
import type { Fitting } from "../../document/fitting";

/** The made-up person of the demo, as reading her file gives her (a test holds both against each other): Home needs no schema for it. */
export const demoFitting = {
  drafts: { body: {}, form: {}, other: {} },
  settings: { roundInches: "1/8" },
  work: [],
  extra: {},
  ...demoFile,
} as Fitting;
