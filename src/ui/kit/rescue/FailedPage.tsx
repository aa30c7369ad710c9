import { fileName, offerFile } from "../../../app/share/fileOffer";
import { writeFitting } from "../../../document/fitting";
import { presentInstant } from "../../../text/moment";
import { placeAddress } from "../place";
import { rescueWords } from "../../../text/rescue";
import { useFittingState, useStoreItself } from "../useStore";
import { latePart } from "./latePart";

/** Fetched with the shelf, before a page has failed. */
export const OtherFittings = latePart(() => import("./OtherFittings").then(({ OtherFittings }) => OtherFittings));

interface FailedPageProps {
  readonly error: unknown;
  readonly onRetry: () => void;
}

/** In the place of a page that failed: what happened, the fitting as a file, and the way to every other fitting. */
export function FailedPage({ error, onRetry }: FailedPageProps) {
  const store = useStoreItself();
  const title = useFittingState((state) => state.fitting.title);
  const save = () => {
    const text = `${JSON.stringify(writeFitting(store.getState().fitting), null, 2)}\n`;
    offerFile(document, fileName("fitting", title, presentInstant(), "json"), text, "json");
  };
  return (
    <>
      <section className="stitched stack" role="alert">
        <h1>{rescueWords.failedTitle}</h1>
        <p>{rescueWords.failed(title)}</p>
        <p>{rescueWords.failedAdvice}</p>
        <div className="row">
          <button type="button" className="patch patch-main" onClick={onRetry}>
            {rescueWords.again}
          </button>
          <button type="button" className="patch" onClick={save}>
            {rescueWords.saveRaw}
          </button>
          <a href={placeAddress("door")}>{rescueWords.home}</a>
          <a href={placeAddress("fittings")}>{rescueWords.fittings}</a>
        </div>
        <p className="quiet small">{rescueWords.detail(error instanceof Error ? error.message : String(error))}</p>
      </section>
      <OtherFittings />
    </>
  );
}
