import type { Measurements } from "../body/measurements";
import { tiltAdds, waistTilt } from "../body/waistTilt";
import { type Millimetres, mm } from "../units";
import type { Plan, PlannedLevel } from "./plan";

/** The waist tape: where it is sewn at centre back, how long it is, and what is known of its tilt. */
export interface WaistTape {
  readonly height: { readonly kind: "alongBack" | "straightDown"; readonly value: Millimetres };
  readonly length: Millimetres;
  readonly tilt: { readonly front: Millimetres; readonly back: Millimetres } | null;
  /** How much more a tape reads along that tilt than level; it is part of the length. */
  readonly tiltAdds: Millimetres;
}

export function waistTape(plan: Plan, body: Measurements): WaistTape {
  const waist = plan.levels.find(({ name }) => name === "waist") as PlannedLevel;
  const { napeToWaist, waistToFloorFront: front, waistToFloorBack: back } = body;
  const more = tiltAdds(waistTilt(body));
  return {
    height:
      napeToWaist === undefined
        ? { kind: "straightDown", value: waist.depthBelowNape.value }
        : { kind: "alongBack", value: napeToWaist },
    length: mm(waist.body.girth.value + more + overlapMm),
    tilt: front === undefined || back === undefined ? null : { front, back },
    tiltAdds: mm(more),
  };
}

/** Common practice, no source: enough to turn one end under and stitch it down. */
const overlapMm = 25;
