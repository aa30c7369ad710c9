import { flat } from "../../core/pattern/patternPart";
import type { Plan } from "../../core/plan/plan";
import { trialHeight } from "../../core/plan/trialPiece";
import { trialTurns } from "../../core/plan/trialGain";
import type { ShapeToLay } from "./battingLayout";

/** What the strip of the trial is called on a picture. */
export const trialLabel = "T";

/** How long each turn of the strip is, from the waist of the bare form outward (mm). */
export function trialLengths({ pieces, bareForm }: Pick<Plan, "pieces" | "bareForm">): readonly number[] {
  const thickness = pieces[0]?.layers[0]?.thickness ?? 0;
  return Array.from({ length: trialTurns }, (_, i) => bareForm.waist.girth + 2 * Math.PI * thickness * (i + 0.5));
}

/** The strip of the trial, a length for each turn around the waist of the bare form, each turn over the last. */
export function trialShapes(plan: Pick<Plan, "pieces" | "bareForm">): readonly ShapeToLay[] {
  return trialLengths(plan).map((length, i) => {
    const corners = [flat(0, 0), flat(length, 0), flat(length, trialHeight), flat(0, trialHeight)];
    const id = `trial-${i + 1}`;
    const edge = { id, points: [...corners, flat(0, 0)], sewnTo: null };
    return {
      id,
      label: trialLabel,
      part: { id, kind: "batting", of: "trial", edges: [edge], lines: [], notches: [], levels: [] },
    };
  });
}
