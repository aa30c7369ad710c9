import type { QuarterReadings } from "../body/levelReadings";
import { symmetric } from "../numerics/symmetric";
import type { Pad } from "../padding/pad";
import type { Station } from "../padding/stack";
import { tapeQuarters } from "../tape/tape";
import { mm, ratio } from "../units";
import type { Belief, LevelBelief } from "./believed";
import { type Evidence, type Observation, observations, quarterNames } from "./evidence";
import { type Sieved, sieved, type SieveRow } from "./sieve";
import { type LayerCounts, layerCounter, type LayerWorth, worthThickness, type Worths } from "./layerWorth";
import { held, type Prior, priorState, worthCount } from "./prior";

/**
 * What the tape readings tell: the worth of a layer of each batting, and what the padded form reads now in every quarter
 * of every level, each with how sure that is. One Gaussian estimate holds it all together: the logarithm of each layer's worth, the
 * squeeze of each batting, and in every quarter what the bare form truly reads beyond what was measured of it. Each starts
 * from what is known beforehand; every reading pulls on whatever it can tell apart, weighted by its error, and no
 * further. The readings are not quite linear in the worths, so the estimate is iterated (Gauss-Newton for the most
 * probable state, with the curvature there for the spreads: Gelman et al., Bayesian Data Analysis, 3rd ed. 2013, sections 4.1 and 13.3,
 * cited from memory).
 */
export function belief(evidence: Evidence): Belief {
  const prior = priorState(evidence);
  const simulator: Simulator = { stations: evidence.stations, layers: layerCounter(evidence.stations) };
  const { rows, surprises } = sifted(evidence, prior, simulator);
  const precision = symmetric(prior.covariance).inverse();
  let state = prior.mean;
  let covariance = prior.covariance;
  for (let round = 0; round < gaussNewtonRounds; round++) {
    const tell = teller(state, simulator);
    const linear = rows.map((row) => linearised(row, state, tell));
    const information = precision.map((line) => [...line]);
    const pull = precision.map((line) => line.reduce((sum, weight, j) => sum + weight * (prior.mean[j] as number), 0));
    for (const { slope, value, observed } of linear) {
      const weight = 1 / evidence.readingError ** 2;
      const target = observed - value + slope.reduce((sum, s, j) => sum + s * (state[j] as number), 0);
      for (let i = 0; i < slope.length; i++) {
        const s = slope[i] as number;
        if (s === 0) continue;
        pull[i] = (pull[i] as number) + weight * s * target;
        const line = information[i] as number[];
        for (let j = 0; j < slope.length; j++) line[j] = (line[j] as number) + weight * s * (slope[j] as number);
      }
    }
    const solved = symmetric(information);
    state = held(solved.solve(pull), prior);
    covariance = solved.inverse();
  }
  return { ...told(evidence, state, covariance, simulator), surprises };
}

/** The readings are almost linear in the worths: the third round no longer moves the state by a tenth of its spread. */
const gaussNewtonRounds = 4;

/** So many readings, the last ones, are weighed: a person takes fewer, and nobody waits for more. */
export const mostReadings = 400;

/**
 * Readings that can be, and those that cannot. A layer may turn out to be worth up to some two and a half times its packet;
 * a reading that asks for more, or for less than nothing, is to be read again first.
 */
function sifted(evidence: Evidence, prior: Prior, simulator: Simulator): Sieved {
  const tell = teller(prior.mean, simulator);
  const rows = observations(evidence)
    .slice(-mostReadings)
    .map((row): SieveRow => {
      const { value, slope } = linearised(row, prior.mean, tell);
      return { row, expected: value, slope };
    });
  const covariance = prior.covariance.map((line, i) =>
    line.map((number, j) => (i === j && (i === 0 || i === 2) ? Math.min(number, firstWorthSpread ** 2) : number)),
  );
  return sieved(rows, covariance, evidence.readingError);
}

/** The share by which a layer's worth may differ from its packet's, one spread, before the tape is read twice. */
const firstWorthSpread = 0.35;

const variance = (slope: readonly number[], covariance: Prior["covariance"]): number =>
  slope.reduce(
    (sum, s, i) =>
      sum + s * slope.reduce((line, t, j) => line + t * ((covariance[i] as readonly number[])[j] as number), 0),
    0,
  );

interface Linearised {
  readonly value: number;
  readonly slope: readonly number[];
  readonly observed: number;
}

/** The quarters of one level over some pads as the worths tell them, and how they move with each number of the worths. */
interface Told {
  readonly quarters: Quarters;
  readonly slopes: readonly Quarters[];
}

type Quarters = { readonly [name in (typeof quarterNames)[number]]: number };

/** What readings are simulated over: the levels, and how many layers of each batting any pads put there. */
interface Simulator {
  readonly stations: readonly Station[];
  readonly layers: (level: number, pinned: readonly Pad[]) => LayerCounts;
}

type Tell = (level: number, pinned: readonly Pad[]) => Told;

