import { useRef } from "react";
import { isContradiction, type MeasurementProblem } from "../../core/body/plausibility";
import type { MeasurementName } from "../../core/body/vocabulary";
import { derivationOf } from "../useDerived";
import { useStoreItself } from "../useStore";

/**
 * Whoever has just typed a reading that cannot be stays with it, once, and sees what is the matter; the next press goes
 * on all the same.
 */
export function useStaysAtSlip(whose: "body" | "form", name: MeasurementName): () => boolean {
  const store = useStoreItself();
  const looked = useRef(store.getState().fitting[whose][name]);
  return () => {
    const { fitting } = store.getState();
    const entry = fitting[whose][name];
    const isNew = entry !== looked.current;
    looked.current = entry;
    const { problems } = derivationOf(store)(fitting);
    return isNew && problems.measurements.some((problem) => problem.names.includes(name) && isSlip(problem, whose));
  };
}

const isSlip = (problem: MeasurementProblem, whose: "body" | "form"): boolean =>
  problem.whose === whose && problem.code !== "missing" && isContradiction(problem);
