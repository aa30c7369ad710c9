import type { PlannedPiece } from "../../src/core/plan/plan";
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { apply, type Command, trialDraftKeys } from "../../src/app/session/commands";
import { type Derived, derivation } from "../../src/app/session/derived";
import { doneness } from "../../src/app/progress/doneness";
import { padProgress } from "../../src/app/progress/padProgress";
import { readPoints } from "../../src/app/progress/thicknessHistory";
import { type LevelName, levelNames } from "../../src/core/body/vocabulary";
import { formatLength, tapeStep } from "../../src/core/lengthText";
import { assert } from "../../src/core/result";
import { homeTape } from "../../src/core/tolerances";
import { mm } from "../../src/core/units";
import type { Fitting } from "../../src/document/fitting";
import { readFittingText } from "../../src/document/readFitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { levelToMeasure } from "../../src/app/progress/levelToMeasure";
import { sampleBody, sampleForm } from "../support/sample";

const at = "2026-01-02T03:04:05.000Z";
const derive = derivation();
const done = (fitting: Fitting, ...commands: readonly Command[]): Fitting => commands.reduce(apply, fitting);
const planned = (derived: Derived) => {
  assert(derived.planning.kind === "planned", "the demo can be planned");
  return derived.planning.plan;
};
const learned = (fitting: Fitting) => {
  const told = derive(fitting).learning();
  assert(told !== null, "something was read");
  return told;
};

const trial = (before: string, after: string): Command => ({
  does: "record",
  entry: { did: "trial", batting: "bonded batting", level: "waist", plies: 1, before, after, at },
});
const reads = (level: LevelName, text: string): Command => ({ does: "read", name: `${level}Girth`, text, at });
const first = planned(derive(demoFitting));
const pins = (count: number): readonly Command[] =>
  first.pieces
    .slice(0, count)
    .map((piece) => ({ does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at } }));
const bare = sampleForm("waistGirth");
const tried = done(demoFitting, trial(bare, sampleForm("waistGirth", 1.875)));
const underWay = done(
  tried,
  ...pins(3),
  reads("waist", sampleBody("waistGirth", -2)),
  reads("highHip", sampleBody("highHipGirth", -2.25)),
);

describe("the trial of one layer", () => {
  test("before anything is read there is nothing learned, only a wide interval", () => {
    const derived = derive(demoFitting);
    expect(derived.learning()).toBeNull();
    const history = derived.thicknessHistory();
    expect(history?.after).toEqual([]);
    expect((history?.before.building.most ?? 0) / (history?.before.building.least ?? 1)).toBeGreaterThan(2);
  });

  // One even layer adds two pi of its thickness round any outline without hollows: elementary geometry.
  test("moves the estimate towards what the tape said, and makes it surer", () => {
    const { replan, readingCount } = learned(tried);
    const said = (1.875 * 25.4) / (2 * Math.PI);
    const { layer, least, most } = replan.calibration.building;
    expect(Math.abs(layer - said)).toBeLessThan(0.3);
    expect(least).toBeLessThan(layer);
    expect(most).toBeGreaterThan(layer);
    expect(most / least).toBeLessThan(1.6);
    expect(readingCount).toBe(2);
  });

  test("takes the texts out of its fields, and undo has the same fitting again", () => {
    const typed = done(demoFitting, { does: "draft", of: "other", key: trialDraftKeys.before, text: bare });
    expect(done(typed, trial(bare, sampleForm("waistGirth", 1.75))).drafts.other).toEqual({});
  });
});

