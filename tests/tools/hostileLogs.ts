import { levelNames, measurementNames } from "../../src/core/body/vocabulary";
import { planFitting } from "../../src/core/plan/planFitting";
import type { Plan } from "../../src/core/plan/plan";
import { pieceToFile } from "../../src/document/pieceFile";
import { type Person, person } from "./people";
import { chance, type Chance } from "./peopleChance";

/**
 * Fitting files with a log of work, honest, mistaken and hostile, for campaigns: the same seed is the same file for ever.
 * Forty logs after each other share one made-up person, so that most of them share one plan.
 */
export interface HostileLog {
  readonly seed: number;
  readonly kind: LogKind;
  /** The file as it would be imported. */
  readonly file: FileObject;
  /** Readings over padding typed on purpose that no form can give. */
  readonly slips: number;
}

export const logKinds = ["honest", "slip", "random", "pieces", "material", "body", "long"] as const;
export type LogKind = (typeof logKinds)[number];

type FileObject = { readonly [key: string]: unknown };
type Entry = FileObject;

const logsOfOne = 40;

export function hostileLog(seed: number): HostileLog {
  const luck = chance(seed * 7919 + 13);
  const { base, plan } = personWithPlan(Math.floor(seed / logsOfOne));
  const kind = luck.pick(logKinds);
  const work = workOf[kind](luck, plan);
  const whole: FileObject = {
    version: 1,
    unit: "mm",
    body: kind === "body" ? spoilt(luck, base.body) : kind === "slip" ? measuredAgain(luck, base.body) : base.body,
    form: kind === "body" && luck.happens(0.5) ? spoilt(luck, base.form) : base.form,
    batting: { name: "batting", layerThickness: base.batting.layerThickness, spread: 0.4 },
    ...(kind === "material" ? material(luck) : {}),
    work: work.entries,
  };
  return { seed, kind, file: whole, slips: work.slips };
}

let last: { readonly number: number; readonly base: Person; readonly plan: Plan } | null = null;

function personWithPlan(number: number): { readonly base: Person; readonly plan: Plan } {
  if (last?.number !== number) {
    const base = person(number + 1);
    last = { number, base, plan: planFitting(base) };
  }
  return last;
}

interface DrawnWork {
  readonly entries: readonly Entry[];
  readonly slips: number;
}

const workOf: { readonly [kind in LogKind]: (luck: Chance, plan: Plan) => DrawnWork } = {
  honest: (luck, plan) => ({ entries: honest(luck, plan), slips: 0 }),
  slip: withSlips,
  random: (luck, plan) => ({ entries: times(luck.between(1, 40), () => anyEntry(luck, plan)), slips: 0 }),
  pieces: (luck, plan) => ({
    entries: [...honest(luck, plan), ...times(luck.between(1, 6), () => strangePiece(luck, plan)), ...readings(luck)],
    slips: 0,
  }),
  material: (luck, plan) => ({ entries: [...honest(luck, plan), ...readings(luck)], slips: 0 }),
  body: (luck, plan) => ({ entries: honest(luck, plan), slips: 0 }),
  long: (luck, plan) => ({
    entries: luck.happens(0.05)
      ? times(luck.between(500, 2000), () => anyEntry(luck, plan))
      : times(luck.between(40, 120), () => anyEntry(luck, plan)),
    slips: 0,
  }),
};

const times = <Value>(count: number, of: (i: number) => Value): readonly Value[] =>
  Array.from({ length: Math.floor(count) }, (_, i) => of(i));

const levelReadingNames = ["Girth", "FrontArc", "BackArc", "LeftFrontArc", "RightFrontArc", "LeftBackArc"] as const;

