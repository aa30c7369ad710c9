import { mostLayers } from "../../core/above/layersThatFit";
import { type LevelOutline, piecesThickness } from "../../core/padding/layerThickness";
import { isStructure } from "../../core/padding/piece";
import type { PlanInput } from "../../core/plan/basis";
import { trialGain } from "../../core/plan/trialGain";
import type { Plan, PlannedPiece, TapeReading } from "../../core/plan/plan";
import { tapeQuarters } from "../../core/tape/tape";
import { tapeAgreement } from "../../core/tolerances";
import { type Millimetres, mm } from "../../core/units";
import { basisOf } from "../progress/replay";

/** What becomes of a printed plan if one layer turns out as thick as this. */
export interface LayersOfThickness {
  /** One layer under a snug tape (mm), and as a share of what the plan counts on. */
  readonly layer: Millimetres;
  readonly share: number;
  /** How many layers each piece of the structure gets, in the order of pinning; the outermost is cut once more where there are more. */
  readonly layers: readonly number[];
  /** By how much the waist grows in the trial where this column holds (mm): of two neighbors the nearer, and no farther out than that. */
  readonly gain: { readonly from: Millimetres; readonly to: Millimetres };
}

/** As far as published thicknesses of battings of one weight lie apart; each a fifth to a quarter from the next. */
export const layerShares = [0.65, 0.8, 1, 1.25, 1.55] as const;

/** The column beside; beyond the last one, as if another followed at the same distance. */
const neighbor = (i: number, step: 1 | -1): number =>
  layerShares[i + step] ?? (layerShares[i] as number) ** 2 / (layerShares[i - step] as number);

/**
 * How many layers each piece of the structure gets for several thicknesses of one layer, so that the work goes on by the trial
 * with nothing but paper. The pieces keep their outlines. In the order of pinning each gets the
 * number of layers that comes nearest to the thickness that is drawn, and takes no reading further than a tape tells over what the plan has there;
 * what is then missing the tuning layers make up.
 */
export function layersByThickness(input: PlanInput, plan: Plan): readonly LayersOfThickness[] {
  const each = input.batting.layerThickness;
  const { levelSections } = basisOf(input);
  const structure = plan.pieces.filter(isStructure);
  const drawn = structure.map((_, place) => levelSections.map((at) => readingOf(structure.slice(0, place + 1), at)));
  const gainOf = (share: number) => trialGain(mm(each * share));
  return layerShares.map((share, i) => {
    const [before, after] = [neighbor(i, -1), neighbor(i, 1)];
    return {
      layer: mm(each * share),
      share,
      layers: layersFor({ structure, drawn, levelSections }, share),
      gain: {
        from: gainOf(Math.sqrt(before * share)),
        to: gainOf(Math.sqrt(share * after)),
      },
    };
  });
}

/** The structure as it is drawn, and what the tape reads after each of its pieces, line by line. */
interface DrawnStructure {
  readonly structure: readonly PlannedPiece[];
  readonly drawn: readonly (readonly TapeReading[])[];
  readonly levelSections: readonly LevelOutline[];
}

function layersFor({ structure, drawn, levelSections }: DrawnStructure, share: number): readonly number[] {
  const on: PlannedPiece[] = [];
  return structure.map((piece, place) => {
    const isOver = (count: number): boolean => {
      const pinned = [...on, withLayers(piece, count, share)];
      return levelSections.some((at, i) => {
        const [read, wanted] = [readingOf(pinned, at), drawn[place]?.[i] as TapeReading];
        return (["girth", "frontArc", "backArc"] as const).some((part) => read[part] > wanted[part] + tapeAgreement);
      });
    };
    const off = (count: number) => Math.abs(count * share - piece.layers.length);
    const byThickness = Array.from({ length: mostLayers + 1 }, (_, i) => i).toSorted((a, b) => off(a) - off(b));
    const count = byThickness.find((one) => !isOver(one)) ?? 0;
    on.push(withLayers(piece, count, share));
    return count;
  });
}

/** The piece with so many layers: left out on the form, where they are smallest, or the outermost once more. */
export function pieceWithLayers(piece: PlannedPiece, count: number): PlannedPiece {
  const resized = <Of>(all: readonly Of[]): readonly Of[] => {
    const outermost = all.at(-1);
    if (count < all.length || outermost === undefined) return all.slice(all.length - count);
    return [...all, ...Array.from({ length: count - all.length }, () => outermost)];
  };
  return { ...piece, layers: resized(piece.layers), cut: resized(piece.cut) };
}

/** The same of another thickness of one layer. */
function withLayers(piece: PlannedPiece, count: number, share: number): PlannedPiece {
  const { layers, ...rest } = pieceWithLayers(piece, count);
  const thick = layers.map((layer) =>
    layer.batting === "building" ? { ...layer, thickness: mm(layer.thickness * share) } : layer,
  );
  return { ...rest, layers: thick };
}

function readingOf(pinned: readonly PlannedPiece[], at: LevelOutline): TapeReading {
  const { leftFront, rightFront, leftBack, rightBack } = tapeQuarters(at.outline, piecesThickness(pinned, at));
  const [front, back] = [leftFront + rightFront, leftBack + rightBack];
  return { girth: mm(front + back), frontArc: mm(front), backArc: mm(back) };
}
