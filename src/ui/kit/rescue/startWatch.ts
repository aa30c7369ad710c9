import { startMark } from "../../../app/storage/startMark";
import { shelf } from "../shelf/shelf";

/** Whether the fitting that is open shows as it should, noted for the next start. */
const mark = (): ReturnType<typeof startMark> => startMark(window);
const openId = (): string | null => shelf.getState().keeping?.openId() ?? null;
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

/** A page that is left while it works has not hung, though its first fitting may still be on its way to the table. */
export const noteLeft = (): void => (isFailing ? undefined : noteWell(openId() ?? startedId));

const noteWell = (id: string | null): void => {
  if (id !== null && id === mark().read()) mark().write(null);
};

/** Milliseconds on the screen after which a page is taken to be whole: parts loaded and plan worked out. */
const steadyAfter = 2_000;
