import { quarterLengths } from "../geometry/outline";
import { mm, type Millimetres } from "../units";
import type { Section } from "./section";

/** What the tape reads round a bare section (mm): all round, and the front and back from side seam to side seam. */
export interface SectionReading {
  readonly girth: Millimetres;
  readonly frontArc: Millimetres;
  readonly backArc: Millimetres;
}

export function sectionReading(section: Section): SectionReading {
  const { leftFront, rightFront, leftBack, rightBack } = quarterLengths(section);
  return {
    girth: mm(leftFront + rightFront + leftBack + rightBack),
    frontArc: mm(leftFront + rightFront),
    backArc: mm(leftBack + rightBack),
  };
}
