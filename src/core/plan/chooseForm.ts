import { torsoReadings } from "../body/levelReadings";
import type { Measurements } from "../body/measurements";
import { levelNames, mapLevels } from "../body/vocabulary";
import type { Batting } from "../material";
import { levelTarget } from "../padding/targets";
import { tapeAgreement } from "../tolerances";
import { type Millimetres, mm } from "../units";
import { formAtDepths } from "../form/formAtDepths";
import { formCurve } from "../form/formLines";
import type { FormTable } from "../form/formTable";

/**
 * One size of a table held against a body, at the body's heights: by how much the form is too large (mm, summed over the
 * levels' girths), how much girth the padding has to add (mm, summed likewise) and about how many layers that is at the waist.
 */
export interface RankedSize {
  readonly size: string;
  readonly measurements: Measurements;
  readonly shortfallTotal: Millimetres;
  readonly paddingTotal: Millimetres;
  readonly waistGain: Millimetres;
  readonly waistLayers: number;
}

/** The sizes of a table for a body, best first: shortfalls first (none is best), then the girth the padding has to add. */
export function chooseForm(body: Measurements, table: FormTable, batting: Batting): readonly RankedSize[] {
  return table.sizes
    .map(({ name, measurements }): RankedSize => {
      const { levels } = torsoReadings(body, measurements);
      const depths = mapLevels((level) => levels[level].depthBelowNape.value as number);
      const bare = formAtDepths(formCurve(measurements, {}, depths), depths, measurements.lowerEdgeBelowNape);
      const gains = levelNames.map(
        (level) => levels[level].girth.value - levelTarget(levels[level], bare[level]).form.girth.value,
      );
      const waistGain = gains[levelNames.indexOf("waist")] as number;
      return {
        size: name,
        measurements,
        shortfallTotal: mm(gains.reduce((sum, gain) => sum + (gain < -tapeAgreement ? -gain : 0), 0)),
        paddingTotal: mm(gains.reduce((sum, gain) => sum + Math.max(0, gain), 0)),
        waistGain: mm(waistGain),
        waistLayers: Math.max(0, Math.round(waistGain / (2 * Math.PI * batting.layerThickness))),
      };
    })
    .sort((a, b) => a.shortfallTotal - b.shortfallTotal || a.paddingTotal - b.paddingTotal);
}
