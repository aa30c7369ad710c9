import type { Plan } from "../../core/plan/plan";

/** The numbers of the discs that fill the bra. */
export const cupOrders = ({ pieces }: Plan): readonly number[] =>
  pieces.filter(({ zone }) => zone === "leftCup" || zone === "rightCup").map(({ order }) => order);
