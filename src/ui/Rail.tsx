import { lazy, Suspense } from "react";
import { type Place, placeAddress, workPlaces } from "./place";
import { RailTools } from "./RailTools";
import { placeNames, workroomWords } from "./text/workroom";

/** The band: a tape down its edge, the places hung on it, and what is at hand everywhere: unit, undo, paper. */
export function Rail({ place }: { readonly place: Place }) {
  return (
    <header className="rail">
      <a className="rail-name" href={placeAddress("door")} aria-current={place === "door" ? "page" : undefined}>
        <NameMark />
        <span className="rail-name-word">{placeNames.door}</span>
      </a>
      <nav className="rail-places" aria-label={workroomWords.places}>
        <ul>
          {workPlaces.map((name) => (
            <li key={name}>
              <a className="rail-label" href={placeAddress(name)} aria-current={place === name ? "page" : undefined}>
                <span className="rail-label-name">{placeNames[name]}</span>
                <span className="rail-label-state">
                  <Suspense fallback={null}>
                    <PlaceState place={name} />
                  </Suspense>
                </span>
              </a>
            </li>
          ))}
          {(["print", "wall"] as const).map((name) => (
            <li key={name}>
              <a
                className={`rail-label rail-label-${name === "print" ? "paper" : name}`}
                href={placeAddress(name)}
                aria-current={place === name ? "page" : undefined}
              >
                <span className="rail-label-name">{placeNames[name]}</span>
              </a>
            </li>
          ))}
        </ul>
      </nav>
      <RailTools />
    </header>
  );
}

/** How far the work has come is worked out by the planner, which is not waited for. */
const PlaceState = lazy(() => import("./PlaceState").then((loaded) => ({ default: loaded.PlaceState })));

/** The mark of the tool: a pad pinned under a tape. */
function NameMark() {
  return (
    <svg className="rail-mark" width="34" height="34" viewBox="0 0 34 34" aria-hidden focusable="false">
      <path className="rail-mark-pad" d="M6 14 C6 6 28 6 28 14 C30 24 24 31 17 31 C10 31 4 24 6 14 Z" />
      <path className="rail-mark-tape" d="M1 17 C10 23 24 23 33 17 L33 22 C24 28 10 28 1 22 Z" />
      <path className="rail-mark-tick" d="M9 21 V24 M13 22.2 V25.2 M17 22.6 V26.6 M21 22.2 V25.2 M25 21 V24" />
      <circle className="rail-mark-pin" cx="17" cy="11" r="3" />
    </svg>
  );
}
