import { cutOutline, type CutWidth, type FlatCut } from "../padding/cutOutline";
import type { Darts, LayerCut } from "../padding/layerCut";
import type { Piece } from "../padding/piece";
import { mm } from "../units";
import { type FlatPoint, flat, type PatternLine, type PatternPart } from "./patternPart";

/**
 * Every layer of a piece as it is cut, lying flat with its outer side up: the anchor line at x = 0, the lower edge at y = 0, the
 * wearer's left at positive x. A bought pad has no layer to cut.
 */
export const battingParts = (piece: Pick<Piece, "id" | "cut">): readonly PatternPart[] =>
  piece.cut.flatMap((cut, i) => {
    const part = partOfCut(`${piece.id}-layer-${i + 1}`, cut);
    return part === null ? [] : [{ ...part, kind: "batting" as const, of: piece.id }];
  });

function partOfCut(id: string, cut: LayerCut): Omit<PatternPart, "kind" | "of"> | null {
  switch (cut.shape) {
    case "bought":
      return null;
    case "disc":
      return discPart(id, cut.diameter / 2);
    case "strip":
    case "panel":
      return flatPart(id, cut);
  }
}

/** A chord of a drawn circle lies within a tenth of a millimeter of it up to a radius of 150 mm. */
const circleSteps = 96;

function discPart(id: string, radius: number): Omit<PatternPart, "kind" | "of"> {
  const rim = Array.from({ length: circleSteps + 1 }, (_, i) => {
    const turn = (2 * Math.PI * (i % circleSteps)) / circleSteps - Math.PI / 2;
    return flat(radius * Math.cos(turn), radius * (1 + Math.sin(turn)));
  });
  return {
    id,
    edges: [{ id: `${id}-rim`, points: rim, sewnTo: null }],
    lines: [{ kind: "slit", name: "slit", points: [flat(0, 0), flat(0, radius)] }],
    notches: [],
    levels: [],
  };
}

/** A strip's two ends meet and name each other; a panel lies open. */
function flatPart(id: string, cut: FlatCut): Omit<PatternPart, "kind" | "of"> {
  const rows = cutOutline(cut);
  const y = ({ belowTop }: Pick<CutWidth, "belowTop">) => cut.height - belowTop;
  const left = rows.toReversed().map((row) => flat(row.left, y(row)));
  const right = rows.map((row) => flat(-row.right, y(row)));
  const ends = cut.shape === "strip";
  const edge = (name: string, points: readonly FlatPoint[], sewnTo: string | null = null) => ({
    id: `${id}-${name}`,
    points,
    sewnTo,
  });
  const levels = rows.flatMap((row) =>
    "line" in row.at ? [{ name: row.at.line, length: mm(row.left + row.right), row }] : [],
  );
  return {
    id,
    edges: [
      edge("bottom", [right.at(-1) as FlatPoint, left[0] as FlatPoint]),
      edge("left", left, ends ? `${id}-right` : null),
      edge("top", [left.at(-1) as FlatPoint, right[0] as FlatPoint]),
      edge("right", right, ends ? `${id}-left` : null),
    ],
    lines: [
      ...(rows.every((row) => Math.min(row.left, row.right) >= 0)
        ? [{ kind: "anchor" as const, name: "anchor", points: [flat(0, 0), flat(0, cut.height)] }]
        : []),
      ...levels.map(({ name, row }) => ({
        kind: "level" as const,
        name,
        points: [flat(-row.right, y(row)), flat(row.left, y(row))],
      })),
      ...dartLines(cut),
    ],
    notches: levels.flatMap(({ row }) => [flat(row.left, y(row)), flat(-row.right, y(row))]),
    levels: levels.map(({ name, length }) => ({ name, length })),
  };
}

/**
 * The darts or slits of a flat cut, each as one line around what it takes up: as many at every edge and line, spread evenly,
 * so that the one at a line runs on into the one at the next. Past the last line it runs out over its depth.
 */
export function dartLines(cut: FlatCut): readonly PatternLine[] {
  const first = cut.darts[0];
  if (first === undefined) return [];
  const stops = [
    { from: "top" as const, belowTop: 0 },
    ...cut.widths.map(({ level, belowTop }) => ({ from: level, belowTop })),
    { from: "bottom" as const, belowTop: cut.height },
  ].map(({ from, belowTop }) => ({
    y: cut.height - belowTop,
    whole: cut.topWidth + ((cut.bottomWidth - cut.topWidth) * belowTop) / cut.height,
    dart: cut.darts.find((one) => one.from === from),
  }));
  const { count, kind } = first;
  return runsOf(stops).flatMap((run) =>
    Array.from({ length: count }, (_, i) => ({ kind, name: kind, points: dartPoints(run, (i + 0.5) / count - 0.5) })),
  );
}

interface DartStop {
  readonly y: number;
  readonly whole: number;
  readonly dart: Darts | undefined;
}

type OpenStop = DartStop & { readonly dart: Darts };

/** Stops one after the other that a dart goes through without closing. */
function runsOf(stops: readonly DartStop[]): readonly (readonly OpenStop[])[] {
  const runs: OpenStop[][] = [];
  let open: OpenStop[] | null = null;
  for (const { dart, ...stop } of stops) {
    if (dart === undefined) {
      open = null;
      continue;
    }
    if (open === null) {
      open = [];
      runs.push(open);
    }
    open.push({ ...stop, dart });
  }
  return runs;
}

/** Down one leg and up the other, from the upper end on; a dart at an edge is open there. */
function dartPoints(run: readonly OpenStop[], share: number): readonly FlatPoint[] {
  const [upper, lower] = [run[0] as OpenStop, run[run.length - 1] as OpenStop];
  const tip = ({ y, whole, dart }: OpenStop, way: 1 | -1): readonly FlatPoint[] =>
    dart.from === (way === 1 ? "top" : "bottom") ? [] : [flat(share * whole, y + way * dart.depth)];
  const leg = (side: 1 | -1) => run.map(({ y, whole, dart }) => flat(share * whole + (side * dart.width) / 2, y));
  return [...tip(upper, 1), ...leg(-1), ...tip(lower, -1), ...leg(1).toReversed(), ...tip(upper, 1)];
}
