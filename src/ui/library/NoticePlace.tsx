import { lazy, Suspense } from "react";
import { type ShelfState, useShelf } from "./shelf";

/** Where notices about keeping appear. What they are made of is loaded with the shelf, before there is one to show. */
export function NoticePlace() {
  const isNeeded = useShelf(hasNotice);
  return isNeeded ? (
    <Suspense fallback={null}>
      <KeepingNotice />
    </Suspense>
  ) : null;
}

export const fetchNotice = () => import("./KeepingNotice");

const KeepingNotice = lazy(() => fetchNotice().then((loaded) => ({ default: loaded.KeepingNotice })));

const hasNotice = ({ open, news, offline }: ShelfState): boolean =>
  news.length > 0 ||
  open?.saving.kind === "notSaved" ||
  (open !== null && open.access !== "writing") ||
  offline.kind === "newReleaseWaits" ||
  offline.kind === "newReleaseElsewhere";
