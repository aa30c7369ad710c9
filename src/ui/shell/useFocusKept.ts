import { useEffect } from "react";

/**
 * Keeps the focus near where it was when the thing that had it goes away: a patch that was pressed and is no longer
 * needed, or cannot be pressed again. A browser then forgets the place, and whoever works by keys or by ear starts anew at
 * the top of the page. The nearest part of the page that is still there takes the focus; it is not scrolled to.
 */
export function useFocusKept(): void {
  useEffect(() => {
    let last: { readonly thing: Element; readonly around: readonly Element[] } | null = null;
    const isGone = (thing: Element): boolean => !thing.isConnected || thing.matches(":disabled");
    const onFocus = ({ target }: FocusEvent) => {
      if (target instanceof Element) last = { thing: target, around: partsAround(target) };
    };
    // Whoever leaves a thing that is still there wants it so.
    const onLeave = ({ target }: FocusEvent) =>
      queueMicrotask(() => {
        if (last !== null && last.thing === target && !isGone(last.thing)) last = null;
      });
    const keep = () => {
      const { activeElement } = document;
      if (last === null || !isGone(last.thing)) return;
      const nothingHasIt = activeElement === null || activeElement === document.body || activeElement === last.thing;
      const { around } = last;
      last = null;
      if (!nothingHasIt) return;
      for (const part of around) {
        if (!(part instanceof HTMLElement) || !part.isConnected) continue;
        if (!part.hasAttribute("tabindex")) part.tabIndex = -1;
        part.focus({ preventScroll: true });
        // What is hidden or lies in a closed fold takes no focus.
        if (document.activeElement === part) return;
      }
    };
    const watcher = new MutationObserver(keep);
    watcher.observe(document.body, { subtree: true, childList: true, attributeFilter: ["disabled"] });
    document.addEventListener("focusin", onFocus);
    document.addEventListener("focusout", onLeave);
    return () => {
      watcher.disconnect();
      document.removeEventListener("focusin", onFocus);
      document.removeEventListener("focusout", onLeave);
    };
  }, []);
}

function partsAround(thing: Element): readonly Element[] {
  const parts: Element[] = [];
  for (let part = thing.parentElement?.closest(places); part; part = part.parentElement?.closest(places)) {
    parts.push(part);
  }
  return parts;
}

/** Parts of a page that can stand for what lay in them. */
const places = "[tabindex], section, article, fieldset, dialog, details, li, nav, header, main";
