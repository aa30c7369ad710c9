import { flat, type FlatPoint, type PatternPart } from "../pattern/patternPart";
import { mm, type Millimetres } from "../units";

/**
 * An oval stack that blends to nothing on all sides: how far its largest layer reaches from the peak up, down and to each side
 * (mm). Every layer has its peak at one place; the smallest lies on the form, the largest over all.
 */
export interface Oval {
  readonly up: number;
  readonly down: number;
  readonly half: number;
}

/** The last stretch of a layer above the bust is feathered (mm): there is no line close by to keep clear of. A judgement. */
export const aboveFeather: Millimetres = mm(25);

/** The smallest layer as a share of the largest. A judgement: it is still large enough for a hand to place. */
const smallestShare = 0.4;

/** How large each of so many layers is, as a share of the largest, from the form outwards. */
export const layerShares = (count: number, smallest = smallestShare): readonly number[] =>
  Array.from({ length: count }, (_, i) => (count === 1 ? 1 : smallest + ((1 - smallest) * i) / (count - 1)));

/** How thick a stack of ovals lies beside its peak (mm): so far up (negative) or down and so far to a side. */
export function ovalThickness(
  { up, down, half }: Oval,
  shares: readonly number[],
  layer: number,
  along: number,
  aside = 0,
): number {
  const reach = along < 0 ? up : down;
  return shares.reduce((sum, share) => {
    const way = Math.hypot(along / (share * reach), aside / (share * half));
    const shortest = share * (aside === 0 ? reach : Math.min(reach, half));
    return sum + layer * Math.max(0, Math.min(1, ((1 - way) * shortest) / aboveFeather));
  }, 0);
}

/** The outlines of a stack of ovals lying flat, their peak at the origin, y upwards. */
export const ovalParts = (id: string, oval: Oval, shares: readonly number[], line: string): readonly PatternPart[] =>
  shares.map((share, i): PatternPart => {
    const [up, down, half] = [share * oval.up, share * oval.down, share * oval.half];
    const part = `${id}-layer-${i + 1}`;
    return {
      id: part,
      kind: "batting",
      of: id,
      edges: [{ id: `${part}-rim`, points: rim(up, down, half), sewnTo: null }],
      lines: [
        { kind: "anchor", name: line, points: [flat(0, -down), flat(0, up)] },
        { kind: "level", name: "peak", points: [flat(-half, 0), flat(half, 0)] },
      ],
      notches: [],
      levels: [],
    };
  });

/** A chord of a drawn oval lies within half a millimeter of it. */
const rimSteps = 72;

function rim(up: number, down: number, half: number): readonly FlatPoint[] {
  return Array.from({ length: rimSteps + 1 }, (_, i) => {
    const turn = (2 * Math.PI * (i % rimSteps)) / rimSteps;
    const [x, y] = [Math.cos(turn), Math.sin(turn)];
    return flat(half * x, y > 0 ? up * y : down * y);
  });
}
