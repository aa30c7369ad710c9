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
    similar: null,
  });
  assert(best !== null, "there is always a material to pad with");
  return best.pads;
}

interface Search {
  readonly best: Shaped | null;
  readonly similar: SimilarCrowns | null;
}

interface Shaped {
  readonly pads: readonly Pad[];
  readonly miss: number;
}

/** Crowns stand on the rounds, so that those of another material tell something only where the rounds are of the same batting. */
interface SimilarCrowns {
  readonly inner: StackMaterial["inner"];
  readonly crowns: Knobs;
}

/**
 * Tries the divisions of one material, the finest first as long as it makes few enough pieces, then by the fewest. How many a division
 * makes is counted at crowns that were found for another: they hardly differ, and counting costs little beside steering.
 */
function divided(batch: Batch, material: StackMaterial, search: Search): Search {
  const [finest, ...coarser] = divisions.map(ground(batch, material)) as [Shaping, ...Shaping[]];
  const known = search.similar?.inner === material.inner ? search.similar.crowns : null;
  const first = known === null ? finest.crowned(null) : null;
  const crowns = known ?? (first as Crowned).crowns;
  const tries = [
    { padCount: finest.padCount(crowns), crowned: () => first ?? finest.crowned(crowns) },
    ...coarser.map((shaping) => ({ padCount: shaping.padCount(crowns), crowned: () => shaping.crowned(crowns) })),
  ];
  let { best } = search;
  for (const { padCount, crowned } of byPieces(tries)) {
    if (isTrue(best) && padCount >= best.pads.length) continue;
    const found = better(crowned(), best, batch);
    const isNew = found !== best;
    best = found;
    if (isNew && isTrue(best) && best.pads.length <= mostPieces) break;
  }
  // Ridges over the side seams come in whole plies that the tape cannot steer: where they keep it from reading true, they go.
  if (!isTrue(best)) {
    const plain = { ...batch, sides: batch.sides.map(withoutRidge) };
    best = better(ground(plain, material)(divisions[0]).crowned(null), best, batch);
  }
  return { best, similar: { inner: material.inner, crowns } };
}

/** Those that make few enough pieces as they come, then the others from few to many. */
function byPieces<Try extends { readonly padCount: number }>(tries: readonly Try[]): readonly Try[] {
  const few = tries.filter(({ padCount }) => padCount <= mostPieces);
  const many = tries.filter(({ padCount }) => padCount > mostPieces);
  return [...few, ...many.sort((a, b) => a.padCount - b.padCount)];
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
