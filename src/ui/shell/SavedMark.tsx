import type { OpenState } from "../../app/storage/openFitting";
import { placeAddress } from "../kit/place";
import { savedWords } from "../../text/saved";
import { timeText } from "../../text/moment";
import { useShelf } from "../kit/shelf/shelf";

/**
 * Whether the newest change is kept, beside the tools of the band, as a way to the shelf. It says "saved" only when it
 * is; screen readers hear of it when something is not, from the notice.
 */
export function SavedMark() {
  const open = useShelf((state) => state.open);
  const state = stateOf(open);
  return (
    <a className={`saved-mark saved-mark-${state.kind}`} href={placeAddress("fittings")}>
      <span className="saved-mark-place">{savedWords.toFittings}</span>
      <span className="saved-mark-state">{state.text}</span>
    </a>
  );
}

function stateOf(open: OpenState | null): { readonly kind: string; readonly text: string } {
  if (open?.access === "newer") return { kind: "elsewhere", text: savedWords.newer };
  if (open === null || open.saving.kind === "nothingYet") return { kind: "quiet", text: "" };
  if (open.saving.kind === "notSaved") return { kind: "trouble", text: savedWords.notSaved };
  if (open.access === "elsewhere") return { kind: "elsewhere", text: savedWords.elsewhere };
  if (open.saving.kind === "saving") return { kind: "quiet", text: savedWords.saving };
  return { kind: "quiet", text: savedWords.saved(timeText(open.saving.at)) };
}