/** Readings of one level over the same pads share their simulation. */
function teller(state: readonly number[], { stations, layers }: Simulator): Tell {
  const known = stations.map(() => new Map<readonly Pad[], Told>());
  return (level, pinned) => {
    const byPads = known[level] as Map<readonly Pad[], Told>;
    const found = byPads.get(pinned) ?? tellLevel(stations[level] as Station, layers(level, pinned), state);
    byPads.set(pinned, found);
    return found;
  };
}

function tellLevel(station: Station, layers: LayerCounts, state: readonly number[]): Told {
  const read = (at: readonly number[]): Quarters => tapeQuarters(station.outline, worthThickness(layers, worthsOf(at)));
  const quarters = read(state);
  const slopes = Array.from({ length: worthCount }, (_, i): Quarters => {
    const role = i < 2 ? "building" : "finishing";
    if (layers[role].every((count) => count === 0)) return { leftFront: 0, rightFront: 0, leftBack: 0, rightBack: 0 };
    const moved = read(state.map((number, j) => (i === j ? number + difference : number)));
    const slope = (name: keyof Quarters) => (moved[name] - quarters[name]) / difference;
    return {
      leftFront: slope("leftFront"),
      rightFront: slope("rightFront"),
      leftBack: slope("leftBack"),
      rightBack: slope("rightBack"),
    };
  });
  return { quarters, slopes };
}

/** One reading as the state tells it, and how it moves with each number of the state (finite differences for the worths). */
function linearised(row: Omit<Observation, "name">, state: readonly number[], tell: Tell): Linearised {
  const { quarters, slopes } = tell(row.level, row.pinned);
  const slope = state.map((_, i) => (i < worthCount ? summed(row, slopes[i] as Quarters) : 0));
  let offset = 0;
  for (const [quarter, name] of quarterNames.entries()) {
    const at = worthCount + 4 * row.level + quarter;
    slope[at] = row.quarters[name];
    offset += row.quarters[name] * (state[at] as number);
  }
  return { value: summed(row, quarters) + offset, slope, observed: row.value };
}

/** The step of the differences: a hundredth of a layer's worth, or of a squeeze. */
const difference = 0.01;

const summed = ({ quarters }: Pick<Observation, "quarters">, read: Quarters): number =>
  quarterNames.reduce((sum, name) => sum + quarters[name] * read[name], 0);

const worthsOf = (state: readonly number[]): Worths => ({
  building: { layer: Math.exp(state[0] as number), squeeze: state[1] as number },
  finishing: { layer: Math.exp(state[2] as number), squeeze: state[3] as number },
});

function told(
  evidence: Evidence,
  state: readonly number[],
  covariance: Prior["covariance"],
  simulator: Simulator,
): Omit<Belief, "surprises"> {
  const worths = worthsOf(state);
  const deviation = (i: number) => Math.sqrt((covariance[i] as readonly number[])[i] as number);
  const layer = (worth: LayerWorth, at: number) => ({
    layer: mm(worth.layer),
    spread: mm(worth.layer * deviation(at)),
    least: mm(worth.layer * Math.exp(-ninety * deviation(at))),
    most: mm(worth.layer * Math.exp(ninety * deviation(at))),
    squeeze: ratio(worth.squeeze),
    squeezeSpread: ratio(deviation(at + 1)),
  });
  return {
    building: layer(worths.building, 0),
    finishing: layer(worths.finishing, 2),
    levels: evidence.stations.map((_, level) => levelBelief(evidence, level, state, covariance, simulator)),
  };
}

/** Half the width of an interval that holds the truth nine times in ten, in spreads of a Gaussian. */
const ninety = 1.645;

/** What a level reads now, with what is pinned, and how sure that is: the worths' and the bare form's uncertainty together. */
function levelBelief(
  evidence: Evidence,
  level: number,
  state: readonly number[],
  covariance: Prior["covariance"],
  simulator: Simulator,
): LevelBelief {
  const pinned = evidence.pinnedNow;
  const simulation = teller(state, simulator);
  const quarter = (name: (typeof quarterNames)[number]) => tell({ [name]: 1 });
  const tell = (parts: Partial<QuarterReadings> | { readonly [name: string]: number }) => {
    const quarters = { leftFront: 0, rightFront: 0, leftBack: 0, rightBack: 0, ...parts };
    const { value, slope } = linearised({ level, pinned, quarters, value: 0 }, state, simulation);
    return { value: mm(value), spread: mm(Math.sqrt(Math.max(0, variance(slope, covariance)))) };
  };
  const quarters = {
    leftFront: quarter("leftFront"),
    rightFront: quarter("rightFront"),
    leftBack: quarter("leftBack"),
    rightBack: quarter("rightBack"),
  };
  const simulated = simulation(level, pinned).quarters;
  return {
    quarters,
    girth: tell({ leftFront: 1, rightFront: 1, leftBack: 1, rightBack: 1 }),
    frontArc: tell({ leftFront: 1, rightFront: 1 }),
    backArc: tell({ leftBack: 1, rightBack: 1 }),
    simulated: {
      leftFront: mm(simulated.leftFront),
      rightFront: mm(simulated.rightFront),
      leftBack: mm(simulated.leftBack),
      rightBack: mm(simulated.rightBack),
    },
  };
}
