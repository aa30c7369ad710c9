import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makingOfStep } from "../../../src/app/steps/makingSteps";
import { nextStep } from "../../../src/app/steps/nextStep";
import type { Outlook } from "../../../src/app/steps/stepOutlook";
import type { Step } from "../../../src/app/steps/step";
import { type WorkFact, workState } from "../../../src/app/steps/workState";
import type { BuildAbove } from "../../../src/core/above/buildAbove";
import type { Piece } from "../../../src/core/padding/piece";
import type { PlannedPiece, TapeReading } from "../../../src/core/plan/plan";
import { mm } from "../../../src/core/units";

const nothing: TapeReading = { girth: mm(0), frontArc: mm(0), backArc: mm(0) };

const piece = (id: string, kind: Piece["kind"], layers: number): PlannedPiece => ({
  id,
  kind,
  zone: "front",
  level: "waist",
  number: 1,
  order: 1,
  pair: null,
  anchor: "centerFront",
  layers: Array.from({ length: layers }, () => ({
    batting: "building",
    thickness: mm(6),
    feather: mm(10),
    wrap: false,
    rows: [],
  })),
  cut: [],
  readingsAfter: { bust: nothing, underbust: nothing, waist: nothing, highHip: nothing, fullHip: nothing },
});

const neck: BuildAbove = { id: "neck-both", kind: "neck", side: "both", act: { what: "none" }, readings: [] };

/** A made-up job: pieces of structure and of tuning, a form that turns out so far off, and hands that do what is said. */
interface Job {
  readonly structure: readonly PlannedPiece[];
  readonly tuning: readonly PlannedPiece[];
  /** How many tunes the readings will ask for, and whether a layer turns out to be missing once. */
  readonly tunes: number;
  readonly isLayerMissingOnce: boolean;
  /** Whether something is built above the bust, and what is read over it asks for one layer more. */
  readonly isOffAbove: boolean;
}

function outlookOf(job: Job, facts: readonly WorkFact[]): Outlook {
  const on = new Set(facts.flatMap((fact) => (fact.did === "pinned" ? [fact.pieceId] : [])));
  const replans = facts.filter(({ did }) => did === "replanned").length;
  const lastPinned = facts.findLastIndex(({ did }) => did === "pinned");
  const isTrialNews = facts.some(({ did }) => did === "trial") && replans === 0;
  const more = job.isLayerMissingOnce && replans > 1 ? [piece("more", "panel", 2)] : [];
  const structure = [...job.structure, ...more].filter(({ id }) => !on.has(id));
  const tunes = facts.filter((fact, i) => fact.did === "pinned" && fact.tunes !== null && i <= lastPinned).length;
  const [first] = job.tuning;
  return {
    structure,
    tuning: job.tuning.filter(({ id }) => !on.has(id)),
    coversLines: new Set([...on].filter((id) => !id.startsWith("t"))),
    twice: [],
    expectedNow: { waistGirth: 800 },
    isTrialNews,
    isLayerMissing: job.isLayerMissingOnce && replans === 1 && structure.length === 0 && on.size > 0,
    tunes:
      first !== undefined && on.has(first.id) && tunes < job.tuning.length + job.tunes
        ? [
            {
              places: ["front-waist"],
              levels: ["waist"],
              act: {
                kind: "narrow",
                piece: first,
                at: [{ level: "waist", eachSide: 12 }],
                off: { level: "waist", half: "front", amount: 6, sense: "over" },
              },
            },
          ]
        : [],
    doubtful: [],
    isAtLines: false,
    hasArm: job.tunes > 0,
    above: job.isOffAbove ? [neck] : [],
    turnsAbove:
      job.isOffAbove && facts.filter(({ did }) => did === "builtAbove").length === 1
        ? [{ build: neck, turn: { what: "addLayer", part: "whole", because: "neckGirth", amount: mm(9) } }]
        : [],
    expectedOverCover: { waistGirth: 800 },
    coverOff: job.isLayerMissingOnce ? [{ level: "waist", over: 9 }] : [],
  };
}

