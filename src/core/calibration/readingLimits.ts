import type { Laid, LevelOutline } from "../padding/layerThickness";
import { tapeQuarters } from "../tape/tape";
import { type Millimetres, mm } from "../units";
import { type Evidence, quarterNames, readingPlace, type ReadingPlace, type TapeReadingName } from "./evidence";
import { layerCounter, compressedThickness, type CompressedLayers } from "./compressedLayers";
import { bareRoom, thickestLayer } from "../learning/bounds";
import { quarterCovariance } from "../learning/learningState";

/** What a tape can read at all at one place over some pieces (mm); a reading beyond is a slip, however often it is typed. */
export interface ReadingLimits {
  readonly least: Millimetres;
  readonly most: Millimetres;
}

/** The known form and battings, without anything that was read over padding. */
export type LimitsFrom = Pick<Evidence, "levelSections" | "battings" | "bareDeviations" | "readingError">;

/**
 * What this form can read with these pieces on: from the bare form's reading up to every layer at the most it can be
 * thick, with room at both ends for what was measured of the bare form and for the tape's own error. Nothing that was read
 * over the padding plays a part, so no reading, and no number of equal ones, can move the limits.
 */
export function readingLimits(from: LimitsFrom): (name: TapeReadingName, pinned: readonly Laid[]) => ReadingLimits {
  const layers = layerCounter(from.levelSections);
  const known = from.levelSections.map(() => new Map<readonly Laid[], readonly Quarters[]>());
  const readAt = (level: number, pinned: readonly Laid[]): readonly Quarters[] => {
    const byPads = known[level] as Map<readonly Laid[], readonly Quarters[]>;
    const { outline } = from.levelSections[level] as LevelOutline;
    const read = () =>
      heights(from).map((compressed) => tapeQuarters(outline, compressedThickness(layers(level, pinned), compressed)));
    const found = byPads.get(pinned) ?? read();
    byPads.set(pinned, found);
    return found;
  };
  return (name, pinned) => {
    const { level, quarters } = readingPlace(name) as ReadingPlace;
    const weights = quarterNames.map((quarter) => quarters[quarter]);
    const readings = readAt(level, pinned).map((read) =>
      quarterNames.reduce((sum, quarter) => sum + quarters[quarter] * read[quarter], 0),
    );
    const deviation = from.bareDeviations[level] as Evidence["bareDeviations"][number];
    const bare = weights.reduce(
      (sum, one, a) =>
        sum + weights.reduce((line, other, b) => line + one * other * quarterCovariance(a, b, deviation), 0),
      0,
    );
    const room = bareRoom(readings[0] as number, bare + from.readingError ** 2);
    return { least: mm(Math.min(...readings) - room), most: mm(Math.max(...readings) + room) };
  };
}

type Quarters = ReturnType<typeof tapeQuarters>;

/** Nothing at all, as it was put down, and as thick as it can be: a half can read less when the other half grows. */
function heights({ battings: { building, finishing } }: LimitsFrom): readonly CompressedLayers[] {
  const both = (one: number, other: number): CompressedLayers => ({
    building: { layer: one, stackCompression: 0 },
    finishing: { layer: other, stackCompression: 0 },
  });
  return [
    both(0, 0),
    both(building.layerThickness, finishing.layerThickness),
    both(thickestLayer(building), thickestLayer(finishing)),
  ];
}
