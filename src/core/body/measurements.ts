import type { Millimetres } from "../units";
import type { MeasurementName } from "./vocabulary";

/** What was measured of a body or a form, in millimetres: only what a person read off a tape, nothing estimated. */
export type Measurements = { readonly [name in MeasurementName]?: Millimetres };
