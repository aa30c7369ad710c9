import type { BattingRole } from "../material";
import type { Pad } from "../padding/pad";
import { addPad, type Station } from "../padding/stack";

/**
 * What one layer of a batting is worth under the tape (mm), and how much of that every further layer of a stack loses because the
 * ones over it press on it: n layers are worth layer · (1 + (n − 1)(1 − squeeze)). With no squeeze, layers simply add.
 * Published tests only say that thickness falls with pressure (van Wyk, J. Textile Inst. 37, T285, 1946, cited from memory); the readings
 * decide how much.
 */
export interface LayerWorth {
  readonly layer: number;
  readonly squeeze: number;
}

export type Worths = { readonly [role in BattingRole]: LayerWorth };

/** The compressed thickness (mm) of pinned pads at each point of the outline at one height, for given worths of their layers. */
export function worthThickness(pads: readonly Pad[], worths: Worths, station: Station): Float64Array {
  const building = layerCounts(pads, "building", station);
  const finishing = layerCounts(pads, "finishing", station);
  return building.map((count, i) => {
    const other = finishing[i] as number;
    const whole = count + other;
    if (whole === 0) return 0;
    // One layer of the stack, wherever it lies in it, keeps its whole worth: shared between the battings as they are.
    const free = Math.min(1, whole) / whole;
    const worth = (layers: number, { layer, squeeze }: LayerWorth) => layers * layer * (1 - squeeze * (1 - free));
    return worth(count, worths.building) + worth(other, worths.finishing);
  });
}

/** How many layers lie at each point, edges that are pulled thin counted in part. */
function layerCounts(pads: readonly Pad[], role: BattingRole, station: Station): Float64Array {
  const counts = new Float64Array(station.outline.count);
  for (const pad of pads) if (pad.batting === role) addPad(counts, pad, station, pad.plies);
  return counts;
}
