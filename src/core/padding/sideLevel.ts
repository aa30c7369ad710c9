import { root } from "../numerics/root";
import { type SideOutline, type SideReading, sideTape } from "../tape/sideTape";
import { featherLength } from "./levelGaps";

/**
 * One side, left or right, of one level: where the tape stands, what it is to read, and how many layers take it there. A layer
 * over the front reaches from center front to both sides; `reach` is how far the outermost does on this side, and every
 * layer beneath it is 5 mm shorter.
 */
export interface SideProblem {
  readonly outline: SideOutline;
  /** Thickness of what is pinned, at each point of the outline (mm). */
  readonly pinned: Float64Array;
  /** What the tape is to read over the outline so padded (mm), whatever it reads beyond the simulation taken off. */
  readonly target: { readonly front: number; readonly back: number };
  readonly layer: LayerThickness;
  /** Whether the other side asks for the same. */
  readonly isEven: boolean;
  /** Where the discs of a cup pad would lie, from the largest on; none where there is no cup. */
  readonly discs: readonly Disc[];
}

/** What a layer of a stack adds (mm), and what the first of a stack adds beyond that. */
export interface LayerThickness {
  readonly each: number;
  readonly bonus: number;
}

/** A disc as this level's tape meets it: how far from center front its center lies along the surface, how far off the line, its radius (mm). */
export interface Disc {
  readonly fromFront: number;
  readonly off: number;
  readonly radius: number;
}

export type Half = "front" | "back";
export const halves: readonly Half[] = ["front", "back"];

/**
 * One way to pad a half on this side: `layers` in all, of which all but one are structure of this reach, and the last is a tuning
 * layer of half-width `width`; what the tape then reads beyond the target (mm).
 */
export interface HalfFit {
  readonly layers: number;
  readonly reach: number;
  readonly width: number;
  readonly miss: number;
}

/** The ways for each half over so many turns of wraps and discs of a cup pad, the one with the fewest layers that reach first. */
export type SideFits = { readonly [half in Half]: readonly HalfFit[] };

/**
 * The outermost layer reaches this share of the way from center to side seam, and every layer beneath ends a step before the one over
 * it. With 0.97 and 6 mm the first readings on true shapes miss by 8.8 mm at p95 instead of 7.1: real sides are flatter than
 * the curves assumed, and a layer that stops short of the seam is bridged.
 */
const reachShare = 0.985;

/** The shares that are tried where a half is lifted over its reading by what lies on the other. */
const reachShares = [reachShare, 0.85, 0.75, 0.65] as const;

export const sideStep = 5;

/** No tuning layer is narrower than this to each side (mm), and no reach is shorter. */
export const leastHalfWidth = 45;

/** The structure stays at least this short of its reading in a quarter (mm): 4 mm in a half, for the tuning layer to make good. */
const structureShort = 2;

/** Readings of a quarter (mm): what is met so nearly needs no further layer, and by how much a way may miss to be one. */
const quarterMet = 0.5;
const quarterMiss = 1;

const mostLayers = 40;

export class SideLevel {
  private readonly known = new Map<number, SideFits>();
  private share: { [half in Half]: number } = { front: reachShare, back: reachShare };
  private readonly tape: ReturnType<typeof sideTape>;
  private readonly thickness: Float64Array;
  /** Layers at each point: all around and discs, and of each half its own. */
  private readonly around: Float64Array;
  private readonly own: { readonly [half in Half]: Float64Array };

  /** What the chords of the outline are short of its curve. */
  private readonly short: SideReading;

  constructor(private readonly problem: SideProblem) {
    const { count, frontQuarter, backQuarter } = problem.outline;
    this.tape = sideTape(problem.outline);
    this.thickness = new Float64Array(count);
    this.around = new Float64Array(count);
    this.own = { front: new Float64Array(count), back: new Float64Array(count) };
    const bare = this.tape(this.thickness);
    this.short = { front: frontQuarter - bare.front, back: backQuarter - bare.back };
  }

  /** How far the outermost layer of a half reaches from its center (mm). */
  private fullReach(half: Half): number {
    const { frontQuarter, backQuarter } = this.problem.outline;
    return this.share[half] * (half === "front" ? frontQuarter : backQuarter);
  }

