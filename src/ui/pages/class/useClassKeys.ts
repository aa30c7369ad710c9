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

/** Space presses the control that has the focus; in a field, in what is taken home and in a dialog all keys stay there. */
const isForControl = ({ key, target }: KeyboardEvent): boolean =>
  target instanceof HTMLElement &&
  (target.closest("dialog, .class-home, input[type=text], input:not([type])") !== null ||
    (key === " " && target.closest("button, a, input") !== null));
