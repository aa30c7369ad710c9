import { layerRuns, type Profile } from "./fewestStacks";
import type { PieceKind, PieceZone } from "./piece";
import type { Anchor } from "./layer";
import { isTuned, type LevelChoice } from "./padHalf";
import type { Shape, ShapedHalf } from "./searchShape";
import type { Half } from "./sideLevel";

/** A layer before it is drawn: the levels it covers, and which sides of center it lies on. */
export interface PlannedLayer {
  readonly first: number;
  readonly last: number;
  readonly sides: "both" | "left" | "right";
}

/** A piece before it is drawn: its layers from the form outwards. */
export interface PieceSketch {
  readonly kind: PieceKind;
  readonly zone: PieceZone;
  readonly anchor: Anchor;
  readonly layers: readonly PlannedLayer[];
}

/** The pieces of a shape but its cup pads, each list from the form outwards. */
export interface PieceSketches {
  readonly around: readonly PieceSketch[];
  readonly panels: { readonly [half in Half]: readonly PieceSketch[] };
  readonly tuning: { readonly [half in Half]: readonly PieceSketch[] };
}

export function sketchPieces({ wraps, halves: shaped }: Shape): PieceSketches {
  const byHalf = <Value>(value: (half: Half) => Value) => ({ front: value("front"), back: value("back") });
  return {
    around: wraps.wraps.map(({ first, last, turns }) => ({
      kind: "wrap",
      zone: "around",
      anchor: "centerFront",
      layers: Array.from({ length: turns }, () => ({ first, last, sides: "both" as const })),
    })),
    panels: byHalf((half) => panelsOf(shaped[half], half)),
    tuning: byHalf((half) => tuningOf(shaped[half].choices, half)),
  };
}

const anchorOf = { front: "centerFront", back: "centerBack" } as const;
const zoneOf = {
  both: { front: "front", back: "back" },
  left: { front: "leftFront", back: "leftBack" },
  right: { front: "rightFront", back: "rightBack" },
} as const;

/** What lies on one side alone goes beneath what lies on both, small beneath large, so that the surface is smooth. */
function panelsOf({ shared, leftAlone, rightAlone }: ShapedHalf, half: Half): readonly PieceSketch[] {
  const panels = (stacks: readonly Profile[], sides: PlannedLayer["sides"]) =>
    [...stacks]
      .sort((a, b) => sum(a) - sum(b))
      .map(
        (stack): PieceSketch => ({
          kind: "panel",
          zone: zoneOf[sides][half],
          anchor: anchorOf[half],
          layers: layerRuns(stack).map(([first, last]) => ({ first, last, sides })),
        }),
      );
  return [...panels(leftAlone, "left"), ...panels(rightAlone, "right"), ...panels(shared, "both")];
}

const sum = (profile: Profile): number => profile.reduce((total, layers) => total + layers, 0);

/** One tuning layer for each run of levels that gain. */
function tuningOf(choices: readonly LevelChoice[], half: Half): readonly PieceSketch[] {
  const runs: { first: number; last: number }[] = [];
  for (const [level, choice] of choices.entries()) {
    if (!isTuned(choice)) continue;
    const run = runs[runs.length - 1];
    if (run !== undefined && run.last === level - 1) run.last = level;
    else runs.push({ first: level, last: level });
  }
  return runs.map(({ first, last }) => {
    const sides = sidesOf(choices.slice(first, last + 1));
    return { kind: "tuning", zone: zoneOf[sides][half], anchor: anchorOf[half], layers: [{ first, last, sides }] };
  });
}

function sidesOf(choices: readonly LevelChoice[]): PlannedLayer["sides"] {
  const [left, right] = (["left", "right"] as const).map((side) => choices.some((choice) => choice[side].layers > 0));
  return left && right ? "both" : left ? "left" : "right";
}

/** The layers over one half from the form outwards: wraps, panels, and the tuning layer under the outermost of its place. */
export function layersFromForm({ panels, tuning }: PieceSketches, half: Half): readonly PlannedLayer[] {
  const structure = panels[half].flatMap(({ layers }) => layers);
  return [...structure.slice(0, -1), ...tuning[half].flatMap(({ layers }) => layers), ...structure.slice(-1)];
}
