/**
 * Many knobs, each mostly turning one reading, steered at once until every reading is on its target: a diagonal secant
 * (Jacobi-Newton) iteration with bounded steps that keeps the best setting it has seen. Readings may jump by a little where a
 * piece comes or goes; the best setting then stands on the nearer side of the jump. It tells a setting that is on target from one that is not.
 */
export interface Steering {
  readonly start: readonly number[];
  readonly targets: readonly number[];
  readonly least: readonly number[];
  readonly most: readonly number[];
  /** A first guess of how much a reading moves for one unit of its knob. */
  readonly slopes: readonly number[];
  readonly longestStep: (knob: number) => number;
  readonly precision: number;
  readonly rounds: number;
}

export interface Steered {
  readonly kind: "onTarget" | "nearest";
  readonly knobs: readonly number[];
}

/** How far a secant slope may stray from its first guess, either way, before it is held: past that it measured a jump. */
const slopeRange = { least: 0.2, most: 8 } as const;

export function steer(read: (knobs: readonly number[]) => readonly number[], steering: Steering): Steered {
  const { targets, least, most, precision } = steering;
  let knobs = steering.start;
  let slopes = steering.slopes;
  let readings = read(knobs);
  let best = { knobs, cost: cost(knobs, readings, steering) };
  for (let step = 0; step < steering.rounds && best.cost > 0; step++) {
    const turned = knobs.map((knob, i) => {
      const miss = (readings[i] as number) - (targets[i] as number);
      if (Math.abs(miss) <= precision / 2) return knob;
      const bound = steering.longestStep(knob);
      const move = Math.max(-bound, Math.min(bound, -miss / (slopes[i] as number)));
      return Math.max(least[i] as number, Math.min(most[i] as number, knob + move));
    });
    const next = read(turned);
    slopes = slopes.map((slope, i) => secant(slope, steering.slopes[i] as number, (turned[i] as number) - (knobs[i] as number), (next[i] as number) - (readings[i] as number)));
    knobs = turned;
    readings = next;
    const now = cost(knobs, readings, steering);
    if (now < best.cost) best = { knobs, cost: now };
  }
  return { kind: best.cost === 0 ? "onTarget" : "nearest", knobs: best.knobs };
}

/** Sum of squares of what the readings miss beyond the precision; a knob at its end that would have to go further is excused. */
function cost(knobs: readonly number[], readings: readonly number[], { targets, least, most, precision }: Steering): number {
  let sum = 0;
  for (const [i, reading] of readings.entries()) {
    const miss = reading - (targets[i] as number);
    const isAtEnd = miss > 0 ? (knobs[i] as number) <= (least[i] as number) : (knobs[i] as number) >= (most[i] as number);
    if (!isAtEnd) sum += Math.max(0, Math.abs(miss) - precision) ** 2;
  }
  return sum;
}

function secant(slope: number, guess: number, turn: number, change: number): number {
  if (Math.abs(turn) < 1e-3 * Math.abs(1 / guess)) return slope;
  const found = Math.max(slopeRange.least * guess, Math.min(slopeRange.most * guess, change / turn));
  return (slope + found) / 2;
}
