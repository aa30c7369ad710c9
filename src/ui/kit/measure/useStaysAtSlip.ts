import { useRef } from "react";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { derivationOf } from "../useDerived";
import { useStoreItself } from "../useStore";
import { isContradicted } from "./FirstProblem";

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
    return isNew && isContradicted(problems.measurements, whose, name);
  };
}