  /** How much a half still has to gain over what is pinned (mm, this side alone). */
  gain(half: Half): number {
    this.clear(0, 0);
    return -this.read(half);
  }

  fits(turns: number, discs: number): SideFits {
    const key = turns * 8 + discs;
    const found = this.known.get(key) ?? this.solve(turns, discs);
    this.known.set(key, found);
    return found;
  }

  /**
   * Twice over, because what lies on one half lifts the tape off the other beside the seam. Where that alone takes the other half
   * over its reading, the layers reach less far.
   */
  private solve(turns: number, discs: number): SideFits {
    let best: SideFits | null = null;
    let leastOver = Number.POSITIVE_INFINITY;
    for (const share of reachShares) {
      const found = this.solveAt(turns, discs, leastOver === Number.POSITIVE_INFINITY ? null : share);
      const over = Math.max(...halves.map((half) => found[half][0]?.miss ?? 0));
      if (over < leastOver - quarterMet) [best, leastOver] = [found, over];
      if (leastOver <= quarterMiss) break;
    }
    return best as SideFits;
  }

  /** With the half that gains more reaching only this share of the way, or both as far as they can. */
  private solveAt(turns: number, discs: number, share: number | null): SideFits {
    this.share = { front: reachShare, back: reachShare };
    this.clear(turns, discs);
    if (share !== null) this.share[this.read("front") < this.read("back") ? "front" : "back"] = share;
    const isBare = turns === 0 && discs === 0;
    this.cover("front", this.fewestLayers("front").fit);
    const back = this.halfFits("back", isBare);
    this.cover("back", back[0] as HalfFit);
    return { front: this.halfFits("front", isBare), back };
  }

  private halfFits(half: Half, isBare: boolean): readonly HalfFit[] {
    const { none, fit, widest } = this.fewestLayers(half);
    if (fit === none) return [none];
    const fits: HalfFit[] = [];
    const isFarFromMet = isBare || none.miss < -structureShort;
    const add = (layers: number, leastShare = leastReachShare) => {
      const tuned = layers > 1 || isFarFromMet ? this.tuned(half, layers, leastShare, widest) : null;
      if (tuned !== null) fits.push(tuned);
    };
    add(fit.layers);
    add(fit.layers + 1, this.problem.isEven ? furtherReachShare : unevenReachShare);
    if (fit.layers === 1) fits.push(none);
    else if (widest(fit.layers - 1) >= -quarterMiss) add(fit.layers - 1);
    if (fits.length > 0) return fits;
    // No layer more stays short enough beneath it: what one layer less reads at its widest is as near as it gets.
    const { reach } = none;
    const fewer = { layers: fit.layers - 1, reach, width: reach, miss: widest(fit.layers - 1) };
    return [fit.layers === 1 ? none : fewer];
  }

  /** No layer, where that is enough; else the fewest whose widest reading is met, and what so many read at their widest. */
  private fewestLayers(half: Half) {
    const reach = this.fullReach(half);
    const known: number[] = [];
    const widest = (layers: number) => {
      const found = known[layers] ?? this.readWith(half, { layers, reach, width: reach });
      known[layers] = found;
      return found;
    };
    const none: HalfFit = { layers: 0, reach, width: 0, miss: widest(0) };
    if (none.miss >= -quarterMet) return { none, fit: none, widest };
    const layers = fewestThatReach(widest, Math.round(-none.miss / (usualTurn * this.problem.layer.each)));
    return { none, fit: { layers, reach, width: reach, miss: widest(layers) }, widest };
  }

