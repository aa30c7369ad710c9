import type { Plan } from "../../core/plan/plan";
import { levelWords } from "../text/pictures";
import { planningWords } from "../text/planning";

/** Where most of the batting goes, in words: the level that grows most, and whether that is in front or behind. */
export function deepestPlace({ levels, bareForm }: Plan): string {
  const gains = levels.map(({ name, predicted }) => ({
    name,
    girth: predicted.girth - bareForm[name].girth,
    front: predicted.frontArc - bareForm[name].frontArc,
  }));
  const most = gains.reduce((best, gain) => (gain.girth > best.girth ? gain : best));
  const share = most.girth > 0 ? most.front / most.girth : evenShare;
  const { front, back, around } = planningWords.deepest;
  const where = share > evenShare + sayingShare ? front : share < evenShare - sayingShare ? back : around;
  return planningWords.mostAt(levelWords[most.name], where);
}

const evenShare = 0.5;
/** Below a share of 58 to 42 nobody would speak of a front. */
const sayingShare = 0.08;

/** How many of the body's girths and arcs in the plan are estimates. */
export const guessCount = ({ levels }: Plan): number =>
  levels.flatMap(({ body }) => [body.girth, body.frontArc]).filter(({ kind }) => kind === "estimated").length;

/** Whether anything the plan stands on was not measured: of the body, of its heights, or of the bare form. */
export const restsOnGuesses = ({ levels }: Plan): boolean =>
  levels
    .flatMap(({ drop, body, form }) => [drop, body.girth, body.frontArc, form.girth, form.frontArc])
    .some(({ kind }) => kind === "estimated");
