import { type Cloth, cutFactors } from "./cloth";
import { finishPanel, type PanelLengths } from "./finishPanel";
import { layStrip } from "./layStrip";
import { mirroredMesh, type PanelMesh, pointsPerRow } from "./panelMesh";
import { mirroredShape, type PanelShape, scaledShape } from "./panelShape";
import { relaxPanel } from "./relaxPanel";
import { turnToGrain } from "./turnToGrain";

/** A panel ready to be drawn: its shape on the cloth, and the lengths that its rows and edges have there (mm). */
export interface FlatPanel {
  readonly shape: PanelShape;
  readonly lengths: PanelLengths;
}

/**
 * A panel of the surface laid flat in three steps, since no panel of a torso lies flat by itself: as a strip with exact
 * edges and widths, relaxed until everything in it is strained as little as can be, and finished so that edges and widths
 * are exact again. Then it is set to the lengths of the cloth, and turned to its grain.
 */
export function flattenPanel(mesh: PanelMesh, cloth: Cloth): FlatPanel {
  const own = surfaceLengths(mesh);
  const flat = turnToGrain(finishPanel(relaxPanel(layStrip(mesh), mesh), own));
  const { across, along } = cutFactors(cloth);
  if (across === 1 && along === 1) return { shape: flat, lengths: own };
  const lengths = {
    widths: own.widths.map((width) => width * across),
    first: own.first.map((step) => step * along),
    last: own.last.map((step) => step * along),
  };
  return { shape: turnToGrain(finishPanel(scaledShape(flat, across, along), lengths)), lengths };
}

/** A panel of the other side of the body: laid as the mirror image of this one would be, so that both sides come out alike. */
export function flattenMirrored(mesh: PanelMesh, cloth: Cloth): FlatPanel {
  const { shape, lengths } = flattenPanel(mirroredMesh(mesh), cloth);
  return { shape: mirroredShape(shape), lengths: { ...lengths, first: lengths.last, last: lengths.first } };
}

const surfaceLengths = ({ widths, steps }: PanelMesh): PanelLengths => ({
  widths,
  first: steps[0] as Float64Array,
  last: steps[pointsPerRow - 1] as Float64Array,
});
