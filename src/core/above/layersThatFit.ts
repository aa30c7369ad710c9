import { homeTape } from "../tolerances";

/** What the tape reads with so many layers on, and what it reads of the person (mm). */
export interface ReadWith {
  readonly after: number;
  readonly person: number;
}

/** More layers than this are no work for hands: the rest stays short. A judgement. */
export const mostLayers = 12;

/**
 * How many layers bring every reading as near to the person's as whole layers can, and none over it by more than
 * half of what the last layer added, or than padding that is done may be. `readWith` gives the same readings in the same order for every number of layers.
 */
export function layersThatFit(readWith: (layers: number) => readonly ReadWith[]): number {
  let layers = 0;
  while (layers < mostLayers && isRoomFor(readWith(layers), readWith(layers + 1))) layers++;
  return layers;
}

/** Whether one layer more takes no reading over the person's by more than half of what it adds. */
export const isRoomFor = (now: readonly ReadWith[], next: readonly ReadWith[]): boolean =>
  next.every(({ after, person }, i) => after - person <= asNear(after - (now[i] as ReadWith).after));

/**
 * How near whole layers come that change a reading by so much each (mm): half of it, but never further off than padding that is
 * done may be; a thick layer is then left out.
 */
export const asNear = (layerAdds: number): number => Math.min(layerAdds / 2, homeTape);