/** Pieces in their order, read now and then near what was planned, and sometimes planned anew. */
function honest(luck: Chance, { pieces }: Plan): readonly Entry[] {
  const count = Math.floor(luck.between(0, pieces.length + 1));
  return pieces.slice(0, count).flatMap((piece): readonly Entry[] => {
    const level = luck.pick(levelNames);
    const { girth, frontArc } = piece.readingsAfter[level];
    const off = (value: number): number => Math.round((value + luck.normal(0, 4)) * 10) / 10;
    return [
      { did: "pinned", piece: pieceToFile(piece, "piece", "somewhere") },
      ...(luck.happens(0.6) ? [{ did: "measured", readings: { [`${level}Girth`]: off(girth) } }] : []),
      ...(luck.happens(0.3) ? [{ did: "measured", readings: { [`${level}FrontArc`]: off(frontArc) } }] : []),
      ...(luck.happens(0.1) ? [{ did: "replanned" }] : []),
      ...(luck.happens(0.05)
        ? [{ did: "trimmed", pieceId: piece.id, level, eachSideMm: Math.round(luck.between(0, 60)) }]
        : []),
      ...(luck.happens(0.05) ? [{ did: "unpinned", pieceId: piece.id }] : []),
    ];
  });
}

/** One slip of the hand that no form can give, typed two or three times, somewhere in an honest log or as its first readings. */
function withSlips(luck: Chance, plan: Plan): DrawnWork {
  const work = honest(luck, plan);
  const entries = luck.happens(0.6) ? work.filter(({ did }) => did === "pinned") : work;
  const name = `${luck.pick(levelNames)}${luck.pick(levelReadingNames)}`;
  const text = luck.pick(["341 cm", "381/2 in", "9999 mm", "1 cm", "0.01 mm", "3,9 mm", "2900", "10000 mm"]);
  const count = luck.pick([2, 2, 3]);
  const at = Math.floor(luck.between(0, entries.length + 1));
  const slip = { did: "measured", readings: { [name]: text } };
  const again = luck.happens(0.3) ? [{ did: "replanned" }] : [];
  return {
    entries: [...entries.slice(0, at), ...times(count, () => slip), ...again, ...entries.slice(at)],
    slips: count,
  };
}

const oneOf = <Value>(luck: Chance, values: readonly Value[]): Value | null =>
  values[Math.floor(luck.between(0, values.length))] ?? null;

const anyName = (luck: Chance): string => oneOf(luck, measurementNames) ?? "waistGirth";

const anyLength = (luck: Chance): number | string =>
  luck.pick<() => number | string>([
    () => Math.round(luck.between(1, 2000)),
    () => Math.round(luck.between(600, 1300)),
    () => Math.round(luck.between(250, 700)),
    () => `${Math.round(luck.between(1, 400))} cm`,
    () => `${Math.round(luck.between(1, 390))} in`,
    () => luck.pick(["0.001 mm", "10000 mm", "0,5", "38 1/2 in", "1/64 in", "9999.999 mm"]),
  ])();

const readings = (luck: Chance): readonly Entry[] =>
  times(luck.between(1, 8), () => ({
    did: "measured",
    readings: { [`${luck.pick(levelNames)}${luck.pick(levelReadingNames)}`]: anyLength(luck) },
  }));

/** Anything that can stand in a log, in any order. */
function anyEntry(luck: Chance, plan: Plan): Entry {
  const piece = oneOf(luck, plan.pieces);
  const id = luck.happens(0.8) ? (piece?.id ?? "front-1") : "nobody";
  return luck.pick<() => Entry>([
    () => (piece === null ? { did: "replanned" } : { did: "pinned", piece: pieceToFile(piece, "", "") }),
    () => (luck.happens(0.5) ? strangePiece(luck, plan) : { did: "unpinned", pieceId: id }),
    () => ({ did: "measured", readings: { [anyName(luck)]: anyLength(luck) } }),
    () => ({ did: "measured", readings: { [`${luck.pick(levelNames)}Girth`]: anyLength(luck) } }),
    () => ({
      did: "measured",
      readings: { [`${luck.pick(levelNames)}FrontArc`]: anyLength(luck) },
      ...(luck.happens(0.2) ? { over: "cover" } : {}),
    }),
    () => ({
      did: "trial",
      batting: luck.pick(["batting", "other"]),
      level: luck.pick(levelNames),
      plies: Math.ceil(luck.between(0, 20)),
      before: anyLength(luck),
      after: anyLength(luck),
    }),
    () => (luck.happens(0.4) ? { did: "replanned" } : { did: "unpinned", pieceId: id }),
    () => ({
      did: "trimmed",
      pieceId: id,
      level: luck.pick(levelNames),
      eachSideMm: Math.round(luck.between(0, 1000)),
    }),
  ])();
}

