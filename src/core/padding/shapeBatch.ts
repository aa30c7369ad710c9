import type { QuarterReadings } from "../body/levelReadings";
import { assert } from "../result";
import { tapeAgreement } from "../tolerances";
import { type Batch, type Division, ground, type SideWish } from "./batch";
import type { StackMaterial } from "./hill";
import type { Pad } from "./pad";
import type { Crowned, Knobs, Shaping } from "./shape";

/**
 * The pads that take the tape from where it stands to its targets, pinned ones left out, in no particular order. The stacks
 * are first divided finely; if that makes more pieces than a person wants to cut, the pads are made of more plies. With two
 * battings every sensible use of them is tried, and the fewest pieces that read true are taken. Only what may be taken is trimmed.
 */
export function shapeBatch(batch: Batch): readonly Pad[] {
  const { best } = materials(batch.layers).reduce<Search>((search, material) => divided(batch, material, search), {
    best: null,
    heights: null,
    inner: null,
  });
  assert(best !== null, "there is always a material to pad with");
  return best.pads;
}

interface Search {
  readonly best: Shaped | null;
  /** How high the padding was found to stand over the form, rounds counted in (mm, in the order of the knobs): any material comes near it. */
  readonly heights: Knobs | null;
  /** What the rounds of the last material were made of: on others a count at those heights says little. */
  readonly inner: StackMaterial["inner"] | null;
}

interface Shaped {
  readonly pads: readonly Pad[];
  readonly miss: number;
}

/**
 * Tries the divisions of one material: the finest that makes few enough pieces, then coarser ones, or else by the fewest pieces. How many a
 * division makes is counted at the crowns last found, for another division or another material: counting costs little beside steering.
 */
function divided(batch: Batch, material: StackMaterial, search: Search): Search {
  const { roundHeights, divided: shapingOf } = ground(batch, material);
  const rounds = roundHeights.flatMap((height) => [height, height, height, height]);
  let crowns: Knobs | null = search.heights?.map((height, i) => Math.max(0, height - (rounds[i] as number))) ?? null;
  let { best } = search;
  const shapings = divisions.map(shapingOf);
  let left: readonly Shaping[] = shapings;
  let tooMany: readonly Crowned[] = [];
  let isOwnGround = search.inner === material.inner;
  if (isTrue(best) && !isOwnGround) {
    // On other rounds first the coarsest: if that makes no fewer pieces than a true best, none of its material does.
    const coarsest = (shapings[shapings.length - 1] as Shaping).crowned(crowns);
    if (coarsest.padCount >= best.pads.length) return search;
    crowns = coarsest.crowns;
    isOwnGround = true;
  }
  let next = crowns !== null && isOwnGround ? nextToTry(left, crowns, best) : left[0];
  while (next !== undefined) {
    const tried = next;
    const found = tried.crowned(crowns);
    const taken = found.padCount > mostPieces ? best : better(found, best, batch);
    if (found.padCount > mostPieces) tooMany = [...tooMany, found];
    const isTaken = taken !== best;
    [best, crowns, left] = [taken, found.crowns, left.filter((shaping) => shaping !== tried)];
    if (isTaken && isTrue(best)) break;
    next = nextToTry(left, crowns, best);
  }
  for (const found of [...tooMany].sort((a, b) => a.padCount - b.padCount)) best = better(found, best, batch);
  // Ridges over the side seams come in whole plies that the tape cannot steer: where they keep it from reading true, they go.
  if (!isTrue(best)) {
    const plain = { ...batch, sides: batch.sides.map(withoutRidge) };
    best = better(ground(plain, material).divided(divisions[0]).crowned(null), best, batch);
  }
  const heights = crowns?.map((crown, i) => crown + (rounds[i] as number)) ?? null;
  return { best, heights, inner: material.inner };
}

/** Of the divisions that are left: the finest that makes few enough pieces, or the one with the fewest; none that cannot beat a true best. */
function nextToTry(left: readonly Shaping[], crowns: Knobs, best: Shaped | null): Shaping | undefined {
  const counted = left
    .map((shaping) => ({ shaping, padCount: shaping.padCount(crowns) }))
    .filter(({ padCount }) => !isTrue(best) || padCount < best.pads.length);
  const few = counted.find(({ padCount }) => padCount <= mostPieces);
  return (few ?? [...counted].sort((a, b) => a.padCount - b.padCount)[0])?.shaping;
}

const isTrue = (shaped: Shaped | null): shaped is Shaped => shaped !== null && shaped.miss <= tapeAgreement;

/** A breadth nobody is sure of raises no ridge. */
const withoutRidge = (side: SideWish): SideWish => ({ ...side, spread: Math.max(side.spread, side.left, side.right) });

/** True readings first, then fewer pieces; what has no fewer than a true one is not even trimmed. */
function better(found: Crowned, best: Shaped | null, { targets }: Batch): Shaped {
  if (isTrue(best) && found.padCount >= best.pads.length) return best;
  const { pads, readings } = found.trimmed();
  const shaped = { pads, miss: worstMiss(readings, targets) };
  return best === null || isBetter(shaped, best) ? shaped : best;
}

function isBetter(found: Shaped, best: Shaped): boolean {
  if (found.miss > Math.max(best.miss, tapeAgreement)) return false;
  return found.pads.length < best.pads.length || (best.miss > tapeAgreement && found.miss < best.miss);
}

const worstMiss = (readings: readonly QuarterReadings[], targets: readonly QuarterReadings[]): number =>
  Math.max(
    ...readings.map((read, level) => {
      const target = targets[level] as QuarterReadings;
      const front = read.leftFront + read.rightFront - target.leftFront - target.rightFront;
      const back = read.leftBack + read.rightBack - target.leftBack - target.rightBack;
      return Math.max(Math.abs(front), Math.abs(back), Math.abs(front + back));
    }),
  );

/** One batting for everything; with a second one, that on the outside or that for everything. */
function materials({ building, finishing }: Batch["layers"]): readonly StackMaterial[] {
  const build = { batting: "building", layer: building } as const;
  const one: StackMaterial = { inner: build, outer: build };
  if (finishing === null) return [one];
  const finish = { batting: "finishing", layer: finishing } as const;
  return [one, { inner: build, outer: finish }, { inner: finish, outer: finish }];
}

/** A plan should not ask for more pieces than this. */
const mostPieces = 16;

const divisions: readonly [Division, ...Division[]] = [
  { front: 5, back: 4, cup: 3 },
  { front: 4, back: 3, cup: 2 },
  { front: 3, back: 2, cup: 2 },
  { front: 2, back: 2, cup: 2 },
];
