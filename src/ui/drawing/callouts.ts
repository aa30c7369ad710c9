/**
 * Where to hang numbers round a section so that their leaders run straight outwards and do not crowd: each asks for a
 * direction among those it may have, and the choosiest choose first. Angles in radians in the picture's own sense.
 */
export interface CalloutWish {
  readonly allowed: readonly number[];
}

/** One direction for each wish, in their order; a wish without any allowed direction gets null. */
export function calloutDirections(
  wishes: readonly CalloutWish[],
  taken: readonly number[],
): readonly (number | null)[] {
  const chosen: (number | null)[] = wishes.map(() => null);
  const used = [...taken];
  const order = wishes.map((_, i) => i).sort((a, b) => breadthOf(wishes[a]) - breadthOf(wishes[b]) || a - b);
  for (const i of order) {
    const allowed = wishes[i]?.allowed ?? [];
    const best = allowed.reduce<{ angle: number; room: number } | null>((found, angle) => {
      const room = Math.min(enoughRoom, ...used.map((other) => turnBetween(angle, other)));
      return found === null || room > found.room ? { angle, room } : found;
    }, null);
    if (best === null) continue;
    chosen[i] = best.angle;
    used.push(best.angle);
  }
  return chosen;
}

/** Numbers this far apart never touch (radians, about 11 degrees): beyond it the first allowed direction is best. */
const enoughRoom = 0.19;

const breadthOf = (wish: CalloutWish | undefined): number => wish?.allowed.length ?? 0;

const turnBetween = (a: number, b: number): number => {
  const turn = Math.abs(a - b) % (2 * Math.PI);
  return Math.min(turn, 2 * Math.PI - turn);
};
