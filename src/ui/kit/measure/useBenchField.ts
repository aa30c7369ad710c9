import { useEffect, useRef } from "react";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { lengthFieldState } from "../field/lengthFieldState";
import { useDispatch, useDrafts, useFitting, useLengths, useStoreItself } from "../useStore";

/** The field of the measurement at hand: it takes the caret when somebody came for it, and is finished when she leaves. */
export function useBenchField(whose: "body" | "form", name: MeasurementName, focusTurn: number) {
  const input = useRef<HTMLInputElement>(null);
  const fitting = useFitting();
  const drafts = useDrafts();
  const store = useStoreItself();
  const dispatch = useDispatch();
  const { unit, step } = useLengths();

  useEffect(() => {
    if (focusTurn > 0) input.current?.focus();
  }, [focusTurn]);

  // Whoever leaves the bench in any way has finished typing.
  useEffect(
    () => () => {
      const text = store.getState().fitting.drafts[whose][name];
      if (text !== undefined) store.dispatch({ does: "measure", whose, name, text });
    },
    [store, whose, name],
  );

  const field = lengthFieldState({
    entry: fitting[whose][name],
    draft: drafts[whose][name],
    unit,
    step,
    onDraft: (text) => dispatch({ does: "draft", of: whose, key: name, text }),
    onCommit: (text) => dispatch({ does: "measure", whose, name, text }),
  });
  return { field, input };
}
