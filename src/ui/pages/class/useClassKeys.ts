import { useLayoutEffect } from "react";
import { type ClassKey, classKey } from "../../../app/classView/classState";

/** Listens to the whole page while the class view is up, from its first frame on, so that a clicker works wherever the focus is. */
export function useClassKeys(act: (key: ClassKey) => void, lettersWork: boolean): void {
  useLayoutEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.defaultPrevented || isForControl(event)) return;
      const { key, shiftKey: shift } = event;
      const action = classKey({ key, shift, command: event.ctrlKey || event.metaKey || event.altKey }, lettersWork);
      if (action === null) return;
      event.preventDefault();
      act(action);
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [act, lettersWork]);
}

/**
 * Space and Enter press the control that has the focus. In a field letters, digits and arrows stay there, and in a dialog all keys
 * do; a clicker's page keys turn the step wherever the focus is.
 */
const isForControl = ({ key, target }: KeyboardEvent): boolean => {
  if (!(target instanceof HTMLElement)) return false;
  if (target.closest("dialog") !== null) return true;
  if (target.closest(fields) !== null) return key !== "PageDown" && key !== "PageUp";
  return (key === " " || key === "Enter") && target.closest("button, a, input, summary") !== null;
};

const fields = "input[type=text], input:not([type]), textarea, select";
