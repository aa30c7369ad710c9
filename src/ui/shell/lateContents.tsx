import { type ComponentType, useEffect, useState } from "react";
import { flushSync } from "react-dom";
import type { Page } from "../kit/page";
import { latePart } from "../kit/rescue/latePart";
import { type ShelfState, useShelf } from "../kit/shelf/shelf";
import { HomePage } from "../pages/home/HomePage";
import { MissingPage, NoSheet } from "./MissingPart";

const latePage = (load: () => Promise<ComponentType>) => latePart(load, MissingPage);

/**
 * What lies in each place. Only Home is loaded at once; the others follow as soon as the browser is idle, so that
 * the first screen is quick and no later one has to wait.
 */
const latePages = {
  body: latePage(() => import("../pages/body/BodyPage").then(({ BodyPage }) => BodyPage)),
  form: latePage(() => import("../pages/form/FormPage").then(({ FormPage }) => FormPage)),
  plan: latePage(() => import("../pages/plan/PlanPage").then(({ PlanPage }) => PlanPage)),
  padding: latePage(() => import("../pages/padding/PaddingPage").then(({ PaddingPage }) => PaddingPage)),
  finishing: latePage(() => import("../pages/finishing/FinishingPage").then(({ FinishingPage }) => FinishingPage)),
  print: latePage(() => import("../pages/print/PrintPage").then(({ PrintPage }) => PrintPage)),
  class: latePage(() => import("../pages/class/ClassPage").then(({ ClassPage }) => ClassPage)),
  remote: latePage(() => import("../pages/remote/RemotePage").then(({ RemotePage }) => RemotePage)),
  view3d: latePage(() => import("../pages/view3d/TurningPage").then(({ TurningPage }) => TurningPage)),
  fittings: latePage(() => import("../pages/fittings/FittingsPage").then(({ FittingsPage }) => FittingsPage)),
} as const satisfies { readonly [page in Exclude<Page, "home">]: ComponentType };

export const pageContents: { readonly [page in Page]: ComponentType } = { home: HomePage, ...latePages };

/** Fetches the places of the work ahead of need; the class view, its remote and the turning figure wait until someone asks for them. */
export const fetchPages = (): void => {
  const { class: _class, remote: _remote, view3d: _view3d, ...work } = latePages;
  for (const page of Object.values(work)) page.fetch();
};

/** Where notices about keeping appear. What they are made of is loaded with the shelf, before there is one to show. */
export function NoticePage() {
  const isNeeded = useShelf(hasNotice);
  return isNeeded ? <AutosaveNotice /> : null;
}

export const AutosaveNotice = latePart(() => import("./KeepingNotice").then(({ AutosaveNotice }) => AutosaveNotice));

const hasNotice = ({ open, news, offline }: ShelfState): boolean =>
  news.length > 0 ||
  open?.saving.kind === "notSaved" ||
  (open !== null && open.access !== "writing") ||
  offline.kind === "newReleaseWaits" ||
  offline.kind === "newReleaseElsewhere";

/** The sheet that is on the page while the browser prints, wherever the person is. */
export const PrintedSheet = latePart(() => import("./PrintedSheet").then(({ PrintedSheet }) => PrintedSheet), NoSheet);

/** Whether the browser is printing, so that the sheet is wanted. */
export function usePrinting(): boolean {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    PrintedSheet.fetch();
    // The browser takes its picture as soon as this event is over.
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    window.addEventListener("beforeprint", begin);
    window.addEventListener("afterprint", end);
    return () => {
      window.removeEventListener("beforeprint", begin);
      window.removeEventListener("afterprint", end);
    };
  }, []);
  return isPrinting;
}
