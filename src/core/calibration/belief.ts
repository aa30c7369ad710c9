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
    state = held(solved.solve(pull));
    covariance = solved.inverse();
  }
  return { ...told(evidence, state, covariance, simulator), surprises };
}

/** The readings are almost linear in the worths: the third round no longer moves the state by a tenth of its spread. */
const gaussNewtonRounds = 4;

/**
 * Readings that can be, and those that cannot. A layer may turn out to be worth up to some two and a half times its packet;
 * a reading that asks for more, or for less than nothing, is to be read again first.
 */
function sifted(evidence: Evidence, prior: Gaussian, simulator: Simulator): Sieved {
  const tell = teller(prior.mean, simulator);
  const rows = observations(evidence).map((row): SieveRow => {
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

const variance = (slope: readonly number[], covariance: Gaussian["covariance"]): number =>
  slope.reduce(
    (sum, s, i) =>
      sum + s * slope.reduce((line, t, j) => line + t * ((covariance[i] as readonly number[])[j] as number), 0),
    0,
  );

/** State: ln layer and squeeze of the building batting, the same of the finishing batting, then the quarters of each level. */
const worthCount = 4;

interface Gaussian {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

/** Stacks were seen to lose up to a quarter: a squeeze of a tenth, give or take as much. No published figure; a judgement. */
const squeezePrior = { mean: 0.1, spread: 0.09, most: 0.4 } as const;

function priorState({ battings, stations, bareSpreads }: Evidence): Gaussian {
  const size = worthCount + 4 * stations.length;
  const mean = new Array<number>(size).fill(0);
  const covariance = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  for (const [i, role] of (["building", "finishing"] as const).entries()) {
    const { layerThickness, spread } = battings[role];
    // The packet speaks of a layer in a stack; alone it is worth what the stack would squeeze out of it more.
    mean[2 * i] = Math.log(layerThickness / (1 - squeezePrior.mean));
    mean[2 * i + 1] = squeezePrior.mean;
    (covariance[2 * i] as number[])[2 * i] = Math.log(1 + spread) ** 2;
    (covariance[2 * i + 1] as number[])[2 * i + 1] = squeezePrior.spread ** 2;
  }
  for (const [level, spread] of bareSpreads.entries()) {
    for (const a of [0, 1, 2, 3]) {
      for (const b of [0, 1, 2, 3]) {
        (covariance[worthCount + 4 * level + a] as number[])[worthCount + 4 * level + b] = quarterCovariance(
          a,
          b,
          spread,
        );
      }
    }
  }
  return { mean, covariance };
}

/**
 * How the errors of two quarters of a bare level go together, from the spreads of its girth, of front less back, and of left
 * less right: the sum and differences are independent, each quarter holds a quarter of each.
 */
function quarterCovariance(a: number, b: number, spread: Evidence["bareSpreads"][number]): number {
  const sameHalf = a >> 1 === b >> 1 ? 1 : -1;
  const sameSide = (a & 1) === (b & 1) ? 1 : -1;
  return (
    (spread.girth ** 2 +
      sameHalf * spread.frontLessBack ** 2 +
      (sameSide + sameHalf * sameSide) * spread.leftLessRight ** 2) /
    16
  );
}

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

/** A squeeze below nothing or past what a stack can lose is no squeeze. */
const held = (state: readonly number[]): readonly number[] =>
  state.map((number, i) => (i === 1 || i === 3 ? Math.max(0, Math.min(squeezePrior.most, number)) : number));

function told(
  evidence: Evidence,
  state: readonly number[],
  covariance: Gaussian["covariance"],
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
  covariance: Gaussian["covariance"],
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
