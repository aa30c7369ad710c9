import committed from "../../shared/measuring-gains.json";
import { type QuestionId, questionIds } from "../../src/app/progress/questions";
import {
  breadths,
  depths,
  type Entries,
  fronts,
  type Given,
  girthsAndFronts,
  heights,
  levelMisses,
  missesBetween,
  planOfGiven,
  lowerBreast,
  markedDepths,
  readingsOnLines,
  surfaceLengths,
  type TruePair,
  truePairs,
} from "./trueTrials";

export const gainsPath = "shared/measuring-gains.json";

/**
 * What each question is worth: how far nine in ten girths and fronts of the padded form lie within the body's, before it is
 * answered and after. A person starts with three girths of the body and three of the form; each time the question that
 * gains most is asked next.
 */
const firstGirths = ["bustGirth", "waistGirth", "fullHipGirth"];
const otherGirths = ["underbustGirth", "highHipGirth"];

/** What is known of a pair when some questions are answered. */
export function answered(pair: TruePair, asked: ReadonlySet<QuestionId>): Given {
  const { levels, lengths } = pair.body;
  const girths = girthsAndFronts(levels);
  const body = {
    ...only(girths, firstGirths),
    ...(asked.has("bodyFronts") ? fronts(levels) : {}),
    ...(asked.has("bodyGirths") ? only(girths, otherGirths) : {}),
    ...(asked.has("bodyHeights") ? heights(levels) : {}),
    ...(asked.has("bodyLengths") ? surfaceLengths(pair.body) : {}),
    ...(asked.has("bodyApexes") ? { apexToApex: lengths.apexToApex } : {}),
    ...(asked.has("bodyBreadths") ? breadths(levels) : {}),
  };
  return { body, form: formAnswered(pair, body, asked) };
}

/** Once the bare form is read on the person's lines, breadths and depths are read there and its own levels say nothing more. */
function formAnswered({ form }: TruePair, body: Entries, asked: ReadonlySet<QuestionId>): Entries {
  const isOnLines = asked.has("formLines");
  const levels = isOnLines ? readingsOnLines(form, markedDepths(body)) : form.levels;
  const girths = girthsAndFronts(levels);
  return {
    ...(isOnLines ? { readAtBodyLines: true } : {}),
    ...(isOnLines || asked.has("formGirths") ? girths : only(girths, firstGirths)),
    ...(asked.has("formHeights") && !isOnLines ? heights(levels, 900) : {}),
    ...(asked.has("formBreadths") ? breadths(levels) : {}),
    ...(asked.has("formDepths") ? depths(levels) : {}),
  };
}

const only = (entries: Entries, names: readonly string[]): Entries =>
  Object.fromEntries(Object.entries(entries).filter(([name]) => names.includes(name)));

/** Nine in ten girths and fronts at the lines lie within this (mm), when some questions are answered. */
export function nineInTen(asked: ReadonlySet<QuestionId>): number {
  const key = questionIds.filter((id) => asked.has(id)).join();
  const found =
    known.get(key) ??
    nineIn(
      truePairs.flatMap((pair) =>
        levelMisses(pair, planOfGiven(answered(pair, asked))).flatMap(({ girth, front }) => [girth, front]),
      ),
    );
  known.set(key, found);
  return found;
}

const known = new Map<string, number>();

function nineIn(misses: readonly number[]): number {
  const sorted = misses.map(Math.abs).toSorted((a, b) => a - b);
  return Math.round(sorted[Math.ceil(0.9 * sorted.length) - 1] ?? 0);
}

/** What is gained between the bust and the underbust line by the girth of the lower breast, with everything else read (mm). */
function betweenBusts(asked: ReadonlySet<QuestionId>, withLowerBreast: boolean): number {
  const misses = truePairs.flatMap((pair) => {
    const given = answered(pair, asked);
    const more = (shape: TruePair["body"]) => (withLowerBreast ? lowerBreast(shape, pair.body.levels) : {});
    const plan = planOfGiven({
      body: { ...given.body, ...more(pair.body) },
      form: { ...given.form, ...more(pair.form) },
    });
    return missesBetween(pair, plan).filter(({ level }) => level === "bust to underbust");
  });
  return nineIn(misses.map(({ girth }) => girth));
}

/** One question with what it gains where it is asked, and what is left then (mm, nine in ten lie within it). */
export interface QuestionGain {
  readonly question: QuestionId;
  readonly gainMm: number;
  readonly leftMm: number;
}

/** Each time the question that leaves least, until none gains a millimeter any more; those come last and gain nothing. */
export function greedyOrder(): readonly QuestionId[] {
  let order: readonly QuestionId[] = [];
  let left = nineInTen(new Set());
  for (;;) {
    const open = questionIds.filter((id) => !order.includes(id) && !isPointless(id, order));
    const tried = open.map((id) => ({ id, leaves: nineInTen(new Set([...order, id])) }));
    const best = tried.toSorted((a, b) => a.leaves - b.leaves)[0];
    if (best === undefined || best.leaves > left - leastGain) return order;
    order = [...order, best.id];
    left = best.leaves;
  }
}
const leastGain = 1;

/** Once the form is read on the person's lines its own levels say nothing, and heights need no tape over the surface. */
const isPointless = (id: QuestionId, order: readonly QuestionId[]): boolean =>
  ((id === "formGirths" || id === "formHeights") && order.includes("formLines")) ||
  (id === "bodyLengths" && order.includes("bodyHeights"));

/** Nine in ten girths and fronts lie within this before anything is asked, and once the committed file's first questions are answered (mm). */
export const leftAfter = (count: number): number =>
  nineInTen(new Set(committed.order.slice(0, count).map(({ question }) => question as QuestionId)));

/** What the committed file should say: its own order, or another one, with every figure reckoned anew. */
export function gainsFile(order: readonly QuestionId[] | null) {
  const asked = order ?? (committed.order as readonly QuestionGain[]).map(({ question }) => question);
  const leaves = [...asked.keys(), asked.length].map((count) => nineInTen(new Set(asked.slice(0, count))));
  const all = new Set(asked);
  const [without, withIt] = [betweenBusts(all, false), betweenBusts(all, true)];
  return {
    about:
      "How much nearer nine in ten girths and fronts of the padded form come to the body's at its level lines (mm) when a question is answered, in the order that gains most. Before any, three girths are known of the body and of the form.",
    source:
      "npm run study:shapes -- --write: plans laid on the bodies and forms of shared/real-sections.json (made-up women, an artist's shapes), read with a taut tape.",
    startMm: leaves[0] as number,
    order: asked.map(
      (question, i): QuestionGain => ({
        question,
        gainMm: (leaves[i] as number) - (leaves[i + 1] as number),
        leftMm: leaves[i + 1] as number,
      }),
    ),
    between: [{ question: "lowerBreast", gainMm: without - withIt, leftMm: withIt }],
  };
}
