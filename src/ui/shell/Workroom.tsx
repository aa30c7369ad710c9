import { useEffect, useRef } from "react";
import { pageNames, toolName, workroomWords } from "../../text/workroom";
import { Announcer } from "../kit/Announcer";
import { askedThingOf, type Page, usePage } from "../kit/page";
import { PageBoundary, PartBoundary } from "../kit/rescue/PageBoundary";
import { MissingPartsNotice, NoSheet } from "./MissingPart";
import { Rail } from "./Rail";
import { fetchPages, NoticePage, pageContents, PrintedSheet, usePrinting } from "./lateContents";

/** The workroom: the band with the places on one side, and the place where the work is on the other. */
export function Workroom() {
  const page = usePage();
  const main = useRef<HTMLElement>(null);
  useArrival(page, main);
  useFocusKept();
  const Contents = pageContents[page];
  const isPrinting = usePrinting();

  useEffect(() => {
    const whenIdle = window.requestIdleCallback ?? ((work: () => void) => window.setTimeout(work, 200));
    whenIdle(fetchPages);
  }, []);

  return (
    <Announcer>
      <button type="button" className="skip" onClick={() => main.current?.focus()}>
        {workroomWords.skip}
      </button>
      <div className={`workroom workroom-${page}`}>
        {page === "class" || page === "remote" ? null : <Rail page={page} />}
        <main id="work" ref={main} tabIndex={-1} className="place">
          <MissingPartsNotice />
          <PartBoundary>
            <NoticePage />
          </PartBoundary>
          <PageBoundary page={page}>
            <Contents />
          </PageBoundary>
          {isPrinting && page !== "print" ? (
            <PartBoundary instead={<NoSheet />}>
              <PrintedSheet />
            </PartBoundary>
          ) : null}
        </main>
      </div>
    </Announcer>
  );
}

/**
 * On arriving somewhere the title says where, and the focus is at the beginning of the place, not on the way there; whoever
 * comes for one thing is led to it by the place itself.
 */
function useArrival(page: Page, main: { readonly current: HTMLElement | null }): void {
  const last = useRef(page);
  useEffect(() => {
    document.title = page === "home" ? toolName : `${pageNames[page]} · ${toolName}`;
    if (last.current === page) return;
    last.current = page;
    if (askedThingOf(window.location.hash) !== null) return;
    main.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [page, main]);
}

/**
 * Keeps the focus near where it was when the thing that had it goes away: a patch that was pressed and is no longer
 * needed, or cannot be pressed again. A browser then forgets the place, and whoever works by keys or by ear starts anew at
 * the top of the page. The nearest part of the page that is still there takes the focus; it is not scrolled to.
 */
function useFocusKept(): void {
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
