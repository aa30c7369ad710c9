import type { Plan } from "../../../core/plan/plan";

/** How many of the body's girths and arcs in the plan are estimates. */
export const guessCount = ({ levels }: Plan): number =>
  levels.flatMap(({ body }) => [body.girth, body.frontArc]).filter(({ kind }) => kind === "estimated").length;

/** Whether anything the plan stands on was not measured: of the body, of its heights, or of the bare form. */
export const restsOnGuesses = ({ levels }: Plan): boolean =>
  levels
    .flatMap(({ drop, body, form }) => [drop, body.girth, body.frontArc, form.girth, form.frontArc])
    .some(({ kind }) => kind === "estimated");
