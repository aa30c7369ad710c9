import { type Page, pageAddress, workPages } from "../kit/page";
import { RailTools } from "./RailTools";
import { latePart } from "../kit/rescue/latePart";
import { PartBoundary } from "../kit/rescue/PageBoundary";
import { pageNames, toolName, workroomWords } from "../../text/workroom";

/** The band: a tape down its edge, the places hung on it, and what is at hand everywhere: unit, undo, paper. */
export function Rail({ page }: { readonly page: Page }) {
  return (
    <header className="rail">
      <a className="rail-name" href={pageAddress("home")} aria-current={page === "home" ? "page" : undefined}>
        <NameMark />
        <span className="rail-name-word">{toolName}</span>
        <span className="unseen">, {pageNames.home}</span>
      </a>
      <nav className="rail-places" aria-label={workroomWords.places}>
        <ul>
          {workPages.map((name) => (
            <li key={name}>
              <a className="rail-label" href={pageAddress(name)} aria-current={page === name ? "page" : undefined}>
                <span className="rail-label-name">{pageNames[name]}</span>
                <span className="rail-label-state">
                  <PartBoundary>
                    <PageState page={name} />
                  </PartBoundary>
                </span>
              </a>
            </li>
          ))}
          {(["print", "class"] as const).map((name) => (
            <li key={name}>
              <a
                className={`rail-label rail-label-${name === "print" ? "paper" : name}`}
                href={pageAddress(name)}
                aria-current={page === name ? "page" : undefined}
              >
                <span className="rail-label-name">{pageNames[name]}</span>
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
const PageState = latePart(() => import("./PageState").then(({ PageState }) => PageState));

/** The mark of the tool: a pad pinned under a tape. */
/** The mark of the tool, the same as on its icon: neck and shoulders of a form, and a tape round it. */
function NameMark() {
  return (
    <svg className="rail-mark" width="34" height="34" viewBox="40 34 432 432" aria-hidden focusable="false">
      <path
        className="rail-mark-form"
        d="M204 58 C205 106 200 120 174 132 L104 161 C88 169 88 189 98 199 C125 223 132 244 124 282 C122 312 152 350 153 386 C154 414 140 432 134 462 H378 C372 432 358 414 359 386 C360 350 390 312 388 282 C380 244 387 223 414 199 C424 189 424 169 408 161 L338 132 C312 120 307 106 308 58 Z"
      />
      <path className="rail-mark-tape" d="M264 340 H308 V420 L286 434 L264 420 Z" />
      <path className="rail-mark-tape" d="M116 251 C194 282 318 282 396 251 V328 C318 358 194 358 116 328 Z" />
      <path className="rail-mark-tick" d="M166 266 V298 M226 273 V306 M286 273 V306 M346 266 V298" />
    </svg>
  );
}
