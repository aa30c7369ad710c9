import { LanguageLink } from "../../kit/LanguageLink";
import { useGoOn } from "../../kit/useGoOn";
import { latePart } from "../../kit/rescue/latePart";
import { PartBoundary } from "../../kit/rescue/PageBoundary";
import { draftTranslation } from "../../../text/language";
import { homeWords } from "../../../text/workroom";
import { useFitting, useFittingState } from "../../kit/useStore";
import { useOpenDemo } from "../../kit/shelf/useDemo";

/** Planned and drawn after the words are on the screen; their places are kept free. Without them Home is as good. */
const HomeFigures = latePart(() => import("./HomeFigures").then(({ HomeFigures }) => HomeFigures));

/** Where one comes in: what the tool does, two ways to begin, and that nothing leaves the device. */
export function HomePage() {
  const fitting = useFitting();
  const isBegun = useFittingState((state) => Object.keys(state.fitting.body).length > 0);
  const openDemo = useOpenDemo();
  const goOn = useGoOn();
  return (
    <div className="home">
      <div className="home-lead stack">
        <h1>{homeWords.title}</h1>
        <p className="home-sentence">{homeWords.lead}</p>
        <div className="home-ways">
          <div className="stack">
            <button type="button" className="patch patch-main" onClick={goOn}>
              {isBegun ? homeWords.continueWith(fitting.title) : homeWords.ownStart}
            </button>
            <p className="quiet">{homeWords.ownStartNote}</p>
          </div>
          <div className="stack">
            <button type="button" className="patch home-demo" onClick={openDemo}>
              {homeWords.demo}
            </button>
            <p className="quiet">{isBegun ? homeWords.demoReplaces : homeWords.demoNote}</p>
          </div>
        </div>
        <div>
          {draftTranslation === null ? null : (
            <p className="quiet">
              <strong>{draftTranslation.title}.</strong> {draftTranslation.sentence}
            </p>
          )}
          <p>
            <LanguageLink page="home" />
          </p>
        </div>
      </div>
      <div className="home-figures">
        <PartBoundary>
          <HomeFigures />
        </PartBoundary>
      </div>
      <section className="home-private">
        <h2>{homeWords.privacyTitle}</h2>
        <p>{homeWords.privacy}</p>
      </section>
      <section className="home-needs stitched">
        <h2>{homeWords.needTitle}</h2>
        <ul className="home-list">
          {homeWords.needs.map((need) => (
            <li key={need}>{need}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
