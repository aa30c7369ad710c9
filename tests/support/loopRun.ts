import type { Measurements } from "../../src/core/body/measurements";
import type { LevelName, MeasurementName } from "../../src/core/body/vocabulary";
import type { Reread } from "../../src/core/calibration/evidence";
import type { Piece } from "../../src/core/padding/piece";
import { basis } from "../../src/core/plan/basis";
import { corrected } from "../../src/core/plan/corrected";
import { replanFitting, type Replan } from "../../src/core/plan/replanFitting";
import { trialPiece } from "../../src/core/plan/trialPiece";
import { mm } from "../../src/core/units";
import { restingPlace } from "../../src/core/plan/restingPlace";
import type { Chance } from "./peopleChance";
import type { Person } from "./people";
import { readTape, type TrueReading, trueReadings, type TrueRoom, trueStations } from "./trueRoom";

/** One made-up person's padding from the bare form to the last piece, with a batting and a tape that are not what the plan takes them for. */
export interface LoopRun {
  readonly misses: readonly Miss[];
  /** Whether the interval that should hold the layer's worth nine times in ten held it, after the trial and at the end. */
  readonly heldAfterTrial: boolean;
  readonly heldAtEnd: boolean;
  /** For every level reading believed at the end, whether its nine-in-ten interval held the true reading. */
  readonly heldReadings: readonly boolean[];
  readonly pieces: number;
  readonly worthRatio: number;
}

/** A true reading of the finished form, less the body's, at a reading that the plan did not give up. */
export interface Miss {
  readonly level: LevelName;
  readonly what: keyof TrueReading;
  readonly miss: number;
  /** What the last plan expected to miss there. */
  readonly planned: number;
}

export interface LoopConditions {
  /** True worth of a layer over what the packet says. */
  readonly worth: number;
  readonly squeeze: number;
  readonly onset: TrueRoom["onset"];
  readonly readingError: number;
}

export function loopRun(person: Person, conditions: LoopConditions, chance: Chance): LoopRun {
  const { body, batting } = person;
  const form = readForm(person.form, conditions.readingError, chance);
  const input = { body, form, batting };
  const room: TrueRoom = {
    stations: trueStations(person.form, basis(input).drops),
    layer: conditions.worth * batting.layerThickness,
    squeeze: conditions.squeeze,
    onset: conditions.onset,
    readingError: conditions.readingError,
    chance,
  };
  const trial = trialPiece(basis(input), batting.layerThickness);
  const rereads: Reread[] = [
    { pinned: [], readings: readTape(room, [], ["waist"]) },
    { pinned: [trial], readings: readTape(room, [trial], ["waist"]) },
  ];
  const replan = (pinned: readonly Piece[], cut: readonly Piece[]) =>
    replanFitting(input, { pinned, rereads, cut, readingError: assumedReadingError });
  let plan = replan([], []);
  const heldAfterTrial = holds(plan, room);
  let pinned: readonly Piece[] = [];
  const timesRead = new Map<LevelName, number>();
  const mayRead = (level: LevelName) => (timesRead.get(level) ?? 0) < rounds;
  let justRead: ReadonlySet<LevelName> = new Set();
  while (plan.plan.pieces.length > 0) {
    const { plan: rest, now, belief } = plan;
    const { pieces, levels } = restingPlace(rest, now, belief, (level, reason) => {
      const most = reason === "danger" ? rounds - 1 : rounds;
      if ((timesRead.get(level) ?? 0) >= most) return "closed";
      return justRead.has(level) ? "fresh" : "stale";
    });
    const toRead = levels.filter(mayRead);
    if (pieces === rest.pieces.length || toRead.length === 0) break;
    pinned = [...pinned, ...rest.pieces.slice(0, pieces)];
    const left = rest.pieces.slice(pieces);
    for (let read = 0; read < readsPerRound; read++) rereads.push({ pinned, readings: readTape(room, pinned, toRead) });
    for (const level of toRead) timesRead.set(level, (timesRead.get(level) ?? 0) + 1);
    justRead = new Set(pieces === 0 ? [...justRead, ...toRead] : toRead);
    plan = replan(pinned, left);
    if (plan.corrections.length > 0) {
      pinned = corrected(pinned, plan.corrections, basis(input));
      plan = replan(pinned, left);
    }
  }
  pinned = [...pinned, ...plan.plan.pieces];
  const end = replan(pinned, []);
  const truth = trueReadings(room, pinned);
  return {
    misses: missesOf(plan, truth),
    heldAfterTrial,
    heldAtEnd: holds(end, room),
    heldReadings: heldReadings(end, truth),
    pieces: pinned.length,
    worthRatio: end.belief.building.layer / room.layer,
  };
}

/** How often a level may be read again on the way; the last of these readings waits for the outermost pieces. */
const rounds = 2;

/** Each time the tape is read again, every girth and arc is read twice, as anthropometrists do. */
const readsPerRound = 2;

/** The tool is told the usual reading error (nine in ten readings stay within), whatever this person's hand is like. */
const assumedReadingError = 5;

/** The form as its owner reads it: every girth and arc with an error, so that the tool does not know the true form either. */
function readForm(form: Measurements, readingError: number, chance: Chance): Measurements {
  const entries = Object.entries(form).map(([name, value]) =>
    /(Girth|Arc)$/.test(name)
      ? ([name, mm(Math.round(chance.normal(value, readingError)))] as const)
      : ([name, value] as const),
  );
  return Object.fromEntries(entries) as { [name in MeasurementName]?: ReturnType<typeof mm> };
}

const holds = ({ belief: { building } }: Replan, room: TrueRoom): boolean =>
  building.least <= room.layer && room.layer <= building.most;

function heldReadings({ belief }: Replan, truth: readonly TrueReading[]): readonly boolean[] {
  return belief.levels.flatMap((level, i) =>
    (["girth", "frontArc", "backArc"] as const).map((what) => {
      const { value, spread } = level[what];
      return Math.abs((truth[i] as TrueReading)[what] - value) <= 1.645 * spread;
    }),
  );
}

/** What the finished form truly misses, its side seams re-marked as the plan says, where the plan did not tell of a shortfall. */
function missesOf({ plan }: Replan, truth: readonly TrueReading[]): readonly Miss[] {
  return plan.levels.flatMap((level, i) => {
    const shift = plan.seamShifts.find((seam) => seam.level === level.name);
    const seamBack = shift === undefined ? 0 : shift.towards === "back" ? shift.perSide : -shift.perSide;
    const read = truth[i] as TrueReading;
    const marked = { girth: read.girth, frontArc: read.frontArc + 2 * seamBack, backArc: read.backArc - 2 * seamBack };
    return (["girth", "frontArc", "backArc"] as const)
      .filter((what) => !plan.shortfalls.some((shortfall) => shortfall.level === level.name && shortfall.what === what))
      .map(
        (what): Miss => ({
          level: level.name,
          what,
          miss: marked[what] - level.body[what].value,
          planned: level.predicted[what] - level.body[what].value,
        }),
      );
  });
}
