import { type Derived, derivation } from "../../src/app/session/derived";
import { apply } from "../../src/app/session/commands";
import { doneness } from "../../src/app/progress/doneness";
import { type Fitting, writeFitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { battingProblemText, fittingProblemText, measurementProblemText } from "../../src/text/problems";
import { type HostileLog, hostileLog } from "./hostileLogs";

/** What became of many logs. Nothing in `faults` is the promise; the other figures say that the campaign was not empty. */
export interface HostileCounts {
  readonly logs: number;
  /** Not a fitting, with a sentence for every reason. */
  readonly refused: number;
  /** A fitting without a plan, with a sentence why. */
  readonly waiting: number;
  readonly planned: number;
  readonly learned: number;
  /** Readings over padding that were marked as impossible. */
  readonly marked: number;
  /** Slips typed on purpose into fittings that could be planned, and how many of them were not marked. */
  readonly slips: number;
  readonly slowestMs: number;
  readonly faults: readonly HostileFault[];
}

export interface HostileFault {
  readonly seed: number;
  readonly what: "threw" | "notFinite" | "unsaid" | "believed" | "notReadBack" | "slow";
  readonly detail: string;
}

/** Longer than this (ms) for one log, on a machine with other work, is no bounded time. */
export const slowMs = 20_000;

/** Takes logs through all that a page would work out of them, from a seed on. */
export function checkHostileLogs(count: number, firstSeed = 0): HostileCounts {
  const derive = derivation();
  const found = Array.from({ length: count }, (_, i) => checked(hostileLog(firstSeed + i), derive));
  const sum = (of: (one: Checked) => number): number => found.reduce((total, one) => total + of(one), 0);
  return {
    logs: count,
    refused: sum(({ came }) => (came === "refused" ? 1 : 0)),
    waiting: sum(({ came }) => (came === "waiting" ? 1 : 0)),
    planned: sum(({ came }) => (came === "planned" ? 1 : 0)),
    learned: sum(({ learned }) => learned),
    marked: sum(({ marked }) => marked),
    slips: sum(({ slips }) => slips),
    slowestMs: Math.round(Math.max(0, ...found.map(({ ms }) => ms))),
    faults: found.flatMap(({ faults }) => faults),
  };
}

interface Checked {
  readonly came: "refused" | "waiting" | "planned" | "threw";
  readonly learned: number;
  readonly marked: number;
  readonly slips: number;
  readonly ms: number;
  readonly faults: readonly HostileFault[];
}

const nothing = { learned: 0, marked: 0, slips: 0 } as const;

function checked(log: HostileLog, derive: (fitting: Fitting) => Derived): Checked {
  const started = performance.now();
  const outcome = tried(log, derive);
  const ms = performance.now() - started;
  const slow = ms > slowMs ? [fault(log, "slow", `${Math.round(ms)} ms`)] : [];
  return { ...outcome, ms, faults: [...outcome.faults, ...slow] };
}

function tried(log: HostileLog, derive: (fitting: Fitting) => Derived): Omit<Checked, "ms"> {
  try {
    const read = readFitting(JSON.parse(JSON.stringify(log.file)));
    if (read.ok) return followed(log, read.value, derive);
    const sentences = read.problem.map((problem) => fittingProblemText(problem, "1 mm"));
    return { came: "refused", ...nothing, faults: unsaid(log, sentences) };
  } catch (thrown) {
    const detail = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
    return { came: "threw", ...nothing, faults: [fault(log, "threw", detail.split("\n").slice(0, 6).join(" "))] };
  }
}

function followed(log: HostileLog, fitting: Fitting, derive: (fitting: Fitting) => Derived): Omit<Checked, "ms"> {
  const derived = derive(fitting);
  const { planning, progress, impossible, problems } = derived;
  if (planning.kind === "waiting" || progress === null) {
    const sentences = [
      ...problems.entries.map((problem) => fittingProblemText(problem, "1 mm")),
      ...problems.measurements.map((problem) => measurementProblemText(problem, "1 mm")),
      ...problems.batting.map((problem) => battingProblemText(problem, "1 mm")),
    ];
    return { came: "waiting", ...nothing, faults: unsaid(log, sentences) };
  }
  const learning = derived.learning();
  const answers = [derived, doneness(planning.plan, progress), learning, derived.thicknessHistory(), derived.step()];
  const next = progress.next;
  const further =
    next === null
      ? fitting
      : apply(fitting, { does: "record", entry: { did: "pinned", piece: pieceToFile(next, "next", ""), at: "now" } });
  const again = derive(apply(further, { does: "record", entry: { did: "replanned", at: "now" } }));
  const slips = log.slips;
  const missed = slips - impossible.filter(({ entry }) => isSlip(log, entry)).length;
  return {
    came: "planned",
    learned: learning === null ? 0 : 1,
    marked: impossible.length,
    slips,
    faults: [
      ...[...answers, again, again.learning()].flatMap((answer) => notFinite(log, answer)),
      ...(slips > 0 && missed > 0 ? [fault(log, "believed", `${missed} of ${slips}`)] : []),
      ...notReadBack(log, further),
    ],
  };
}

/** Slips are the only readings of an otherwise honest log that are typed as text with no figure near it. */
function isSlip({ file }: HostileLog, at: number): boolean {
  const work = file.work as readonly { readonly readings?: { readonly [name: string]: unknown } }[];
  return Object.values(work[at]?.readings ?? {}).some((typed) => typeof typed === "string");
}

/** What was done goes into the file and comes out of it the same. */
function notReadBack(log: HostileLog, fitting: Fitting): readonly HostileFault[] {
  const written = JSON.stringify(writeFitting(fitting));
  const read = readFitting(JSON.parse(written));
  if (!read.ok) return [fault(log, "notReadBack", JSON.stringify(read.problem).slice(0, 300))];
  return JSON.stringify(writeFitting(read.value)) === written ? [] : [fault(log, "notReadBack", "changed")];
}

function unsaid(log: HostileLog, sentences: readonly string[]): readonly HostileFault[] {
  const bad = sentences.filter((sentence) => sentence.length < 10 || /undefined|NaN|Infinity|\[object/.test(sentence));
  if (sentences.length > 0 && bad.length === 0) return [];
  return [fault(log, "unsaid", sentences.length === 0 ? "no sentence" : (bad[0] ?? ""))];
}

/** The first number in an answer that is none, with its place. */
function notFinite(log: HostileLog, answer: unknown): readonly HostileFault[] {
  const left: { readonly value: unknown; readonly path: string }[] = [{ value: answer, path: "" }];
  for (let next = left.pop(); next !== undefined; next = left.pop()) {
    const { value, path } = next;
    if (typeof value === "number" && !Number.isFinite(value)) return [fault(log, "notFinite", `${path} ${value}`)];
    if (typeof value !== "object" || value === null) continue;
    for (const [key, inner] of Object.entries(value)) left.push({ value: inner, path: `${path}.${key}` });
  }
  return [];
}

const fault = ({ seed, kind }: HostileLog, what: HostileFault["what"], detail: string): HostileFault => ({
  seed,
  what,
  detail: `${kind}: ${detail}`,
});
