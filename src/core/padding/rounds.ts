import type { BattingRole } from "../material";
import { roundRemainder } from "../tolerances";
import { mm } from "../units";
import { featherFor } from "./hill";
import type { Pad } from "./pad";
import type { PieceRow } from "./piece";
import { reach, type Surface } from "./surface";

/** How many whole layers go all the way round at each level, from the even part of the thickness wanted there. */
export function roundCounts(evenThickness: readonly number[], layerThickness: number): readonly number[] {
  return evenThickness.map((even) => Math.max(0, Math.floor(even / layerThickness + roundRemainder)));
}

/**
 * The rounds: layers that go all the way round, each over the run of levels that want it and fading out between the last of them
 * and the next. Rounds over the same run are wound as one strip of several plies. Longest runs come first.
 */
export function roundPads(
  counts: readonly number[],
  surface: Surface,
  { batting, layer }: RoundMaterial,
): readonly Pad[] {
  const most = Math.max(0, ...counts);
  const layers = Array.from({ length: most }, (_, number) => runsAbove(counts, number)).flat();
  const together = layers.filter((run, i) => layers.findIndex((other) => isSame(run, other)) === i);
  return together
    .map((run) => roundPad(run, layers.filter((other) => isSame(run, other)).length, surface, { batting, layer }))
    .sort((a, b) => height(b) - height(a));
}

export interface RoundMaterial {
  readonly batting: BattingRole;
  readonly layer: number;
}

interface Run {
  readonly from: number;
  readonly to: number;
}

const isSame = (run: Run, other: Run) => run.from === other.from && run.to === other.to;

/** The runs of neighbouring levels that want more than this many layers. */
function runsAbove(counts: readonly number[], number: number): readonly Run[] {
  const runs: Run[] = [];
  for (const [level, count] of counts.entries()) {
    if (count <= number) continue;
    const last = runs[runs.length - 1];
    if (last !== undefined && last.to === level - 1) runs[runs.length - 1] = { from: last.from, to: level };
    else runs.push({ from: level, to: level });
  }
  return runs;
}

function roundPad(run: Run, plies: number, surface: Surface, { batting, layer }: RoundMaterial): Pad {
  const thickness = plies * layer;
  const feather = featherFor(thickness);
  const levels = surface.levelRows.map((row) => surface.drops[row] as number);
  const above = levels[run.from - 1];
  const below = levels[run.to + 1];
  const [first, last] = [levels[run.from] as number, levels[run.to] as number];
  const top = first - edgeBeyond(above === undefined ? reach.aboveBust : first - above, above !== undefined, feather);
  const bottom =
    last + edgeBeyond(below === undefined ? reach.belowFullHip : below - last, below !== undefined, feather);
  return {
    zone: "round",
    batting,
    plies,
    thickness: mm(thickness),
    feather: mm(feather),
    rows: roundRows(top, bottom, surface),
  };
}

/**
 * How far the edge lies beyond the last level the round belongs to: so far that the level has the whole thickness, halfway to the
 * next level where there is room, and never past the next level or the padding's reach.
 */
const edgeBeyond = (gap: number, hasNext: boolean, feather: number): number =>
  Math.min(gap, Math.max(feather, hasNext ? gap / 2 : Math.min(gap, feather + 10)));

function roundRows(top: number, bottom: number, surface: Surface): readonly PieceRow[] {
  const inside = surface.drops.filter((drop) => drop > top + 1 && drop < bottom - 1);
  return [top, ...inside, bottom].map((drop) => {
    const half = halfGirthAt(surface, drop);
    return { drop: mm(drop), start: mm(-half), end: mm(half) };
  });
}

function halfGirthAt({ drops, frontQuarter, backQuarter }: Surface, drop: number): number {
  const last = drops.length - 1;
  const below = Math.min(
    last,
    Math.max(
      1,
      drops.findIndex((height) => height >= drop),
    ),
  );
  const half = (row: number) => (frontQuarter[row] as number) + (backQuarter[row] as number);
  const share = (drop - (drops[below - 1] as number)) / ((drops[below] as number) - (drops[below - 1] as number));
  return half(below - 1) + (half(below) - half(below - 1)) * Math.min(1, Math.max(0, share));
}

const height = ({ rows }: Pad): number => (rows[rows.length - 1] as PieceRow).drop - (rows[0] as PieceRow).drop;
