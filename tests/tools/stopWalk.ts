import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { linesAtForm } from "../../src/app/progress/linesAtForm";
import { type CurrentStep, piecesNamed } from "../../src/app/steps/currentStep";
import { partOfStep } from "../../src/app/steps/jobPart";
import type { StepName } from "../../src/app/steps/step";
import { workEntry } from "../../src/app/steps/workEntry";
import type { MeasurementName } from "../../src/core/body/vocabulary";
import { linePartName } from "../../src/core/form/linePart";
import { reachOf } from "../../src/core/geometry/support";
import { fineStep, formatLength } from "../../src/core/lengthText";
import { type Millimetres, mm } from "../../src/core/units";
import { type Fitting, fittingStep } from "../../src/document/fitting";
import { linesWords } from "../../src/text/linesAtForm";
import { lineWords } from "../../src/text/pictures";
import { planWords } from "../../src/text/plan";
import { readAboveWords } from "../../src/text/above";
import { stepWords } from "../../src/text/steps";
import { betweenWords } from "../../src/text/makingSteps";
import { stopWords, trialStop } from "../../src/text/stops";

/** What a person does at the padding screen, whether it is drawn in a test or in a browser. */
export interface StopScreen {
  /** Waits until the headline is this one. */
  readonly headline: (words: string) => Promise<void>;
  /** The one dark button. */
  readonly slab: () => Promise<void>;
  readonly type: (text: string) => Promise<void>;
  readonly press: (name: string) => Promise<void>;
}

export interface StopWalk {
  readonly steps: readonly string[];
  /** Presses at each step, without the figures that were typed. */
  readonly taps: readonly { readonly step: string; readonly piece: string | null; readonly count: number }[];
  readonly last: Fitting;
}

const at = "2026-02-03T04:05:06.000Z";
const mostStops = 160;

/**
 * Walks the job of a fitting at a screen, and holds every headline against what the next step of the same fitting is called. The
 * log grows here by the very records that the screen should have noted; were they others, the next headline would differ.
 */
export async function walkStops(
  start: Fitting,
  screen: StopScreen,
  reads: (name: MeasurementName, expected: Millimetres) => number,
  seen: (step: string, fitting: Fitting) => Promise<void> = async () => {},
): Promise<StopWalk> {
  const derive = derivation();
  const [steps, taps]: [string[], StopWalk["taps"][number][]] = [[], []];
  let fitting = start;
  let isOver = false;
  const text = (name: MeasurementName, expected: number) =>
    formatLength(mm(reads(name, mm(expected))), fineStep[start.unit], "bare");
  for (let stops = 0; stops < mostStops; stops += 1) {
    const lines = await atLines(derive(fitting), fitting, screen, text, seen);
    if (lines !== null) {
      fitting = lines;
      continue;
    }
    const current = derive(fitting).step();
    if (current === null) throw new Error("there is no step");
    const { step } = current;
    if (partOfStep[step.do] !== "padding" && !isOver) {
      isOver = true;
      await screen.headline(stopWords.padded);
      await seen("padded", fitting);
      await screen.slab();
    }
    steps.push(step.do);
    if (step.do === "done") {
      await screen.headline(stepWords(step, sayingOf(current, fitting))[0]);
      await seen("done", fitting);
      return { steps, taps, last: fitting };
    }
    const done = await atStep(current, fitting, screen, text, seen);
    taps.push({ step: step.do, piece: step.piece?.id ?? null, count: done.count });
    fitting = done.fitting;
  }
  throw new Error(`no end of steps: ${steps.slice(-12).join(", ")}`);
}

const sayingOf = (current: CurrentStep, fitting: Fitting) => ({
  lengths: fittingStep(fitting),
  levels: current.plan.levels,
  pieces: piecesNamed(current, fitting),
  facts: current.facts,
});

type Text = (name: MeasurementName, expected: number) => string;
type Seen = (step: string, fitting: Fitting) => Promise<void>;

/** The stops of the bare form, line by line; null once they are behind. */
async function atLines(
  { planning }: ReturnType<ReturnType<typeof derivation>>,
  fitting: Fitting,
  screen: StopScreen,
  text: Text,
  seen: Seen,
): Promise<Fitting | null> {
  if (planning.kind === "waiting") throw new Error("there is no plan");
  const { lines, next } = linesAtForm(planning.plan, fitting);
  if (next.do === "done") return null;
  if (next.do === "prepare") {
    await screen.headline(linesWords.prepare.title);
    await seen("prepare", fitting);
    await screen.slab();
    return apply(fitting, { does: "record", entry: { did: "prepared", what: "form", at } });
  }
  const { level } = next;
  const depth = lines.find((line) => line.level === level)?.depth ?? mm(0);
  if (next.do === "mark") {
    await screen.headline(linesWords.mark.title(lineWords[level]));
    await seen("mark", fitting);
    await screen.slab();
    return apply(fitting, { does: "markLine", level, depth, at });
  }
  await screen.headline(linesWords.read.title(next.part, lineWords[level]));
  await seen("read-line", fitting);
  const name = linePartName(level, next.part);
  const planned = planning.plan.levels.find((one) => one.name === level);
  if (planned === undefined) throw new Error(`unplanned ${name}`);
  const { left, right, front, back } = reachOf(planned.formSection);
  const { part } = next;
  const typed = text(
    name,
    part === "breadth" ? left + right : part === "depth" ? front + back : planned.form[part].value,
  );
  await screen.type(typed);
  await screen.slab();
  return apply(fitting, { does: "read", name, text: typed, line: { level, depth }, at });
}

const readsTape: ReadonlySet<StepName> = new Set(["read", "read-all", "check", "read-cover"]);

async function atStep(
  current: CurrentStep,
  fitting: Fitting,
  screen: StopScreen,
  text: Text,
  seen: Seen,
): Promise<{ readonly fitting: Fitting; readonly count: number }> {
  const { step, plan } = current;
  const saying = sayingOf(current, fitting);
  const from = { plan, fitting, words: planWords(saying.lengths) };
  const noted = (taken: object, count: number) => {
    const entry = workEntry(step, from, at, taken);
    if (entry === null) throw new Error(`${step.do} has no record`);
    return { fitting: apply(fitting, { does: "record", entry }), count };
  };
  if (readsTape.has(step.do)) {
    const level = step.levels[0] ?? "waist";
    const names = step.names.filter((name) => name.startsWith(level));
    const readings: { [name: string]: string } = {};
    for (const name of names) {
      const one = { ...step, levels: [level], names: [name] };
      await screen.headline(stepWords(step.do === "check" ? step : one, saying)[0]);
      if (names.indexOf(name) === 0) await seen(step.do, fitting);
      const typed = text(name, step.expected[name] ?? 0);
      readings[name] = typed;
      await screen.type(typed);
      await screen.slab();
    }
    return noted({ readings }, names.length);
  }
  await screen.headline(stepWords(step, saying)[0]);
  await seen(step.do, fitting);
  if (step.do === "trial") await screen.press(trialStop.skip);
  else if (step.do === "read-between") await screen.press(betweenWords.skip);
  else await screen.slab();
  if (step.do !== "build-above" || step.build?.act.what !== "layers") return noted({}, 1);
  await screen.headline(readAboveWords.measure(step.build));
  await seen(`${step.do} read`, fitting);
  await screen.slab();
  return noted({ readings: {} }, 2);
}