  /**
   * So many layers, the structure kept short of the reading, the tuning layer about as wide as the reading asks: how wide exactly is
   * found once all is chosen.
   */
  private tuned(half: Half, layers: number, leastShare: number, widest: (layers: number) => number): HalfFit | null {
    const full = this.fullReach(half);
    let reach = full;
    if (layers > 1 && widest(layers - 1) > -structureShort) {
      const short = (at: number) => this.readWith(half, { layers: layers - 1, reach: at, width: at }) + structureShort;
      const least = Math.max(leastShare * full, leastHalfWidth + sideStep * (layers - 2));
      if (least >= full || short(least) > 0) return null;
      reach = solved(short, least, full) - sideStep / 2;
    }
    const atLeast = this.readWith(half, { layers, reach, width: leastHalfWidth });
    if (atLeast >= 0) return { layers, reach, width: leastHalfWidth, miss: atLeast };
    const atMost = reach === full ? widest(layers) : this.readWith(half, { layers, reach, width: full });
    if (atMost <= 0) return { layers, reach, width: full, miss: atMost };
    const width = leastHalfWidth + ((full - leastHalfWidth) * atLeast) / (atLeast - atMost);
    return { layers, reach, width, miss: 0 };
  }

  private clear(turns: number, discs: number): void {
    const { outline, discs: places } = this.problem;
    this.around.fill(turns);
    for (const { fromFront, off, radius } of places.slice(0, discs)) {
      for (let i = 0; i < outline.count; i++) {
        const away = Math.hypot((outline.fromFront[i] as number) - fromFront, off);
        this.around[i] = (this.around[i] as number) + Math.max(0, Math.min(1, (radius - away) / featherLength));
      }
    }
    this.own.front.fill(0);
    this.own.back.fill(0);
  }

  private readWith(half: Half, fit: Omit<HalfFit, "miss">): number {
    this.cover(half, fit);
    return this.read(half);
  }

  /** Lays a half's layers: structure with its steps, and the tuning layer. */
  private cover(half: Half, { layers, reach, width }: Omit<HalfFit, "miss">): void {
    const { count, fromFront, fromBack } = this.problem.outline;
    const away = half === "front" ? fromFront : fromBack;
    const own = this.own[half];
    for (let i = 0; i < count; i++) {
      const s = away[i] as number;
      let sum = 0;
      if (layers > 0) {
        sum = s >= width ? 0 : Math.min(1, (width - s) / featherLength);
        sum += stepped(s, reach, layers - 1);
      }
      own[i] = sum;
    }
  }

  /** What the tape reads beyond the target in one half. */
  private read(half: Half): number {
    const { outline, pinned, target, layer } = this.problem;
    const { front, back } = this.own;
    for (let i = 0; i < outline.count; i++) {
      const layers = (this.around[i] as number) + (front[i] as number) + (back[i] as number);
      const beneath = pinned[i] as number;
      this.thickness[i] = beneath + layers * layer.each + (beneath > 0 ? 0 : layer.bonus * Math.min(1, layers));
    }
    return this.tape(this.thickness)[half] + this.short[half] - target[half];
  }
}

/** A layer over a half turns through nearly a right angle on each side. */
const usualTurn = 1.4;

/**
 * To stay short the structure reaches no less than this share of its full reach, and less seldom for a layer that could be spared: but
 * where the other side has one more, both then share a piece.
 */
const leastReachShare = 0.6;
const furtherReachShare = 0.85;
const unevenReachShare = 0.75;

/** How many layers of a structure lie at a place so far from its center, feathered edges in part. */
function stepped(s: number, reach: number, layers: number): number {
  const inside = (reach - s) / sideStep;
  if (layers === 0 || inside <= 0) return 0;
  const whole = Math.max(0, Math.min(layers, Math.floor((reach - s - featherLength) / sideStep) + 1));
  let sum = whole;
  for (let j = whole; j < layers && reach - sideStep * j > s; j++) sum += (reach - sideStep * j - s) / featherLength;
  return sum;
}

/** The fewest layers, at their widest, whose reading is met, searched from a guess. */
function fewestThatReach(widest: (layers: number) => number, guess: number): number {
  let layers = Math.max(1, Math.min(mostLayers, guess));
  while (layers < mostLayers && widest(layers) < -quarterMet) layers++;
  while (layers > 1 && widest(layers - 1) >= -quarterMet) layers--;
  return layers;
}

/** Where a reading that rises is met, closely enough for a choice. */
function solved(miss: (at: number) => number, from: number, to: number): number {
  const found = root(miss, { from, to, precision: readingPrecision });
  return found.kind === "converged" ? found.value : found.nearest;
}

const readingPrecision = 0.3;