describe("how the estimate came about", () => {
  test("one estimate after each reading, the last being what is known now", () => {
    const history = derive(underWay).thicknessHistory();
    expect(history?.after.map(({ what }) => what)).toEqual(["trial", "waist", "highHip"]);
    const now = learned(underWay).replan.calibration.building;
    expect(history?.after.at(-1)?.thicknesses.building.layer).toBeCloseTo(now.layer, 6);
  });

  test("a further reading leaves the earlier estimates as they were, to the very object", () => {
    const before = derive(underWay).thicknessHistory();
    const after = derive(done(underWay, reads("fullHip", sampleBody("fullHipGirth", -1.25)))).thicknessHistory();
    expect(after?.after).toHaveLength(4);
    expect(after?.after[1]?.thicknesses).toBe(before?.after[1]?.thicknesses);
  });

  test("no more than the last eight are told, and readings of one level count as one", () => {
    const many = levelNames.flatMap((level) => [reads(level, "36"), reads(level, "36 1/8")]);
    const { work } = done(demoFitting, ...many);
    expect(readPoints(work).map(({ entry }) => entry)).toEqual([1, 3, 5, 7, 9]);
    const longer = done(demoFitting, ...many, ...many);
    expect(derive(longer).thicknessHistory()?.after).toHaveLength(8);
  });

  test("a surer hand makes a surer estimate; a text that is no length changes nothing", () => {
    const deviation = (fitting: Fitting) => learned(fitting).replan.calibration.building.standardDeviation;
    const steady = done(tried, { does: "setReadingError", text: "3 mm" });
    const hasty = done(tried, { does: "setReadingError", text: "10 mm" });
    expect(deviation(steady)).toBeLessThan(deviation(tried));
    expect(deviation(hasty)).toBeGreaterThan(deviation(tried));
    expect(done(tried, { does: "setReadingError", text: "close" })).toBe(tried);
  });
});

describe("a reading that was a slip", () => {
  test("by inches is asked for again, and moves nothing", () => {
    const { calibration } = learned(done(underWay, reads("waist", sampleBody("waistGirth", 7)))).replan;
    expect(calibration.outliers.map(({ name }) => name)).toEqual(["waistGirth"]);
    expect(calibration.building.layer).toBeCloseTo(learned(underWay).replan.calibration.building.layer, 9);
  });

  test("by little can be left out, and the estimate is as if it had not been", () => {
    const [far] = learned(done(underWay, reads("waist", sampleBody("waistGirth", 7)))).replan.calibration.outliers;
    const slipped = done(underWay, reads("waist", `${String(Math.round((far?.expected ?? 0) + 12))} mm`));
    const mended = done(slipped, { does: "leaveOut", entry: slipped.work.length - 1 });
    expect(mended.work).toEqual(underWay.work);
    expect(learned(slipped).replan.calibration.building.layer).not.toBeCloseTo(
      learned(underWay).replan.calibration.building.layer,
      2,
    );
    expect(learned(mended).replan.calibration.building.layer).toBeCloseTo(
      learned(underWay).replan.calibration.building.layer,
      9,
    );
  });

  test("but not once a plan was made from it, and a pinned piece is no reading", () => {
    const again = done(underWay, { does: "record", entry: { did: "replanned", at } });
    expect(done(again, { does: "leaveOut", entry: again.work.length - 2 })).toBe(again);
    const pinned = underWay.work.findIndex(({ did }) => did === "pinned");
    expect(done(underWay, { does: "leaveOut", entry: pinned })).toBe(underWay);
    expect(done(underWay, { does: "leaveOut", entry: 99 })).toBe(underWay);
  });
});

/** Seen to fail when a miss of a hair was reason enough, and when doubt about what is still to come was left out. */
describe("a tape that reads what was planned", () => {
  const demos = ["first", "long-back", "two-sides"].map((name) => readFileSync(`shared/demo/${name}.json`, "utf8"));
  const people = [
    demoFitting,
    ...demos.map((text) => {
      const person = readFittingText(text);
      assert(person.ok, "the sample people can be read");
      return person.value;
    }),
  ];

  test.each(people.map((person) => [person.title, person] as const))("leaves the plan of %s as it is", (_, person) => {
    let fitting: Fitting = person;
    let pinned = 0;
    for (;;) {
      const derived = derive(fitting);
      const piece = derived.progress?.next ?? null;
      if (piece === null) break;
      const level = levelToMeasure(planned(derived), piece);
      const reading = formatLength(piece.readingsAfter[level].girth, tapeStep[fitting.unit]);
      fitting = done(
        fitting,
        { does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at } },
        reads(level, reading),
      );
      pinned++;
      const { replan } = learned(fitting);
      const structure = (pieces: readonly PlannedPiece[]) =>
        pieces
          .filter(({ kind }) => kind !== "tuning")
          .map(({ kind, zone, level, layers }) => [kind, zone, level, layers.length]);
      const left = planned(derived).pieces.filter(({ order }) => order > piece.order);
      expect(structure(replan.plan.pieces), `after piece ${String(piece.order)}`).toEqual(structure(left));
      expect(replan.calibration.outliers).toEqual([]);
    }
    expect(pinned).toBeGreaterThan(2);
  });

  test("a trial thrice the packet is asked for again, and counts the second time", () => {
    const once = done(demoFitting, trial(bare, sampleForm("waistGirth", 4.75)));
    expect(learned(once).replan.calibration.outliers.map(({ name }) => name)).toEqual(["waistGirth"]);
    const twice = learned(done(once, trial(bare, sampleForm("waistGirth", 4.75))));
    expect(twice.replan.calibration.outliers).toEqual([]);
    expect(twice.replan.calibration.building.layer).toBeGreaterThan(15);
  });
});

