import { useEffect, useRef } from "react";
import { Announcer } from "../kit/Announcer";
import { NoticePlace } from "./NoticePlace";
import { askedThingOf, type Place, usePlace } from "../kit/place";
import { fetchPlaces, placeContents } from "./placeContents";
import { PrintedSheet, usePrinting } from "./printedSheet";
import { Rail } from "./Rail";
import { MissingPartsNotice, NoSheet } from "./MissingPart";
import { PageBoundary, PartBoundary } from "../kit/rescue/PageBoundary";
import { placeNames, toolName, workroomWords } from "../../text/workroom";
import { useFocusKept } from "./useFocusKept";

/** The workroom: the band with the places on one side, and the place where the work is on the other. */
export function Workroom() {
  const place = usePlace();
  const main = useRef<HTMLElement>(null);
  useArrival(place, main);
  useFocusKept();
  const Contents = placeContents[place];
  const isPrinting = usePrinting();

  useEffect(() => {
    const whenIdle = window.requestIdleCallback ?? ((work: () => void) => window.setTimeout(work, 200));
    whenIdle(fetchPlaces);
  }, []);

  return (
    <Announcer>
      <button type="button" className="skip" onClick={() => main.current?.focus()}>
        {workroomWords.skip}
      </button>
      <div className={`workroom workroom-${place}`}>
        {place === "wall" ? null : <Rail place={place} />}
        <main id="work" ref={main} tabIndex={-1} className="place">
          <MissingPartsNotice />
          <PartBoundary>
            <NoticePlace />
          </PartBoundary>
          <PageBoundary place={place}>
            <Contents />
          </PageBoundary>
          {isPrinting && place !== "print" ? (
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
function useArrival(place: Place, main: { readonly current: HTMLElement | null }): void {
  const last = useRef(place);
  useEffect(() => {
    document.title = place === "door" ? toolName : `${placeNames[place]} · ${toolName}`;
    if (last.current === place) return;
    last.current = place;
    if (askedThingOf(window.location.hash) !== null) return;
    main.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [place, main]);
}