/** A piece that no plan made: most of them inside what a file may say, some beyond it. */
function strangePiece(luck: Chance, { bareForm }: Plan): Entry {
  const zone = luck.pick(["round", "front", "back", "leftSide", "rightSide", "leftCup", "rightCup"] as const);
  const count = luck.pick([0, 1, 2, 2, 3, 20, 400]);
  const top = luck.pick([0, 100, 200, 400, -4900]);
  const gap = luck.pick([0.1, 1, 16, 16, 50, 0]);
  const wide = luck.pick([0, 1, 60, 300, 5000, -5]);
  const middle = luck.pick([0, 0, 400, -4000]);
  const rows = times(count, (i) => ({
    dropMm: Math.round((top + i * gap) * 10) / 10,
    startMm: Math.max(-5000, middle - wide),
    endMm: Math.min(5000, middle + wide),
  }));
  const swapped = luck.happens(0.05) ? rows.toReversed() : rows;
  const tape = ({ girth, frontArc, backArc }: Plan["bareForm"]["bust"]) => ({
    girthMm: Math.round(girth),
    frontArcMm: Math.round(frontArc),
    backArcMm: Math.round(backArc),
  });
  return {
    did: "pinned",
    piece: {
      id: luck.pick([`${zone}-1`, `${zone}-2`, "strange", "x".repeat(100)]),
      order: luck.pick([1, 7, 1000]),
      name: "",
      place: "",
      zone,
      wrap: zone === "round",
      batting: luck.pick(["building", "finishing"]),
      plies: luck.pick([1, 1, 2, 9, 100, 500]),
      thicknessMm: luck.pick([0, 0.01, 6, 6, 50, 500]),
      featherMm: luck.pick([0, 0.1, 25, 25, 375, 2000]),
      rows: swapped,
      cut: luck.pick([
        { shape: "disc", diameterMm: 100 },
        {
          shape: "panel",
          heightMm: 100,
          widths: [
            { belowTopMm: 0, leftMm: 50, rightMm: 50 },
            { belowTopMm: 100, leftMm: 50, rightMm: 50 },
          ],
        },
      ]),
      readingsAfter: {
        bust: tape(bareForm.bust),
        underbust: tape(bareForm.underbust),
        waist: tape(bareForm.waist),
        highHip: tape(bareForm.highHip),
        fullHip: tape(bareForm.fullHip),
      },
    },
  };
}

/** Batting and hand at the ends of what a file may say. */
const material = (luck: Chance): FileObject => ({
  batting: {
    name: "batting",
    layerThickness: luck.pick(["0.3 mm", "30 mm", "1 mm", "12 mm", "0.001 mm", "31 mm"]),
    spread: luck.pick([0.01, 0.5, 2]),
  },
  ...(luck.happens(0.5)
    ? { finishingBatting: { name: "other", layerThickness: luck.pick(["0.3 mm", "2 mm", "30 mm"]) } }
    : {}),
  ...(luck.happens(0.7) ? { readingError: luck.pick(["0.001 mm", "0.1 mm", "3 mm", "100 mm", "10000 mm"]) } : {}),
});

/** The same body months later, as often as not: larger or smaller round the bust, which asks for a new plan over the old pieces. */
const measuredAgain = (luck: Chance, body: Person["body"]): FileObject =>
  luck.happens(0.5) && body.bustGirth !== undefined
    ? { ...body, bustGirth: Math.round(body.bustGirth + luck.between(-80, 160)) }
    : body;

/** Measurements one or two of which are anything. */
function spoilt(luck: Chance, measurements: FileObject): FileObject {
  const changed = times(luck.between(1, 4), () => [anyName(luck), anyLength(luck)] as const);
  return { ...measurements, ...Object.fromEntries(changed) };
}
