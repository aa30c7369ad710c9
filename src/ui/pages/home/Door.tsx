import { goTo } from "../../kit/place";
import { latePart } from "../../kit/rescue/latePart";
import { PartBoundary } from "../../kit/rescue/PageBoundary";
import { doorWords } from "../../../text/workroom";
import { useFitting, useFittingState } from "../../kit/useStore";
import { useOpenDemo } from "../../kit/shelf/useDemo";

/** Planned and drawn after the words are on the screen; their places are kept free. Without them the door is as good a door. */
const DoorFigures = latePart(() => import("./DoorFigures").then(({ DoorFigures }) => DoorFigures));

/** Where one comes in: what the tool does, two ways to begin, and that nothing leaves the device. */
export function Door() {
  const fitting = useFitting();
  const isBegun = useFittingState((state) => Object.keys(state.fitting.body).length > 0);
  const openDemo = useOpenDemo();
  return (
    <div className="door">
      <div className="door-lead stack">
        <h1>{doorWords.title}</h1>
        <p className="door-sentence">{doorWords.lead}</p>
        <div className="door-ways">
          <div className="stack">
            <button type="button" className="patch patch-main" onClick={() => goTo("body")}>
              {isBegun ? doorWords.continueWith(fitting.title) : doorWords.ownStart}
            </button>
            <p className="quiet">{doorWords.ownStartNote}</p>
          </div>
          <div className="stack">
            <button type="button" className="patch door-demo" onClick={openDemo}>
              {doorWords.demo}
            </button>
            <p className="quiet">{isBegun ? doorWords.demoReplaces : doorWords.demoNote}</p>
          </div>
        </div>
      </div>
      <div className="door-figures">
        <PartBoundary>
          <DoorFigures />
        </PartBoundary>
      </div>
      <section className="door-private">
        <h2>{doorWords.privacyTitle}</h2>
        <p>{doorWords.privacy}</p>
      </section>
      <section className="door-needs stitched">
        <h2>{doorWords.needTitle}</h2>
        <ul className="door-list">
          {doorWords.needs.map((need) => (
            <li key={need}>{need}</li>
          ))}
        </ul>
      </section>
    </div>
  );
}
