import { fileName, offerFile } from "../../../app/share/fileOffer";
import { startMark } from "../../../app/storage/startMark";
import { writeFitting } from "../../../document/fitting";
import { presentInstant } from "../../../text/moment";
import { rescueWords } from "../../../text/rescue";
import { pageAddress } from "../page";
import { shelf } from "../shelf/shelf";
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
          <a href={pageAddress("home")}>{rescueWords.home}</a>
          <a href={pageAddress("fittings")}>{rescueWords.fittings}</a>
        </div>
        <p className="quiet small">{rescueWords.detail(error instanceof Error ? error.message : String(error))}</p>
      </section>
      <OtherFittings />
    </>
  );
}

/** Whether the fitting that is open shows as it should, noted for the next start. */
const mark = (): ReturnType<typeof startMark> => startMark(window);
const openId = (): string | null => shelf.getState().autosave?.openId() ?? null;
let startedId: string | null = null;
let isFailing = false;

/** Whether the fitting made a page fail, or hang, when it was opened last. */
export const failedLast = (id: string): boolean => mark().read() === id;

/** Before a fitting is opened at a start: a page that then hangs can write no note any more. */
export function noteStart(id: string): void {
  startedId = id;
  mark().write(id);
}

export function noteFailure(): void {
  isFailing = true;
  const id = openId();
  if (id !== null) mark().write(id);
}

/** What is shown now stands; taken back by the function that is given back, when something else is shown. */
export function noteShown(): () => void {
  isFailing = false;
  const timer = setTimeout(() => noteWell(openId()), steadyAfter);
  return () => clearTimeout(timer);
}

/** A page that is left while it works has not hung, though its first fitting may still be on its way. */
export const noteLeft = (): void => (isFailing ? undefined : noteWell(openId() ?? startedId));

const noteWell = (id: string | null): void => {
  if (id !== null && id === mark().read()) mark().write(null);
};

/** Milliseconds on the screen after which a page is taken to be whole: parts loaded and plan worked out. */
const steadyAfter = 2_000;
