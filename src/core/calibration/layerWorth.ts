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

/** How many layers of each batting lie at each point of an outline, edges that are pulled thin counted in part. */
export type LayerCounts = { readonly [role in BattingRole]: Float64Array };

/** Counts the layers of pinned pads at a level, once for every list of pads and once for every pad. */
export function layerCounter(stations: readonly Station[]): (level: number, pads: readonly Pad[]) => LayerCounts {
  const known = stations.map(() => new Map<readonly Pad[], LayerCounts>());
  const layersOf = stations.map(padLayers);
  return (level, pads) => {
    const byPads = known[level] as Map<readonly Pad[], LayerCounts>;
    const found = byPads.get(pads) ?? countLayers(pads, stations[level] as Station, layersOf[level] as PadLayers);
    byPads.set(pads, found);
    return found;
  };
}

/** The layers of one pad at each point of an outline; null where it does not reach that height. */
type PadLayers = (pad: Pad) => Float64Array | null;

function padLayers(station: Station): PadLayers {
  const known = new WeakMap<Pad, { readonly layers: Float64Array | null }>();
  return (pad) => {
    const found = known.get(pad);
    if (found !== undefined) return found.layers;
    const total = new Float64Array(station.outline.count);
    const layers = addPad(total, pad, station, pad.plies) ? total : null;
    known.set(pad, { layers });
    return layers;
  };
}

function countLayers(pads: readonly Pad[], { outline: { count } }: Station, layersOf: PadLayers): LayerCounts {
  const counts = { building: new Float64Array(count), finishing: new Float64Array(count) };
  for (const pad of pads) {
    const layers = layersOf(pad);
    const total = counts[pad.batting];
    if (layers !== null) for (let i = 0; i < count; i++) total[i] = (total[i] as number) + (layers[i] as number);
  }
  return counts;
}

/** The compressed thickness (mm) of counted layers at each point of the outline, for given worths of a layer. */
export function worthThickness({ building, finishing }: LayerCounts, worths: Worths): Float64Array {
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
