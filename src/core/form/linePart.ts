import type { LevelName, MeasurementName } from "../body/vocabulary";

/**
 * What can be read of the bare form on one of the person's lines, in the order of the work: all around, the front, the
 * width straight across; the depth front to back is never asked for, only taken.
 */
export const lineParts = ["girth", "frontArc", "breadth", "depth"] as const;
export type LinePart = (typeof lineParts)[number];
export const askedParts: readonly LinePart[] = ["girth", "frontArc", "breadth"];

export const linePartReadings = { girth: "Girth", frontArc: "FrontArc", breadth: "Breadth", depth: "Depth" } as const;

export const linePartName = (level: LevelName, part: LinePart): MeasurementName => `${level}${linePartReadings[part]}`;
