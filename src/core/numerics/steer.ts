/**
 * Many knobs, each mostly turning one reading, steered at once until every reading is on its target: a diagonal secant
 * (Jacobi-Newton) iteration with bounded steps that keeps the best setting it has seen. Readings may jump by a little where a
 * piece comes or goes; the best setting then stands on the nearer side of the jump. It tells a setting that is on target from one that is not.
 */
export interface Steering {
  readonly start: readonly number[];
  /** What is read at the start, where that is known already. */
  readonly startReadings?: readonly number[];
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
  readonly readings: readonly number[];
}

/** How far a secant slope may stray from its first guess, either way, before it is held: past that it measured a jump. */
const slopeRange = { least: 0.2, most: 8 } as const;

export function steer(read: (knobs: readonly number[]) => readonly number[], steering: Steering): Steered {
  let state = begin(steering.start, steering.startReadings ?? read(steering.start), steering);
  let best = state;
  let idle = 0;
  const enough = (steering.precision / 2) ** 2;
  for (let round = 0; round < steering.rounds && best.cost > enough && idle < patience; round++) {
    const knobs = state.knobs.map((_, i) => turned(i, state, steering, round >= steering.rounds / 2));
    const readings = read(knobs);
    state = {
      knobs,
      readings,
      cost: cost(knobs, readings, steering),
      slopes: state.slopes.map((slope, i) => secant(slope, i, state, knobs, readings, steering)),
      ...brackets(state, knobs, readings, steering),
    };
    idle = state.cost < best.cost * worthwhile ? 0 : idle + 1;
    if (state.cost < best.cost) best = state;
  }
  return { kind: best.cost === 0 ? "onTarget" : "nearest", knobs: best.knobs, readings: best.readings };
}

/**
 * The search ends once all readings together miss no more beyond the precision than half of it, or once so many rounds on end
 * have brought no improvement worth the while: what is left is a jump.
 */
const patience = 4;

/** An improvement that leaves more than this share of the cost is not worth another round. */
const worthwhile = 0.97;

interface State {
  readonly knobs: readonly number[];
  readonly readings: readonly number[];
  readonly cost: number;
  readonly slopes: readonly number[];
  /** The highest setting seen to read too little and the lowest seen to read too much. */
  readonly lows: readonly number[];
  readonly highs: readonly number[];
}

function begin(knobs: readonly number[], readings: readonly number[], steering: Steering): State {
  const blank: State = {
    knobs,
    readings,
    cost: cost(knobs, readings, steering),
    slopes: steering.slopes,
    lows: knobs.map(() => Number.NEGATIVE_INFINITY),
    highs: knobs.map(() => Number.POSITIVE_INFINITY),
  };
  return { ...blank, ...brackets(blank, knobs, readings, steering) };
}

/** The next setting of one knob: along the secant, or halfway into the bracket where the secant leaves it or keeps missing. */
function turned(
  i: number,
  { knobs, readings, slopes, lows, highs }: State,
  steering: Steering,
  isLate: boolean,
): number {
  const knob = knobs[i] as number;
  const miss = (readings[i] as number) - (steering.targets[i] as number);
  if (Math.abs(miss) <= steering.precision / 2) return knob;
  const bound = steering.longestStep(knob);
  const move = Math.max(-bound, Math.min(bound, -miss / (slopes[i] as number)));
  const aimed = Math.max(steering.least[i] as number, Math.min(steering.most[i] as number, knob + move));
  const [low, high] = [lows[i] as number, highs[i] as number];
  const isOutside = aimed <= low || aimed >= high;
  const isStuck = isLate && Math.abs(miss) > 3 * steering.precision;
  return low < high && high - low < 2 * bound && (isOutside || isStuck) ? (low + high) / 2 : aimed;
}

/** Brackets close in as settings are read; where neighbours have moved a reading across its bracket, it is opened again. */
function brackets(state: State, knobs: readonly number[], readings: readonly number[], { targets }: Steering) {
  const lows: number[] = [];
  const highs: number[] = [];
  for (const [i, knob] of knobs.entries()) {
    const isLow = (readings[i] as number) < (targets[i] as number);
    const [low, high] = [state.lows[i] as number, state.highs[i] as number];
    lows.push(isLow ? Math.max(low, knob) : low >= knob ? Number.NEGATIVE_INFINITY : low);
    highs.push(isLow ? (high <= knob ? Number.POSITIVE_INFINITY : high) : Math.min(high, knob));
  }
  return { lows, highs };
}

/** Sum of squares of what the readings miss beyond the precision; a knob at its end that would have to go further is excused. */
function cost(
  knobs: readonly number[],
  readings: readonly number[],
  { targets, least, most, precision }: Steering,
): number {
  let sum = 0;
  for (const [i, reading] of readings.entries()) {
    const miss = reading - (targets[i] as number);
    const isAtEnd =
      miss > 0 ? (knobs[i] as number) <= (least[i] as number) : (knobs[i] as number) >= (most[i] as number);
    if (!isAtEnd) sum += Math.max(0, Math.abs(miss) - precision) ** 2;
  }
  return sum;
}

function secant(
  slope: number,
  i: number,
  before: State,
  knobs: readonly number[],
  readings: readonly number[],
  steering: Steering,
): number {
  const guess = steering.slopes[i] as number;
  const turn = (knobs[i] as number) - (before.knobs[i] as number);
  const change = (readings[i] as number) - (before.readings[i] as number);
  // A turn that moves its reading by less than the precision says nothing about the slope.
  if (Math.abs(turn * guess) < steering.precision / 10) return slope;
  const found = Math.max(slopeRange.least * guess, Math.min(slopeRange.most * guess, change / turn));
  return (slope + found) / 2;
}
