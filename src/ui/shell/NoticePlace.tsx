import { latePart } from "../kit/rescue/latePart";
import { type ShelfState, useShelf } from "../kit/shelf/shelf";

/** Where notices about keeping appear. What they are made of is loaded with the shelf, before there is one to show. */
export function NoticePlace() {
  const isNeeded = useShelf(hasNotice);
  return isNeeded ? <KeepingNotice /> : null;
}

export const KeepingNotice = latePart(() => import("./KeepingNotice").then(({ KeepingNotice }) => KeepingNotice));

const hasNotice = ({ open, news, offline }: ShelfState): boolean =>
  news.length > 0 ||
  open?.saving.kind === "notSaved" ||
  (open !== null && open.access !== "writing") ||
  offline.kind === "newReleaseWaits" ||
  offline.kind === "newReleaseElsewhere";
