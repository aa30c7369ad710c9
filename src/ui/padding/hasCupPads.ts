import type { Plan } from "../../core/plan/plan";

/** Whether the plan fills the cups of the bra. */
export const hasCupPads = ({ pieces }: Plan): boolean =>
  pieces.some(({ zone }) => zone === "leftCup" || zone === "rightCup");