/** What the log says once a step is done. */
function done(now: Step): readonly WorkFact[] {
  const id = now.piece?.id ?? "";
  switch (now.do) {
    case "prepare-form":
      return [{ did: "prepared" }];
    case "mark-lines":
      return [{ did: "marked" }];
    case "trial":
      return [{ did: "trial" }];
    case "cut":
      return [{ did: "cut", pieceId: id }];
    case "stack":
      return [{ did: "stacked", pieceId: id }];
    case "pin":
      return [{ did: "pinned", pieceId: id, tunes: now.piece?.kind === "tuning" ? ["front-waist"] : null }];
    case "tune":
      return [{ did: "pinned", pieceId: now.act?.piece.id ?? "", tunes: ["front-waist"] }];
    case "carry-lines":
      return [{ did: "linesCarried" }];
    case "plan-anew":
      return [{ did: "replanned" }];
    case "baste":
      return [{ did: "basted", pieceIds: now.pieceIds }];
    case "look":
      return [{ did: "looked" }];
    case "read-lines":
    case "read":
    case "read-all":
    case "check":
      return [{ did: "measured", names: now.names }];
    case "done":
      return [];
    case "choose-cover":
      return [{ did: "coverChosen", cloth: "knit" }];
    case "build-above":
    case "correct-above":
    case "mark-armhole":
      return [{ did: "builtAbove", build: now.build?.id ?? "" }];
    case "read-between":
      return [{ did: "measuredBetween" }];
    case "read-cover":
      return [{ did: "measuredOverCover", names: now.names }];
    default:
      return [{ did: "made", what: makingOfStep[now.do] }];
  }
}

function walked(job: Job): readonly Step[] {
  let facts: readonly WorkFact[] = [];
  const steps: Step[] = [];
  for (let i = 0; i < 200; i++) {
    const now = nextStep(workState(facts), outlookOf(job, facts));
    steps.push(now);
    if (now.do === "done") break;
    facts = [...facts, ...done(now)];
  }
  return steps;
}

const jobs = fc.record({
  structure: fc
    .integer({ min: 0, max: 6 })
    .map((n) => Array.from({ length: n }, (_, i) => piece(`s${i}`, "panel", 1 + (i % 3)))),
  tuning: fc.integer({ min: 0, max: 2 }).map((n) => Array.from({ length: n }, (_, i) => piece(`t${i}`, "tuning", 1))),
  tunes: fc.integer({ min: 0, max: 9 }),
  isLayerMissingOnce: fc.boolean(),
  isOffAbove: fc.boolean(),
});

const untuned = { tuning: [], tunes: 0, isLayerMissingOnce: false, isOffAbove: false };

