import { goTo } from "../../kit/page";
import { latePart } from "../../kit/rescue/latePart";
import { PartBoundary } from "../../kit/rescue/PageBoundary";
import { homeWords } from "../../../text/workroom";
import { useFitting, useFittingState } from "../../kit/useStore";
import { useOpenDemo } from "../../kit/shelf/useDemo";

/** Planned and drawn after the words are on the screen; their places are kept free. Without them the door is as good a door. */
const HomeFigures = latePart(() => import("./HomeFigures").then(({ HomeFigures }) => HomeFigures));

/** Where one comes in: what the tool does, two ways to begin, and that nothing leaves the device. */
export function HomePage() {
  const fitting = useFitting();
  const isBegun = useFittingState((state) => Object.keys(state.fitting.body).length > 0);
  const openDemo = useOpenDemo();
  return (
    <div className="door">
      <div className="door-lead stack">
        <h1>{homeWords.title}</h1>
        <p className="door-sentence">{homeWords.lead}</p>
        <div className="door-ways">
          <div className="stack">
            <button type="button" className="patch patch-main" onClick={() => goTo("body")}>
              {isBegun ? homeWords.continueWith(fitting.title) : homeWords.ownStart}
            </button>
            <p className="quiet">{homeWords.ownStartNote}</p>
          </div>
          <div className="stack">
            <button type="button" className="patch door-demo" onClick={openDemo}>
              {homeWords.demo}
            </button>
            <p className="quiet">{isBegun ? homeWords.demoReplaces : homeWords.demoNote}</p>
          </div>
        </div>
      </div>
      <div className="door-figures">
        <PartBoundary>
          <HomeFigures />
        </PartBoundary>
      </div>
      <section className="door-private">
        <h2>{homeWords.privacyTitle}</h2>
        <p>{homeWords.privacy}</p>
      </section>
      <section className="door-needs stitched">
        <h2>{homeWords.needTitle}</h2>
        <ul className="door-list">
          {homeWords.needs.map((need) => (
            <li key={need}>{need}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
