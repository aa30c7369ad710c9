import { type LevelReadings, mapLevels, type TorsoReadings } from "../body/levelReadings";
import { estimated, measured, type Reading } from "../body/reading";
import type { Section } from "../body/section";
import { sectionReading } from "../body/sectionReading";
import { solveSection } from "../body/solveSection";
import { type ByLevel, levelNames } from "../body/vocabulary";
import { heightCurve } from "../geometry/heightCurve";
import { mm, ratio } from "../units";

/**
 * The bare form where a BODY's level lies: its section at that drop below the nape, interpolated between the form's own
 * levels without overshooting, and what the tape reads there. Readings are measured only if the form was measured at
 * the levels around. Above its bust and below its full hip the form is taken to go on as it is there.
 */
export interface FormLevel {
  readonly section: Section;
  readonly girth: Reading;
  readonly frontArc: Reading;
  readonly backArc: Reading;
  readonly breadth: Reading;
}

export function formAtDrops(form: TorsoReadings, drops: ByLevel<number>): ByLevel<FormLevel> {
  const levels = levelNames.map((name) => form.levels[name]);
  const heights = levels.map((level) => level.drop.value);
  // A form stands for everybody: it is taken as even left and right, and what it leans shows when the tape is read again.
  const sections = levels.map((level) => solveSection({ ...level, quarters: null }));
  const curve = (value: (section: Section) => number) => heightCurve(heights, sections.map(value));
  const breadth = curve((section) => section.leftBreadth);
  const front = curve((section) => section.frontDepth);
  const back = curve((section) => section.backDepth);
  const exponent = curve((section) => section.exponent);
  return mapLevels((name) => {
    const drop = drops[name];
    const half = mm(breadth(drop));
    const section: Section = {
      leftBreadth: half,
      rightBreadth: half,
      frontDepth: mm(front(drop)),
      backDepth: mm(back(drop)),
      exponent: ratio(exponent(drop)),
    };
    const read = sectionReading(section);
    const near = neighbours(levels, heights, drop);
    const like = (value: number, reading: (level: LevelReadings) => Reading) => asKnown(value, near.map(reading));
    return {
      section,
      girth: like(read.girth, (level) => level.girth),
      frontArc: like(read.frontArc, (level) => level.frontArc),
      backArc: like(read.backArc, (level) => level.backArc),
      breadth: like(2 * half, (level) => level.breadth),
    };
  });
}

/** The levels between which a drop lies; one level alone where the drop is on it or beyond the ends. */
function neighbours(
  levels: readonly LevelReadings[],
  heights: readonly number[],
  drop: number,
): readonly LevelReadings[] {
  const below = heights.findIndex((height) => height >= drop - onLevel);
  if (below === -1) return levels.slice(-1);
  const isOn = Math.abs((heights[below] as number) - drop) <= onLevel;
  return below === 0 || isOn ? levels.slice(below, below + 1) : levels.slice(below - 1, below + 1);
}

/** A drop this close (mm) to a level is on it: a waist is not found closer than that. */
const onLevel = 2;

function asKnown(value: number, near: readonly Reading[]): Reading {
  const spreads = near.map((reading) => (reading.kind === "estimated" ? reading.spread : 0));
  const spread = Math.max(...spreads);
  return spread === 0 ? measured(mm(value)) : estimated(mm(value), mm(spread));
}
