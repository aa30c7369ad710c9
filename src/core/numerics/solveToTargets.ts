/**
 * Many parameters, each mostly moving one reading, moved at once until every reading is on its target: a diagonal secant
 * (Jacobi-Newton) iteration with bounded steps that keeps the best setting it has seen. Readings may jump by a little where a
 * piece comes or goes; the best setting then stands on the nearer side of the jump. It tells a setting that is on target from one that is not.
 */
export interface TargetProblem {
  readonly start: readonly number[];
  /** What is read at the start, where that is known already. */
  readonly startReadings?: readonly number[];
  readonly targets: readonly number[];
  readonly least: readonly number[];
  readonly most: readonly number[];
  /** A first guess of how much a reading moves for one unit of its parameter. */
  readonly slopes: readonly number[];
  readonly longestStep: (parameter: number) => number;
  readonly precision: number;
  readonly rounds: number;
}

export interface TargetSolution {
  readonly kind: "onTarget" | "nearest";
  readonly parameters: readonly number[];
  readonly readings: readonly number[];
}

/** How far a secant slope may stray from its first guess, either way, before it is held: past that it measured a jump. */
const slopeRange = { least: 0.2, most: 8 } as const;

export function solveToTargets(
  read: (parameters: readonly number[]) => readonly number[],
  problem: TargetProblem,
): TargetSolution {
  let state = begin(problem.start, problem.startReadings ?? read(problem.start), problem);
  let best = state;
  let idle = 0;
  const enough = (problem.precision / 2) ** 2;
  for (let round = 0; round < problem.rounds && best.cost > enough && idle < patience; round++) {
    const parameters = state.parameters.map((_, i) => turned(i, state, problem, round >= problem.rounds / 2));
    const readings = read(parameters);
    state = {
      parameters,
      readings,
      cost: cost(parameters, readings, problem),
      slopes: state.slopes.map((slope, i) => secant(slope, i, state, parameters, readings, problem)),
      ...brackets(state, parameters, readings, problem),
    };
    idle = state.cost < best.cost * worthwhile ? 0 : idle + 1;
    if (state.cost < best.cost) best = state;
  }
  return { kind: best.cost === 0 ? "onTarget" : "nearest", parameters: best.parameters, readings: best.readings };
}

/**
 * The search ends once all readings together miss no more beyond the precision than half of it, or once so many rounds on end
 * have brought no improvement worth the while: what is left is a jump.
 */
const patience = 4;

/** An improvement that leaves more than this share of the cost is not worth another round. */
const worthwhile = 0.97;

interface State {
  readonly parameters: readonly number[];
  readonly readings: readonly number[];
  readonly cost: number;
  readonly slopes: readonly number[];
  /** The highest setting seen to read too little and the lowest seen to read too much. */
  readonly lows: readonly number[];
  readonly highs: readonly number[];
}

function begin(parameters: readonly number[], readings: readonly number[], problem: TargetProblem): State {
  const blank: State = {
    parameters,
    readings,
    cost: cost(parameters, readings, problem),
    slopes: problem.slopes,
    lows: parameters.map(() => Number.NEGATIVE_INFINITY),
    highs: parameters.map(() => Number.POSITIVE_INFINITY),
  };
  return { ...blank, ...brackets(blank, parameters, readings, problem) };
}

/** The next setting of one parameter: along the secant, or halfway into the bracket where the secant leaves it or keeps missing. */
function turned(
  i: number,
  { parameters, readings, slopes, lows, highs }: State,
  problem: TargetProblem,
  isLate: boolean,
): number {
  const parameter = parameters[i] as number;
  const miss = (readings[i] as number) - (problem.targets[i] as number);
  if (Math.abs(miss) <= problem.precision / 2) return parameter;
  const bound = problem.longestStep(parameter);
  const move = Math.max(-bound, Math.min(bound, -miss / (slopes[i] as number)));
  const aimed = Math.max(problem.least[i] as number, Math.min(problem.most[i] as number, parameter + move));
  const [low, high] = [lows[i] as number, highs[i] as number];
  const isOutside = aimed <= low || aimed >= high;
  const isStuck = isLate && Math.abs(miss) > 3 * problem.precision;
  return low < high && high - low < 2 * bound && (isOutside || isStuck) ? (low + high) / 2 : aimed;
}

/** Brackets close in as settings are read; where neighbours have moved a reading across its bracket, it is opened again. */
function brackets(
  state: State,
  parameters: readonly number[],
  readings: readonly number[],
  { targets }: TargetProblem,
) {
  const lows: number[] = [];
  const highs: number[] = [];
  for (const [i, parameter] of parameters.entries()) {
    const isLow = (readings[i] as number) < (targets[i] as number);
    const [low, high] = [state.lows[i] as number, state.highs[i] as number];
    lows.push(isLow ? Math.max(low, parameter) : low >= parameter ? Number.NEGATIVE_INFINITY : low);
    highs.push(isLow ? (high <= parameter ? Number.POSITIVE_INFINITY : high) : Math.min(high, parameter));
  }
  return { lows, highs };
}

/** Sum of squares of what the readings miss beyond the precision; a parameter at its end that would have to go further is excused. */
function cost(
  parameters: readonly number[],
  readings: readonly number[],
  { targets, least, most, precision }: TargetProblem,
): number {
  let sum = 0;
  for (const [i, reading] of readings.entries()) {
    const miss = reading - (targets[i] as number);
    const isAtEnd =
      miss > 0 ? (parameters[i] as number) <= (least[i] as number) : (parameters[i] as number) >= (most[i] as number);
    if (!isAtEnd) sum += Math.max(0, Math.abs(miss) - precision) ** 2;
  }
  return sum;
}

function secant(
  slope: number,
  i: number,
  before: State,
  parameters: readonly number[],
  readings: readonly number[],
  problem: TargetProblem,
): number {
  const guess = problem.slopes[i] as number;
  const turn = (parameters[i] as number) - (before.parameters[i] as number);
  const change = (readings[i] as number) - (before.readings[i] as number);
  // A turn that moves its reading by less than the precision says nothing about the slope.
  if (Math.abs(turn * guess) < problem.precision / 10) return slope;
  const found = Math.max(slopeRange.least * guess, Math.min(slopeRange.most * guess, change / turn));
  return (slope + found) / 2;
}
