import { mapLevels } from "../body/levelReadings";
import { sectionReading } from "../body/sectionReading";
import { levelNames } from "../body/vocabulary";
import { cutArea, cutSizes } from "../padding/cutSize";
import type { Pad } from "../padding/pad";
import { pinningOrder } from "../padding/pinningOrder";
import { squareMm } from "../units";
import type { Basis, PlanInput } from "./basis";
import { seamShifts, shiftedReading, shortfalls } from "./givingWay";
import { orderedPieces } from "./orderedPieces";
import type { Plan, PlannedLevel } from "./plan";
import type { Start } from "./start";

/** Puts pads in the order of pinning, measures their cuts and reads the tape after each; what is pinned already lies beneath. */
export function assemblePlan({ body, form }: PlanInput, from: Basis, start: Start, pads: readonly Pad[]): Plan {
  const { targets, stations, surface } = from;
  const ordered = pinningOrder(pads);
  const cuts = cutSizes(ordered, surface, start.pinned);
  const { pieces, before } = orderedPieces(ordered, cuts, stations, start, (name, read) =>
    shiftedReading(read, targets[name]),
  );
  const last = pieces[pieces.length - 1];
  const predicted = last?.readingsAfter ?? before;
  const levels = mapLevels(
    (name): PlannedLevel => ({
      name,
      drop: from.body.levels[name].drop,
      body: targets[name].body,
      bodySection: from.bodySections[name],
      form: targets[name].form,
      formSection: targets[name].form.section,
      predicted: predicted[name],
    }),
  );
  return {
    levels: levelNames.map((name) => levels[name]),
    pieces,
    shortfalls: shortfalls(levels, body, form),
    seamShifts: seamShifts(targets),
    battingArea: squareMm(pieces.reduce((area, piece) => area + cutArea(piece.cut, piece.plies), 0)),
    bareForm: mapLevels((name) => sectionReading(targets[name].form.section)),
  };
}