describe("the next step", () => {
  it("leads from the bare form to done, in at most 27 and 8 steps a piece, whatever the job", () => {
    let longest = 0;
    fc.assert(
      fc.property(jobs, (job) => {
        const steps = walked(job);
        longest = Math.max(longest, steps.length);
        expect(steps.at(-1)?.do).toBe("done");
        const pieces = job.structure.length + job.tuning.length + (job.isLayerMissingOnce ? 1 : 0);
        expect(steps.length).toBeLessThanOrEqual(27 + 8 * pieces);
      }),
      { seed: 20261128, numRuns: 400 },
    );
    expect(longest).toBeGreaterThan(25);
  });

  it("reads the structure before anything is tuned, and tunes one place at most twice", () => {
    const steps = walked({
      structure: [piece("s", "wrap", 3)],
      tuning: [piece("t", "tuning", 1)],
      tunes: 9,
      isLayerMissingOnce: false,
      isOffAbove: false,
    });
    const names = steps.map((each) => each.do);
    expect(names.indexOf("read")).toBeLessThan(names.lastIndexOf("cut"));
    expect(names.filter((name) => name === "tune")).toHaveLength(2);
    names.forEach((name, i) => {
      if (name === "tune") expect(names[i + 1]).toBe("read");
    });
  });

  it("corrects a build by what was read over it, before anybody looks, and only once it is built", () => {
    const names = walked({ ...untuned, structure: [piece("s", "wrap", 1)], isOffAbove: true }).map((each) => each.do);
    const at = names.indexOf("build-above");
    expect(names.slice(at, at + 3)).toEqual(["build-above", "correct-above", "look"]);
    expect(names.filter((name) => name === "correct-above")).toHaveLength(1);
  });

  it("leaves a build under its cover alone", () => {
    const job = { ...untuned, structure: [piece("s", "wrap", 1)], isOffAbove: true };
    const facts: readonly WorkFact[] = [
      { did: "pinned", pieceId: "s", tunes: null },
      { did: "linesCarried" },
      { did: "measured", names: [] },
      { did: "basted", pieceIds: ["s"] },
      { did: "builtAbove", build: "neck-both" },
    ];
    const now = (more: readonly WorkFact[]) => nextStep(workState([...facts, ...more]), outlookOf(job, facts)).do;
    expect(now([])).toBe("correct-above");
    expect(now([{ did: "made", what: "coverCut" }])).not.toBe("correct-above");
  });

  it("cuts before it stacks, and stacks only what has more than one layer", () => {
    const steps = walked({ ...untuned, structure: [piece("one", "panel", 1), piece("three", "panel", 3)] });
    const of = (id: string) => steps.filter((each) => each.piece?.id === id).map((each) => each.do);
    expect(of("one")).toEqual(["cut", "pin"]);
    expect(of("three")).toEqual(["cut", "stack", "pin"]);
  });

  it("lets nothing be read or pinned over lines that are covered and not carried out", () => {
    const steps = walked({ ...untuned, structure: [piece("a", "wrap", 2), piece("b", "panel", 2)] });
    const names = steps.map((each) => each.do);
    names.forEach((name, i) => {
      if (name === "pin") expect(names[i + 1]).toBe("carry-lines");
    });
  });

  it("settles what cannot be before anything else", () => {
    const facts: readonly WorkFact[] = [{ did: "prepared" }];
    const outlook = outlookOf(
      { structure: [], tuning: [], tunes: 0, isLayerMissingOnce: false, isOffAbove: false },
      facts,
    );
    const now = nextStep(workState(facts), { ...outlook, doubtful: ["waistGirth"] });
    expect(now).toMatchObject({ do: "check", names: ["waistGirth"], levels: ["waist"] });
  });

  it("asks again for what was left out of a reading, and for nothing that was read", () => {
    const facts: readonly WorkFact[] = [
      { did: "pinned", pieceId: "s", tunes: null },
      { did: "linesCarried" },
      { did: "measured", names: ["bustGirth", "bustFrontArc", "waistGirth"] },
    ];
    const outlook = outlookOf(
      { structure: [piece("s", "wrap", 1)], tuning: [], tunes: 0, isLayerMissingOnce: false, isOffAbove: false },
      facts,
    );
    expect(nextStep(workState(facts), outlook)).toMatchObject({
      do: "read",
      levels: ["underbust", "highHip", "fullHip"],
    });
  });

  it("does not ask again for a reading that was left out", () => {
    const facts: readonly WorkFact[] = [
      { did: "pinned", pieceId: "s", tunes: null },
      { did: "linesCarried" },
      { did: "measured", names: [] },
    ];
    const outlook = outlookOf(
      { structure: [piece("s", "wrap", 1)], tuning: [], tunes: 0, isLayerMissingOnce: false, isOffAbove: false },
      facts,
    );
    expect(nextStep(workState(facts), outlook).do).toBe("baste");
  });
});
