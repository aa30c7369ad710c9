import { mapLevels, torsoReadings, type TorsoReadings } from "../body/levelReadings";
import type { Measurements } from "../body/measurements";
import { sectionReading } from "../body/sectionReading";
import { solveSection } from "../body/solveSection";
import { type ByLevel, levelNames } from "../body/vocabulary";
import { formAtDrops } from "../form/formAtDrops";
import { sectionOutline } from "../geometry/outline";
import type { Batting } from "../material";
import { type Batch, shapeBatch } from "../padding/batch";
import { cutArea, cutSizes } from "../padding/cutSize";
import { pinningOrder } from "../padding/pinningOrder";
import { formSurface } from "../padding/surface";
import { levelTarget, type Target } from "../padding/targets";
import { mm, squareMm } from "../units";
import type { Plan, PlannedLevel } from "./plan";
import { orderedPieces } from "./orderedPieces";
import { seamShifts, shiftedReading, shortfalls } from "./givingWay";

export interface PlanInput {
  readonly body: Measurements;
  readonly form: Measurements;
  readonly batting: Batting;
}

/**
 * The river in one reading: what was measured of a body and of a form becomes pieces of batting, what the tape must read
 * after each, and what padding cannot do. The measurements have passed the checks for contradictions.
 */
export function planFitting({ body, form, batting }: PlanInput): Plan {
  const bodyTorso = torsoReadings(body);
  const drops = mapLevels((name) => bodyTorso.levels[name].drop.value as number);
  const bare = formAtDrops(torsoReadings(form), drops);
  const targets = mapLevels((name) => levelTarget(bodyTorso.levels[name], bare[name]));
  const batch = planBatch(bodyTorso, targets, batting.layerThickness);
  const pads = pinningOrder(shapeBatch(batch), drops.bust);
  const cuts = cutSizes(pads, batch.surface);
  const bareForm = mapLevels((name) => sectionReading(targets[name].form.section));
  const pieces = orderedPieces(pads, cuts, batch.stations, (name, read) => shiftedReading(read, targets[name]));
  const last = pieces[pieces.length - 1];
  const levels = mapLevels((name): PlannedLevel => ({
    name,
    drop: bodyTorso.levels[name].drop,
    body: targets[name].body,
    bodySection: bodySection(bodyTorso, targets, name),
    form: targets[name].form,
    formSection: targets[name].form.section,
    predicted: last?.readingsAfter[name] ?? shiftedReading(bareForm[name], targets[name]),
  }));
  return {
    levels: levelNames.map((name) => levels[name]),
    pieces,
    shortfalls: shortfalls(levels, targets, body, form),
    seamShifts: seamShifts(targets),
    battingArea: squareMm(pieces.reduce((area, piece) => area + cutArea(piece.cut, piece.plies), 0)),
    bareForm,
  };
}

/** Points in each eighth of the outline the tape is laid round: its chords are then short of the arc by less than 0.1 mm. */
const tapePoints = 24;

function planBatch(body: TorsoReadings, targets: ByLevel<Target>, layerThickness: number): Batch {
  const drops = levelNames.map((name) => body.levels[name].drop.value as number);
  const sections = levelNames.map((name) => targets[name].form.section);
  return {
    surface: formSurface(drops, sections),
    stations: sections.map((section, i) => ({ drop: drops[i] as number, outline: sectionOutline(section, tapePoints) })),
    targets: levelNames.map((name) => targets[name].quarters),
    sides: levelNames.map((name) => sideWish(body, targets, name)),
    apex: body.apex,
    layerThickness,
    pinned: [],
    offsets: levelNames.map(() => ({ leftFront: mm(0), rightFront: mm(0), leftBack: mm(0), rightBack: mm(0) })),
  };
}

function bodySection(body: TorsoReadings, targets: ByLevel<Target>, name: keyof ByLevel<Target>) {
  const { frontArc, backArc } = targets[name].body;
  return solveSection({ ...body.levels[name], frontArc, backArc });
}

/** How far the body stands beyond the form at each side (mm), and how sure that is: half the spreads of both breadths. */
function sideWish(body: TorsoReadings, targets: ByLevel<Target>, name: keyof ByLevel<Target>) {
  const wanted = bodySection(body, targets, name);
  const { section, breadth } = targets[name].form;
  const own = body.levels[name].breadth;
  const spread = (reading: typeof own) => (reading.kind === "estimated" ? reading.spread / 2 : 0);
  return {
    left: wanted.leftBreadth - section.leftBreadth,
    right: wanted.rightBreadth - section.rightBreadth,
    spread: Math.hypot(spread(own), spread(breadth)),
  };
}