describe("planning the rest anew", () => {
  const again = done(underWay, { does: "record", entry: { did: "replanned", at } });
  const derived = derive(again);

  test("keeps what is pinned", () => {
    expect(
      planned(derived)
        .pieces.slice(0, 3)
        .map(({ id }) => id),
    ).toEqual(first.pieces.slice(0, 3).map(({ id }) => id));
    expect(derived.progress?.pinnedCount).toBe(3);
  });
});

describe("whether it is done", () => {
  const allOn = done(demoFitting, ...pins(first.pieces.length));
  const judge = (fitting: Fitting) => doneness(first, padProgress(first, fitting));
  const body = (level: LevelName): number =>
    first.levels.find(({ name }) => name === level)?.body.girth.value ?? Number.NaN;
  const readAll = (off: (level: LevelName) => number): readonly Command[] =>
    levelNames.flatMap((level) => [
      reads(level, `${body(level) + off(level)} mm`),
      readsFront(level, `${front(level) + off(level) / 2} mm`),
    ]);
  const front = (level: LevelName): number =>
    first.levels.find(({ name }) => name === level)?.body.frontArc.value ?? Number.NaN;
  const readsFront = (level: LevelName, text: string): Command => ({
    does: "read",
    name: `${level}FrontArc`,
    text,
    at,
  });

  test("with pieces left it is not, and nothing pinned is not yet at every level", () => {
    const { overall, levels } = judge(demoFitting);
    expect(overall).toBe("notYet");
    expect(levels.map(({ kind }) => kind)).toEqual(levelNames.map(() => "notYet"));
  });

  test("every piece on and nothing read: expected there, to be read", () => {
    const { overall, levels } = judge(allOn);
    expect(overall).toBe("unread");
    expect(levels.every(({ kind, read }) => kind === "there" && read === "none")).toBe(true);
  });

  test("girths alone do not make it done: the fronts were measured, so they are asked for", () => {
    const girths = done(allOn, ...levelNames.map((level) => reads(level, `${body(level)} mm`)));
    expect(judge(girths).overall).toBe("unread");
    expect(judge(girths).levels.map(({ read }) => read)).toEqual(levelNames.map(() => "girthOnly"));
  });

  test("read within what a tape at home can tell: done; beyond: over, or not yet, and where", () => {
    const near = judge(done(allOn, ...readAll(() => homeTape - 1)));
    expect(near.overall).toBe("done");
    const far = judge(done(allOn, ...readAll((level) => (level === "waist" ? 25 : level === "bust" ? -25 : 0))));
    expect(far.overall).toBe("notYet");
    const kinds = Object.fromEntries(far.levels.map(({ level, kind }) => [level, kind]));
    expect(kinds).toEqual({ bust: "notYet", underbust: "there", waist: "over", highHip: "there", fullHip: "there" });
    expect(far.levels[2]?.amount).toBeCloseTo(25, 3);
  });

  test("there and read before the last piece: one may stop", () => {
    expect(judge(done(demoFitting, ...pins(first.pieces.length - 1), ...readAll(() => 0))).overall).toBe("stopHere");
  });

  test("where the plan itself stays off, standing at its end is as near as it gets", () => {
    const levels = first.levels.map((level) =>
      level.name === "waist" ? { ...level, predicted: { ...level.predicted, girth: mm(body("waist") + 30) } } : level,
    );
    const short = { ...first, levels };
    const fitting = done(allOn, ...readAll((level) => (level === "waist" ? 28 : 0)));
    const waist = doneness(short, {
      ...padProgress(first, fitting),
      now: {
        ...padProgress(first, fitting).now,
        waist: { ...padProgress(first, allOn).now.waist, girth: { kind: "read", value: mm(body("waist") + 28) } },
      },
    }).levels[2];
    expect(waist?.kind).toBe("asNearAsItGets");
    expect(waist?.amount).toBeCloseTo(28, 3);
  });
});
