import { memo, useEffect } from "react";
import type { FittingStore } from "../../../app/session/store";
import { Boundary } from "../../kit/rescue/PageBoundary";
import { classOnPaper } from "../../kit/sheet/classOnPaper";
import { SessionSheet } from "../../kit/sheet/SessionSheet";
import { ShortMeasureSheet } from "../../kit/sheet/ShortMeasureSheet";
import { UsualSheets } from "../../kit/sheet/UsualSheets";
import { useDerived } from "../../kit/useDerived";
import { StoreProvider } from "../../kit/useStore";
import { rosterWords } from "../../../text/roster";
import { footRule, pageOf } from "./footRule";

export type ClassPaper = "padding" | "session" | "measuring";

/** One of a class on paper: the name that stands there, and a store with nothing in it but that fitting. */
export interface PersonOnPaper {
  readonly name: string;
  /** Null where the sheet is blank. */
  readonly store: FittingStore | null;
}

interface ClassSheetsProps {
  readonly paper: ClassPaper;
  readonly people: readonly PersonOnPaper[];
  /** Everyone is there: the printer is asked for. */
  readonly isWhole: boolean;
}

/**
 * The sheets of a class, person after person, each from a page of their own and with the name at the foot of every page. They are
 * seen on paper alone.
 */
export function ClassSheets({ paper, people, isWhole }: ClassSheetsProps) {
  useEffect(() => {
    classOnPaper.setState({ isWaiting: true });
    return () => classOnPaper.setState({ isWaiting: false });
  }, []);
  useEffect(() => {
    if (isWhole) window.print();
  }, [isWhole]);
  return (
    <div className="sheets sheets-of-class">
      {people.map((person, place) => (
        <SheetsOfOne key={person.name} paper={paper} person={person} place={place} />
      ))}
    </div>
  );
}

const SheetsOfOne = memo(function SheetsOfOne({
  paper,
  person: { name, store },
  place,
}: {
  readonly paper: ClassPaper;
  readonly person: PersonOnPaper;
  readonly place: number;
}) {
  useEffect(() => withFoot(footRule(place, name)), [place, name]);
  return (
    <div className="sheets-of-one" data-person={name} style={{ page: pageOf(place) }}>
      {store === null ? (
        <ShortMeasureSheet name={name} />
      ) : (
        <Boundary causes={[store]} instead={() => <Failed name={name} />}>
          <StoreProvider store={store}>{paper === "session" ? <SessionOfOne /> : <UsualSheets />}</StoreProvider>
        </Boundary>
      )}
    </div>
  );
});

function SessionOfOne() {
  const { planning } = useDerived();
  return planning.kind === "planned" ? <SessionSheet plan={planning.plan} /> : null;
}

/** On paper as well, so that nobody is missing from the stack without a word. */
const Failed = ({ name }: { readonly name: string }) => (
  <section className="sheets">
    <article className="sheet">{rosterWords.failed(name)}</article>
  </section>
);

/** Lays a rule of the page out for as long as it is wanted. A browser without such sheets prints no name at the foot. */
function withFoot(rule: string): () => void {
  if (!("adoptedStyleSheets" in document)) return () => {};
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(rule);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  };
}
