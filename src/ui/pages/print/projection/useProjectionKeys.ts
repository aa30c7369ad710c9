import { useEffect, useRef } from "react";

export interface ProjectionActs {
  readonly next: () => void;
  readonly previous: () => void;
  readonly mirror: () => void;
  readonly turn: () => void;
  readonly bar: () => void;
  readonly larger: () => void;
  readonly smaller: () => void;
}

/** A clicker sends page up and page down; the letters are those on the buttons. Escape closes by itself. */
const keys: { readonly [key: string]: keyof ProjectionActs } = {
  ArrowRight: "next",
  PageDown: "next",
  " ": "next",
  ArrowLeft: "previous",
  PageUp: "previous",
  m: "mirror",
  t: "turn",
  b: "bar",
  "+": "larger",
  "=": "larger",
  "-": "smaller",
};

/** Listens to the whole page while the picture is up, so that a clicker works wherever the focus is; not while something is typed. */
export function useProjectionKeys(acts: ProjectionActs): void {
  const latest = useRef(acts);
  useEffect(() => {
    latest.current = acts;
  });
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const { key, target, ctrlKey, metaKey, altKey } = event;
      const act = keys[key.length === 1 ? key.toLowerCase() : key];
      if (act === undefined || ctrlKey || metaKey || altKey) return;
      if (target instanceof HTMLElement && target.closest("input") !== null) return;
      if (key === " " && target instanceof HTMLElement && target.closest("button") !== null) return;
      event.preventDefault();
      latest.current[act]();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);
}
