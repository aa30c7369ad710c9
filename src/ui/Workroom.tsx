import { type ReactNode, useEffect, useRef } from "react";
import { type Place, usePlace } from "./place";
import { Rail } from "./Rail";
import { Door } from "./steps/Door";
import { BodyPlace } from "./steps/BodyPlace";
import { FormPlace } from "./steps/FormPlace";
import { PlanPlace } from "./steps/PlanPlace";
import { PaddingPlace } from "./steps/PaddingPlace";
import { FinishingPlace } from "./steps/FinishingPlace";
import { PrintPlace } from "./print/PrintPlace";
import { placeNames, workroomWords } from "./text/workroom";
import { Announcer } from "./Announcer";

/** The workroom: the band with the places on one side, and the place where the work is on the other. */
export function Workroom() {
  const place = usePlace();
  const main = useRef<HTMLElement>(null);
  const arrived = useRef(place);

  useEffect(() => {
    document.title = place === "door" ? placeNames.door : `${placeNames[place]} · ${placeNames.door}`;
    if (arrived.current === place) return;
    arrived.current = place;
    main.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [place]);

  return (
    <Announcer>
      <a className="skip" href="#work" onClick={(event) => {
        event.preventDefault();
        main.current?.focus();
      }}>
        {workroomWords.skip}
      </a>
      <div className={`workroom workroom-${place}`}>
        <Rail place={place} />
        <main id="work" ref={main} tabIndex={-1} className="place">
          {placeContents[place]()}
        </main>
      </div>
    </Announcer>
  );
}

const placeContents: { readonly [place in Place]: () => ReactNode } = {
  door: () => <Door />,
  body: () => <BodyPlace />,
  form: () => <FormPlace />,
  plan: () => <PlanPlace />,
  padding: () => <PaddingPlace />,
  finishing: () => <FinishingPlace />,
  print: () => <PrintPlace />,
  projector: () => <PlanPlace />,
};
